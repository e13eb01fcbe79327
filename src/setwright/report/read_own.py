"""Movements of a coach's own said back: what each is like, what was changed, and what came of it."""

from collections.abc import Iterable, Iterator

from setwright.library.table import Library
from setwright.model.own import Grip, OwnMovement
from setwright.own.entry import Entry, key_of
from setwright.report.phrases import joined


def own_lines(movements: Iterable[OwnMovement], table: Library) -> Iterator[str]:
    """One line a movement; ``table``: the library of the plan."""
    known = frozenset(table.keys())
    for own in movements:
        told = [
            *_written(own),
            *(_outcome(table.movement(key_of(own))) if key_of(own) in known else ("not read",)),
        ]
        yield f"{own.name}: {'; '.join(told)}"


def _written(own: OwnMovement) -> Iterator[str]:
    if own.like:
        yield f"like {own.like.text}"
    if own.path:
        yield f"its own path of {len(own.path)} postures"
    for word, value, unit in (
        ("bench", own.bench, "deg"),
        ("arch", own.arch, "deg"),
        ("pulley", own.pulley, "m above the floor"),
        ("hands raised", own.hands_raised, "cm"),
    ):
        if value is not None:
            yield f"{word} {value:g} {unit}"
    if own.grip:
        yield f"grip {_grip(own.grip)}"
    if own.loaded_by:
        yield f"loaded by {own.loaded_by}"
    if own.note:
        yield f"note: {own.note}"


def _grip(grip: Grip) -> str:
    return f"{grip.value:g} shoulder widths" if grip.in_widths else f"{grip.value:g} cm"


def _outcome(entry: Entry) -> Iterator[str]:
    if not entry["scored"]:
        trained = joined([*entry["prime"], *entry["assist"]], "and")
        yield f"counted for {trained or 'no muscle'}, not scored"
    elif entry["refused"]:
        yield f"not scored: {entry['refused'][:1].lower()}{entry['refused'][1:].rstrip('.')}"
    elif entry["serves"]:
        yield f"scored, serves the {joined(entry['serves'], 'and')} part"
    else:
        yield "scored, serves no part of the chest"
