"""Rule beginner-maximal-test: a beginner is to find out the most that goes once."""

from collections.abc import Iterator

from setwright.loads.lines import FOUND_ON_THE_DAY, Lift, Line
from setwright.reading.dose import SetGroup
from setwright.rules.lifts import lines_of, names, works
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Test week
unit: kg
dose order: sets x reps
level: beginner
sessions:
  - day: Monday
    work:
      - barbell back squat: test 1RM
"""
GOOD = BAD.replace("test 1RM", "work up to 5RM")

MAXIMAL = Option("repetition maximum up to which a test is maximal", 3, "repetitions", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault for all maximal tests of the week that beginners do."""
    tests = [(work, who) for work in works(case) if _is_maximal(work) and (who := _beginners(case, work))]
    if not tests:
        return
    first = tests[0][0]
    who = " and ".join(dict.fromkeys(who for _, who in tests))
    yield Fault(
        place=first.item.place,
        where=first.session.title,
        message=f"{first.name} is a maximal test for {who}",
        why="a beginner's technique gives way before the strength does, so the number says little; a set of "
        "five says enough to load the next weeks",
        cure=Cure(
            f"write `{first.name}: work up to 5RM`, and the max from it in the squad file; or test with "
            "somebody who knows how beside each bar, and allow it here with that reason"
        ),
        seen=lines_of(Lift(work, load) for work, _ in tests for load in work.item.line_loads),
        day=first.day,
    )


def _is_maximal(work: Line) -> bool:
    groups = work.item.dose.groups if work.item.dose else ()
    return any(_rm(group) <= MAXIMAL.value for group in groups if group.kind in FOUND_ON_THE_DAY)


def _rm(group: SetGroup) -> float:
    """The repetition maximum that is worked up to; without end where repetitions are tested."""
    load = group.works[0].load
    return float("inf") if load is None or load.low is None else load.low


def _beginners(case: Case, work: Line) -> str:
    """Who of those on the line is a beginner, in words; empty when nobody is."""
    week = case.coverage.week
    if week.squad is None:
        return "beginners" if week.level == "beginner" else ""
    beginners = [athlete for athlete in work.athletes if (athlete.level or week.level) == "beginner"]
    return names(beginners) if beginners else ""


RULE = Rule(
    id="beginner-maximal-test",
    looks_at="week",
    summary="a beginner tests a max of one to three repetitions",
    why="strength work suits beginners and the young when technique comes first and it is well supervised; a "
    "maximal test is where that matters most",
    change="estimate the max from a set of five, or test under supervision and say so",
    source="common practice, no source; supervision: aap2020 (abstract)",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("aap2020", "reynolds2006"),
    options=(MAXIMAL,),
)
