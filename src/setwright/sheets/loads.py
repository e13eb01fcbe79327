"""A load as written, in the words of the sheet, and several loads in one cell."""

from collections.abc import Sequence
from typing import Final

from setwright.reading.dose import Load
from setwright.sheets.phrases import say
from setwright.sheets.view import LoadWords
from setwright.sheets.words import number

BOTH: Final = 2
"""Hands."""

A_SIDE: Final = " a side"

MOST_IN_A_LIST: Final = 4
"""Loads written out side by side; more are shown as first to last (choice: what the column holds)."""


def load_words(load: Load, unit: str, percent_of: str) -> LoadWords:
    """What one load says: a number with its unit, or a share of something with a blank for the number.

    ``unit`` is the plan's ("kg", "lb" or empty), ``percent_of`` the kind of max that a bare percent means.
    """
    match load.kind:
        case "percent":
            return LoadWords(_figure(load, "%"), say("load.of", max=_whose(load.of or percent_of)), unit)
        case "rm":
            return LoadWords(say("load.rm", count=number(load.low or 0)), say("load.rm_small"), unit)
        case "last":
            on = load.name or say("load.last_time")
            return LoadWords(_signed(load), say("load.last", unit=load.unit or unit, name=on), unit)
        case "word":
            return LoadWords("", load.name or say("load.own_choice"), unit)
        case _:
            return _ready(load, load.unit or unit)


def _ready(load: Load, unit: str) -> LoadWords:
    """A load that can be put on the bar as it stands."""
    match load.kind:
        case "bodyweight":
            way = "load.added" if (load.plus or 0) > 0 else "load.of_help"
            body = say("load.body", load=_signed(load)).strip()
            return LoadWords(body, say(way, unit=unit).strip() if load.plus else "")
        case "bar":
            if not load.plus:
                return LoadWords(say("load.empty_bar"))
            return LoadWords(say("load.bar", load=_signed(load)), say("load.bar_small", unit=unit).strip())
        case "band":
            return LoadWords(_band(load))
        case "setting":
            return LoadWords(f"{load.name or say('load.stack')} {number(load.low or 0)}")
        case "speed":
            return LoadWords(_figure(load, "m/s"))
        case _:
            return LoadWords(_figure(load, unit), say("load.one_a_hand") if load.hands == BOTH else "")


def in_a_cell(words: Sequence[LoadWords]) -> LoadWords | None:
    """Loads, one for all sets or one a set, in one cell; None when there are none.

    Sets of different loads are listed, their plates too; a share of a max that changes keeps one blank.
    """
    different = list(dict.fromkeys(words))
    if len(different) <= 1:
        return different[0] if different else None
    smalls = list(dict.fromkeys(one.small for one in different))
    blank = next((one.blank for one in different if one.blank is not None), None)
    large = _list([one.large or one.small for one in different])
    return LoadWords(large, smalls[0] if len(smalls) == 1 else _plates(smalls), blank)


def _plates(smalls: list[str]) -> str:
    """The plates of several loads, bar and "a side" said once; nothing if not all are plates, or many."""
    if len(smalls) > MOST_IN_A_LIST or not all(small.endswith(A_SIDE) for small in smalls):
        return ""
    told = [small.removesuffix(A_SIDE).rpartition(", ") for small in smalls]
    bars = {bar + comma for bar, comma, _ in told}
    plates = [plates for _, _, plates in told] if len(bars) == 1 else ["".join(one) for one in told]
    return f"{bars.pop() if len(bars) == 1 else ''}{'; '.join(plates)}{A_SIDE}"


def _list(loads: list[str]) -> str:
    """Loads side by side, a unit they share said once: "60, 65, 70 kg", "60 to 80 kg"."""
    units = {load.rpartition(" ")[2] for load in loads}
    if len(units) == 1:
        loads = [*(load.rpartition(" ")[0] for load in loads[:-1]), loads[-1]]
    if len(loads) <= MOST_IN_A_LIST:
        return ", ".join(loads)
    return say("list.to", first=loads[0], second=loads[-1])


def _figure(load: Load, unit: str) -> str:
    """The number with its unit: "60 kg", "20–22.5 kg", "75 %", "2 × 24 kg", "up to 80 kg"."""
    low = load.low or 0
    to = f"–{number(load.high)}" if load.high not in (None, low) else ""
    hands = "2 × " if load.hands == BOTH else ""
    told = f"{hands}{number(low)}{to} {unit}".strip()
    return say("load.up_to", load=told) if load.rising else told


def _signed(load: Load) -> str:
    """The addition to something: "+ 10", "− 20–25", or nothing."""
    if not load.plus:
        return ""
    sign = "+" if load.plus > 0 else "−"
    to = f"–{number(abs(load.plus_high))}" if load.plus_high not in (None, load.plus) else ""
    return f"{sign} {number(abs(load.plus))}{to}"


def _whose(of: str) -> str:
    return say("load.top_set") if of == "top set" else of


def _band(load: Load) -> str:
    if load.low and load.low > 1:
        return say("load.bands", count=number(load.low), name=load.name or "")
    return say("load.band", name=load.name or "").strip()
