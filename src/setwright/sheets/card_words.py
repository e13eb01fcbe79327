"""Fixed words of the cards, the board, the log and the home sheet."""

import datetime as dt
from typing import Final

from setwright.sheets.words import MONTHS, clock, number

MM_A_METRE: Final = 25 / 3
"""Height of a capital for each metre it is read from, mm: 25 mm for 3 m (common practice, no source)."""

SPOTS: Final = "who spots"
HOOKS: Final = "hooks at"
NAME: Final = "name"
SET: Final = "set"
DATE: Final = "date"
LOAD_AND_DONE: Final = ("load", "reps")
CHECKED: Final = "checked by"
LOG_NOTE: Final = "Left: the load. Right: repetitions of each set, or seconds or metres. A dash: not done."
DO: Final = "Do"
LOAD: Final = "Load"
WATCH: Final = "Watch"
STOP: Final = "Stop"
ASK: Final = ("Ask", "telephone")
TICK: Final = "Tick each day that it is done."
EASIER: Final = "Easier"
HARDER: Final = "Harder"
KIT: Final = "Kit"
FIBRES: Final = "chest fibres, by a model:"
MIDLINE: Final = "dash-dot: mid-body"
TONES: Final = ("much", "some", "none")
WARM_UP: Final = "warm-up"
OWN_SHEET: Final = "your own sheet"
SAFETY_BARS: Final = "Nobody spots: set the safety bars."


def rack(number: int) -> str:
    """Which rack a card hangs on."""
    return f"Rack {number}"


def turn(number: int, turns: int) -> str:
    """Which of those who share a rack one after the other."""
    return f"turn {number} of {turns}"


def bar_loads(unit: str, *, lightest_first: bool) -> str:
    """The line under the loads of a rack card."""
    order = " Lightest first." if lightest_first else ""
    return f"Loads{f' in {unit}' if unit else ''} with the bar.{order}"


def ends(time: str) -> str:
    """When a session is over."""
    return f"ends {time}" if ":" in time else f"{time} in all"


def in_turn(kind: str, moves: int) -> str:
    """A group of too many moves to name."""
    return f"{kind} of {moves}"


def starts(where: str) -> str:
    """The station at which each group starts."""
    return f"start: {where}"


def metres(letters_mm: float) -> str:
    """How far capitals of a height are read from with ease, rounded down to a tenth.

    >>> metres(12.2), metres(25)
    ('1.4 m', '3 m')
    """
    return f"{int(letters_mm / MM_A_METRE * 10) / 10:g} m"


def meant_for(blocks_mm: float, groups_mm: float) -> str:
    """What the foot of a board says of its letters.

    >>> meant_for(20, 14)
    'to be read from 2.4 m, groups from 1.6 m'
    """
    blocks, groups = metres(blocks_mm), metres(groups_mm)
    return f"to be read from {blocks}" + (f", groups from {groups}" if groups != blocks else "")


def on(seconds: float) -> str:
    """How long a station is worked at."""
    return f"{clock(seconds)} on"


def change(seconds: float) -> str:
    """How long there is to get to the next station."""
    return f"{clock(seconds)} to change"


def on_the_sheet(label: str) -> str:
    """Where the station stands on the session sheet."""
    return f"{label} on the session sheet"


def when(what: str) -> str:
    """A condition as the coach wrote it."""
    return f"when {what}"


def stop_when(what: str) -> str:
    """When to stop at a station."""
    return f"stop {when(what)}"


def more_would_go(least: float, most: float) -> str:
    """How hard a set is, without a word of the trade.

    >>> more_would_go(1, 3), more_would_go(0, 0)
    ('stop when 1 to 3 more would still go', 'go on until no more would go')
    """
    if most == 0:
        return "go on until no more would go"
    more = number(least) if least == most else f"{number(least)} to {number(most)}"
    return f"stop when {more} more would still go"


def short_date(day: dt.date) -> str:
    """A date for the head of a narrow column: "15 Nov"."""
    return f"{day.day} {MONTHS[day.month - 1][:3]}"
