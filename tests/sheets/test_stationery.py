"""The coach's own mark on every page, dates and decimals in the squad's way, and pictures that do no harm."""

import base64
import datetime as dt
import html
import io
import re
from pathlib import Path

import pypdfium2
import pypdfium2.raw as pdfium
import pytest
from PIL import Image

from setwright.checked import Checked, check_plan
from setwright.files import CannotRun
from setwright.findings import Level
from setwright.logo import MOST_BYTES
from setwright.model.stationery import Stationery
from setwright.sheets import sheet_html, words
from setwright.sheets.editions import all_sheets, version_mark
from setwright.sheets.kinds import KINDS, Kind
from setwright.sheets.logo import letterhead, logo_uri
from setwright.sheets.pdf import printer
from setwright.sheets.style import IN_FORCE
from setwright.sheets.table import plan_csv
from tests.pages.__main__ import PRINTED
from tests.pages.plans import CLUB, check

SVG = b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 3"><path d="M0 0h9v3H0z"/></svg>'
HARMFUL = SVG.replace(
    b"<path", b'<script>document.title = "owned"</script><image href="http://x.example/a.png"/><path'
)
PLAN = """\
plan: Winter
starts: 2027-11-15
unit: kg
dose order: sets x reps
squad:
  athletes: [Isla]
{paper}
sessions:
  - day: Monday
    work:
      - goblet squat: 3 x 10 at 22.5 kg
      - bench pull: 3 x 8 at 50 kg, rest 2:00
"""


def plan(folder: Path, *keys: str) -> Checked:
    paper = "\n".join(("  paper:", *(f"    {key}" for key in keys))) if keys else ""
    return check_plan(str(folder / "week.yaml"), PLAN.format(paper=paper), lambda _name: None)


def mark_of(checked: Checked) -> str:
    return version_mark(checked, all_sheets(checked))


def table_of(checked: Checked) -> str:
    return plan_csv(checked, all_sheets(checked)["session"])


def picture(form: str) -> bytes:
    made = io.BytesIO()
    Image.new("RGB", (90, 30)).save(made, form)
    return made.getvalue()


def inside(uri: str) -> str:
    """The SVG in which a logo is held."""
    return base64.b64decode(uri.removeprefix("data:image/svg+xml;base64,")).decode()


def test_a_plan_without_a_mark_prints_as_ever(tmp_path: Path) -> None:
    page = sheet_html(plan(tmp_path), "session", "a4")
    assert "margin: 12mm 12mm" in page
    assert "@top-left" not in page
    assert letterhead(plan(tmp_path)) is None


@pytest.mark.parametrize("kind", KINDS)
def test_title_logo_and_footer_stand_on_every_kind_of_sheet(tmp_path: Path, kind: Kind) -> None:
    (tmp_path / "crest.svg").write_bytes(SVG)
    checked = plan(tmp_path, "title: Strength room", "logo: crest.svg", "footer: open from six")
    pages = KINDS[kind].pages(checked, "", {})
    if pages:
        page = sheet_html(checked, kind, KINDS[kind].papers[0])
        head = page.split("</style>")[0]
        assert 'content: "Strength\\20 room"' in head
        assert "content: url(data:image/svg+xml;base64," in head
        assert page.count("base64,") == 1


def test_title_logo_and_footer_are_on_the_print(tmp_path: Path) -> None:
    (tmp_path / "crest.png").write_bytes(picture("PNG"))
    checked = plan(tmp_path, "title: Strength room", "logo: crest.png", "footer: open from six")
    (page,) = pypdfium2.PdfDocument(printer()(sheet_html(checked, "session", "a4", PRINTED), ""))
    text = page.get_textpage().get_text_bounded()
    assert "Strength room" in text
    assert "open from six" in text
    places = [thing.get_bounds() for thing in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_IMAGE])]
    (left, bottom, right, top), mm = places[0], 72 / 25.4
    assert len(places) == 1
    assert 297 * mm - 24 * mm < bottom < top < 297 * mm
    assert right - left == pytest.approx(30 * mm, rel=0.02)
    assert top - bottom == pytest.approx(10 * mm, rel=0.02)


def test_the_mark_of_the_print_follows_the_coach_s_own(tmp_path: Path) -> None:
    logo = tmp_path / "crest.svg"
    logo.write_bytes(SVG)
    marks = {
        mark_of(plan(tmp_path, *keys)) for keys in ((), ("title: A",), ("title: B",), ("logo: crest.svg",))
    }
    logo.write_bytes(SVG.replace(b"9v3", b"8v3"))
    marks.add(mark_of(plan(tmp_path, "logo: crest.svg")))
    assert len(marks) == 5


@pytest.mark.parametrize(("form", "kind"), [("PNG", "png"), ("JPEG", "jpeg")])
def test_pictures_are_known_by_their_bytes(tmp_path: Path, form: str, kind: str) -> None:
    (tmp_path / "crest.txt").write_bytes(picture(form))
    held = inside(logo_uri(tmp_path / "week.yaml", "crest.txt"))
    assert f'href="data:image/{kind};base64,{base64.b64encode(picture(form)).decode()}"' in held


def test_a_harmful_svg_is_an_image_and_nothing_else(tmp_path: Path) -> None:
    (tmp_path / "crest.svg").write_bytes(HARMFUL)
    held = inside(logo_uri(tmp_path / "week.yaml", "crest.svg"))
    assert "script" not in held
    assert "x.example" not in held
    page = sheet_html(plan(tmp_path, "logo: crest.svg"), "session", "a4")
    assert "script" not in page
    assert printer()(page, "").startswith(b"%PDF")


def told(folder: Path, name: str) -> str:
    with pytest.raises(CannotRun) as stop:
        logo_uri(folder / "week.yaml", name)
    return str(stop.value)


def test_each_logo_that_can_t_be_used_is_one_sentence(tmp_path: Path) -> None:
    folder = tmp_path / "plans"
    folder.mkdir()
    (tmp_path / "secret.svg").write_bytes(SVG)
    (folder / "link.svg").symlink_to(tmp_path / "secret.svg")
    (folder / "large.svg").write_bytes(SVG + b" " * MOST_BYTES)
    (folder / "note.svg").write_text("plain words")
    (folder / "bomb.svg").write_bytes(b'<!DOCTYPE x [<!ENTITY a "aaaa">]>' + SVG)
    for name in ("../secret.svg", "link.svg", str(tmp_path / "secret.svg")):
        assert "leads out of the plan's folder; lay the picture beside the plan" in told(folder, name)
    for name in ("none.svg", ".", "a\0b", "x" * 300, "../none.svg"):
        assert told(folder, name).startswith(f"the logo {name} is not there; lay the picture beside the plan")
    assert "is over 300,000 bytes; save it smaller" in told(folder, "large.svg")
    for name in ("note.svg", "bomb.svg"):
        assert "is no PNG, JPEG or SVG picture" in told(folder, name)


@pytest.mark.parametrize("name", ["none.svg", "../secret.svg", "large.svg", "note.svg"])
def test_a_check_says_of_a_logo_what_printing_does(tmp_path: Path, name: str) -> None:
    folder = tmp_path / "plans"
    folder.mkdir()
    (tmp_path / "secret.svg").write_bytes(SVG)
    (folder / "large.svg").write_bytes(SVG + b" " * MOST_BYTES)
    (folder / "note.svg").write_text("plain words")
    (said,) = [one for one in plan(folder, f"logo: {name}").findings if one.rule == "logo-not-usable"]
    assert f"{said.message}; {said.change}" == told(folder, name)
    assert (said.level, said.place.line, said.place.column) == (Level.error, 8, 5)


def test_a_check_finds_nothing_in_a_logo_that_is_a_picture(tmp_path: Path) -> None:
    (tmp_path / "crest.svg").write_bytes(SVG)
    assert "logo-not-usable" not in {one.rule for one in plan(tmp_path, "logo: crest.svg").findings}


def test_a_logo_is_named_where_the_squad_file_names_it(tmp_path: Path) -> None:
    squad = "squad: Crew\npaper:\n  logo: crest.png\nathletes: [Isla]\n"
    text = PLAN.replace("squad:\n  athletes: [Isla]\n{paper}\n", "squad: crew.yaml\n")
    found = check_plan(str(tmp_path / "week.yaml"), text, {"crew.yaml": squad}.get).findings
    (said,) = [one for one in found if one.rule == "logo-not-usable"]
    assert (Path(said.place.file).name, said.place.line) == ("crew.yaml", 3)


def test_a_logo_that_may_not_be_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "crest.svg").write_bytes(SVG)

    def refuse(*_args: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "open", refuse)
    assert told(tmp_path, "crest.svg").startswith("the logo crest.svg can't be read: permission denied; ")


def test_a_logo_in_a_folder_beside_the_plan(tmp_path: Path) -> None:
    (tmp_path / "art").mkdir()
    (tmp_path / "art" / "crest.svg").write_bytes(SVG)
    assert logo_uri(tmp_path / "week.yaml", "art/crest.svg").startswith("data:image/svg+xml;base64,")


@pytest.mark.parametrize(
    ("style", "long", "brief"),
    [
        ("day first", "Monday 15 November 2027", "15 Nov 2027"),
        ("month first", "Monday, November 15, 2027", "Nov 15, 2027"),
        ("numbers", "Monday 2027-11-15", "2027-11-15"),
    ],
)
def test_dates_in_the_squad_s_way(tmp_path: Path, style: str, long: str, brief: str) -> None:
    page = sheet_html(plan(tmp_path, f"dates: {style}"), "session", "a4", dt.date(2027, 11, 15))
    assert f"<bdi>{long}</bdi>" in page
    footer = re.findall(r'content: "([^"]*version[^"]*)"', page)[0]
    shown = re.sub(r"\\([0-9a-f]+) ", lambda code: chr(int(code[1], 16)), footer)
    assert shown.endswith(f" of {brief}")


DATES = {
    "day first": re.compile(r"\b\d{1,2} (?:Nov|November)\b"),
    "month first": re.compile(r"\b(?:Nov|November) \d{1,2}\b"),
    "numbers": re.compile(r"\b(?:2027-)?11-15\b"),
}


@pytest.mark.parametrize("style", DATES)
@pytest.mark.parametrize("kind", KINDS)
def test_no_sheet_has_a_date_of_another_style(kind: Kind, style: str) -> None:
    club = CLUB.replace("squad:\n", f"squad:\n  paper:\n    dates: {style}\n", 1)
    page = html.unescape(sheet_html(check(club), kind, "a4"))
    dated = {name for name, date in DATES.items() if date.search(page)}
    assert dated == ({style} if kind in {"week", "session", "session-large", "rack", "log"} else set())


def test_a_decimal_comma_on_the_sheets_and_semicolons_in_the_table(tmp_path: Path) -> None:
    comma, point = plan(tmp_path, "decimals: comma"), plan(tmp_path, "decimals: point")
    assert "22,5\u00a0kg" in sheet_html(comma, "session", "a4")
    assert "22.5\u00a0kg" in sheet_html(point, "session", "a4")
    assert ";22,5 kg;" in table_of(comma)
    assert ",22.5 kg," in table_of(point)


def test_the_style_of_one_plan_is_gone_before_the_next(tmp_path: Path) -> None:
    sheet_html(plan(tmp_path, "decimals: comma"), "week", "a4")
    assert IN_FORCE.get() == Stationery()
    assert words.number(62.5) == "62.5"
    assert words.typeset("1.5 x 2") == "1.5 × 2"


def test_the_keys_are_read_and_what_can_t_be_is_said(tmp_path: Path) -> None:
    checked = plan(tmp_path, "title: A", "logo: b.svg", "footer: c", "dates: numbers", "decimals: comma")
    assert checked.week
    assert checked.week.squad
    paper = checked.week.squad.paper
    assert paper == Stationery(
        title="A", logo="b.svg", logo_place=paper.logo_place, footer="c", dates="numbers", decimals="comma"
    )
    (wrong,) = [f for f in plan(tmp_path, "decimals: dot").findings if "decimal" in f.message]
    assert wrong.message == '"dot" is no decimal sign'
    assert wrong.change == "write point or comma"
