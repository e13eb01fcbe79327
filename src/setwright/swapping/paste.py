"""Changes as lines to type, each at its place in the coach's own file, in the file's own indentation."""

import re
from collections.abc import Iterable, Iterator
from itertools import groupby
from typing import Final, NamedTuple

from setwright.model.plan import Group, Item, Session, Week
from setwright.places import Source
from setwright.swapping.changes import Change, Spot, dose_text, lines, rest_of

_REST_IN_LINE: Final = re.compile(r",\s*rest\s+(?P<rest>[^,]+?)(?=\s*(?:,|$))")
_REST_BELOW: Final = re.compile(r"\s*rest\s*:\s*(?P<rest>[^#]+?)\s*(?:#.*)?$")
_HOLDS_A_DOSE: Final = re.compile(r"\s*(?:-\s|do\s*:)")
_KEPT: Final = re.compile(r"\s*(?:priority|for|not for|only in)\s*:")
_REMARK: Final = re.compile(r"\s*(#.*)?$")


class Edit(NamedTuple):
    """Lines ``first`` to ``last`` (counted from 1) give way to ``new``; ``last`` before ``first`` inserts.

    ``gone``: what stood under the old line and is not kept, as it was typed.
    """

    first: int
    last: int
    new: tuple[str, ...]
    gone: tuple[str, ...] = ()


class Block(NamedTuple):
    """The lines of one entry of a list, from its hyphen on, with the number of the first."""

    first: int
    body: tuple[str, ...]

    @property
    def last(self) -> int:
        """The number of its last line; remarks and blank lines behind it belong to what follows."""
        return self.first + len(self.body) - 1

    @property
    def indent(self) -> str:
        """The blanks before its hyphen."""
        return self.body[0][: _depth(self.body[0])]

    def below(self, *new: str) -> Edit:
        """The edit that puts new lines after it."""
        return Edit(self.last + 1, self.last, new)


def edits(week: Week, changes: Iterable[Change], source: Source) -> tuple[Edit, ...] | None:
    """The edits that make the changes in the text of a plan, from the top down.

    None where the text can't be cut by lines: entries in braces, a day that another day repeats.
    """
    at = {spot: (item, group) for spot, item, group in lines(week)}
    made = [_edit(week, change, at, source) for change in changes]
    found = sorted(edit for edit in made if edit)
    return tuple(_together(found)) if len(found) == len(made) else None


def pasted(text: str, made: Iterable[Edit]) -> str:
    """The text of a plan with the edits made; line ends become those of Unix."""
    written = text.splitlines()
    for edit in sorted(made, reverse=True):
        written[edit.first - 1 : max(edit.last, edit.first - 1)] = edit.new
    return "\n".join(written) + "\n"


def block_at(first: int, source: Source) -> Block | None:
    """The entry that starts with a hyphen on line ``first``; None for one in braces or on a later line."""
    written = source.text.splitlines()
    head = written[first - 1]
    if not head.lstrip().startswith("- ") or "{" in head:
        return None
    last = first
    for number, line in enumerate(written[first:], first + 1):
        if _REMARK.match(line):
            continue
        if _depth(line) <= _depth(head):
            break
        last = number
    return Block(first, tuple(written[first - 1 : last]))


def repeating(week: Week, session: Session) -> Iterator[Session]:
    """The other days that have lines of this one, so that a change of the text would change them too."""
    places = {item.place for item in session.items()}
    for other in week.sessions:
        if other is not session and any(item.place in places for item in other.items()):
            yield other


def _edit(
    week: Week, change: Change, at: dict[Spot, tuple[Item, Group | None]], source: Source
) -> Edit | None:
    session = week.sessions[change.spot.session]
    if not session.work or session.reuse or any(repeating(week, session)):
        return None
    if change.kind == "add":
        before = max(change.spot.entry - 1, 0)
        block = block_at(session.work[before].place.line, source)
        if block is None:
            return None
        edit = block.below(f"{block.indent}- {_line(change)}")
        return edit if change.spot.entry else edit._replace(first=block.first, last=block.first - 1)
    item, group = at[change.spot]
    block = block_at(item.place.line, source)
    return block and _at_a_line(change, item, group, block)


def _at_a_line(change: Change, item: Item, group: Group | None, block: Block) -> Edit | None:
    new = f"- {_line(change, item, group)}"
    if change.kind == "replace":
        kept, gone = _handed_on(block.body)
        return Edit(block.first, block.last, (f"{block.indent}{new}", *kept), gone)
    if group is not None:
        return block.below(f"{block.indent}{new}")
    return _paired(item, new, block)


def _handed_on(body: tuple[str, ...]) -> tuple[list[str], tuple[str, ...]]:
    """Of what stands under a line: what goes on with another movement, remarks too, and what does not."""
    kept, gone, keep = [], [], False
    words = min((_depth(line) for line in body[1:] if not _REMARK.match(line)), default=0)
    for line in body[1:]:
        if _depth(line) == words and not line.lstrip().startswith(("-", "#")):
            keep = _KEPT.match(line) is not None
        if keep or _REMARK.match(line):
            kept.append(line)
        else:
            gone.append(line.strip())
    return kept, tuple(gone)


def _paired(item: Item, new: str, block: Block) -> Edit | None:
    """A line and the one paired with it as a superset; the line's rest becomes that of the pair."""
    rests = [rest for line in block.body for rest in _rests(line)]
    if len(rests) != (rest_of(item) is not None):
        return None
    kept = [_without_rest(line) for line in block.body if not _REST_BELOW.match(line)]
    inside = [f"    {line}" if line.strip() else line for line in kept]
    rest = [f"{block.indent}  rest: {one}" for one in rests]
    group = (f"{block.indent}- superset:", *inside, f"{block.indent}    {new}", *rest)
    return Edit(block.first, block.last, group)


def _rests(line: str) -> Iterator[str]:
    if below := _REST_BELOW.match(line):
        yield below["rest"]
    elif _HOLDS_A_DOSE.match(line):
        yield from (found["rest"] for found in _REST_IN_LINE.finditer(line.partition(" #")[0]))


def _without_rest(line: str) -> str:
    typed, remark, words = line.partition(" #")
    return _REST_IN_LINE.sub("", typed) + remark + words if _HOLDS_A_DOSE.match(line) else line


def _together(made: list[Edit]) -> Iterator[Edit]:
    """Edits with those that insert at one place joined, in their order."""
    for (first, last), some in groupby(made, key=lambda edit: edit[:2]):
        same = list(some)
        yield (
            same[0]._replace(new=tuple(line for edit in same for line in edit.new))
            if last < first
            else same[0]
        )


def _line(change: Change, item: Item | None = None, group: Group | None = None) -> str:
    return f"{change.movement['name']}: {dose_text(change, item, group)}"


def _depth(line: str) -> int:
    return len(line) - len(line.lstrip(" "))
