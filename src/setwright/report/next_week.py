"""Next week told: each line with what becomes of it for whom and why, and what is left to the coach."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby
from typing import Final

from setwright.reading.done_typed import load_typed
from setwright.reading.words import plural
from setwright.records.next_week import Change
from setwright.report.wrapping import plain, wrapped

TAKEN_UP: Final = {
    "resume": "take them up first, then go on in the order of the week",
    "skip": "they are left out",
    "restart the week": "the week starts again, so nothing advances",
}
"""What the plan's rule for a missed day means for next week."""


def changes_text(
    changes: Sequence[Change], by_hand: Sequence[str], missed: Sequence[str], missed_day: str
) -> str:
    """Every line of the week, session by session, with a line end."""
    blocks = [
        "\n".join([plain(title), *_session(list(some))])
        for title, some in groupby(changes, key=lambda change: change.session.title)
        if title not in missed
    ]
    if missed:
        rule = f"`missed day: {missed_day}`: {TAKEN_UP[missed_day]}"
        blocks.append(wrapped(f"No record is kept of {', '.join(missed)}: nothing advances there. {rule}."))
    if by_hand:
        blocks.append("\n".join(["To do by hand:", *(wrapped(one, "  - ", "    ") for one in by_hand)]))
    return "\n\n".join(blocks) + "\n"


def _session(changes: Sequence[Change]) -> Iterator[str]:
    """Each line, in the order of the plan, with what becomes of it."""
    lines: dict[str, dict[str, list[str]]] = {}
    for change in changes:
        lines.setdefault(change.item.name, {}).setdefault(_told(change), []).append(change.who or "all")
    for name, told in lines.items():
        yield f"  {plain(name)}"
        yield from (wrapped(f"{', '.join(who)}: {what}", "    ", "      ") for what, who in told.items())


def _told(change: Change) -> str:
    return f"{_what(change)} ({'; '.join(_why(change))})"


def _what(change: Change) -> str:
    if change.more is not None:
        many = plural(abs(change.more.amount), change.more.unit.removesuffix("s"))
        return f"{'+' if change.more.amount > 0 else '-'} {many}"
    if change.new is None:
        return "as it is written" if change.written else "the same again"
    was = change.done.load
    if change.decision.repeats or was is None or change.load.load == was:
        return f"{load_typed(change.new)} again"
    return f"{load_typed(change.new)}, was {load_typed(was)}"


def _why(change: Change) -> Iterable[str]:
    yield change.decision.reason
    if change.load.note:
        yield change.load.note
