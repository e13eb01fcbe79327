"""What is read off one sheet: from the page as the browser lays it out, and from the PDF it prints."""

import ctypes
import re
from collections import defaultdict
from dataclasses import dataclass
from pathlib import Path
from typing import NamedTuple

import pypdfium2
import pypdfium2.raw as pdfium

from setwright.sheets.kinds import KINDS, SIZES, Kind, Paper
from tests.pages.browser import Browser

MM_PER_PX = 25.4 / 96
MM_PER_PT = 25.4 / 72
SIDE_MARGINS_MM = {True: (20.0, 12.0), False: (16.0, 12.0)}
"""Left and right, of upright paper and of paper on its side."""
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
    const size = parseFloat(getComputedStyle(e).fontSize), points = size * scale * 72 / 96, k = kind(e);
    smallest[k] = Math.min(smallest[k] ?? 1e9, points);
    const range = document.createRange(); range.selectNodeContents(node);
    const text = range.getBoundingClientRect();
    const frame = (svg ?? e.closest('.box, td, th, caption, p, li, h1, h2, header')).getBoundingClientRect();
    const over = svg ? 1 : Math.max(4, size * 0.12);
    if (text.left < frame.left - 1 || text.right > frame.right + 1
        || text.top < frame.top - over || text.bottom > frame.bottom + over)
      cut.push(node.data.trim().slice(0, 40));
  }
  const ruler = document.createElement('canvas').getContext('2d'), capitals = {};
  for (const [name, where] of [['time', '.rows .time'], ['block', '.rows .do b'], ['group', '.rows .groups'],
                               ['picture', '.floor text[font-weight]']])
    for (const e of document.querySelectorAll(where)) {
      const style = getComputedStyle(e);
      ruler.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const scale = e.ownerSVGElement ? e.getScreenCTM().a : 1;
      const height = ruler.measureText('H').actualBoundingBoxAscent * scale;
      capitals[name] = Math.min(capitals[name] ?? 1e9, height);
    }
  const unlike = [];
  const levels = [...document.querySelectorAll('h1, h2, h3, h4')].map(h => +h.tagName[1]);
  if (levels[0] !== 1 || levels.some((level, n) => n && level > levels[n - 1] + 1))
    unlike.push(`headings ${levels}`);
  if (document.documentElement.lang !== 'en') unlike.push('no language');
  for (const table of document.querySelectorAll('table:not([role])'))
    if (!table.querySelector('th, caption')) unlike.push('a table without heads');
  for (const head of document.querySelectorAll('th:not([scope])'))
    unlike.push(`head without scope: ${head.textContent.trim()}`);
  for (const e of document.body.querySelectorAll('*:not(svg, svg *)')) {
    const {color, backgroundColor: ground} = getComputedStyle(e);
    if (color !== 'rgb(0, 0, 0)' || !['rgba(0, 0, 0, 0)', 'rgb(255, 255, 255)'].includes(ground))
      unlike.push(`${color} on ${ground}`);
  }
  const boxes = [...document.querySelectorAll('.box, .changed')].map(b => b.getBoundingClientRect());
  return {smallest, cut, unlike, capitals, boxes: boxes.map(b => [b.width, b.height]),
          loads: [...document.querySelectorAll('script, link, img, iframe, object')].length};
})()"""
"""Smallest type of each kind in points, text that leaves its frame, boxes and capitals of a board in px, what
is unlike a page of ours (headings, language, heads of tables, black on white), things fetched or run.

A line of large type may be set so tight that the face's own room above and below it leaves the frame."""

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
    """One printed sheet. Type in points by kind, lengths in mm, the rest are texts that are at fault.

    ``capitals``: height of a capital of a wall board's lines and of the groups in its picture, by the kind of
    line. ``read_from``: metres from which the foot of the page says that it is read; None where it doesn't.
    """

    kind: Kind
    paper: Paper
    pages: int
    smallest: dict[str, float]
    smallest_in_pdf: float
    smallest_box: tuple[float, float] | None
    capitals: dict[str, float]
    read_from: float | None
    unlike: tuple[str, ...]
    cut: tuple[str, ...]
    outside: str
    split_rows: int
    split_blocks: int
    bare_pages: int
    fetched: int


def measure(browser: Browser, html: Path, kind: Kind, paper: Paper) -> Measured:
    """Print one sheet and read off what stands in :class:`Measured`; PDF and page images land beside it."""
    upright = KINDS[kind].upright
    width_mm = SIZES[paper][0 if upright else 1]
    left, right = SIDE_MARGINS_MM[upright]
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
        kind=kind,
        paper=paper,
        pages=len(pages),
        smallest=seen["smallest"],
        smallest_in_pdf=min(letter.points for letter in letters),
        smallest_box=_smallest(seen["boxes"]),
        capitals={line: height * MM_PER_PX for line, height in seen["capitals"].items()},
        read_from=_read_from(printed),
        unlike=tuple(seen["unlike"]),
        cut=tuple(seen["cut"]),
        outside="".join(letter.text for letter in letters if _outside(letter, *edges)),
        split_rows=rows,
        split_blocks=blocks,
        bare_pages=sum(all(letter.up < FOOTER_PT for letter in page) for page in pages),
        fetched=seen["loads"],
    )


def _read_from(pdf: bytes) -> float | None:
    """The distance that stands on every page, as it was printed."""
    pages = [page.get_textpage().get_text_bounded() for page in pypdfium2.PdfDocument(pdf)]
    told = [re.search(r"to be read from ([\d.]+) m", page) for page in pages]
    return min((float(one[1]) for one in told if one), default=None) if all(told) else None


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
