"""What is put out before a session, in words."""

from collections.abc import Iterator

from setwright.floor.kit import pool_words
from setwright.floor.room import Floor
from setwright.floor.setup import SetUp, on_one_side, set_up
from setwright.report.wrapping import wrapped


def set_up_lines(floor: Floor) -> Iterator[str]:
    """A line a block, the first to begin first."""
    for one in set_up(floor):
        told = "; ".join(_needs(one)) or "nothing that is counted"
        yield wrapped(f"{one.block.name}: {told}", f"  {one.block.number:<3}", "     ")


def _needs(one: SetUp) -> Iterator[str]:
    if one.stations:
        yield ", ".join(pool_words(number, pool) for pool, number in one.stations.items())
    for what in dict.fromkeys(what for what, _, _ in one.iron):
        pieces = [(piece, number) for kind, piece, number in one.iron if kind == what]
        if what == "plates":
            counted = (f"{on_one_side(number)} x {piece.words}" for piece, number in pieces)
            yield f"on each side, at most, {', '.join(counted)}"
        else:
            yield f"{what} of {', '.join(piece.words for piece, _ in pieces)}"
    if one.bands:
        yield f"bands: {', '.join(one.bands)}"
