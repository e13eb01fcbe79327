"""What is read off one sheet: from the page as the browser lays it out, and from the PDF it prints."""

import ctypes
import re
from collections import defaultdict
from dataclasses import dataclass
from pathlib import Path
from typing import NamedTuple

import pypdfium2
import pypdfium2.raw as pdfium

from tests.pages.browser import Browser

MM_PER_PX = 25.4 / 96
MM_PER_PT = 25.4 / 72
SIDE_MARGINS_MM = {"session": (20.0, 12.0), "week": (16.0, 12.0), "summary": (20.0, 12.0)}
TOP_MARGIN_MM = 12.0
FOOTER_PT = 14 / MM_PER_PT
"""What stands lower than this on a page is its footer."""
ROUNDING_PT = 1.5
"""How far the browser's whole pixels may push a letter over a margin, in points (half a millimetre)."""

SEEN = """(() => {
  const smallest = {}, cut = [];
  const kind = e => e.closest('.target') ? 'corner' : e.closest('svg') ? 'picture'
      : e.closest('.columns, .matrix thead') ? 'head' : 'body';
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const node = walk.currentNode, e = node.parentElement;
    if (!node.data.trim() || e.closest('.unseen, style')) continue;
    const svg = e.closest('svg'), scale = svg ? e.getScreenCTM().a : 1;
    const points = parseFloat(getComputedStyle(e).fontSize) * scale * 72 / 96, k = kind(e);
    smallest[k] = Math.min(smallest[k] ?? 1e9, points);
    const range = document.createRange(); range.selectNodeContents(node);
    const text = range.getBoundingClientRect();
    const frame = (svg ?? e.closest('.box, td, th, caption, p, h1, h2, header')).getBoundingClientRect();
    if (text.left < frame.left - 1 || text.right > frame.right + 1
        || text.top < frame.top - (svg ? 1 : 4) || text.bottom > frame.bottom + (svg ? 1 : 4))
      cut.push(node.data.trim().slice(0, 40));
  }
  const boxes = [...document.querySelectorAll('.box, .changed')].map(b => b.getBoundingClientRect());
  return {smallest, cut, boxes: boxes.map(b => [b.width, b.height]),
          loads: [...document.querySelectorAll('script, link, img, iframe, object')].length};
})()"""
"""Smallest type of each kind in points, text that leaves its frame, boxes in px, things fetched or run."""

MARKED = """[...document.querySelectorAll('tbody.block, .day, .matrix, .pictures')].forEach((block, b) =>
  [...block.querySelectorAll('tr')].forEach((row, r) => ['top', 'bottom'].forEach(edge => {
    const mark = document.createElement('span');
    mark.textContent = `<<${b}:${r}>>`;
    mark.style = `position:absolute;${edge}:0;left:0;font:3px/1 sans-serif;padding:0;white-space:nowrap`;
    row.cells[0].style.position = 'relative';
    row.cells[0].append(mark);
  })))"""
"""A tiny mark at both edges of every row of what must stay together; it takes no room."""


@dataclass(frozen=True, slots=True)
class Measured:
    """One printed sheet. Type in points by kind, lengths in mm, the rest are texts that are at fault."""

    pages: int
    smallest: dict[str, float]
    smallest_in_pdf: float
    smallest_box: tuple[float, float] | None
    cut: tuple[str, ...]
    outside: str
    split_rows: int
    split_blocks: int
    bare_pages: int
    fetched: int


def measure(browser: Browser, html: Path, kind: str, width_mm: float) -> Measured:
    """Print one sheet and read off what stands in :class:`Measured`; PDF and page images land beside it.

    ``width_mm``: the paper's width as it is printed.
    """
    left, right = SIDE_MARGINS_MM[kind]
    browser.width(round((width_mm - left - right) / MM_PER_PX))
    browser.open(html)
    seen = browser.evaluate(SEEN)
    printed = browser.pdf()
    browser.evaluate(MARKED)
    rows, blocks = _split(browser.pdf())
    html.with_suffix(".pdf").write_bytes(printed)
    _draw(printed, html)
    pages = [_letters(page) for page in pypdfium2.PdfDocument(printed)]
    letters = [letter for page in pages for letter in page]
    edges = (left / MM_PER_PT, (width_mm - right) / MM_PER_PT)
    return Measured(
        pages=len(pages),
        smallest=seen["smallest"],
        smallest_in_pdf=min(letter.points for letter in letters),
        smallest_box=_smallest(seen["boxes"]),
        cut=tuple(seen["cut"]),
        outside="".join(letter.text for letter in letters if _outside(letter, *edges)),
        split_rows=rows,
        split_blocks=blocks,
        bare_pages=sum(all(letter.up < FOOTER_PT for letter in page) for page in pages),
        fetched=seen["loads"],
    )


def _smallest(boxes: list[list[float]]) -> tuple[float, float] | None:
    """Least width and least height, mm."""
    if not boxes:
        return None
    return min(w for w, _ in boxes) * MM_PER_PX, min(h for _, h in boxes) * MM_PER_PX


class Letter(NamedTuple):
    """One letter of a page and its type in points; its edges from the left, from below and from above."""

    text: str
    points: float
    left: float
    right: float
    up: float
    down: float


def _letters(page: pypdfium2.PdfPage) -> list[Letter]:
    """Every printed letter of a page, in points."""
    text, matrix, height = page.get_textpage(), pdfium.FS_MATRIX(), page.get_height()
    found = []
    for n in range(text.count_chars()):
        letter = chr(pdfium.FPDFText_GetUnicode(text.raw, n))
        if letter.isspace():
            continue
        pdfium.FPDFText_GetMatrix(text.raw, n, ctypes.byref(matrix))
        points = pdfium.FPDFText_GetFontSize(text.raw, n) * abs(matrix.d)
        left, bottom, right, top = text.get_charbox(n)
        found.append(Letter(letter, points, left, right, bottom, height - top))
    return found


def _outside(letter: Letter, left: float, right: float) -> bool:
    """Whether a letter leaves the printed width or stands over the top margin."""
    top = TOP_MARGIN_MM / MM_PER_PT
    return (
        letter.left < left - ROUNDING_PT
        or letter.right > right + ROUNDING_PT
        or letter.down < top - ROUNDING_PT
    )


def _split(pdf: bytes) -> tuple[int, int]:
    """How many rows, and how many blocks that must stay together, stand on more than one page."""
    rows, blocks = defaultdict(set), defaultdict(set)
    document = pypdfium2.PdfDocument(pdf)
    for number, page in enumerate(document):
        for block, row in re.findall(r"<<(\d+):(\d+)>>", page.get_textpage().get_text_bounded()):
            rows[block, row].add(number)
            blocks[block].add(number)
    return sum(len(on) > 1 for on in rows.values()), sum(len(on) > 1 for on in blocks.values())


def _draw(pdf: bytes, html: Path) -> None:
    """One picture a page, at 110 dots an inch (choice: large enough to judge, small enough to keep)."""
    for number, page in enumerate(pypdfium2.PdfDocument(pdf), start=1):
        picture = page.render(scale=110 / 72, grayscale=True).to_pil()
        picture.save(html.with_name(f"{html.stem}-{number:02}.png"), compress_level=1)
