"""Rule big-jump-from-last-week: a muscle gets many more hard sets than in the last full week."""

import math
from collections.abc import Iterator, Mapping

from setwright.coverage import Sets
from setwright.rules.past import by_muscle
from setwright.rules.ranges import how_counted
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Rows, and many more of them
unit: kg
dose order: sets x reps
last week:
  bench pull: 6 sets
sessions:
  - day: Monday
    work:
      - bench pull: 5 x 8 at 2 RIR
  - day: Thursday
    work:
      - bench pull: 5 x 8 at 2 RIR
"""
GOOD = BAD.replace("5 x 8", "4 x 8")

MORE = Option("gain on the week before", 30, "%", f"{CHOICE}; no study of lifting gives one")
AT_LEAST = Option("gain on the week before, together with the percent", 4, "hard sets", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault for all muscles that gain too much: this week's low end against the high end before.

    Hard sets and all sets must both gain: sets that were there before and are only harder now are no jump.
    Muscles of which nothing is known from the week before are not judged, nor are lighter weeks.
    """
    before = case.past.sets
    if before is None:
        return
    now = by_muscle(case.coverage)
    jumps = [
        group
        for group in case.coverage.muscles
        if _jumps(before.hard, now.hard, group) and _jumps(before.every, now.every, group)
    ]
    if not jumps:
        return
    listed = ", ".join(f"{group} {now.hard[group]} after {before.hard[group]}" for group in jumps)
    steps = ", ".join(f"{group} {_step(before.hard[group]):g}" for group in jumps)
    yield Fault(
        place=case.coverage.week.place,
        where="the week",
        message=f"many more hard sets than {case.past.called}: {listed}",
        why="sets that come all at once are done sorer, and with less in them, than added in steps",
        cure=Cure(f"add them over several weeks, this week for example {steps}"),
        seen=tuple(how_counted(case.coverage, group) for group in jumps),
    )


def _jumps(before: Mapping[str, Sets], now: Mapping[str, Sets], group: str) -> bool:
    if group not in before:
        return False
    gained, was = now[group].low - before[group].high, before[group].high
    return gained >= AT_LEAST.value and gained > was * MORE.value / 100


def _step(was: Sets) -> float:
    """The most whole sets that are no jump."""
    return max(math.floor(was.high * (1 + MORE.value / 100)), math.ceil(was.high + AT_LEAST.value) - 1)


RULE = Rule(
    id="big-jump-from-last-week",
    looks_at="week",
    summary="a muscle gains over 30 % and at least 4 hard sets on the last full week: the week before in a "
    "plan of several weeks, the plan under `follows`, or what is written under `last week`",
    why="a question to the coach, nothing more. Bounds for the ratio of a week's load to that of the weeks "
    "before come from running and team sport, are disputed there and were never tested in lifting (acwr): "
    "they are not used, and nothing is said about what a jump leads to",
    change="add the sets over several weeks, or write why it is meant",
    source="choice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("acwr",),
    options=(MORE, AT_LEAST),
)
