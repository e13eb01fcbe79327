"""The half-minute summary as people read it on the screen: eight questions, each with its lines."""

from collections.abc import Iterator
from typing import Final

from setwright.glance import Answer, Glance
from setwright.report.wrapping import wrapped

FOR_THE_COACH: Final = "For the coach alone: it names athletes."
INDENT: Final = "   "


def summary_text(glance: Glance) -> str:
    """The whole summary in 80 columns, with a line end."""
    lines = [wrapped(f"{glance.title}, in half a minute. {FOR_THE_COACH}"), wrapped(glance.aim)]
    for number, answer in enumerate(glance.answers, 1):
        lines += _block(number, answer)
    return "\n".join(filter(None, (*lines, glance.note))) + "\n"


def _block(number: int, answer: Answer) -> Iterator[str]:
    yield f"{number}. {answer.question}"
    yield from (wrapped(line, INDENT, INDENT + "  ") for line in answer.lines)
