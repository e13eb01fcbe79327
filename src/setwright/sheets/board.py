"""The wall board: the clock plan of a session for the whole room. Nothing on it is about one person."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Final

from setwright.floor.room import Floor
from setwright.library.table import Library
from setwright.model.plan import Group, Item, Session, Week
from setwright.model.theirs import Known
from setwright.sheets import card_words, words
from setwright.sheets.blocks import Writer, numbered
from setwright.sheets.brief import brief
from setwright.sheets.clock_plan import Slot, clock_plan, finish
from setwright.sheets.floor_picture import UNDER, Chart, chart_of, floor_svg
from setwright.sheets.floors import Floors
from setwright.sheets.home import at_home
from setwright.sheets.phrases import say
from setwright.sheets.sessions import room_title

LETTERS_MM: Final[Mapping[str, float]] = {"a4": 12.2, "letter": 12.2, "a3": 20.0}
"""Height of the capitals of times and blocks by paper (choice: a usual session fills one page)."""

GROUP_LETTERS_MM: Final[Mapping[str, float]] = {"a4": 12.2, "letter": 12.2, "a3": 14.0}
"""Height of the capitals of the group lines (choice: what is read by going near)."""

CAPITAL_OF_TEXT: Final = 0.688
"""Height of a capital as a share of its type: Liberation Sans, 1409 of 2048 units (the font's own table)."""

CAPITAL_OF_FIGURES: Final = 0.729
"""The same for the figures: DejaVu Sans, 1493 of 2048 units."""

PICTURE_MM: Final[Mapping[str, tuple[float, float, float]]] = {
    "a4": (269.0, 148.0, 23.5),
    "letter": (251.4, 150.0, 23.5),
    "a3": (392.0, 225.0, 27.0),
}
"""Of the picture of the floor by paper: its width, the most height, and the usual height of a group's row.

Choice: width between the margins; a page below the head; capitals of 12 mm and more in six rows.
"""

ALONE: Final = 22
"""Letters of a movement that stands alone in a block from which dispensable words go (choice: one line)."""

IN_TURN: Final = 12
"""The same for a movement of a group (choice: two of them in one line, if they can)."""

MOST_NAMED: Final = 3
"""Movements of a group that are named; more are counted (choice: two lines)."""


@dataclass(frozen=True, slots=True)
class BoardRow:
    """One block: when it begins and what it is.

    ``groups``: which are at it when, where they are not all together; who does what, where not all do it.
    """

    time: str
    block: str
    groups: str


@dataclass(frozen=True, slots=True)
class Board:
    """One session for the wall. ``floor``: its timetable, where groups are not all at one block."""

    title: str
    ends: str
    on_the_clock: bool
    rows: tuple[BoardRow, ...]
    floor: Chart | None
    notes: tuple[tuple[str, str], ...]
    footer: str


def boards(week: Week, mark: str, table: Library, floors: Floors) -> tuple[Board, ...]:
    """A board for each session in the gym; ``mark`` goes in the footer: version and print date."""
    writer = Writer(week, table)
    return tuple(
        _board(session, floors.get(session.place), writer, mark)
        for session in week.sessions
        if not at_home(session)
    )


def picture(chart: Chart, paper: str) -> str:
    """The floor for the foot of a board, as large as the paper takes."""
    width, most, row = PICTURE_MM[paper]
    return floor_svg(chart, width, min(row, most / (len(chart.groups) + UNDER)))


def shared_groups(week: Week) -> tuple[str, ...]:
    """The groups of the squad that say nothing about one person: two people or more, and no one's name."""
    squad = week.squad
    if squad is None:
        return ()
    names = {athlete.name.casefold() for athlete in squad.athletes}
    return tuple(
        group for group, members in squad.groups.items() if len(members) > 1 and group.casefold() not in names
    )


def _board(session: Session, floor: Floor | None, writer: Writer, mark: str) -> Board:
    interrupted = session.if_interrupted or writer.week.if_interrupted
    notes = [(say("session.interrupted"), words.sentence(interrupted))] if interrupted else []
    if floor is None:
        notes.append((say("board.groups"), _unknown(writer.week)))
    slots, ends = clock_plan(session, floor), finish(session, floor)
    in_turn = any(slot.turns for slot in slots)
    return Board(
        title=room_title(session, writer.week),
        ends=card_words.ends(ends) if ends else "",
        on_the_clock=session.start is not None,
        rows=tuple(_row(slot, writer, in_turn=in_turn) for slot in slots),
        floor=chart_of(floor) if floor and in_turn else None,
        notes=(words.safety(), *notes),
        footer=words.footer(writer.week, mark, session.day),
    )


def _unknown(week: Week) -> str:
    """Why the board has no groups."""
    return say("board.no_gym") if week.gym is None else say("board.nobody")


def _row(slot: Slot, writer: Writer, *, in_turn: bool) -> BoardRow:
    """A block; with its number and the groups' times where the groups are not all together."""
    if slot.entry is None or slot.number is None:
        return BoardRow(slot.begins, say("board.warm_up"), "")
    number = f"{slot.number} " if in_turn else ""
    groups = shared_groups(writer.week)
    everyone = _everyone(slot.entry, groups)
    if everyone is None:
        return BoardRow(slot.begins, f"{number}{say('board.own_sheet')}", "")
    turns = (words.unbroken(say("board.turn", begins=turn.begins, groups=turn.groups)) for turn in slot.turns)
    return BoardRow(
        slot.begins,
        f"{number}{_block(everyone, writer)}",
        words.joined((*turns, *_by_group(slot, everyone, groups, writer))),
    )


def _everyone(entry: Item | Group, groups: tuple[str, ...]) -> Item | Group | None:
    """What hangs on the wall of an entry: without the lines that are only for people by name."""
    if entry.for_ and not set(entry.for_) & set(groups):
        return None
    if isinstance(entry, Item):
        return entry
    items = tuple(item for item in entry.items if not item.for_ or set(item.for_) & set(groups))
    return entry.model_copy(update={"items": items}) if items else None


def _block(entry: Item | Group, writer: Writer) -> str:
    """A block in a few words: "bench press + crossover", "circuit of 4"."""
    if isinstance(entry, Item):
        return brief(writer.name(entry), ALONE)
    if entry.kind == "circuit" or len(entry.items) > MOST_NAMED:
        return say(f"board.{entry.kind}", count=len(entry.items))
    return " + ".join(_brief_names(entry.items, writer))


def _brief_names(items: tuple[Item, ...], writer: Writer) -> list[str]:
    most = ALONE if len(items) == 1 else IN_TURN
    return [brief(writer.name(item), most) for item in items]


def _by_group(slot: Slot, everyone: Item | Group, groups: tuple[str, ...], writer: Writer) -> Iterator[str]:
    """What groups do where not all of them do the whole block; at which station each starts a circuit."""
    done = {group: _done_by(slot, frozenset({group})) for group in groups}
    written = everyone.items if isinstance(everyone, Group) else (everyone,)
    taking_part = [group for group in groups if done[group]]
    if any(done[group] != written for group in groups):
        for group in taking_part:
            own = " + ".join(_brief_names(done[group], writer))
            yield group if done[group] == written else f"{group}: {own}"
    elif isinstance(everyone, Group) and everyone.kind == "circuit" and taking_part:
        stations, teams = len(written), len(taking_part)
        starts = (f"{group} {n * stations // teams + 1}" for n, group in enumerate(taking_part))
        yield say("board.starts", where=", ".join(starts))


def _done_by(slot: Slot, group: Known) -> tuple[Item, ...]:
    assert slot.entry is not None
    return tuple(item for _, item in numbered(slot.entry, slot.number or 0, group))
