"""Rack cards: the loads of the few people who share a bar, to be read across it."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby, pairwise
from math import ceil
from typing import Final

from setwright.floor.places import places
from setwright.floor.room import Floor, letter
from setwright.library.table import Library
from setwright.library.under_the_bar import is_under_the_bar
from setwright.model.people import Athlete
from setwright.model.plan import Group, Item, Session, Week
from setwright.model.room import Gym
from setwright.places import Place
from setwright.sheets import card_words, words
from setwright.sheets.blocks import Writer, copy_for, line_words, numbered
from setwright.sheets.clock_plan import Slot, clock_plan
from setwright.sheets.floors import Floors
from setwright.sheets.headings import group_heading
from setwright.sheets.home import at_home
from setwright.sheets.people import first_names, who_trains
from setwright.sheets.phrases import say
from setwright.sheets.sessions import session_day, session_title
from setwright.sheets.view import Line, LoadWords, Ramp

MOST_ON_A_CARD: Final = 4
"""People on one card (choice: what can be read across a bar)."""

ON_A_BAR: Final = "total with the bar"
"""The library's word for movements whose load is a bar with its plates."""

_LEADING: Final = re.compile(r"\d+(?:[.,]\d+)?")


@dataclass(frozen=True, slots=True)
class RackRow:
    """One set of everybody, or all work sets: what it is, in a few short lines, and what each lifts."""

    what: tuple[str, ...]
    loads: tuple[LoadWords, ...]
    work: bool = False


@dataclass(frozen=True, slots=True)
class RackCard:
    """One movement for the people of one rack. ``names`` holds None where a name is to be written.

    ``spots``: who spots each of them; None for a gym without spotters, and for a lift that needs none.
    ``hooks``: whether the bar waits on hooks.
    """

    title: str
    facts: tuple[str, ...]
    names: tuple[str | None, ...]
    rows: tuple[RackRow, ...]
    spots: tuple[str, ...] | None
    hooks: bool
    notes: tuple[str, ...]
    footer: str


@dataclass(frozen=True, slots=True)
class _Lift:
    """What one person lifts in one line; ``name`` None for whoever writes theirs.

    ``athlete``: as the squad has the name.
    """

    item: Item
    line: Line
    name: str | None
    athlete: str | None

    @property
    def figure(self) -> float | None:
        """The number that leads the load as it is printed; None where nothing is."""
        leading = _LEADING.match(self.line.load.large)
        return float(leading[0].replace(",", ".")) if leading else None


def rack_cards(week: Week, mark: str, table: Library, floors: Floors) -> tuple[RackCard, ...]:
    """A card for each lift with a bar and each few people, in the order of the plan.

    ``mark`` goes in the footer: version and print date.
    """
    writer = Writer(week, table)
    return tuple(
        card
        for session in week.sessions
        if not at_home(session)
        for card in _of_session(session, floors.get(session.place), writer, mark)
    )


def _of_session(session: Session, floor: Floor | None, writer: Writer, mark: str) -> Iterator[RackCard]:
    for slot in sorted(clock_plan(session, floor), key=_in_the_plan):
        lifts = sorted(_lifts(session, slot, writer), key=_where)
        for _, same in groupby(lifts, key=_where):
            yield from _cards(session, slot, tuple(same), floor, writer, mark)


def _in_the_plan(slot: Slot) -> int:
    return slot.number or 0


def _where(lift: _Lift) -> tuple[Place, str]:
    """What tells the lifts of a block apart: where the line stands, and what is done in its place."""
    return lift.item.place, lift.item.name


def _lifts(session: Session, slot: Slot, writer: Writer) -> Iterator[_Lift]:
    """Everybody's lifts with a bar in one block."""
    if slot.entry is None or slot.number is None:
        return
    group = slot.entry if isinstance(slot.entry, Group) else None
    athletes = who_trains(writer.week)
    for athlete, name in zip(athletes, _names(athletes), strict=True):
        copy = copy_for(athlete, session, writer)
        for number, item in numbered(slot.entry, slot.number, copy.athlete):
            if item.key and writer.library.movement(item.key)["load_write"] == ON_A_BAR:
                line = line_words(item, number, copy, group)
                yield _Lift(item, line, name, athlete.name if athlete else None)


def _names(athletes: Sequence[Athlete | None]) -> tuple[str | None, ...]:
    return first_names([athlete.name for athlete in athletes if athlete]) or (None,)


def _cards(  # noqa: PLR0917 - what a card is made of
    session: Session, slot: Slot, lifts: tuple[_Lift, ...], floor: Floor | None, writer: Writer, mark: str
) -> Iterator[RackCard]:
    week, gym = writer.week, writer.week.gym
    line = lifts[0].line
    under = is_under_the_bar(writer.library.movement(lifts[0].item.key or ""))
    loads = [lift.figure for lift in lifts if lift.figure is not None]
    lightest_first = len(loads) == len(lifts) and len(set(loads)) > 1
    if lightest_first:
        lifts = tuple(sorted(lifts, key=lambda lift: lift.figure or 0.0))
    for share in _shares(slot, lifts, floor, gym):
        yield RackCard(
            title=say("rack.title", number=share.rack, lift=line.name) if share.rack else line.name,
            facts=(
                session_day(week, session) or session_title(week, session),
                words.joined((line.number, share.when)),
            ),
            names=tuple(one.name for one in share.people),
            rows=tuple(_rows(share.people, writer.unit)),
            spots=_spots(share.people, gym) if under else None,
            hooks=under,
            notes=tuple(_notes(slot, lifts, writer, lightest_first=lightest_first, under=under)),
            footer=words.footer(week, mark, session.day),
        )


@dataclass(frozen=True, slots=True)
class _Share:
    """The people of one card, when they are at the bar, and the number of their rack where it has one."""

    people: tuple[_Lift, ...]
    when: str
    rack: int | None


def _shares(slot: Slot, lifts: tuple[_Lift, ...], floor: Floor | None, gym: Gym | None) -> Iterator[_Share]:
    """The groups of the floor, each at its time and rack; as many as share a bar where nobody is in one."""
    if floor is None or lifts[0].athlete is None:
        yield from (_Share(people, slot.times, None) for people in _shared(lifts, gym))
        return
    racks = places(floor, "rack")
    for stay in floor.stays:
        mine = tuple(lift for lift in lifts if lift.athlete in stay.everyone)
        if stay.block.number == slot.number and mine:
            group = letter(stay.group)
            when = say("station.group", who=group, times=slot.times_of(group))
            rack = racks.get((stay.group, stay.block.number))
            yield from (_Share(people, when, rack) for people in _shared(mine, gym))


def _shared(lifts: tuple[_Lift, ...], gym: Gym | None) -> list[tuple[_Lift, ...]]:
    """The people of each rack, as evenly as it goes; blank columns where there is no squad."""
    most = min((gym and gym.people_per_rack) or MOST_ON_A_CARD, MOST_ON_A_CARD)
    if lifts[0].name is None:
        return [lifts * most]
    cards = ceil(len(lifts) / most)
    short, longer = divmod(len(lifts), cards)
    ends = [(short + 1) * n if n <= longer else short * n + longer for n in range(cards + 1)]
    return [lifts[begin:end] for begin, end in pairwise(ends)]


def _rows(people: tuple[_Lift, ...], unit: str) -> Iterator[RackRow]:
    first = people[0].line
    for n, ramp in enumerate(first.ramps):
        loads = tuple(_bare(_of_ramp(one.line.ramps[n]), unit) for one in people)
        yield RackRow(tuple(ramp.text.split(": ")), loads)
    loads = tuple(_bare(one.line.load, unit) for one in people)
    yield RackRow(tuple(first.dose.split(", ")), loads, work=True)


def _of_ramp(ramp: Ramp) -> LoadWords:
    """The load of a warm-up set with its plates."""
    return LoadWords(ramp.at or ramp.load.large, ramp.load.small, ramp.load.blank)


def _bare(load: LoadWords, unit: str) -> LoadWords:
    """A load without the unit, which the card says once."""
    return LoadWords(load.large.removesuffix(f" {unit}") if unit else load.large, load.small, load.blank)


def _spots(people: tuple[_Lift, ...], gym: Gym | None) -> tuple[str, ...] | None:
    """The next in the order of the bar spots, the last but one the last; blank where it isn't known."""
    if gym and gym.spotter == "none":
        return None
    names = [one.name or "" for one in people]
    if gym is None or gym.spotter is None or len(names) == 1:
        return ("",) * len(names)
    return (*names[1:], names[-2])


def _notes(
    slot: Slot, lifts: tuple[_Lift, ...], writer: Writer, *, lightest_first: bool, under: bool
) -> Iterator[str]:
    line = lifts[0].line
    if isinstance(slot.entry, Group):
        numbers = [number for number, _ in numbered(slot.entry, slot.number or 0, None)]
        yield words.sentence(group_heading(slot.entry, list(dict.fromkeys(numbers))))
    yield from (words.sentence(remark) for remark in line.remarks)
    yield card_words.bar_loads(writer.unit, lightest_first=lightest_first)
    gym = writer.week.gym
    if under and gym and gym.spotter == "none":
        yield say("rack.safety_bars")
    yield " ".join(words.safety())
