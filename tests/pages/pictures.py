"""``python -m tests.pages.pictures``: the sheet that the README shows, printed anew from the example week."""

import io
import sys
import tempfile
from pathlib import Path
from typing import Final

import pypdfium2
from PIL import Image, ImageChops, ImageStat

from setwright.sheets import sheet_html
from tests.pages.__main__ import PRINTED
from tests.pages.browser import Browser, installed
from tests.pages.plans import example

SHEET: Final = Path(__file__).parents[2] / "docs" / "pictures" / "session-sheet.png"
"""The first page of the session sheets of examples/skerrow-bay/week-good.yaml, on A4."""

DOTS_AN_INCH: Final = 80
"""Large enough to be read in a page, small enough to keep (choice)."""

SHADES: Final = 16
"""Shades of grey that are kept (choice: no difference is seen, and the file is half the size)."""


def drawn(browser: Browser) -> Image.Image:
    """The sheet as a picture, in shades of grey."""
    with tempfile.TemporaryDirectory() as folder:
        page = Path(folder) / "sheet.html"
        page.write_text(sheet_html(example("week-good.yaml"), "session", "a4", PRINTED), encoding="utf-8")
        browser.open(page)
        printed = pypdfium2.PdfDocument(browser.pdf())
    picture: Image.Image = printed[0].render(scale=DOTS_AN_INCH / 72, grayscale=True).to_pil()
    return picture


def difference(one: Image.Image, other: Image.Image) -> float:
    """How far two pictures of one size are apart: the mean difference of a dot, from 0 to 1."""
    return float(ImageStat.Stat(ImageChops.difference(one.convert("L"), other.convert("L"))).mean[0]) / 255


def main() -> int:
    """Write the picture; 2 without a browser."""
    path = installed()
    if path is None:
        print("no Chromium on this machine; set CHROMIUM to its path")
        return 2
    file = io.BytesIO()
    with Browser(path) as browser:
        drawn(browser).quantize(SHADES).save(file, "PNG", optimize=True)
    SHEET.write_bytes(file.getvalue())
    print(SHEET)
    return 0


if __name__ == "__main__":
    sys.exit(main())
