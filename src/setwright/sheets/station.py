"""Station cards: one page for each station of a circuit, in words that need no explaining."""

from collections.abc import Iterator
from dataclasses import dataclass

from setwright.floor.room import Floor
from setwright.library.table import Library
from setwright.model.plan import Group, Item, Session, Week
from setwright.rules.means import Means, means
from setwright.sheets import words
from setwright.sheets.blocks import Copy, Writer, numbered
from setwright.sheets.clock_plan import Slot, clock_plan
from setwright.sheets.figures import is_drawn
from setwright.sheets.floors import Floors
from setwright.sheets.headings import pace
from setwright.sheets.home import at_home
from setwright.sheets.movement_words import Entry, kit, watch
from setwright.sheets.phrases import say
from setwright.sheets.sessions import room_title


@dataclass(frozen=True, slots=True)
class StationCard:
    """One station. ``who``: which groups come when, empty where that is not known.

    ``picture``: the movement's key where the model can draw it; ``lines``: word and text.
    ``stop``: when to stop at this station, said before the safety line.
    """

    number: int
    name: str
    timing: str
    where: str
    who: str
    picture: str | None
    lines: tuple[tuple[str, str], ...]
    stop: str
    footer: str


def station_cards(week: Week, mark: str, table: Library, floors: Floors) -> tuple[StationCard, ...]:
    """A card for each station of every circuit in the gym, numbered through the session.

    ``mark`` goes in the footer: version and print date.
    """
    writer, there = Writer(week, table), means(week, table)
    return tuple(
        card
        for session in week.sessions
        if not at_home(session)
        for card in _of_session(session, floors.get(session.place), writer, there, mark)
    )


def _of_session(
    session: Session, floor: Floor | None, writer: Writer, there: Means, mark: str
) -> Iterator[StationCard]:
    slots = {slot.number: slot for slot in clock_plan(session, floor)} if floor else {}
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
                where=words.joined(
                    (room_title(session, writer.week), say("station.on_the_sheet", label=label))
                ),
                picture=item.key if item.key and is_drawn(writer.library.movement(item.key)) else None,
                who=_who(slots.get(place)),
                lines=tuple(_lines(item, Copy(session, None, writer), there)),
                stop=" ".join(_stops(item, entry)),
                footer=words.footer(writer.week, mark, session.day),
            )


def _who(slot: Slot | None) -> str:
    """Who comes when, by the timetable of the floor; empty without one."""
    if slot is None:
        return ""
    turns = (
        say("station.group" if len(turn.groups) == 1 else "station.groups", who=turn.groups, times=turn.times)
        for turn in slot.turns
    )
    return words.joined(map(words.unbroken, turns)) or say("station.everybody", times=slot.times)


def _stops(*told: Item | Group) -> Iterator[str]:
    """When to stop, as the lines say it."""
    return (words.sentence(say("station.stop_when", what=one.stop)) for one in told if one.stop)


def _timing(item: Item, group: Group) -> str:
    """How long, how many, and how often: "40 s on, 20 s to change, 3 rounds"."""
    between = group.between_moves
    seconds = between.low if between and between.kind == "seconds" else None
    change = say("station.change", time=words.clock(seconds)) if seconds else None
    on = say("station.on", time=words.clock(group.each_s)) if group.each_s is not None else None
    return ", ".join(filter(None, (on, _once(item), change, pace(group))))


def _once(item: Item) -> str | None:
    """What is done each time, where the clock alone does not say it."""
    if item.dose is None or not item.dose.groups:
        return None
    first = item.dose.groups[0]
    amount = first.works[0].amount
    if amount.unit == "s" and amount.span.high is None:
        return None
    told = words.amount_in_full(amount)
    if first.sides and first.sides.kind == "each":
        return say("station.each_side", amount=told, side=first.sides.word)
    return told


def _lines(item: Item, copy: Copy, there: Means) -> Iterator[tuple[str, str]]:
    """What is known of a station; what is not has no line."""
    movement: Entry = copy.writer.library.movement(item.key) if item.key else {}
    worked = copy.loads(item, None)
    load = (worked.work() if worked else None) or copy.writer.blank(item)
    told = (
        (say("station.do"), words.sentence(item.note) if item.note else ""),
        (say("station.load"), f"{load.large} {load.small}".strip()),
        (say("station.watch"), watch(movement)),
        (say("station.easier"), _choices(movement.get("easier", ()), there)),
        (say("station.harder"), _choices(movement.get("harder", ()), there)),
        (say("station.kit"), kit(item, movement)),
    )
    return (line for line in told if line[1])


def _choices(keys: tuple[str, ...], there: Means) -> str:
    """The names of the first two of those movements that this gym can do."""
    names = {movement["key"]: str(movement["name"]) for movement in there.in_the_gym}
    there_are = [names[key] for key in keys if key in names]
    if len(there_are) > 1:
        return say("list.or", first=there_are[0], second=there_are[1])
    return "".join(there_are)
