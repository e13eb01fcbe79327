"""What may not be found on a printed sheet, and how a sheet is summed up in one line."""

from collections.abc import Iterator

from setwright.sheets.kinds import LARGE
from tests.pages.measure import Measured

SMALLEST_PT = {"body": 12.0, "head": 11.0, "picture": 9.0, "corner": 8.5}
"""Smallest type of each kind, in points."""
SMALLEST_LARGE_PT = {"body": 18.0, "head": 18.0, "picture": 18.0, "corner": 14.0}
"""The same in large print."""
SMALLEST_BOX_MM = (12.0, 9.0)
"""Smallest box to write in, in mm."""
SMALLEST_CAPITALS_MM = {
    "a4": {"time": 12.0, "block": 12.0, "group": 12.0, "picture": 12.0},
    "letter": {"time": 12.0, "block": 12.0, "group": 12.0, "picture": 12.0},
    "a3": {"time": 17.0, "block": 17.0, "group": 12.0, "picture": 12.0},
}
"""Smallest capitals of a wall board, in mm, by paper and line."""
MM_A_METRE = 25 / 3
"""Height of a capital for each metre it is read from (common practice, no source)."""
ROUNDING = 0.06
"""Points or millimetres that a browser's rounding to its own units may take."""


def faults(seen: Measured) -> Iterator[str]:
    """One sentence a fault; nothing when the sheet is as it should be."""
    yield from _too_small(seen)
    if seen.unlike:
        yield f"unlike a sheet: {'; '.join(seen.unlike[:3])}"
    if seen.split_rows or seen.split_blocks:
        yield f"{seen.split_rows} rows and {seen.split_blocks} blocks split between pages"
    if seen.cut:
        yield f"text leaves its frame: {'; '.join(seen.cut[:3])}"
    if seen.outside:
        yield f"text outside the margins: {seen.outside[:40]}"
    if seen.bare_pages:
        yield f"{seen.bare_pages} pages with nothing but a footer"
    if seen.fetched:
        yield f"{seen.fetched} things that are run or fetched"


def _too_small(seen: Measured) -> Iterator[str]:
    """Type, letters for the wall and boxes under what can be read or written in."""
    smallest = SMALLEST_LARGE_PT if seen.kind in LARGE.values() else SMALLEST_PT
    for kind, points in seen.smallest.items():
        if points < smallest[kind] - ROUNDING:
            yield f"{kind} type of {points:.1f} pt, under {smallest[kind]:g}"
    if seen.smallest_in_pdf < min(smallest.values()) - ROUNDING:
        yield f"type of {seen.smallest_in_pdf:.1f} pt in the print"
    for line, height in seen.capitals.items():
        if height < SMALLEST_CAPITALS_MM[seen.paper][line] - ROUNDING:
            yield f"capitals of a {line} line of {height:.1f} mm"
    if seen.capitals and seen.read_from is None:
        yield "a board that does not say from where it is read"
    lines = [height for line, height in seen.capitals.items() if line in ("time", "block")]
    if seen.read_from and min(lines) < seen.read_from * MM_A_METRE - ROUNDING:
        yield f"capitals of {min(lines):.1f} mm, said to be read from {seen.read_from:g} m"
    if seen.smallest_box and any(
        side < least - ROUNDING for side, least in zip(seen.smallest_box, SMALLEST_BOX_MM, strict=True)
    ):
        yield f"a box of {_box(seen)}"


def too_long(seen: Measured, kind: str) -> Iterator[str]:
    """A second page of a kind that is read at one glance."""
    if kind == "summary" and seen.pages > 1:
        yield f"{seen.pages} pages, and one is all a summary may have"


def summary(name: str, seen: Measured) -> str:
    """Pages, smallest type, splits, smallest box and cut text in one line, and the letters of a board."""
    letters = ", ".join(f"{line} {height:.1f}" for line, height in seen.capitals.items())
    board = f", capitals {letters} mm, read from {seen.read_from:g} m" if seen.read_from else ""
    return (
        f"{name}: {seen.pages} pages, smallest type {seen.smallest_in_pdf:.1f} pt, "
        f"split rows {seen.split_rows}, split blocks {seen.split_blocks}, "
        f"smallest box {_box(seen)}, text cut {len(seen.cut)}, letters outside {len(seen.outside)}{board}"
    )


def _box(seen: Measured) -> str:
    return "{:.1f} x {:.1f} mm".format(*seen.smallest_box) if seen.smallest_box else "none"
