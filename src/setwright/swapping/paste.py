"""Changes as lines to type, each at its place in the coach's own file, in the file's own indentation."""

import re
from collections.abc import Iterable
from typing import Final, NamedTuple

from setwright.model.plan import Group, Item, Session, Week
from setwright.places import Source
from setwright.swapping.changes import Change, dose_text, lines, rest_of

_REST_IN_LINE: Final = re.compile(r",\s*rest\s+(?P<rest>[^,#]+?)\s*(?=,|#|$)")
_REST_BELOW: Final = re.compile(r"\s*rest\s*:\s*(?P<rest>[^#]+?)\s*(?:#.*)?$")
_KEPT: Final = re.compile(r"\s*(?:priority|for|not for)\s*:")
_REMARK: Final = re.compile(r"\s*(#.*)?$")


class Edit(NamedTuple):
    """Lines ``first`` to ``last`` (counted from 1) give way to ``new``; ``last`` before ``first`` inserts."""

    first: int
    last: int
    new: tuple[str, ...]


def edits(week: Week, changes: Iterable[Change], source: Source) -> tuple[Edit, ...] | None:
    """The edits that make the changes in the text of a plan, from the top down.

    None where the text can't be cut by lines: entries in braces, a day that another day repeats.
    """
    written = source.text.splitlines()
    at = {spot: (item, group) for spot, item, group in lines(week)}
    made: list[Edit] = []
    for change in changes:
        session = week.sessions[change.spot.session]
        if _shared(week, session) or session.place.file != source.file:
            return None
        edit = (
            _added(change, session, written)
            if change.kind == "add"
            else _at_a_line(change, *at[change.spot], written)
        )
        if edit is None:
            return None
        made.append(edit)
    return tuple(sorted(made))


def pasted(text: str, made: Iterable[Edit]) -> str:
    """The text of a plan with the edits made; line ends become those of Unix."""
    written = text.splitlines()
    for edit in sorted(made, reverse=True):
        written[edit.first - 1 : max(edit.last, edit.first - 1)] = edit.new
    return "\n".join(written) + "\n"


def _shared(week: Week, session: Session) -> bool:
    places = {item.place for item in session.items()}
    others = (one for one in week.sessions if one is not session)
    return any(item.place in places for other in others for item in other.items())


def _added(change: Change, session: Session, written: list[str]) -> Edit | None:
    if not session.work:
        return None
    entry = session.work[-1]
    block = _block(entry.place.line, written)
    if block is None:
        return None
    first, last = block
    indent = _indent(written[first - 1])
    return Edit(last + 1, last, (f"{indent}- {_line(change)}",))


def _at_a_line(change: Change, item: Item, group: Group | None, written: list[str]) -> Edit | None:
    block = _block(item.place.line, written)
    if block is None:
        return None
    first, last = block
    indent, body = _indent(written[first - 1]), written[first - 1 : last]
    new = f"- {_line(change, item, group)}"
    if change.kind == "replace":
        kept = [line for line in body[1:] if _KEPT.match(line)]
        return Edit(first, last, (f"{indent}{new}", *kept))
    if group is not None:
        return Edit(last + 1, last, (f"{indent}{new}",))
    return _paired(item, new, Edit(first, last, tuple(body)))


def _paired(item: Item, new: str, old: Edit) -> Edit | None:
    """A line and the one paired with it as a superset; the line's rest becomes that of the pair."""
    indent = _indent(old.new[0])
    found = _REST_IN_LINE.search(old.new[0])
    head = old.new[0] if found is None else old.new[0][: found.start()] + old.new[0][found.end() :]
    below = [line for line in old.new[1:] if not _REST_BELOW.match(line)]
    rests = [match["rest"] for line in old.new[1:] if (match := _REST_BELOW.match(line))]
    rest = rests[0] if rests else found["rest"] if found else None
    if (rest is None) != (rest_of(item) is None):
        return None
    inside = [f"    {line}" if line.strip() else line for line in (head, *below)]
    group = [f"{indent}- superset:", *inside, f"{indent}    {new}"]
    return old._replace(new=(*group, *([f"{indent}  rest: {rest}"] if rest else [])))


def _line(change: Change, item: Item | None = None, group: Group | None = None) -> str:
    return f"{change.movement['name']}: {dose_text(change, item, group)}"


def _block(first: int, written: list[str]) -> tuple[int, int] | None:
    """First and last line of an entry that starts on ``first``; None when it does not start with a hyphen."""
    head = written[first - 1]
    if not head.lstrip().startswith("- ") or "{" in head or "[" in head.split("#")[0].split(":")[0]:
        return None
    depth = len(_indent(head))
    last = first
    for number in range(first + 1, len(written) + 1):
        line = written[number - 1]
        if _REMARK.match(line):
            continue
        if len(_indent(line)) <= depth:
            break
        last = number
    return first, last


def _indent(line: str) -> str:
    return line[: len(line) - len(line.lstrip(" "))]
