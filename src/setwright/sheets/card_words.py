"""The phrases of the cards, the board, the log and the home sheet that are filled in."""

from typing import Final

from setwright.sheets.phrases import say
from setwright.sheets.words import number

MM_A_METRE: Final = 25 / 3
"""Height of a capital for each metre it is read from, mm: 25 mm for 3 m (common practice, no source)."""


def bar_loads(unit: str, *, lightest_first: bool) -> str:
    """The line under the loads of a rack card."""
    loads = say("rack.loads_in", unit=unit) if unit else say("rack.loads")
    return f"{loads} {say('rack.lightest_first')}" if lightest_first else loads


def ends(time: str) -> str:
    """When a session is over."""
    return say("board.ends", time=time) if ":" in time else say("board.in_all", time=time)


def metres(letters_mm: float) -> str:
    """How far capitals of a height are read from with ease, rounded down to a tenth.

    >>> metres(12.2), metres(25)
    ('1.4 m', '3 m')
    """
    return say("board.distance", metres=f"{int(letters_mm / MM_A_METRE * 10) / 10:g}")


def meant_for(blocks_mm: float, groups_mm: float) -> str:
    """What the foot of a board says of its letters.

    >>> meant_for(20, 14)
    'to be read from 2.4 m, groups from 1.6 m'
    """
    blocks, groups = metres(blocks_mm), metres(groups_mm)
    if groups == blocks:
        return say("board.meant_for", blocks=blocks)
    return say("board.meant_for_groups", blocks=blocks, groups=groups)


def more_would_go(least: float, most: float) -> str:
    """How hard a set is, without a word of the trade.

    >>> more_would_go(1, 3), more_would_go(0, 0)
    ('stop when 1 to 3 more would still go', 'go on until no more would go')
    """
    if most == 0:
        return say("station.to_the_end")
    more = number(least) if least == most else say("list.to", first=number(least), second=number(most))
    return say("station.stop_left", count=more)
