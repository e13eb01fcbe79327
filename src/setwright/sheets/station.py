"""Station cards: one page for each station of a circuit, in words that need no explaining."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from setwright.library.table import Library
from setwright.model.plan import Group, Item, Session, Week
from setwright.reading.dose import Amount
from setwright.rules.means import Means, means
from setwright.sheets import card_words, words
from setwright.sheets.blocks import Copy, Writer, numbered
from setwright.sheets.figures import is_drawn
from setwright.sheets.headings import pace
from setwright.sheets.home import at_home
from setwright.sheets.movement_words import Entry, kit, watch
from setwright.sheets.sessions import room_title

MOST_CHOICES: Final = 2
"""Easier or harder movements on a card (choice: what is taken in at a glance)."""


@dataclass(frozen=True, slots=True)
class StationCard:
    """One station. ``picture``: the movement's key where the model can draw it; ``lines``: word and text.

    ``stop``: when to stop at this station, said before the safety line.
    """

    number: int
    name: str
    timing: str
    where: str
    picture: str | None
    lines: tuple[tuple[str, str], ...]
    stop: str
    footer: str


def station_cards(week: Week, mark: str, table: Library) -> tuple[StationCard, ...]:
    """A card for each station of every circuit in the gym, numbered through the session.

    ``mark`` goes in the footer: version and print date.
    """
    writer, there = Writer(week, table), means(week, table)
    return tuple(
        card
        for session in week.sessions
        if not at_home(session)
        for card in _of_session(session, writer, there, mark)
    )


def _of_session(session: Session, writer: Writer, there: Means, mark: str) -> Iterator[StationCard]:
    number = 0
    for place, entry in enumerate(session.work, start=1):
        if not isinstance(entry, Group) or entry.kind != "circuit":
            continue
        for label, item in numbered(entry, place, None):
            number += 1
            yield StationCard(
                number=number,
                name=writer.name(item),
                timing=words.typeset(_timing(item, entry)),
                where=words.joined((room_title(session, writer.week), card_words.on_the_sheet(label))),
                picture=item.key if item.key and is_drawn(writer.library.movement(item.key)) else None,
                lines=tuple(_lines(item, Copy(session, None, writer), there)),
                stop=" ".join(_stops(item, entry)),
                footer=words.footer(writer.week, mark, session.day),
            )


def _stops(*told: Item | Group) -> Iterator[str]:
    """When to stop, as the lines say it."""
    return (words.sentence(card_words.stop_when(one.stop)) for one in told if one.stop)


def _timing(item: Item, group: Group) -> str:
    """How long, how many, and how often: "40 s on, 20 s to change, 3 rounds"."""
    between = group.between_moves
    change = card_words.change(between.low) if between and between.kind == "seconds" and between.low else None
    on = card_words.on(group.each_s) if group.each_s is not None else None
    return ", ".join(filter(None, (on, _once(item), change, pace(group))))


def _once(item: Item) -> str | None:
    """What is done each time, where the clock alone does not say it."""
    if item.dose is None or not item.dose.groups:
        return None
    first = item.dose.groups[0]
    amount = first.works[0].amount
    if amount.unit == "s" and amount.span.high is None:
        return None
    each = f" each {first.sides.word}" if first.sides and first.sides.kind == "each" else ""
    return f"{words.amount(amount)}{_unit(amount)}{each}"


def _unit(amount: Amount) -> str:
    return "" if amount.unit in ("s", "m") or amount.span.high is None else f" {amount.unit}"


def _lines(item: Item, copy: Copy, there: Means) -> Iterator[tuple[str, str]]:
    """What is known of a station; what is not has no line."""
    movement: Entry = copy.writer.library.movement(item.key) if item.key else {}
    worked = copy.loads(item, None)
    load = (worked.work() if worked else None) or copy.writer.blank(item)
    told = (
        (card_words.DO, words.sentence(item.note) if item.note else ""),
        (card_words.LOAD, f"{load.large} {load.small}".strip()),
        (card_words.WATCH, watch(movement)),
        (card_words.EASIER, _choices(movement.get("easier", ()), there)),
        (card_words.HARDER, _choices(movement.get("harder", ()), there)),
        (card_words.KIT, kit(item, movement)),
    )
    return (line for line in told if line[1])


def _choices(keys: tuple[str, ...], there: Means) -> str:
    """The names of those movements that this gym can do."""
    names = {movement["key"]: str(movement["name"]) for movement in there.in_the_gym}
    return " or ".join([names[key] for key in keys if key in names][:MOST_CHOICES])
