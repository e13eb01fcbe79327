"""Home sheets: a few moves to do alone, in plain words, with days to tick and whom to ask."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from setwright.library.table import Library
from setwright.model.plan import Group, Item, Session, Week
from setwright.reading.dose import Dose, SetWork
from setwright.reading.habits import Habits
from setwright.reading.say import say_dose
from setwright.sheets import card_words, words
from setwright.sheets.blocks import Copy, Writer, copy_for, line_words, numbered, over_rounds
from setwright.sheets.figures import is_drawn
from setwright.sheets.headings import group_heading
from setwright.sheets.movement_words import Entry, kit, watch
from setwright.sheets.people import full_names, known_as, who_trains
from setwright.sheets.phrases import say
from setwright.sheets.sessions import after_words, room_title, warm_up_words

HOME: Final = frozenset({"home", "at home"})
"""What is written under ``place:`` of a session that is done at home."""


@dataclass(frozen=True, slots=True)
class HomeMove:
    """One move: its number and name, what to do in whole sentences, and its picture's key, if it has one.

    ``lines``: word and text, as on a station card.
    """

    number: str
    name: str
    sentences: str
    lines: tuple[tuple[str, str], ...]
    picture: str | None


@dataclass(frozen=True, slots=True)
class HomeBlock:
    """Moves that are done in turn, with how that is done, or one move."""

    moves: tuple[HomeMove, ...]
    heading: str | None = None


@dataclass(frozen=True, slots=True)
class HomeSheet:
    """One session at home for one athlete, or for whoever writes a name on it (``athlete`` None)."""

    athlete: str | None
    title: str
    plan: str
    before: tuple[tuple[str, str], ...]
    blocks: tuple[HomeBlock, ...]
    after: tuple[tuple[str, str], ...]
    footer: str


def at_home(session: Session) -> bool:
    """Whether the plan says that the session is done at home."""
    return (session.where or "").strip().casefold() in HOME


def home_sheets(week: Week, mark: str, table: Library) -> tuple[HomeSheet, ...]:
    """A sheet for each session at home and each athlete who has something to do in it.

    ``mark`` goes in the footer: version and print date.
    """
    writer = Writer(week, table)
    return tuple(
        sheet for session in week.sessions if at_home(session) for sheet in _of_session(session, writer, mark)
    )


def _of_session(session: Session, writer: Writer, mark: str) -> Iterator[HomeSheet]:
    week = writer.week
    athletes = who_trains(week)
    names = full_names([athlete.name for athlete in athletes if athlete]) or (None,)
    for athlete, name in zip(athletes, names, strict=True):
        known = known_as(week, athlete)
        work = tuple(_blocks(copy_for(athlete, session, writer)))
        warm_up = warm_up_words(session, known, writer)
        if work:
            yield HomeSheet(
                athlete=name,
                title=room_title(session, week),
                plan=week.title,
                before=(warm_up,) if warm_up else (),
                blocks=work,
                after=tuple(after_words(session)),
                footer=words.footer(week, mark, session.day),
            )


def _blocks(copy: Copy) -> Iterator[HomeBlock]:
    for place, entry in enumerate(copy.session.work, start=1):
        members = numbered(entry, place, copy.athlete)
        group = entry if isinstance(entry, Group) else None
        if members:
            moves = tuple(_move(item, number, group, copy) for number, item in members)
            yield HomeBlock(moves, _in_turn(group, [number for number, _ in members]) if group else None)


def _in_turn(group: Group, numbers: list[str]) -> str:
    return words.typeset(words.sentence(group_heading(group, list(dict.fromkeys(numbers)))))


def _move(item: Item, number: str, group: Group | None, copy: Copy) -> HomeMove:
    writer = copy.writer
    movement: Entry = writer.library.movement(item.key) if item.key else {}
    load = line_words(item, number, copy, group).load
    told = (
        (say("station.load"), f"{load.large} {load.small}".strip()),
        (say("station.do"), words.sentence(item.note) if item.note else ""),
        (say("station.watch"), watch(movement)),
        (say("station.kit"), kit(item, movement)),
        (say("station.stop"), words.sentence(say("station.when", what=item.stop)) if item.stop else ""),
    )
    return HomeMove(
        number=number,
        name=writer.name(item),
        sentences=" ".join(map(words.sentence, _sentences(item, group, writer.week))),
        lines=tuple(line for line in told if line[1]),
        picture=item.key if movement and is_drawn(movement) else None,
    )


def _sentences(item: Item, group: Group | None, week: Week) -> Iterator[str]:
    """How much, how hard, how fast and how long to rest; the load stands by itself."""
    dose = over_rounds(item, group)
    if dose is None or not dose.groups:
        return
    yield words.typeset(say_dose(_amounts_only(dose), Habits(unit=week.unit, sides=week.sides)))
    left = next((work.effort.rir for one in dose.groups for work in one.works if work.effort), None)
    if left is not None:
        yield card_words.more_would_go(*left)


def _amounts_only(dose: Dose) -> Dose:
    """A dose without its loads and efforts."""
    groups = tuple(
        one.model_copy(
            update={
                "works": tuple(map(_amount_only, one.works)),
                "last": _amount_only(one.last) if one.last else None,
            }
        )
        for one in dose.groups
    )
    return dose.model_copy(update={"groups": groups, "warm_up": None})


def _amount_only(work: SetWork) -> SetWork:
    return work.model_copy(update={"load": None, "effort": None})
