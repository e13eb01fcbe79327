"""The top of the plan of the week that comes: its name, its dates, its block, and whose turn it is."""

import datetime as dt
import re
from collections.abc import Iterator, Mapping, Sequence
from types import MappingProxyType
from typing import Final, NamedTuple

from setwright.model.plan import Lighter
from setwright.model.reader.keys import fold
from setwright.reading.fields import placed_names
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.tree import read_tree
from setwright.records.edits import Edits
from setwright.records.paper import typed

_WEEK: Final = re.compile(r"\d{1,3}$")
_BY_STAGE: Final = ("earliest", "latest")


class Head(NamedTuple):
    """What the top says of the week that comes. ``late``: weeks by which its dates come later than typed.

    ``stages``: weeks that have passed for the stages; ``signed``: who signed which one off, and when.
    ``rotate`` and ``squad``: None where they stay.
    """

    name: str
    follows: str
    block: str | None = None
    starts: dt.date | None = None
    late: int = 0
    stages: int = 0
    rotate: tuple[str, ...] | None = None
    squad: str | None = None
    signed: Mapping[str, str] = MappingProxyType({})


def with_head(file: str, text: str, head: Head) -> str:
    """The text of a plan with the top that it has in the week that comes."""
    there, edits = _top(file, text), Edits(text)
    starts = head.starts.isoformat() if head.starts else None
    new = {"plan": head.name, "follows": head.follows, "block": head.block}
    new |= {"starts": starts, "squad": head.squad}
    for name, text_of in new.items():
        value = there[name][1] if name in there else None
        if text_of is not None and isinstance(value, Scalar):
            edits.put(value, text_of)
    missing = [f"{name}: {typed(new[name] or '')}" for name in ("follows", "block") if new[name]]
    edits.below(there["plan"][0], [line for line in missing if line.partition(":")[0] not in there])
    if head.late:
        _put_dates(edits, [value for _, value in there.values()], head.late)
    if "stages" in there:
        _put_stages(edits, there["stages"][1], head.stages)
        _sign(edits, there["stages"][1], head.signed)
    if head.rotate and "rotate" in there:
        _put_names(edits, there["rotate"][1], head.rotate)
    return edits.text()


def turns_of(file: str, text: str) -> tuple[int, tuple[str, ...]]:
    """How many days of a week are taken in turn, and by which sessions; none when nothing is."""
    there = _top(file, text)
    days, names = (
        [one.text for one in placed_names(there[key][1], Gathering())] if key in there else []
        for key in ("training days", "rotate")
    )
    return len(days) if names else 0, tuple(names) if days else ()


def with_lighter(file: str, text: str, how: Lighter) -> str:
    """The text of a plan of one week that is a lighter one."""
    there, edits = _top(file, text), Edits(text)
    week = f"  week 1: {how.text}"
    if "lighter weeks" in there:
        edits.below(there["lighter weeks"][0], [week])
    else:
        edits.below(there["plan"][0], ["lighter weeks:", week])
    return edits.text()


def squad_file(file: str, text: str) -> str | None:
    """The squad file that a plan names; None where its squad stands in it, or it has none."""
    squad = _top(file, text).get("squad")
    return squad[1].text if squad and isinstance(squad[1], Scalar) else None


def with_squad(file: str, text: str, name: str) -> str:
    """The text of a plan that names another squad file."""
    edits, squad = Edits(text), _top(file, text)["squad"][1]
    assert isinstance(squad, Scalar)
    edits.put(squad, name)
    return edits.text()


def _top(file: str, text: str) -> dict[str, tuple[Scalar, Node]]:
    """The keys at the top of a plan, by their folded words, with their values."""
    root = read_tree(file, text).root
    assert isinstance(root, Pairs)
    return {fold(key.text): (key, value) for key, value in root.pairs}


def _put_dates(edits: Edits, nodes: Sequence[Node], weeks: int) -> None:
    for key, value in (pair for node in nodes for pair in _scalars(node)):
        later = _later(value.text, weeks) if fold(key.text) == "date" else None
        if later is not None:
            edits.put(value, later)


def _put_stages(edits: Edits, stages: Node, weeks: int) -> None:
    """Each week that passes brings the earliest and the latest week of a stage nearer."""
    for key, value in _scalars(stages):
        match = _WEEK.search(value.text) if fold(key.text) in _BY_STAGE else None
        if match is not None:
            edits.put(value, f"week {max(int(match[0]) - weeks, 1)}")


def _sign(edits: Edits, stages: Node, signed: Mapping[str, str]) -> None:
    """A stage that was signed off since is signed off here too."""
    for key, value in stages.pairs if isinstance(stages, Pairs) else ():
        sign_off = signed.get(key.text)
        inside = {fold(one.text): typed for one, typed in value.pairs} if isinstance(value, Pairs) else {}
        there = inside.get("signed off")
        if sign_off and isinstance(there, Scalar):
            edits.put(there, sign_off)
        elif sign_off:
            edits.below(key, [f"{' ' * (key.place.column + 1)}signed off: {sign_off}"])


def _put_names(edits: Edits, node: Node, names: Sequence[str]) -> None:
    if isinstance(node, Scalar):
        edits.put(node, ", ".join(names))
    listed = node.nodes if isinstance(node, Listing) else ()
    for one, name in zip([one for one in listed if isinstance(one, Scalar)], names, strict=False):
        edits.put(one, name)


def _scalars(node: Node) -> Iterator[tuple[Scalar, Scalar]]:
    """Every key with a value on its line."""
    if isinstance(node, Listing):
        for entry in node.nodes:
            yield from _scalars(entry)
    elif isinstance(node, Pairs):
        for key, value in node.pairs:
            if isinstance(value, Scalar):
                yield key, value
            else:
                yield from _scalars(value)


def _later(date: str, weeks: int) -> str | None:
    """A date some weeks later; None for what is none."""
    try:
        return (dt.date.fromisoformat(date) + dt.timedelta(weeks=weeks)).isoformat()
    except (ValueError, OverflowError):
        return None
