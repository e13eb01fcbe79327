"""Next week told: each line with what becomes of it for whom and why, and what is left to the coach."""

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Final

from setwright.model.plan import Session
from setwright.reading.done_typed import load_typed
from setwright.reading.words import plural
from setwright.records.changes import Change, Going
from setwright.records.next_week import TYPED, NextWeek
from setwright.report.wrapping import plain, wrapped

TAKEN_UP: Final = {
    "resume": "they come first in the week that comes, then the others in their order",
    "skip": "they are left out",
    "restart the week": "the week starts again, so nothing advances",
}
"""What the plan's rule for a missed day means for next week."""
MISSED_WEEK: Final = {
    "resume": "the same week comes again, and nothing advances",
    "skip": "the next week comes all the same, and nothing advances",
    "restart the week": "the week starts again, so nothing advances",
}
"""What it means for a week of which nothing was trained."""


def changes_text(found: NextWeek, going: Going) -> str:
    """Every line of the week, session by session, with a line end."""
    missed = going.done.missed
    blocks = [
        "\n".join([plain(title), *_session(list(some))])
        for title, some in groupby(found.changes, key=lambda change: change.session.title)
        if title not in missed
    ]
    if found.maxes:
        told = (f"{plain(one.movement)}, {plain(one.who)}: {one.said}" for one in found.maxes)
        blocks.append("\n".join(["Training maxes", *(wrapped(one, "  ", "    ") for one in told)]))
    blocks += [wrapped(one) for one in _of_the_week(found, going)]
    if found.by_hand:
        blocks.append("\n".join(["To do by hand:", *(wrapped(one, "  - ", "    ") for one in found.by_hand)]))
    return "\n\n".join(blocks) + "\n"


def _of_the_week(found: NextWeek, going: Going) -> Iterator[str]:
    """What was missed, and how much less is done in the week that comes."""
    done, rule = going.done, going.done.week.missed_day
    if not done.records:
        yield f"Nothing of the week was trained. `missed day: {rule}`: {MISSED_WEEK[rule]}."
    elif done.missed:
        told = f"No record is kept of {', '.join(done.missed)}: nothing advances there."
        days = f": {', '.join(_on_its_day(*pair) for pair in found.days)}" if found.days else ""
        yield f"{told} `missed day: {rule}`: {TAKEN_UP[rule]}{days}."
    if done.week.lighter and done.records:
        yield "It was a lighter week: loads go on from what they were lighter than."
    if going.coming.lighter:
        yield f"The week that comes is a lighter one: {going.coming.lighter.text}."


def _on_its_day(session: Session, slot: Session) -> str:
    called = session.name or f"{session.title}'s session"
    return plain(f"{called} on {slot.day}")


def _session(changes: Sequence[Change]) -> Iterator[str]:
    """Each line, in the order of the plan, with what becomes of it."""
    lines: dict[str, dict[str, list[str]]] = {}
    for change in changes:
        lines.setdefault(change.item.name, {}).setdefault(_told(change), []).append(change.who or "all")
    for name, told in lines.items():
        yield f"  {plain(name)}"
        yield from (wrapped(f"{', '.join(who)}: {what}", "    ", "      ") for what, who in told.items())


def _told(change: Change) -> str:
    if change.decision.stands:
        return change.decision.reason
    why = filter(None, (change.decision.reason, change.load.note))
    return f"{_what(change)} ({'; '.join(why)})"


def _what(change: Change) -> str:
    if change.more is not None:
        many = plural(abs(change.more.amount), change.more.unit.removesuffix("s"))
        return f"{'+' if change.more.amount > 0 else '-'} {many}"
    load, was = change.load.load, change.done.load
    if load is None or (change.decision.repeats and load.kind not in TYPED):
        return "as it is written" if change.written else "the same again"
    if change.decision.repeats or was is None or load == was:
        return f"{load_typed(load)} again"
    return f"{load_typed(load)}, was {load_typed(was)}"
