"""One load in words: what was asked of an athlete, what is put on for it, and why nothing is."""

from typing import Final, NamedTuple

from setwright.library.table import Movement
from setwright.loads.asked_for import Kilograms, NoNumber
from setwright.loads.bodyweight import share
from setwright.loads.maxes import WHOLE
from setwright.loads.put import Put, mass_words
from setwright.loads.sets import Sets
from setwright.loads.typed import Carried, Wanted, asked_words, exact
from setwright.reading import words
from setwright.reading.dose import Load
from setwright.reading.habits import Habits
from setwright.reading.measures import Unit

ONE_BY_ONE: Final = ("weight", "stack", "band")
"""What comes in steps that nobody can halve: the load on the other side is told too."""
NONE: Final = "-"
SMALLEST_TOLD: Final = 0.05
"""Percent that would still be printed as 0.1 (choice)."""
ADDED: Final = "added to the body"
BODY: Final = "body + "


class Told(NamedTuple):
    """A load in words: the mass, how it is put on, and what was asked or why there is none."""

    load: str
    how: str
    asked: str


class Table(NamedTuple):
    """What need not be said again in each row: the sets, the movement, the one bar of all (or "")."""

    sets: Sets
    movement: Movement
    bar: str = ""


def sets_said(sets: Sets, habits: Habits) -> str:
    """Which sets a table is about: "warm-up, 5 at 50 % of the tested max", "75 % of the tested max"."""
    if sets.less is not None:
        return f"drop of {sets.less:g} %"
    if sets.percent is not None:
        return f"warm-up set, {sets.percent:g} % of the first work load"
    load = words.load(sets.load, habits) if sets.load else "without a load"
    if sets.what == "work" or sets.amount is None:
        return load.removeprefix("with ")
    number = f"{sets.number} sets of " if sets.number > 1 else ""
    return f"warm-up, {number}{words.amount(sets.amount)} {load}"


def bar_said(put: Put) -> str:
    """The bar of a load in words, "20 kg bar"; empty where there is none."""
    bars = (use.piece for use in put.uses if use.what == "bars")
    return next((f"{bar.words} {bar.name or 'bar'}" for bar in bars), "")


def told(wanted: Wanted, put: Put | None, table: Table) -> Told:
    """A load as it stands in a row; ``put``: what is put on for it, None where nothing can be.

    What a warm-up set without a load of its own asks for is said of the sets, not in each row.
    """
    asked, carried = wanted.asked, wanted.carried
    if isinstance(asked, NoNumber):
        return Told(NONE, "", asked.why.removeprefix(f"{table.movement['name']}: "))
    if carried is None:
        load, how, far = _bare(asked), "", ""
    else:
        load, how = _on(asked, put, table.bar) if put else (NONE, "")
        far = _far(asked, carried, put, table.bar)
    said = _asked(asked, table)
    as_asked = said in (load, load.removeprefix(BODY)) and not far
    return Told(load, how, "" if as_asked or table.sets.percent is not None else f"{said}{far}")


def _far(asked: Kilograms, carried: Carried, put: Put | None, bar: str) -> str:
    """How far what is put on is from what was asked, or why nothing is."""
    if put is None or (carried.loadable.fault and not carried.in_range):
        return f", {_out_of_reach(carried, put, bar)}"
    off = 0.0 if carried.in_range else _off_percent(asked, carried, put)
    if abs(off) < SMALLEST_TOLD:
        return ""
    return f", {abs(off):.1f} % {'more' if off > 0 else 'less'}{_other_side(carried, put)}"


def _off_percent(asked: Kilograms, carried: Carried, put: Put) -> float:
    """How far a load is from the one asked for, in percent of all that is lifted; negative is less."""
    if asked.way == ADDED and asked.lifted is not None:
        return float(put.kg - exact(asked.pick)) / asked.lifted.low * WHOLE
    return carried.loadable.off_percent(put)


def _on(asked: Kilograms, put: Put, bar: str) -> tuple[str, str]:
    """The mass that is put on, in the unit of what is put on, and how."""
    total = mass_words(put.kg, _unit(asked, put))
    how = put.words.removeprefix(f"{total} ")
    if bar:
        how = "empty bar" if how == f"the empty {bar}" else how.removeprefix(f"{bar}, ")
    return f"{BODY if asked.way == ADDED else ''}{total}", how


def _unit(asked: Kilograms, put: Put) -> Unit:
    return put.uses[0].piece.unit if put.uses else asked.unit


def _bare(asked: Kilograms) -> str:
    """A load that no gym file rounds."""
    total = mass_words(exact(abs(asked.pick)), asked.unit)
    if asked.way == ADDED:
        return "body" if not asked.pick else f"{BODY}{total}" if asked.pick > 0 else f"help {total}"
    return f"{total} each" if asked.way == "in each hand" else total


def _asked(asked: Kilograms, table: Table) -> str:
    """The load as asked, with the max or the body that it comes from."""
    sets, kilograms = table.sets, asked_words(asked)
    if asked.way == ADDED and asked.pick <= 0:
        kilograms = _bare(asked)
    if sets.load and sets.load.kind in ("percent", "rm"):
        kilograms = f"{_share(sets.load, asked)} is {kilograms}"
    part = share(table.movement)
    if asked.way != ADDED or asked.lifted is None or part is None:
        return kilograms
    low, high = (mass_words(exact(end), asked.unit, 1) for end in asked.lifted)
    lifted = low if low == high else f"{low} to {high}"
    return f"{kilograms}; with {words.between(*part, '-')} of the body {lifted}"


def _share(load: Load, asked: Kilograms) -> str:
    """A share with what it is of: "75 % of 120 kg", "75 % of training max 54 kg", "60 % of the body"."""
    part = words.between(load.low or 0.0, load.high, "-")
    part = f"{part}RM" if load.kind == "rm" else f"{part} %"
    if asked.of is None:
        return f"{part} of the body"
    kind = "" if asked.of.kind == "tested max" else f"{asked.of.kind} "
    return f"{part} of {f'{asked.of.movement}, ' if load.of_movement else ''}{kind}{asked.of.said}"


def _out_of_reach(carried: Carried, put: Put | None, bar: str) -> str:
    """Why the load can't be put on, and the nearest that can."""
    found = carried.loadable
    near = found.below or found.above
    if near is None:
        return "nothing here carries it"
    if found.fault == "below the bar":
        return f"less than {'the bar' if near.words == f'the empty {bar}' else near.words}"
    if put is not None:
        return "less than anything here"
    how_far = "more" if found.below else "less"
    return f"{how_far} than anything here ({mass_words(near.kg, _unit(carried.asked, near))})"


def _other_side(carried: Carried, put: Put) -> str:
    """The load on the other side of the one asked for, where loads come one by one."""
    found = carried.loadable
    others = (one for one in (found.below, found.above) if one is not None and one.kg != put.kg)
    other = next(others, None) if found.by.kind in ONE_BY_ONE else None
    return f", or {mass_words(other.kg, _unit(carried.asked, other))}" if other else ""
