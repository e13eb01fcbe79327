"""Rule sets-over-range: a muscle gets more hard sets in the week than its range ends with."""

from collections.abc import Iterator

from setwright.rules.aims import OVER, Bound
from setwright.rules.ranges import asked_for, how_counted, sets_of
from setwright.rules.rule import Case, Cure, Fault, Option, Rule

BAD = """\
plan: Rows all week
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - bench pull: 12 x 8 at 2 RIR
  - day: Thursday
    work:
      - pull-up: 12 x 6 at 2 RIR
      - push-up: 4 x 12 at 2 RIR
"""
GOOD = BAD.replace("12 x 6", "6 x 6")


def find(case: Case) -> Iterator[Fault]:
    """One fault for all muscles over their range, each judged by the low end of its sets."""
    over = {group: bound for group in case.coverage.muscles if (bound := _broken(case, group)) is not None}
    if not over:
        return
    worst = max(over.values(), key=lambda bound: bound.level)
    listed = ", ".join(f"{g} {sets_of(case.coverage, g)} (over {bound.sets:g})" for g, bound in over.items())
    yield Fault(
        place=case.coverage.week.place,
        where="the week",
        message=f"more hard sets in the week than the range: {listed}",
        why="gains flatten as sets are added, and the last sets cost time and recovery that other work needs",
        cure=Cure("; ".join(_fewer(case, g, bound) for g, bound in over.items())),
        seen=tuple(how_counted(case.coverage, g) for g in over),
        level=worst.level,
        source=worst.source,
        about="muscles over their range",
    )


def _broken(case: Case, group: str) -> Bound | None:
    """The highest bound that the group is over."""
    bounds = case.aim.over
    asked = asked_for(case.coverage.week).get(group)
    if asked and bounds:
        bounds = (Bound(asked[1], bounds[0].level, "the plan's own sets a week"),)
    return next((bound for bound in reversed(bounds) if sets_of(case.coverage, group).low > bound.sets), None)


def _fewer(case: Case, group: str, bound: Bound) -> str:
    surplus = sets_of(case.coverage, group).low - bound.sets
    return f"{group}: {surplus:g} fewer, lowest priority first"


RULE = Rule(
    id="sets-over-range",
    looks_at="week",
    summary="a muscle gets more hard sets in the week than its range ends with",
    why="a movement's own muscle gets a whole set, a helping one half a set; the range depends on what the "
    "week is for",
    change="leave out the sets that matter least",
    source="published ranges, one a row of the aim table",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("bazvalle2022", "pelland2024", "schoen2017"),
    options=tuple(
        Option(f"most sets, {row}, {bound.level.name}", bound.sets, "sets a muscle a week", bound.source)
        for row, bounds in OVER.items()
        for bound in bounds
    ),
)
