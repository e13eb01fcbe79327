"""What is put out before a session, in the order it is needed."""

from collections import Counter
from collections.abc import Iterator
from typing import Final, NamedTuple

from setwright.floor.blocks import Block
from setwright.floor.kit import Holds
from setwright.floor.room import Floor
from setwright.loads.plates import SLEEVES
from setwright.loads.put import Piece

IRON: Final = ("plates", "dumbbells", "kettlebells")


class SetUp(NamedTuple):
    """What a block needs. ``stations``: the most in use at once, by pool, for all groups together.

    ``iron``: what lies at one station, each piece with how many: the most that anybody there needs, plates
    for both ends of the bar. ``bands``: the names of the bands.
    """

    block: Block
    stations: Holds
    iron: tuple[tuple[str, Piece, int], ...]
    bands: tuple[str, ...]


def set_up(floor: Floor) -> tuple[SetUp, ...]:
    """Block by block, in the order of the clock."""
    first = {stay.block.number: stay.block for stay in reversed(floor.stays)}
    return tuple(_of(floor, first[number]) for number in sorted(first, key=lambda one: _starts(floor, one)))


def on_one_side(number: int) -> int:
    """So many plates on one end of the bar, of those on both."""
    return number // SLEEVES


def _starts(floor: Floor, number: int) -> tuple[float, int]:
    return min(stay.start_s for stay in floor.stays if stay.block.number == number), number


def _of(floor: Floor, block: Block) -> SetUp:
    stays = [stay for stay in floor.stays if stay.block.number == block.number]
    at_once: Counter[str] = Counter()
    for stay in stays:
        meeting = (one.holds for one in stays if one.start_s <= stay.start_s < one.end_s)
        at_once |= sum(map(Counter, meeting), Counter[str]())
    bands = (name for stay in stays for way in stay.ways for done in way.blocks for name in _bands(done))
    return SetUp(block, at_once, tuple(_iron(floor, block)), tuple(dict.fromkeys(bands)))


def _iron(floor: Floor, block: Block) -> Iterator[tuple[str, Piece, int]]:
    most: Counter[tuple[str, Piece]] = Counter()
    for lift in floor.lifts:
        if lift.block == block.number and lift.put is not None:
            most |= Counter({(use.what, use.piece): use.number for use in lift.put.uses if use.what in IRON})
    for (what, piece), number in sorted(most.items(), key=lambda one: (IRON.index(one[0][0]), -one[0][1].kg)):
        yield what, piece, number


def _bands(block: Block) -> Iterator[str]:
    for item in block.items:
        for load in item.line_loads:
            if load.kind == "band" and load.name:
                yield load.name
