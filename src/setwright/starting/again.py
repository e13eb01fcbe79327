"""A block used again by other people: its lines without names, dates, maxes and limits of the old ones."""

import re
from collections.abc import Iterator
from typing import Final, NamedTuple

from setwright.files import CannotRun
from setwright.model.people import Squad
from setwright.model.reader.by_name import is_by_name
from setwright.model.reader.keys import fold
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.tree import read_tree
from setwright.starting.starter import SQUAD

THEIRS: Final = frozenset(
    {"starts", "date", "days to match", "follows", "block", "last week", "people", "ages", "squad", "for",
     "not for", "instead", "private note", "signed off"}
)  # fmt: skip
"""Keys that say who or when, or that are nobody else's business."""
PRIVATE: Final = frozenset({"private note"})
"""What stays behind of the files that go along."""
BESIDE: Final = ("gym", "movements")
"""Keys whose file goes along."""

SHORTEST_NAME: Final = 2
"""Letters from which a part of a name is looked for in other lines (choice: an initial is in every word)."""

_REMARK: Final = re.compile(r"\s*(?:^|\s)#\s.*")


class Gone(NamedTuple):
    """Lines of the old block that are left out, and the key they stood under, or "the remark"."""

    first: int
    last: int
    what: str

    @property
    def words(self) -> str:
        """Where it stood and what it was: "lines 8-25, squad"."""
        lines = f"line {self.first}" if self.first == self.last else f"lines {self.first}-{self.last}"
        return f"{lines}, {self.what}"


class Again(NamedTuple):
    """The new plan or a file that goes along, what it leaves out, and the files beside it that it names."""

    text: str
    gone: tuple[Gone, ...]
    beside: tuple[str, ...] = ()


def used_again(file: str, text: str, old: Squad | None) -> Again:
    """The plan in ``text`` for another squad, which is in the file ``squad.yaml`` beside it.

    ``old``: the squad it was for. Remarks in which one of them is named are left out.

    Raises: CannotRun when the plan is not written line by line, or when a name would stay behind.
    """
    root = read_tree(file, text).root
    assert isinstance(root, Pairs)
    typed = text.removeprefix("\ufeff").splitlines()
    rows: list[str] = list(typed)
    gone = [_take_out(file, rows, key, node, first=first) for key, node, first in _theirs(root)]
    gone += _without_names(file, rows, old)
    plan = next((key for key, _ in root.pairs if fold(key.text) == "plan"), root.pairs[0][0])
    rows[plan.place.line - 1] += f"\nsquad: {SQUAD}"
    beside = (node.text for key, node in root.pairs if fold(key.text) in BESIDE and isinstance(node, Scalar))
    return Again(_kept(rows, typed), tuple(sorted(set(gone))), tuple(beside))


def goes_along(file: str, text: str, old: Squad | None) -> Again:
    """A gym or a file of movements for another squad: without private notes and remarks that name somebody.

    Raises: CannotRun as above.
    """
    root = read_tree(file, text).root
    typed = text.removeprefix("\ufeff").splitlines()
    rows: list[str] = list(typed)
    private = _theirs(root, PRIVATE) if root else ()
    gone = [_take_out(file, rows, key, node, first=first) for key, node, first in private]
    gone += _without_names(file, rows, old)
    return Again(_kept(rows, typed), tuple(sorted(set(gone))))


def _kept(rows: list[str], typed: list[str]) -> str:
    """The rows that are left, without those that were emptied."""
    return "\n".join(row for row, was in zip(rows, typed, strict=True) if row or not was) + "\n"


def _theirs(
    node: Node, keys: frozenset[str] = THEIRS, *, first: bool = False
) -> Iterator[tuple[Scalar, Node, bool]]:
    """Keys that stay behind, with their values, and whether they stand behind the hyphen of a list."""
    if isinstance(node, Listing):
        for entry in node.nodes:
            yield from _theirs(entry, keys, first=True)
    elif isinstance(node, Pairs):
        for at, (key, value) in enumerate(node.pairs):
            name = fold(key.text)
            if name in keys or (keys is THEIRS and name == "load" and is_by_name(value)):
                yield key, value, first and at == 0
            else:
                yield from _theirs(value, keys)


def _take_out(file: str, rows: list[str], key: Scalar, node: Node, *, first: bool) -> Gone:
    """Empty the lines of a key; what stands below takes the hyphen over where it stood behind one."""
    at, column = key.place.line - 1, key.place.column - 1
    before = rows[at][:column] if rows[at] else ""
    if before.strip(" -\"'"):
        said = f"{file}, line {at + 1}: `{key.text}` stands in one line with other keys"
        raise CannotRun(f"{said}; write one key a line and try again")
    last = at
    for number in range(at + 1, len(rows)):
        row = rows[number]
        depth = len(row) - len(row.lstrip())
        in_list = isinstance(node, Listing) and depth == column and row.lstrip().startswith("- ")
        if row.strip() and depth <= column and not in_list:
            break
        last = number if row.strip() else last
    rows[at : last + 1] = [""] * (last + 1 - at)
    if first and last + 1 < len(rows):
        rows[last + 1] = before + rows[last + 1][column:]
    return Gone(at + 1, last + 1, key.text)


def _without_names(file: str, rows: list[str], old: Squad | None) -> Iterator[Gone]:
    """Take the remarks away in which one of the old squad is named. Raises: CannotRun for another line."""
    words = [word for one in old.athletes for word in (one.name, *one.name.split())] if old else []
    escaped = [re.escape(word) for word in words if len(word) >= SHORTEST_NAME]
    names = re.compile(rf"(?<!\w)(?:{'|'.join(escaped)})(?!\w)")
    for number, row in enumerate(rows, 1):
        if escaped and names.search(row):
            rows[number - 1] = _REMARK.sub("", row)
            yield Gone(number, number, "the remark")
            if found := names.search(rows[number - 1]):
                said = f"{file}, line {number}: {found[0]} is named here, in a line that the block needs"
                raise CannotRun(f"{said}; take the name out of it and try again")
