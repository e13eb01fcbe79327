"""The work of a session as blocks that are never parted: numbers, doses, loads, boxes, headings, remarks."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from setwright.library.table import Library
from setwright.loads.lines import Line as Lifted
from setwright.model.people import Athlete
from setwright.model.plan import AthleteLoad, Group, Item, Session, Week
from setwright.model.theirs import Known, lines_of, meant, own_load, with_own_load
from setwright.reading.dose import Amount, Dose, Load, SetGroup, SetWork, Span
from setwright.reading.short import dose_short
from setwright.sheets.boxes import boxes, ramps
from setwright.sheets.headings import group_heading
from setwright.sheets.loads import load_words
from setwright.sheets.people import known_as
from setwright.sheets.phrases import say
from setwright.sheets.view import Block, Box, Line, LoadWords
from setwright.sheets.words import letter, rest, tempo, typeset
from setwright.sheets.worked import Worked

_BLANKS: Final = {
    "external": None,
    "stack": "load.stack",
    "band": "load.one_band",
    "assisted": "load.assisted",
}
"""The phrase after the blank for a load that the plan leaves open, by the library's kinds of load.

External loads take the plan's unit; other kinds get no blank."""


_BARE: Final = re.compile(r"\d+(?:–\d+)?")
"""Repetitions and nothing else."""


@dataclass(frozen=True, slots=True)
class Writer:
    """What the blocks of a plan are written with: its units and habits, and the library."""

    week: Week
    library: Library

    @property
    def unit(self) -> str:
        """The plan's unit of load, or nothing."""
        return self.week.unit or ""

    def name(self, item: Item) -> str:
        """The library's name of a movement, else the name as typed."""
        return self._of(item, "name") or item.name

    def load(self, load: Load) -> LoadWords:
        """One load in words."""
        return load_words(load, self.unit, self.week.max_kind)

    def blank(self, item: Item) -> LoadWords:
        """Room for a load that the plan leaves open, where the movement takes one."""
        kind = self._of(item, "load_kind") or "external"
        if kind not in _BLANKS:
            return LoadWords()
        after = _BLANKS[kind]
        own = say("load.each", unit=self.unit).strip() if self._each_hand(item) else self.unit
        return LoadWords(blank=say(after) if after else own)

    def _each_hand(self, item: Item) -> bool:
        return self._of(item, "load_write").startswith("each")

    def _of(self, item: Item, field: str) -> str:
        return str(self.library.movement(item.key)[field]) if item.key else ""


@dataclass(frozen=True, slots=True)
class Copy:
    """A session as it is printed for one person, or for everybody.

    ``athlete``: a person's name with the groups they belong to, None for everybody. ``lifter``: whose loads
    are worked out; without one those that are the same for all.
    """

    session: Session
    athlete: Known
    writer: Writer
    lifter: Athlete | None = None

    def loads(self, item: Item, group: Group | None) -> Worked | None:
        """The loads of a line, worked out as far as they can be; None for a movement nobody knows."""
        if item.key is None:
            return None
        movement = self.writer.library.movement(item.key)
        lifters = (self.lifter,) if self.lifter else ()
        line = Lifted(0, self.session, item, group, movement, lifters)
        return Worked(line, self.writer.week, self.writer.library)


def copy_for(athlete: Athlete | None, session: Session, writer: Writer) -> Copy:
    """The copy of a session for an athlete; their loads are their own once a max or a mass is on file."""
    lifter = athlete if athlete and (athlete.maxes or athlete.body_mass) else None
    return Copy(session, known_as(writer.week, athlete), writer, lifter)


def blocks(copy: Copy) -> tuple[Block, ...]:
    """The blocks of a session, numbered as in the plan, so that the whole room counts alike.

    Lines that somebody does in place of one share its number. What is not for the person is left out.
    """
    return tuple(_written(copy))


def numbered(entry: Item | Group, number: int, athlete: Known) -> list[tuple[str, Item]]:
    """The lines of one entry as this person does it, with their numbers: "2", or "2a", "2b" in a group."""
    if not meant(entry, athlete):
        return []
    if isinstance(entry, Item):
        return [(str(number), line) for line in lines_of(entry, athlete)]
    return [
        (f"{number}{letter(place)}", line)
        for place, item in enumerate(entry.items)
        if meant(item, athlete)
        for line in lines_of(item, athlete)
    ]


def _written(copy: Copy) -> Iterator[Block]:
    for number, entry in enumerate(copy.session.work, start=1):
        members = numbered(entry, number, copy.athlete)
        if isinstance(entry, Group) and members:
            yield _group_block(entry, members, copy)
        elif members:
            yield Block(tuple(line_words(item, label, copy) for label, item in members))


def _group_block(group: Group, members: list[tuple[str, Item]], copy: Copy) -> Block:
    load = copy.writer.load(group.load) if group.load else None
    heading = group_heading(group, list(dict.fromkeys(number for number, _ in members)))
    if load:
        heading += f"; {load.large} {load.small}".rstrip()
    return Block(
        lines=tuple(line_words(item, number, copy, group) for number, item in members),
        heading=typeset(heading),
        remarks=_remarks(group, copy.athlete),
        next_time=group.next.text if group.next else None,
        rounds_box=_open_ended(group),
    )


def line_words(item: Item, number: str, copy: Copy, group: Group | None = None) -> Line:
    """One line as it is printed for the person of a copy."""
    writer, own = copy.writer, own_load(item, copy.athlete)
    worked = copy.loads(with_own_load(item, copy.athlete), group)
    blank = writer.blank(item)
    warm_up = item.warm_up or (item.dose.warm_up if item.dose else None)
    return Line(
        number=number,
        name=writer.name(item),
        dose=dose_text(item, group),
        remarks=(*(worked.drops() if worked else ()), *_timing(item), *_remarks(item, copy.athlete)),
        load=_load(worked, own, group, blank),
        boxes=_boxes(item, group),
        ramps=ramps(warm_up, worked.warm_up(blank) if worked else ()),
        next_time=item.next.text if item.next else None,
    )


def _load(worked: Worked | None, own: AthleteLoad | None, group: Group | None, blank: LoadWords) -> LoadWords:
    """What is lifted, or room for it; nothing where the group says it for all."""
    if own is not None and not own.loads:
        return LoadWords(say("load.no_load"))
    if group is not None and group.load is not None and own is None:
        return LoadWords()
    return (worked.work() if worked else None) or blank


def dose_text(item: Item, group: Group | None) -> str:
    """The dose of a line as it is set on paper: "4 × 6–8, 2 left"; in rounds against the clock, one round."""
    dose = over_rounds(item, group)
    if dose is None or not dose.groups:
        return ""
    text = typeset(dose_short(dose))
    return _each_round(text) if group and _open_ended(group) else text


def _each_round(dose: str) -> str:
    """A dose of one round, of which nobody knows how many there will be: "10 reps"."""
    told = dose.removeprefix("1 × ")
    return say("line.reps", count=told) if _BARE.fullmatch(told) else told


def over_rounds(item: Item, group: Group | None) -> Dose | None:
    """The dose of a member as it is done over all rounds of its group; any other dose as written."""
    if group is None or not (group.rounds or group.each_s):
        return item.dose
    rounds = Span(low=group.rounds or 1, high=group.rounds or 1)
    written = item.dose.groups[0] if item.dose and item.dose.groups else None
    each = Amount(unit="s", span=Span(low=group.each_s or 0, high=group.each_s or 0))
    if written is None:
        done = SetGroup(kind="straight", sets=rounds, works=(SetWork(amount=each),))
    else:
        works = tuple(
            work.model_copy(update={"amount": each}) if _as_long_as_the_round(work.amount) else work
            for work in written.works
        )
        done = written.model_copy(update={"sets": rounds, "works": works})
    return Dose(groups=(done,), text="", place=item.place)


def _as_long_as_the_round(amount: Amount) -> bool:
    """Whether a member of a timed circuit says no amount of its own (``Amount``)."""
    return amount.unit == "s" and amount.span.high is None


def _open_ended(group: Group) -> bool:
    """Whether how many rounds are done is only known afterwards."""
    return group.time_s is not None or group.cap is not None or bool(group.ladder)


def _boxes(item: Item, group: Group | None) -> tuple[Box, ...]:
    if group and _open_ended(group):
        return ()
    dose = over_rounds(item, group)
    return boxes(dose) if dose else ()


def _timing(item: Item) -> tuple[str, ...]:
    """Rest and tempo of a line, those of its first group that has them."""
    groups = item.dose.groups if item.dose else ()
    pause = next((group.rest for group in groups if group.rest), item.rest)
    pace = next((group.tempo for group in groups if group.tempo), item.tempo)
    words = [say("line.rest", rest=rest(pause))] if pause else []
    return (", ".join(words + ([tempo(pace)] if pace else [])),) if words or pace else ()


def _remarks(entry: Item | Group, athlete: Known) -> tuple[str, ...]:
    """What else a line says: whom it is for (on a sheet for everybody), kit, when to stop, the note."""
    told = []
    if athlete is None and entry.for_:
        told.append(say("line.for", names=", ".join(entry.for_)))
    if athlete is None and entry.not_for:
        told.append(say("line.not_for", names=", ".join(entry.not_for)))
    if isinstance(entry, Item) and entry.kit:
        told.append(say("line.kit", kit=", ".join(entry.kit)))
    if entry.stop:
        told.append(say("line.stop", when=entry.stop))
    if entry.note:
        told.append(entry.note)
    return tuple(told)
