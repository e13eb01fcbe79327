"""What one athlete does instead, as a coach reads it: the line, the limit, the movement, what is lost."""

from collections.abc import Iterator

from setwright.report.swap import BY_HAND, INSIDE, SHOW, typed
from setwright.report.wrapping import plain, wrapped
from setwright.swapping.instead import ForOne, Instead


def swap_for_text(one: ForOne) -> str:
    """The whole screen of ``swap --for``, with a line end. The file itself is not touched."""
    return "\n\n".join("\n".join(block) for block in _blocks(one)) + "\n"


def _blocks(one: ForOne) -> Iterator[list[str]]:
    number, name = len(one.lines), one.athlete.name
    if number:
        proposed = any(line.typed for line in one.lines)
        head = wrapped(
            f"{name}: {number} line{'' if number == 1 else 's'} outside what is written for {name}"
        )
        yield [head, INSIDE] if proposed else [head]
        for line in one.lines:
            yield list(_line(one, line))
    else:
        yield [wrapped(f"{name}: no line of the plan breaks a written limit or is on the list")]
    if one.ask:
        yield [wrapped(f"At a limit, or not known; ask before {name} does: {', '.join(one.ask)}.")]
    if number:
        yield [SHOW]


def _line(one: ForOne, line: Instead) -> Iterator[str]:
    item = line.item
    yield wrapped(f"{line.session.title}, {item.name} (line {item.place.line}): {'; '.join(line.why)}")
    if line.movement is None and line.typed:
        yield from _with_less(one, line)
        return
    if line.movement is None:
        yield wrapped(
            "nothing in this gym and inside the written limit is of its line or kind: write "
            f"`not for: [{one.athlete.name}]` under it",
            "  ",
            "  ",
        )
        return
    yield wrapped(f"instead: {line.movement['name']}", "  ", "    ")
    if line.ask:
        yield wrapped(f"at a limit, so ask before it is done: {'; '.join(line.ask)}", "  ", "    ")
    yield wrapped(f"lost: {', '.join(line.lost) or 'nothing'}", "  ", "    ")
    yield from _to_type(one, line)


def _with_less(one: ForOne, line: Instead) -> Iterator[str]:
    yield wrapped(
        "the same line with no more than that; less is for whoever set the limit to say", "  ", "    "
    )
    yield from _to_type(one, line)


def _to_type(one: ForOne, line: Instead) -> Iterator[str]:
    if line.edit is None:
        yield BY_HAND
        yield from (f"  | {plain(text)}" for text in line.typed)
    else:
        yield from typed(one.before.file, (line.edit,))
