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


def values_in(node: Node) -> int:
    """How many values a node holds, keys and the node itself among them."""
    if isinstance(node, Listing):
        return 1 + sum(map(values_in, node.nodes))
    if isinstance(node, Pairs):
        return 1 + sum(1 + values_in(value) for _, value in node.pairs)
    return 1
