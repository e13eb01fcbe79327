"""Rule no-max-for-percent: a percent of a max that is not on file."""

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from setwright.findings import Seen
from setwright.loads.asked_for import NoNumber
from setwright.loads.lines import Lift
from setwright.model.people import Athlete
from setwright.rules.lifts import asked_of_everybody, lines_of, names
from setwright.rules.rule import Case, Cure, Fault, Rule

BAD = """\
plan: Squat by percent
unit: kg
dose order: sets x reps
starts: 2027-10-04
squad:
  athletes:
    - name: Ann
      maxes:
        barbell back squat: 60 kg tested 2027-09-06
    - name: Cy
      maxes:
        barbell back squat: none yet
sessions:
  - day: Monday
    work:
      - barbell back squat: 4 x 6 at 72.5%
"""
GOOD = BAD.replace("none yet", "from 30 kg x 8 on 2027-09-06")


class _Missing(NamedTuple):
    """A lift whose max an athlete lacks, and why there is none."""

    lift: Lift
    athlete: Athlete
    why: str


def find(case: Case) -> Iterator[Fault]:
    """One fault for all movements whose max is missing for the same athletes."""
    missing: dict[str, list[_Missing]] = {}
    for lift, athlete, asked in asked_of_everybody(case):
        if isinstance(asked, NoNumber) and asked.movement and asked.max and not asked.max.unread:
            missing.setdefault(asked.movement, []).append(_Missing(lift, athlete, asked.why))
    for movements in _for_the_same(missing):
        yield _fault(case, movements, [one for name in movements for one in missing[name]])


def _for_the_same(missing: dict[str, list[_Missing]]) -> Iterable[list[str]]:
    """Movements together whose max the same athletes lack."""
    together: dict[frozenset[str], list[str]] = {}
    for movement, lacking in missing.items():
        together.setdefault(frozenset(one.athlete.name for one in lacking), []).append(movement)
    return together.values()


def _fault(case: Case, movements: list[str], missing: list[_Missing]) -> Fault:
    first, athletes = missing[0].lift, [one.athlete for one in missing]
    reasons = dict.fromkeys(one.why for one in missing)
    told = (Seen(f"{why} ({names(one.athlete for one in missing if one.why == why)})") for why in reasons)
    lines, lifted = lines_of(one.lift for one in missing), " and ".join(movements)
    return Fault(
        place=first.work.item.place,
        where=first.work.session.title,
        message=f"{lifted}: no max for {names(athletes)} to take a percent of",
        why=f"none is made up, so no load can be printed on {_number(len(lines))}",
        cure=Cure(_change(case, movements[0], first, athletes)),
        seen=(*told, *lines),
        day=first.work.day,
        to_others=f"{lifted}: an athlete has no max to take a percent of",
    )


def _number(lines: int) -> str:
    return "this line" if lines == 1 else f"{lines} lines"


def _change(case: Case, movement: str, first: Lift, athletes: list[Athlete]) -> str:
    """What to put on file, or the line that starts light."""
    week = case.coverage.week
    day = week.starts or "year-month-day"
    if (first.load.of or week.max_kind) == "training max":
        file = "put `training max 90%`, or your own percent or load, behind the max in the squad file"
    else:
        file = "put the max, or a set that it is estimated from, in the squad file: "
        file += f"`{movement}: from 30 {week.unit or 'kg'} x 8 on {day}`"
    line = f"`- {first.work.name}: {_amount(first)} at 4 RIR`"
    who = ", ".join(dict.fromkeys(athlete.name for athlete in athletes))
    return f"{file}; or start light with {line} and `for: [{who}]`, and put `not for: [{who}]` on this one"


def _amount(lift: Lift) -> str:
    """Sets and repetitions of a lift, "3 x 8" where it is not that simple."""
    if (
        lift.group is None
        or lift.sets is None
        or lift.group.kind != "straight"
        or lift.sets.amount.unit != "reps"
    ):
        return "3 x 8"
    return f"{lift.group.sets.low:g} x {lift.sets.amount.span.low or 8:g}"


RULE = Rule(
    id="no-max-for-percent",
    looks_at="item",
    summary="a load is a percent of a max that an athlete does not have on file",
    why="nothing is made up for a missing max: no load can be worked out, and none is printed",
    change="put the max in the squad file, or write a line with an effort for those who have none",
    source="the plan language (docs/plan-language.md)",
    bad=BAD,
    good=GOOD,
    find=find,
)
