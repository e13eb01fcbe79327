"""What may not be found on a printed sheet, and how a sheet is summed up in one line."""

from collections.abc import Iterator

from tests.pages.measure import Measured

SMALLEST_PT = {"body": 12.0, "head": 11.0, "picture": 9.0, "corner": 8.5}
"""Smallest type of each kind, in points."""
SMALLEST_BOX_MM = (12.0, 9.0)
"""Smallest box to write in, in mm."""
ROUNDING = 0.06
"""Points or millimetres that a browser's rounding to its own units may take."""


def faults(seen: Measured) -> Iterator[str]:
    """One sentence a fault; nothing when the sheet is as it should be."""
    for kind, points in seen.smallest.items():
        if points < SMALLEST_PT[kind] - ROUNDING:
            yield f"{kind} type of {points:.1f} pt, under {SMALLEST_PT[kind]:g}"
    if seen.smallest_in_pdf < min(SMALLEST_PT.values()) - ROUNDING:
        yield f"type of {seen.smallest_in_pdf:.1f} pt in the print"
    if seen.smallest_box and any(
        side < least - ROUNDING for side, least in zip(seen.smallest_box, SMALLEST_BOX_MM, strict=True)
    ):
        yield f"a box of {_box(seen)}"
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


def too_long(seen: Measured, kind: str) -> Iterator[str]:
    """A second page of a kind that is read at one glance."""
    if kind == "summary" and seen.pages > 1:
        yield f"{seen.pages} pages, and one is all a summary may have"


def summary(name: str, seen: Measured) -> str:
    """Pages, smallest type, splits, smallest box and cut text in one line."""
    return (
        f"{name}: {seen.pages} pages, smallest type {seen.smallest_in_pdf:.1f} pt, "
        f"split rows {seen.split_rows}, split blocks {seen.split_blocks}, "
        f"smallest box {_box(seen)}, text cut {len(seen.cut)}, letters outside {len(seen.outside)}"
    )


def _box(seen: Measured) -> str:
    return "{:.1f} x {:.1f} mm".format(*seen.smallest_box) if seen.smallest_box else "none"
