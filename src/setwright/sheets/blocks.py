"""The work of a session as blocks that are never parted: numbers, doses, loads, boxes, headings, remarks."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Final

from setwright.library.table import Library
from setwright.model.plan import AthleteLoad, Group, Item, Week
from setwright.model.theirs import Known, lines_of, meant, own_load
from setwright.reading.dose import Amount, Dose, Load, SetGroup, SetWork, Span
from setwright.reading.say import dose_short
from setwright.sheets.boxes import boxes, ramps
from setwright.sheets.headings import group_heading
from setwright.sheets.loads import group_loads, load_words, loads_in_a_cell
from setwright.sheets.view import Block, Box, Line, LoadWords
from setwright.sheets.words import NO_LOAD, letter, rest, tempo, typeset

_BLANKS: Final = {"external": "", "stack": "pin", "band": "band", "assisted": "of help"}
"""What stands after the blank for a load that the plan leaves open, by the library's kinds of load.

External loads take the plan's unit; other kinds get no blank."""


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

    def loads(self, item: Item, own: AthleteLoad | None = None) -> LoadWords:
        """What is lifted as written, by everybody or by one person on their ``own``, or else room for it."""
        each = self._each_hand(item)
        if own:
            words = loads_in_a_cell(own.loads, self.unit, self.week.max_kind, each_hand=each)
            return words or LoadWords(NO_LOAD)
        groups = item.dose.groups if item.dose else ()
        return group_loads(groups, self.unit, self.week.max_kind, each_hand=each) or self.blank(item)

    def blank(self, item: Item) -> LoadWords:
        """Room for a load that the plan leaves open, where the movement takes one."""
        after = _BLANKS.get(self._of(item, "load_kind") or "external")
        own = f"{self.unit} each".strip() if self._each_hand(item) else self.unit
        return LoadWords(blank=after or own) if after is not None else LoadWords()

    def _each_hand(self, item: Item) -> bool:
        return self._of(item, "load_write").startswith("each")

    def _of(self, item: Item, field: str) -> str:
        return str(self.library.movement(item.key)[field]) if item.key else ""


def blocks(work: Iterable[Item | Group], athlete: Known, writer: Writer) -> tuple[Block, ...]:
    """The blocks of a session, numbered as in the plan, so that the whole room counts alike.

    Lines that somebody does in place of one share its number.
    ``athlete``: a person's name with the groups they belong to, None for everybody. What is not for
    that person is left out.
    """
    return tuple(_numbered(work, athlete, writer))


def _numbered(work: Iterable[Item | Group], athlete: Known, writer: Writer) -> Iterator[Block]:
    for number, entry in enumerate(work, start=1):
        if not meant(entry, athlete):
            continue
        if isinstance(entry, Item):
            lines = lines_of(entry, athlete)
            yield Block(tuple(_line(line, str(number), writer, athlete) for line in lines))
            continue
        members = [
            (f"{number}{letter(place)}", line)
            for place, item in enumerate(entry.items)
            if meant(item, athlete)
            for line in lines_of(item, athlete)
        ]
        if members:
            yield _group_block(entry, members, writer, athlete)


def _group_block(group: Group, members: list[tuple[str, Item]], writer: Writer, athlete: Known) -> Block:
    load = writer.load(group.load) if group.load else None
    heading = group_heading(group, list(dict.fromkeys(number for number, _ in members)))
    if load:
        heading += f"; {load.large} {load.small}".rstrip()
    return Block(
        lines=tuple(_line(item, number, writer, athlete, group) for number, item in members),
        heading=typeset(heading),
        remarks=_remarks(group, athlete),
        next_time=group.next.text if group.next else None,
        rounds_box=_open_ended(group),
    )


def _line(item: Item, number: str, writer: Writer, athlete: Known, group: Group | None = None) -> Line:
    dose = item.dose
    own = own_load(item, athlete)
    shared_load = group is not None and group.load is not None and own is None
    load = LoadWords() if shared_load else writer.loads(item, own)
    return Line(
        number=number,
        name=writer.name(item),
        dose=dose_text(item, group),
        remarks=(*_timing(item), *_remarks(item, athlete)),
        load=load,
        boxes=_boxes(item, group),
        ramps=ramps(item.warm_up or (dose.warm_up if dose else None), writer.load, writer.blank(item)),
        next_time=item.next.text if item.next else None,
    )


def dose_text(item: Item, group: Group | None) -> str:
    """The dose of a line as it is set on paper: "4 × 6–8, 2 left"; in rounds against the clock, one round."""
    dose = _over_rounds(item, group)
    if dose is None or not dose.groups:
        return ""
    text = typeset(dose_short(dose))
    return text.removeprefix("1 × ") if group and _open_ended(group) else text


def _over_rounds(item: Item, group: Group | None) -> Dose | None:
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
    dose = _over_rounds(item, group)
    return boxes(dose) if dose else ()


def _timing(item: Item) -> tuple[str, ...]:
    """Rest and tempo of a line, those of its first group that has them."""
    groups = item.dose.groups if item.dose else ()
    pause = next((group.rest for group in groups if group.rest), item.rest)
    pace = next((group.tempo for group in groups if group.tempo), item.tempo)
    words = [f"rest {rest(pause)}"] if pause else []
    return (", ".join(words + ([tempo(pace)] if pace else [])),) if words or pace else ()


def _remarks(entry: Item | Group, athlete: Known) -> tuple[str, ...]:
    """What else a line says: whom it is for (on a sheet for everybody), kit, when to stop, the note."""
    told = []
    if athlete is None and entry.for_:
        told.append(f"for {', '.join(entry.for_)}")
    if athlete is None and entry.not_for:
        told.append(f"not for {', '.join(entry.not_for)}")
    if isinstance(entry, Item) and entry.kit:
        told.append(f"kit: {', '.join(entry.kit)}")
    if entry.stop:
        told.append(f"stop: {entry.stop}")
    if entry.note:
        told.append(entry.note)
    return tuple(told)
