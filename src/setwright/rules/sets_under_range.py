"""Rule sets-under-range: a muscle the week trains gets fewer hard sets than its range begins with."""

from collections.abc import Iterator

from setwright.coverage.muscles import MAIN_GROUPS, WHOLE, group_named, shares
from setwright.rules.aims import UNDER, Bound
from setwright.rules.ranges import asked_for, how_counted, sets_of
from setwright.rules.rule import Case, Cure, Fault, Option, Rule

BAD = """\
plan: Two sets of rows
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 4 x 8 at 2 RIR
      - bench pull: 2 x 8 at 2 RIR
  - day: Thursday
    work:
      - Romanian deadlift: 4 x 8 at 3 RIR
"""
GOOD = BAD.replace("2 x 8", "4 x 8")


def find(case: Case) -> Iterator[Fault]:
    """One fault for all muscles under their range, each judged by the high end of its sets."""
    short = too_few(case)
    if not short:
        return
    worst = max(short.values(), key=lambda bound: bound.level)
    listed = ", ".join(f"{g} {sets_of(case.coverage, g)} of {bound.sets:g}" for g, bound in short.items())
    yield Fault(
        place=case.coverage.week.place,
        where="the week",
        message=f"too few hard sets in the week: {listed}",
        why="the fewer weekly sets, the less a muscle gains; below the range little is left to build on",
        cure=Cure("; ".join(_more(case, g, bound) for g, bound in short.items())),
        seen=tuple(how_counted(case.coverage, g) for g in short),
        level=worst.level,
        source=worst.source,
        about="muscles under their range",
    )


def too_few(case: Case) -> dict[str, Bound]:
    """The muscle groups under their range, each with its lower bound.

    A session by itself and a week that is lighter on purpose are not judged.
    """
    if case.coverage.single_session or case.coverage.week.lighter:
        return {}
    return {g: bound for g, bound in _bounds(case).items() if sets_of(case.coverage, g).high < bound.sets}


def _bounds(case: Case) -> dict[str, Bound]:
    """The groups judged, each with its lower bound: the focus, else the main groups with a direct set."""
    row, week = case.aim.under, case.coverage.week
    if row is None:
        return {}
    focus = [group for word in week.focus if (group := group_named(word))]
    groups = focus or [group for group in MAIN_GROUPS if group in case.coverage.trained]
    asked = {
        g: Bound(low, row.level, "the plan's own sets a week") for g, (low, _) in asked_for(week).items()
    }
    return dict.fromkeys(groups, row) | asked


def _more(case: Case, group: str, bound: Bound) -> str:
    missing = bound.sets - sets_of(case.coverage, group).high
    direct = [work for work in case.coverage.works if shares(work).get(group) == WHOLE and work.hard.high]
    line = max(direct, key=lambda work: work.hard.high, default=None)
    where = f", for example on {line.item.name}, line {line.line}" if line else ""
    return f"{group}: {missing:g} more{where}"


RULE = Rule(
    id="sets-under-range",
    looks_at="week",
    summary="a muscle of the focus, or a main one the week trains, gets fewer hard sets than its range asks; "
    "a lighter week is not judged",
    why="a movement's own muscle gets a whole set, a helping one half a set; the range depends on what the "
    "week is for",
    change="add sets to a movement that is there, or a movement",
    source="published ranges, one a row of the aim table",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("iversen2021", "acsm2026", "bickel2011", "pelland2024", "schoen2017"),
    options=tuple(
        Option(f"least sets, {row}", bound.sets, "sets a muscle a week", bound.source)
        for row, bound in UNDER.items()
    ),
)
