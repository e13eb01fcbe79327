"""The weeks before one: of the same block, or of the plans that it follows, back to the first."""

from collections.abc import Iterator
from typing import NamedTuple

from setwright.files import CannotRun
from setwright.model.plan import Week
from setwright.reading.dose import Load
from setwright.reading.weeks import file_and_week
from setwright.records.keeping import Plan, plan_of
from setwright.records.line_keys import LineKey
from setwright.records.lines_done import what_came
from setwright.records.week_done import week_done


class WeekOfPlan(NamedTuple):
    """A week of a plan, by its number."""

    plan: Plan
    number: int

    @property
    def week(self) -> Week:
        """The week itself."""
        return self.plan.weeks[self.number - 1]

    @property
    def is_first(self) -> bool:
        """Whether it is the first of its block, or follows nothing."""
        week = self.week
        if week.of > 1:
            return self.number == 1
        return week.block.week == 1 if week.block else week.follows is None


def back_from(here: WeekOfPlan) -> Iterator[WeekOfPlan]:
    """A week and those before it, as far as the files are there, to the first of its block or of all."""
    seen = set()
    while True:
        yield here
        seen.add((here.plan.file, here.number))
        before = None if here.is_first else _before(here)
        if before is None or (before.plan.file, before.number) in seen:
            return
        here = before


def first_load(key: LineKey, here: WeekOfPlan) -> Load | None:
    """The load of a line in the first week: what was lifted, else what is written; None without one."""
    *_, first = back_from(here)
    came = what_came(week_done(first.plan, first.week)).get(key)
    return came.load if came else None


def _before(here: WeekOfPlan) -> WeekOfPlan | None:
    """The week before, of the same file or of the one that it follows; None where it can't be read."""
    if here.number > 1:
        return here._replace(number=here.number - 1)
    file, number = file_and_week(here.week.follows or "")
    try:
        plan = plan_of(here.plan.file.parent / file)
    except CannotRun:
        return None
    number = number or len(plan.weeks)
    return WeekOfPlan(plan, number) if number <= len(plan.weeks) else None
