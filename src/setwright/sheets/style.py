"""How dates and numbers are written on the sheets that are just being made: the squad's own way."""

from collections.abc import Callable
from contextvars import ContextVar
from functools import wraps
from typing import Concatenate, Final, ParamSpec, TypeVar

from setwright.checked import Checked
from setwright.model.stationery import Stationery

Rest = ParamSpec("Rest")
Made = TypeVar("Made")

IN_FORCE: Final[ContextVar[Stationery]] = ContextVar("stationery", default=Stationery())  # noqa: B039 - frozen


def stationery_of(checked: Checked) -> Stationery:
    """The squad's, or the usual one."""
    squad = checked.week.squad if checked.week else None
    return squad.paper if squad else Stationery()


def in_its_style(
    make: Callable[Concatenate[Checked, Rest], Made],
) -> Callable[Concatenate[Checked, Rest], Made]:
    """A function of a checked plan that writes dates and numbers as the plan's squad does."""

    @wraps(make)
    def made(checked: Checked, /, *args: Rest.args, **kwargs: Rest.kwargs) -> Made:
        before = IN_FORCE.set(stationery_of(checked))
        try:
            return make(checked, *args, **kwargs)
        finally:
            IN_FORCE.reset(before)

    return made
