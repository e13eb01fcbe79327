"""What somebody types comes out as the letters that it is: on a terminal, in HTML, in a spreadsheet."""

import csv
import io
import unicodedata
from html.parser import HTMLParser
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from setwright.cli import app
from tests.security.texts import plan_file

ESCAPES = "\x1b]0;owned\x07\x1b[2J\x9b31m\x08\x7f\u202egnp\u2066\u2069"
"""A title for the window, a cleared screen, a colour, a backspace, and signs that turn the reading round."""

HOSTILE = f"""\
plan: "Week {ESCAPES}"
squad: squad.yaml
gym: gym.yaml
sessions:
  - day: Monday
    name: "Day {ESCAPES}"
    work:
      - pull-up: 3 x 8 at 2 RIR
        note: "note {ESCAPES}"
      - dip: 3 x 8 {ESCAPES}
      - "dipp {ESCAPES}": 3 x 8
    "key {ESCAPES}": 1
"""
SQUAD = f'squad: "Crew {ESCAPES}"\nathletes:\n  - name: "Isla {ESCAPES}"\n    note: "a {ESCAPES}"\n'
GYM = f'gym: "Hall {ESCAPES}"\nstations:\n  rack: 1\n  "x {ESCAPES}": 1\n'
TURNING = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
"""Embeddings, overrides and isolates (Unicode Standard Annex 9), as in CVE-2021-42574."""


def run(*arguments: object) -> Result:
    """A command as on a terminal, where no escape sequence is taken out of what it prints."""
    return CliRunner().invoke(app, [str(one) for one in arguments], color=True)


def escaped(text: str) -> str:
    """A plan with its signs written as YAML escapes inside quotes, where they get past the traps."""
    return text.replace(ESCAPES, "".join(f"\\u{ord(sign):04x}" for sign in ESCAPES))


@pytest.fixture(params=[str, escaped], ids=["as they are", "as escapes of YAML"])
def folder(request: pytest.FixtureRequest, tmp_path: Path) -> Path:
    for name, text in (("week", HOSTILE), ("squad", SQUAD), ("gym", GYM)):
        (tmp_path / f"{name}.yaml").write_text(request.param(text), encoding="utf-8")
    good = "".join(line for line in request.param(HOSTILE).splitlines(keepends=True) if "dip" not in line)
    good = "".join(line for line in good.splitlines(keepends=True) if '"key' not in line)
    (tmp_path / "fine.yaml").write_text(good.replace("gym: gym.yaml\n", ""), encoding="utf-8")
    return tmp_path


def signs(text: str) -> set[str]:
    """What in a text a terminal would obey instead of showing."""
    return {sign for sign in text if (unicodedata.category(sign) == "Cc" and sign != "\n") or sign in TURNING}


@pytest.mark.parametrize(
    "command",
    [
        ("check",), ("check", "--format", "short"), ("check", "--format", "github"),
        ("check", "--format", "json", "--with-names"), ("check", "--summary"), ("read",), ("read", "--count"),
        ("loads",), ("swap",), ("swap", "--for", "Isla"), ("floor",), ("record",), ("record", "--out", "-"),
        ("next",), ("review",), ("sheet", "--out", "out"), ("keep",), ("move", "dip", "--plan"),
    ],
    ids=" ".join,
)  # fmt: skip
@pytest.mark.parametrize("name", ["week.yaml", "fine.yaml", "squad.yaml", "gym.yaml"])
def test_nothing_that_is_printed_moves_the_cursor_or_turns_the_line(
    command: tuple[str, ...], name: str, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(folder)
    result = run(*command, name)
    assert isinstance(result.exception, SystemExit | None), result.exception
    assert signs(result.output) == set()


def test_a_name_of_a_file_is_printed_as_the_letters_it_is(tmp_path: Path) -> None:
    odd = tmp_path / "a\x1b[2J.yaml"
    odd.write_text("plan: A\nwork:\n  - dipp: 3 x 8\n", encoding="utf-8")
    for command in ("check", "read", "sheet", "loads", "swap", "floor", "record", "next", "review", "keep"):
        for path in (odd, tmp_path / "b\x1b[2J.yaml"):
            assert signs(run(command, path).output) == set(), command


MARKUP = (
    "</style></title><script>alert(1)</script><img src=x onerror=alert(1)> {{ 7 * 7 }} {% raw %} ${7*7} &lt;"
)
MARKED = f"""\
plan: '{MARKUP}'
squad:
  athletes:
    - name: '{MARKUP}'
      note: '{MARKUP}'
  paper:
    title: '{MARKUP}'
    footer: '{MARKUP}'
sessions:
  - day: Monday
    name: '{MARKUP}'
    work:
      - pull-up: 3 x 8 at 2 RIR
        note: '{MARKUP}'
"""


class Tags(HTMLParser):
    """Collects the tags of a page, and the attributes that would run something."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.seen: set[str] = set()
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.seen |= {tag, *(name for name, _ in attrs if name.startswith("on"))}


def test_markup_and_template_signs_stay_text_on_every_sheet(tmp_path: Path) -> None:
    assert run("sheet", plan_file(tmp_path, MARKED), "--out", tmp_path).exit_code == 0
    pages = [path.read_text(encoding="utf-8") for path in tmp_path.glob("*.html")]
    assert len(pages) > 2
    for page in pages:
        assert not {"script", "onerror"} & Tags(page).seen
        assert "49" not in page.split("</style>")[-1].split("7 * 7")[0][-200:]
    assert any("{{ 7 * 7 }}" in page for page in pages)


FORMULA = '=HYPERLINK("http://x.invalid";"a")'
CELLS = f"""\
plan: A
squad:
  athletes:
    - name: '{FORMULA}'
    - name: '@SUM(1)'
    - name: '+1;"x"'
sessions:
  - day: Monday
    name: '-2+3'
    work:
      - pull-up: 3 x 8 at 2 RIR
        note: '{FORMULA}'
"""


def test_no_cell_of_a_table_is_a_formula(tmp_path: Path) -> None:
    path = plan_file(tmp_path, CELLS)
    assert run("sheet", path, "--kind", "week", "--csv", "--out", tmp_path).exit_code == 0
    form = run("record", path, "--format", "csv", "--out", "-").output
    table = (tmp_path / "a-table.csv").read_text(encoding="utf-8-sig")
    for text in (form, table):
        rows = [*csv.reader(io.StringIO(text, newline=""))]
        assert len({len(row) for row in rows}) == 1
        assert not [cell for row in rows for cell in row if cell.startswith(("=", "+", "-", "@"))]


WIDE = "athlete,movement,done" + "," * 30_000 + "\n"
TABLES = {
    "thirty thousand columns": WIDE,
    "a quote that is never closed": 'athlete,movement,done\n"' + "x" * 300_000,
    "a hundred thousand quotes": "athlete,movement,done\n" + '"' * 100_000 + "\n",
    "twenty thousand rows": "athlete,movement,done\n" + "a,b,c\n" * 20_000,
    "empty signs": "athlete,movement,done\nIsla,dip\0,3 x 8\n",
    "nothing": "",
}


@pytest.mark.parametrize("text", TABLES.values(), ids=TABLES)
def test_a_hostile_table_is_kept_by_nobody(text: str, tmp_path: Path) -> None:
    path = tmp_path / "form.csv"
    path.write_text(text, encoding="utf-8")
    result = run("keep", path)
    assert result.exit_code in (1, 2), result.exception
    assert isinstance(result.exception, SystemExit)
    assert signs(result.output) == set()
