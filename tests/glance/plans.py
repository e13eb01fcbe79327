"""The summary of short plans, asked question by question."""

from setwright.checked import Checked
from setwright.glance import glance
from tests.rules.plans import checked, example

ORDER = ("fits", "loading", "hurt", "balance", "dose", "progress", "odd", "changed")


def answers(one: Checked) -> dict[str, tuple[str, ...]]:
    """The lines of each answer by a short name of its question."""
    told = glance(one).answers
    return {name: answer.lines for name, answer in zip(ORDER, told, strict=True)}


def of(plan: str, name: str, week: int | None = None) -> tuple[str, ...]:
    """The lines of one answer about a plan given as text, of one week where it has several."""
    one = checked(plan)
    return answers(one if week is None else one.only(week))[name]


def of_example(file: str, name: str, week: int = 1) -> tuple[str, ...]:
    """The lines of one answer about a plan of the example crew."""
    return answers(example(file).only(week))[name]
