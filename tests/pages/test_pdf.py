"""WeasyPrint's print of a sheet beside Chromium's: as many pages, and the same ink in the same places."""

import os
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pypdfium2
import pytest
from numpy.typing import NDArray

from setwright.sheets import sheet_html
from setwright.sheets.kinds import KINDS, Kind
from setwright.sheets.pdf import printer
from tests.pages.__main__ import PRINTED
from tests.pages.browser import Browser, installed
from tests.pages.plans import CIRCUIT, LONG, check

DOTS = 2.5
"""Dots a point at which pages are drawn (180 an inch: hairlines keep their ink)."""

CELL = 50
"""Side of the squares that are compared, in dots: 7 mm, so a letter may shift a little."""

INK = 0.08
"""Difference in the share of ink that makes a square different (choice: a word)."""

DIFFERENT = 0.03
"""Share of a page's squares that may differ: none seen but on the board: large letters shift (0.025)."""

PLANS = {"long": check(LONG), "circuit": check(CIRCUIT)}
PAIRS = [
    (name, kind) for name, plan in PLANS.items() for kind, form in KINDS.items() if form.pages(plan, "", {})
]

pytestmark = pytest.mark.skipif(
    installed() is None and os.environ.get("CI") != "true", reason="not run: no Chromium"
)


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    path = installed()
    assert path, "no Chromium on this machine; set CHROMIUM to its path"
    with Browser(path) as running:
        yield running


def ink(pdf: bytes) -> list[NDArray[np.float64]]:
    """The share of ink in each square of each page."""
    pages = [
        np.asarray(page.render(scale=DOTS, grayscale=True).to_pil()) for page in pypdfium2.PdfDocument(pdf)
    ]
    return [_squares(1 - page / 255) for page in pages]


def _squares(page: NDArray[np.float64]) -> NDArray[np.float64]:
    down, across = (side // CELL for side in page.shape)
    whole = page[: down * CELL, : across * CELL]
    shares: NDArray[np.float64] = whole.reshape(down, CELL, across, CELL).mean(axis=(1, 3))
    return shares


def apart(browser: Browser, html: str, other: str, folder: Path) -> list[float]:
    """How far WeasyPrint's print of ``html`` is from Chromium's of ``other``: the share, page by page."""
    file = folder / "sheet.html"
    file.write_text(other, encoding="utf-8")
    browser.open(file)
    ours, theirs = ink(printer()(html, "")), ink(browser.pdf())
    assert [page.shape for page in ours] == [page.shape for page in theirs]
    return [float((abs(one - two) > INK).mean()) for one, two in zip(ours, theirs, strict=True)]


@pytest.mark.parametrize(("plan", "kind"), PAIRS)
def test_both_engines_print_the_same(browser: Browser, tmp_path: Path, plan: str, kind: Kind) -> None:
    html = sheet_html(PLANS[plan], kind, KINDS[kind].papers[0], PRINTED)
    assert max(apart(browser, html, html, tmp_path)) <= DIFFERENT


def test_what_one_of_them_left_out_would_be_seen(browser: Browser, tmp_path: Path) -> None:
    html = sheet_html(PLANS["circuit"], "session", "a4", PRINTED)
    without = html.replace("</style>", ".do { visibility: hidden }</style>")
    assert max(apart(browser, html, without, tmp_path)) > DIFFERENT
