"""PDFs read back by pypdfium2: text, pages, fonts, tags, the same bytes; and what may be missing."""

import ctypes
import os
import re
import subprocess
import sys
from pathlib import Path
from typing import Any

import pypdfium2
import pypdfium2.raw as pdfium
import pytest
import weasyprint

from setwright.files import CannotRun
from setwright.sheets import Order, asked, print_sheets, sheet_html
from setwright.sheets.pdf import NO_LIBRARY, NO_PACKAGE, VARIANT, printer
from tests.pages.__main__ import PRINTED
from tests.pages.plans import AWKWARD, LONG, NO_CHEST, check

NO_FONTS = """<?xml version="1.0"?><fontconfig><cachedir>{folder}</cachedir>{folders}</fontconfig>"""
PRINT_ONE = "from setwright.sheets.pdf import printer; printer()('<p>one</p>', '')"


def document(html: str) -> pypdfium2.PdfDocument:
    return pypdfium2.PdfDocument(printer()(html, ""))


def texts(pdf: pypdfium2.PdfDocument) -> list[str]:
    return [" ".join(page.get_textpage().get_text_bounded().split()) for page in pdf]


def test_text_pages_and_heads_are_those_of_the_sheet() -> None:
    pages = texts(document(sheet_html(check(LONG), "session", "a4", PRINTED)))
    assert len(pages) == 2
    for number, page in enumerate(pages, start=1):
        assert f"page {number} of 2" in page
        assert "Everything" in page
        assert "reps done, one box a set" in page
        assert "of 14 Nov 2027" in page
    assert "Stop and tell the coach" in pages[-1]


def test_groups_are_never_parted() -> None:
    pages = texts(document(sheet_html(check(LONG), "session", "letter", PRINTED)))
    assert len(pages) == 3
    for group in (("1a", "1b"), ("3a", "3b", "3c"), ("5a", "5b")):
        (page,) = {n for n, page in enumerate(pages) for one in group if re.search(rf"\b{one} [a-z]", page)}
        assert all(re.search(rf"\b{one} [a-z]", pages[page]) for one in group)


def structure(page: pypdfium2.PdfPage) -> set[str]:
    """The types of all tags of a page."""
    found, name = set(), (ctypes.c_ushort * 40)()

    def walk(element: Any) -> None:
        pdfium.FPDF_StructElement_GetType(element, name, 80)
        found.add("".join(map(chr, name)).split("\0")[0])
        for n in range(pdfium.FPDF_StructElement_CountChildren(element)):
            child = pdfium.FPDF_StructElement_GetChildAtIndex(element, n)
            if child:
                walk(child)

    tree = pdfium.FPDF_StructTree_GetForPage(page.raw)
    for n in range(pdfium.FPDF_StructTree_CountChildren(tree)):
        walk(pdfium.FPDF_StructTree_GetChildAtIndex(tree, n))
    return found


def test_it_is_tagged_and_titled() -> None:
    pdf = document(sheet_html(check(NO_CHEST), "week", "a4", PRINTED))
    assert pdfium.FPDFCatalog_IsTagged(pdf.raw)
    assert pdf.get_metadata_dict()["Title"] == "Off week: the week"
    page = pdf[0]
    assert {"H1", "H2", "Table", "TR", "TD"} <= structure(page)
    (sheet,) = document(sheet_html(check(NO_CHEST), "session", "a4", PRINTED))
    assert {"TH", "TD", "H2"} <= structure(sheet)


def test_it_says_its_language() -> None:
    html = sheet_html(check(NO_CHEST), "week", "a4", PRINTED)
    made = weasyprint.HTML(string=html).write_pdf(pdf_variant=VARIANT, pdf_tags=True, uncompressed_pdf=True)
    assert b"/Lang (en)" in made


def test_every_font_is_inside() -> None:
    pdf = document(sheet_html(check(LONG), "session", "a4", PRINTED))
    seen = set()
    for page in pdf:
        for thing in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_TEXT]):
            font = pdfium.FPDFTextObj_GetFont(thing.raw)
            name = ctypes.create_string_buffer(80)
            pdfium.FPDFFont_GetBaseFontName(font, name, 80)
            assert pdfium.FPDFFont_GetIsEmbedded(font) == 1, name.value
            seen.add(name.value.split(b"+")[-1])
    assert {b"Liberation-Sans", b"DejaVu-Sans"} <= seen


def test_the_same_sheet_is_the_same_bytes_in_another_process() -> None:
    code = """
import hashlib
from setwright.sheets import sheet_html
from setwright.sheets.pdf import printer
from tests.pages.plans import NO_CHEST, check
print(hashlib.sha256(printer()(sheet_html(check(NO_CHEST), "week", "a4"), "")).hexdigest())
"""
    seen = {
        subprocess.run(
            [sys.executable, "-c", code],
            env={**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": "src:."},
            cwd=Path(__file__).parents[2],
            capture_output=True,
            check=True,
        ).stdout
        for seed in ("1", "2")
    }
    assert len(seen) == 1


def test_hostile_names_are_printed_as_text() -> None:
    pages = texts(document(sheet_html(check(AWKWARD), "session", "a4", PRINTED)))
    assert len(pages) == 10
    assert "<b>Bold</b> & 'quoted'" in pages[0]


def test_nothing_is_fetched(tmp_path: Path) -> None:
    picture = tmp_path / "dot.svg"
    dot = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path d="M0 0h9v9H0z"/></svg>'
    picture.write_text(dot)
    for address in (picture.as_uri(), "http://localhost:9/dot.svg", "dot.svg"):
        (page,) = document(f'<p>one</p><img src="{address}" alt="">')
        assert all(thing.type == pdfium.FPDF_PAGEOBJ_TEXT for thing in page.get_objects())


def test_pages_are_told_as_they_are_begun() -> None:
    told: list[str] = []
    printer(told.append)(sheet_html(check(LONG), "session", "a4"), "long.pdf")
    assert told == ["long.pdf: page 1", "long.pdf: page 2"]
    printer()(sheet_html(check(NO_CHEST), "session", "a4"), "off.pdf")
    assert len(told) == 2


def test_a_pdf_lies_beside_each_page(tmp_path: Path) -> None:
    told: list[str] = []
    lines = list(
        print_sheets(check(NO_CHEST), Order(asked("week", "a4"), tmp_path, pdf=True), PRINTED, told.append)
    )
    assert [line.split("/")[-1] for line in lines] == [
        "off-week-1-week-a4.html  (week, a4)", "off-week-1-week-a4.pdf  (week, a4)",
    ]  # fmt: skip
    assert told == ["off-week-1-week-a4.pdf: page 1"]
    assert (tmp_path / "off-week-1-week-a4.pdf").read_bytes().startswith(b"%PDF")


def test_without_the_package(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setitem(sys.modules, "weasyprint", None)
    with pytest.raises(CannotRun) as stop:
        list(print_sheets(check(NO_CHEST), Order(asked("all", "a4"), tmp_path, pdf=True), PRINTED))
    assert str(stop.value) == NO_PACKAGE
    assert not list(tmp_path.iterdir())


def test_without_the_system_library(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    (tmp_path / "weasyprint").mkdir()
    (tmp_path / "weasyprint" / "__init__.py").write_text("raise OSError('cannot load library pango')")
    for name in [name for name in sys.modules if name.split(".")[0] == "weasyprint"]:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.syspath_prepend(tmp_path)
    with pytest.raises(CannotRun) as stop:
        printer()
    assert str(stop.value) == NO_LIBRARY


@pytest.mark.parametrize(
    ("folders", "package"),
    [("", "fonts-liberation"), ("<dir>/usr/share/fonts/truetype/liberation</dir>", "fonts-dejavu-core")],
)
def test_without_a_font(tmp_path: Path, folders: str, package: str) -> None:
    config = tmp_path / "fonts.conf"
    config.write_text(NO_FONTS.format(folder=tmp_path, folders=folders))
    done = subprocess.run(
        [sys.executable, "-c", PRINT_ONE],
        env={**os.environ, "FONTCONFIG_FILE": str(config)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    last = done.stderr.strip().splitlines()[-1]
    assert re.match(r"setwright\.files\.CannotRun: a PDF needs the font ", last)
    assert last.endswith(f"apt install {package}")
