"""YAML as nodes that know where they stand; scalars keep their text: nothing is a number, a date or a No."""

from typing import NamedTuple

from setwright.places import Place


class Scalar(NamedTuple):
    """A value as typed. ``place`` is its text without quotes; ``lines`` is more than 1 when it runs on."""

    text: str
    place: Place
    quoted: bool = False
    lines: int = 1

    @property
    def is_empty(self) -> bool:
        """Whether nothing is written (empty quotes are something)."""
        return not self.text and not self.quoted


class Listing(NamedTuple):
    """A list of values."""

    nodes: tuple["Node", ...]
    place: Place


class Pairs(NamedTuple):
    """Keys with their values, in the order of the file; a key may stand twice."""

    pairs: tuple[tuple[Scalar, "Node"], ...]
    place: Place


Node = Scalar | Listing | Pairs
