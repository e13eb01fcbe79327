"""The loads of a line worked out for whoever its sheet is for, in the words of the sheet."""

from collections.abc import Iterator
from functools import reduce
from itertools import takewhile
from typing import Final

from setwright.library.table import Library
from setwright.loads.asked_for import Kilograms
from setwright.loads.lines import FOUND_ON_THE_DAY, Line
from setwright.loads.loadable import ON_THE_BODY
from setwright.loads.put import Put, mass_words
from setwright.loads.sets import Sets, sets_of
from setwright.loads.typed import Carried, exact
from setwright.model.plan import Week
from setwright.model.room import kilograms
from setwright.reading.dose import Load
from setwright.reading.measures import Unit
from setwright.sheets.loads import BOTH, in_a_cell, load_words
from setwright.sheets.phrases import say
from setwright.sheets.view import LoadWords

OWN: Final = ("percent", "rm", "last")
"""Kinds of load that a sheet prints as they are written only where they can't be worked out."""


class Worked:
    """The loads of a line for its one athlete, or for everybody where it has none."""

    def __init__(self, line: Line, week: Week, table: Library) -> None:
        self._line, self._week = line, week
        self._sets = sets_of(line, week, table)

    def work(self) -> LoadWords | None:
        """The load of the work sets in one cell; None where none is written.

        What is found on the day stands as it is written; what a drop goes down to stands in the dose.
        """
        worked = {sets.load: sets for sets in self._sets if sets.what == "work"}
        groups = self._line.item.dose.groups if self._line.item.dose else ()
        return in_a_cell(
            [
                self._as_written(sets.load)
                if group.kind in FOUND_ON_THE_DAY
                else self._words(worked[sets.load])
                for group in groups
                for sets in group.every_work
                if sets.load is not None
            ]
        )

    def warm_up(self, blank: LoadWords) -> Iterator[LoadWords]:
        """The load of each kind of warm-up sets; ``blank`` for one that is left open and not worked out."""
        for sets in self._sets:
            if sets.what == "warm-up":
                is_open = sets.percent is not None and not any(
                    isinstance(wanted.asked, Kilograms) for wanted in sets.wanted
                )
                yield blank if is_open else self._words(sets)

    def drops(self) -> Iterator[str]:
        """In one remark what the work drops to by a percent, where that can be worked out."""
        drops = [self._words(sets) for sets in self._sets if sets.what == "drop"]
        told = [f"{load.large} ({load.small})" if load.small else load.large for load in drops]
        if told:
            yield say("line.drop", loads=reduce(_then, told))

    def _words(self, sets: Sets) -> LoadWords:
        wanted = sets.wanted[0] if sets.wanted else None
        asked, carried = (wanted.asked, wanted.carried) if wanted else (None, None)
        if isinstance(asked, Kilograms):
            put = carried and (carried.put if sets.what == "work" else carried.lightest_put)
            ends = self._ends(carried, sets.load) if carried else None
            if carried and ends:
                return _between(*(self._put_on(carried, end, sets.load) for end in ends))
            if carried and put:
                return self._put_on(carried, put, sets.load)
            if sets.load is None or sets.what == "drop" or sets.load.kind in OWN:
                return self._as_written(_bare(asked))
        return self._as_written(sets.load) if sets.load else LoadWords()

    def _ends(self, carried: Carried, load: Load | None) -> tuple[Put, Put] | None:
        """The loads from which somebody may choose: those there are in a range of masses that was typed."""
        gym = self._week.gym
        typed = load is not None and load.kind == "mass" and load.low != load.high
        ends = carried.ends(gym) if gym and typed else None
        return ends if ends and ends[0].kg < ends[1].kg else None

    def _as_written(self, load: Load) -> LoadWords:
        if load.kind == "mass" and str(self._line.movement["load_write"]).startswith("each"):
            load = load.model_copy(update={"hands": BOTH})
        return load_words(load, self._week.unit or "", self._week.max_kind)

    def _put_on(self, carried: Carried, put: Put, load: Load | None) -> LoadWords:
        """What is put on, and below it the plates of a side, or where the weight comes from."""
        unit = put.uses[0].piece.unit if put.uses else carried.asked.unit
        mass = mass_words(put.kg, unit)
        total = say("load.up_to", load=mass) if load and load.rising else mass
        by = carried.loadable.by
        match by.kind:
            case "bar":
                return LoadWords(total, self._plates(put))
            case "weight":
                if by.hands == 1:
                    return LoadWords(total)
                return LoadWords(f"{by.hands} × {total}", say("load.one_a_hand"))
            case "belt":
                hung = total.removesuffix(f" {unit}")
                return LoadWords(say("load.body", load=f"+ {hung}"), _added(put, unit))
            case "sleeve":
                return LoadWords(total, put.words)
            case _:
                large, _, small = put.words.partition(" to " if by.kind == "band" else ", ")
                return LoadWords(large, say("load.for_plates", load=small) if by.kind == "band" else small)

    def _plates(self, put: Put) -> str:
        """The plates of a side; with the bar where the gym has straight bars of several weights."""
        bars = {(bar.low, bar.unit) for bar in self._week.gym.straight_bars} if self._week.gym else set()
        bar, _, plates = put.words.partition(", ")
        if not plates:
            return say("load.empty_bar") if len(bars) == 1 else bar.removeprefix("the ")
        return plates if len(bars) == 1 else put.words


def _then(first: str, second: str) -> str:
    return say("list.then", first=first, second=second)


def _between(low: LoadWords, high: LoadWords) -> LoadWords:
    """Two loads to choose from in one cell: "60–62.5 kg", and below it the plates of both."""
    first, last = low.large.split(), high.large.split()
    before, after = _alike(first, last), _alike(first[::-1], last[::-1])
    large = f"{' '.join(first[: len(first) - after])}–{' '.join(last[before:])}"
    both = in_a_cell((low, high))
    return LoadWords(large, both.small if both else "")


def _alike(one: list[str], other: list[str]) -> int:
    """How many words two texts begin with alike."""
    return sum(1 for _ in takewhile(lambda pair: pair[0] == pair[1], zip(one, other, strict=False)))


def _added(put: Put, unit: Unit) -> str:
    """What is hung on the body: "kg added", with its plates where there are several."""
    plates = put.words.removesuffix(f" {ON_THE_BODY}").removesuffix(f" {unit}")
    if "+" in plates:
        return say("load.added_plates", unit=unit, plates=plates)
    return say("load.added", unit=unit)


def _bare(asked: Kilograms) -> Load:
    """A load that nothing rounds, as if it had been typed."""
    value = float(exact(asked.pick) / kilograms(exact(1.0), asked.unit))
    if asked.way == "added to the body":
        return Load(kind="bodyweight", plus=value or None, plus_high=value or None, unit=asked.unit)
    hands = BOTH if asked.way == "in each hand" else None
    return Load(kind="mass", low=value, high=value, unit=asked.unit, hands=hands)
