"""The loads that a week asks for, with what this gym can put on for each of them."""

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING

from setwright.coverage import Work
from setwright.rules.rule import Case

if TYPE_CHECKING:
    from setwright.loads.typed import Carried


def carried(case: Case) -> Iterator[tuple[Work, "tuple[Carried, ...]"]]:
    """Every line with the loads that it asks for; nothing without a gym file."""
    week = case.coverage.week
    if week.gym is None:
        return
    from setwright.loads.typed import carried_by  # noqa: PLC0415 - only a plan with a gym needs it

    rounding = week.squad.rounding if week.squad else "nearest"
    for work in case.coverage.works:
        yield work, carried_by(week.gym, work.item, work.group, work.movement, rounding)


def listed(loads: "Iterable[Carried]") -> str:
    """The loads as they were asked for, side by side."""
    return ", ".join(one.asked.words for one in loads)
