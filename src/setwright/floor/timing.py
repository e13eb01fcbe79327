"""How long a block lasts for people who share one set of its stations, and the rest that gives each."""

from typing import Final

from setwright.coverage.clock import SETUP_S
from setwright.floor.blocks import Block

WARM_UP_TOGETHER: Final = 0.5
"""Share of the warm-up sets that each further person adds: they rest while the others lift (choice)."""
NEXT_PERSON_S: Final = 20.0
"""From one person's set to the next one's at the same station, plates moved.

Common practice, no source: four at a rack with sets of about 45 s rest about 195 s, three about 130 s.
"""


def rest_given(block: Block, people: int) -> float:
    """Seconds from the end of one's set or round to the start of the next, with so many at the station.

    A station serves one person at a time. With more people than the written rest can hold, everybody waits
    until the others have done one set each, with a change after each: the busiest station decides. What needs
    no station is done by all at once.
    """
    return _round_s(block, people) - block.set_s


def seconds(block: Block, people: int) -> float:
    """How long the block lasts for the group, setting up and warm-up sets included.

    The last round ends when the last person is through: everyone before them has only to clear the station.
    """
    if block.whole_s is not None:
        return SETUP_S + block.whole_s
    rounds = (block.sets - 1) * _round_s(block, people)
    last = block.set_s + (people - 1) * _turn_s(block)
    further = (people - 1) * WARM_UP_TOGETHER if _turn_s(block) else 0
    return SETUP_S + block.warm_up_s * (1 + further) + rounds + last


def _turn_s(block: Block) -> float:
    """Seconds that the busiest station of the block is taken by one person's turn; 0 where none is needed."""
    return max((move.set_s + NEXT_PERSON_S for move in block.moves if move.holds), default=0.0)


def _round_s(block: Block, people: int) -> float:
    """From the start of one round to the start of the next, of one person."""
    alone = block.set_s + block.rest_s
    return alone if people == 1 else max(alone, people * _turn_s(block) - NEXT_PERSON_S)
