"""docs/movements, written from the compiled library: every movement by pattern, the scored ones at length."""

from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby
from typing import Any, Final, get_args

from setwright.library.closed import Pattern
from setwright.library.table import MODEL_NOTE, Library
from setwright.report.move import in_words
from setwright.report.phrases import PARTS, joined
from setwright.report.wrapping import wrapped

Movement = Mapping[str, Any]

HEAD: Final = """\
# Movements

Written from the library; `setwright move NAME` prints the same and more. Each name here, and each of those
under "also called", may be typed in a plan. Movements with a link are scored by the engine, by the way of the
arm: their page has a picture of each, and "chest" says what a hard set counts for the clavicular, sternal and
costal part. All others are counted, by the muscles that they are known to train. "Load" is how heavy a
movement can be made, and by what.
"""

READING: Final = f"""\
On the left of a picture is the right half of the chest from the front, at the start of the lift, with its
three parts as the model has them: black with white lines is *much* (the movement serves this part's
line), white with black lines is *some* (the part is only loaded along its line), a dashed outline is
*none*. On the right is the arm from above: drawn out at the start, dashed half way and at the end. The
arrow is the way of the hand, the dash-dot line the body's midline.

{MODEL_NOTE}; [how far to trust them](../engine.md#8-how-far-to-trust-a-figure).
"""


def movement_pages(table: Library) -> Mapping[str, str]:
    """Every page by its file name: one table a pattern in README.md, and a page for each scored pattern."""
    order = get_args(Pattern).index
    movements = sorted(map(table.movement, table.keys()), key=lambda one: order(one["pattern"]))
    patterns = {pattern: tuple(found) for pattern, found in groupby(movements, key=_pattern)}
    contents = wrapped(", ".join(f"[{pattern}](#{_anchor(pattern)})" for pattern in patterns)) + ".\n"
    pages = {"README.md": "\n".join([HEAD, contents, *(_table(*one) for one in patterns.items())])}
    return pages | {
        _page_of(pattern): _page(pattern, found, table)
        for pattern, found in patterns.items()
        if any(one["scored"] for one in found)
    }


def _pattern(movement: Movement) -> str:
    return str(movement["pattern"])


def _page_of(pattern: str) -> str:
    return f"{pattern.replace(' ', '-')}.md"


def _anchor(name: str) -> str:
    """What a heading is called in a link."""
    return "".join(letter for letter in name.lower() if letter.isalnum() or letter in " -").replace(" ", "-")


def _table(pattern: str, movements: Sequence[Movement]) -> str:
    scored = any(one["scored"] for one in movements)
    columns = ["movement", "also called", "load", *(["chest"] if scored else []), "trains", "helps"]
    rows = (
        [
            _link(one),
            ", ".join(one["aliases"]),
            f"{one['class']}, {one['implement']}",
            *([_doses(one)] if scored else []),
            ", ".join(one["prime"]),
            ", ".join(one["assist"]),
        ]
        for one in movements
    )
    return f"## {pattern}\n\n" + _row(columns) + "|---" * len(columns) + "|\n" + "".join(map(_row, rows))


def _row(cells: Sequence[str]) -> str:
    return f"| {' | '.join(cells)} |\n"


def _link(movement: Movement) -> str:
    name = str(movement["name"])
    return f"[{name}]({_page_of(_pattern(movement))}#{_anchor(name)})" if movement["scored"] else name


def _doses(movement: Movement) -> str:
    """What a hard set counts for each part of the chest that it counts for."""
    doses = ((part, movement["parts"][part]["dose"]) for part in PARTS)
    return ", ".join(f"{part} {dose:g}" for part, dose in doses if dose)


def _page(pattern: str, movements: Sequence[Movement], table: Library) -> str:
    head = f"# {pattern.capitalize()}\n\nWritten from the library: [all movements](README.md).\n\n{READING}"
    return "\n".join([head, *(_explained(one, table) for one in movements if one["scored"])])


def _explained(movement: Movement, table: Library) -> str:
    said = in_words(movement)
    blocks = [f"## {movement['name']}", wrapped(f"{said[0].upper()}{said[1:]}")]
    if movement["refused"]:
        blocks.append(wrapped(f"Not drawn. {movement['refused']}"))
    else:
        blocks.append(f"![{movement['name']}](pictures/{movement['key']}.svg)")
    return "\n\n".join([*blocks, "\n".join(_points(movement, table))]) + "\n"


def _points(movement: Movement, table: Library) -> Iterator[str]:
    """Other names, what to watch, and what is easier and harder, one point each."""
    said = {
        "Also called": ", ".join(movement["aliases"]),
        "Takes": ", ".join(movement["needs"]),
        "Easier": _names(movement["easier"], table),
        "Harder": _names(movement["harder"], table),
    }
    yield from (wrapped(f"{label}: {text}.", "- ", "  ") for label, text in said.items() if text)
    yield from (wrapped(f"Watch: {caution}", "- ", "  ") for caution in movement["cautions"])


def _names(keys: Sequence[str], table: Library) -> str:
    return joined([str(table.movement(key)["name"]) for key in keys], "or")
