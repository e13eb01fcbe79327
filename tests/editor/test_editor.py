"""An editor's YAML support over the schemas: nothing wrongly marked, words proposed and explained."""

import itertools
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple, get_args

import pytest
from typer.testing import CliRunner

from setwright.cli import app
from setwright.schema import Kind
from tests.editor.server import Server, missing
from tests.schema.files import EVERYTHING, EXAMPLES, RECORD, WEEKS, kind_of

pytestmark = pytest.mark.editor

HERE = "¦"
"""Stands for the cursor."""


class Editor(NamedTuple):
    """A server and a folder with the schemas, as docs/editor.md says to write them."""

    server: Server
    folder: Path
    numbers: Iterator[int]

    def open(self, kind: Kind, text: str) -> tuple[Path, list[dict[str, Any]]]:
        """A new file that starts with the modeline, and what the server has against it."""
        file = self.folder / f"{kind}-{next(self.numbers)}.yaml"
        return file, self.server.open(file, f"# yaml-language-server: $schema={kind}.schema.json\n{text}")

    def cursor(self, kind: Kind, text: str) -> tuple[Path, int, int]:
        """The file and the place of the cursor in it; the first line is the modeline."""
        before = text.partition(HERE)[0].split("\n")
        file, _ = self.open(kind, text.replace(HERE, ""))
        return file, len(before), len(before[-1])

    def faults(self, kind: Kind, text: str) -> list[tuple[int, str]]:
        """Line of the text, counted from 1, and message of each fault."""
        return [(one["range"]["start"]["line"], one["message"]) for one in self.open(kind, text)[1]]

    def proposals(self, kind: Kind, text: str) -> dict[str, str]:
        """What is proposed at the cursor, with the text that it puts in."""
        return self.server.completion(*self.cursor(kind, text))

    def hover(self, kind: Kind, text: str) -> str:
        """What is explained at the cursor."""
        return self.server.hover(*self.cursor(kind, text))


@pytest.fixture(scope="module")
def editor(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Editor]:
    why = missing()
    assert why is None, why
    folder = tmp_path_factory.mktemp("editor")
    for kind in get_args(Kind):
        CliRunner().invoke(app, ["schema", kind, "--out", str(folder / f"{kind}.schema.json")])
    with Server() as server:
        yield Editor(server, folder, itertools.count())


@pytest.mark.parametrize("path", [*EXAMPLES, *WEEKS], ids=lambda path: path.stem)
def test_nothing_in_an_example_is_marked(editor: Editor, path: Path) -> None:
    assert editor.faults(kind_of(path), path.read_text(encoding="utf-8")) == []


def test_nothing_is_marked_where_every_word_of_the_language_stands(editor: Editor) -> None:
    assert editor.faults("plan", EVERYTHING) == []
    assert editor.faults("record", RECORD) == []


@pytest.mark.parametrize(
    ("kind", "text", "line", "said"),
    [
        ("plan", "plan: A\naim: sizes\n", 2, '"general", "size", "strength", "sport", "return"'),
        ("plan", "plan: A\nfocus: [chst]\n", 2, '"chest", "back"'),
        ("plan", "plan: A\npeople: six\n", 2, "Write a whole number."),
        ("plan", "plan: A\nsesions: []\n", 2, "sesions is not allowed"),
        (
            "plan",
            "plan: A\nwork:\n  - superset:\n      - dip: 8\n    tempo: 3-1-1-0\n",
            5,
            "tempo is not allowed",
        ),
        ("squad", "athletes:\n  - name: Isla\n    handed: both\n", 3, '"left", "right"'),
        ("gym", "gym: Shed\nspotter: perhaps\n", 2, '"yes", "none"'),
    ],
)
def test_what_is_surely_wrong_is_marked(editor: Editor, kind: Kind, text: str, line: int, said: str) -> None:
    ((marked, message),) = editor.faults(kind, text)
    assert marked == line
    assert said in message


@pytest.mark.parametrize(
    ("kind", "text", "proposed", "not_proposed"),
    [
        ("plan", "plan: A\n¦\n", {"unit", "aim", "sessions", "work"}, {"tempo", "plan"}),
        ("plan", "plan: A\naim: ¦\n", {"general", "size", "strength", "sport", "return"}, {"null", "true"}),
        ("plan", "focus: [¦]\n", {"chest", "triceps"}, {"null"}),
        ("plan", "work:\n  - ¦\n", {"dip", "military press", "superset", "move"}, {"rounds"}),
        ("plan", "work:\n  - flat¦\n", {"flat barbell bench press", "flat bench"}, {"rounds"}),
        ("plan", "work:\n  - dip: ¦\n", {"3 x 8-10 at 2 RIR, rest 2:00"}, {"null"}),
        ("plan", "work:\n  - dip: 3 x 8\n    ¦\n", {"rest", "tempo", "note"}, {"dip", "superset", "rounds"}),
        ("plan", "work:\n  - dip: 3 x 8\n    rest: ¦\n", {"2:00", "90 s"}, {"null"}),
        ("plan", "work:\n  - superset:\n      - ¦\n", {"dip", "military press"}, {"rounds", "superset"}),
        (
            "plan",
            "work:\n  - superset:\n      - dip: 8\n    ¦\n",
            {"rounds", "between moves"},
            {"dip", "tempo"},
        ),
        ("plan", "sessions:\n  - day: ¦\n", {"Monday", "Sunday"}, {"null"}),
        ("plan", "sessions:\n  - day: Monday\n    ¦\n", {"minutes", "like", "work"}, {"squad", "day"}),
        ("plan", "allow:\n  ¦\n", {"half-a-pair"}, set()),
        ("plan", "movements:\n  crate press:\n    ¦\n", {"like", "pattern", "path"}, {"dip"}),
        ("squad", "athletes:\n  - name: Isla\n    maxes:\n      ¦\n", {"pull-up", "bench pull"}, set()),
        (
            "squad",
            "athletes:\n  - name: Isla\n    limits:\n      - no: ¦\n",
            {"overhead", "hanging"},
            {"null"},
        ),
        ("gym", "stations:\n  ¦\n", {"dip bars", "high pull bench"}, {"none"}),
        ("record", "done:\n  Isla:\n    - ¦\n", {"bench pull", "note"}, set()),
        ("record", "done:\n  Isla:\n    - bench pull: ¦\n", {"done", "60 kg x 8, 8, 6 at RPE 8"}, set()),
    ],
)
def test_what_may_stand_at_the_cursor_is_proposed(
    editor: Editor, kind: Kind, text: str, proposed: set[str], not_proposed: set[str]
) -> None:
    found = set(editor.proposals(kind, text))
    assert proposed <= found
    assert not not_proposed & found


def test_a_proposal_puts_in_the_colon_and_what_follows(editor: Editor) -> None:
    line = editor.proposals("plan", "work:\n  - ¦\n")
    assert line["dip"] == "dip: "
    assert line["superset"] == "superset:\n    - "
    top = editor.proposals("plan", "plan: A\n¦\n")
    assert top["aim"] == "aim: "
    assert top["work"] == "work:\n  - "
    assert top["starts"] == "starts: ${1:2027-10-18}"


@pytest.mark.parametrize(
    ("kind", "text", "said"),
    [
        ("plan", "a¦im: size\n", ["#### aim", "What the week is for.", "`size`: muscle size"]),
        ("plan", "work:\n  - d¦ip: 3 x 8\n", ["#### leaning parallel-bar dip", "serves the costal part"]),
        (
            "plan",
            "work:\n  - superset:\n      - military p¦ress: 8\n",
            ["#### standing barbell overhead press"],
        ),
        ("plan", "work:\n  - leg c¦url:\n      week 1: 3 x 8\n", ["counted for hamstrings"]),
        ("plan", "work:\n  - leg curl:\n      w¦eek 1: 3 x 8\n", ["the week before"]),
        ("plan", "work:\n  - sup¦erset:\n      - dip: 3 x 8\n", ["Movements in turn"]),
        ("plan", "work:\n  - dip: 3 x 8\n    te¦mpo: 3-1-1-0\n", ["Seconds lowering"]),
        ("plan", "sessions:\n  - day: Monday\n    li¦ke: Tuesday\n", ["Another day of the plan"]),
        ("squad", "athletes:\n  - name: Isla\n    part¦icipation: full\n", ["`modified`: with changes"]),
        ("gym", "plates per r¦ack:\n  5 kg: 2 pairs\n", ["Plates at each rack"]),
        ("record", "do¦ne:\n  Isla:\n", ["Each athlete with what was done"]),
    ],
)
def test_what_the_pointer_rests_on_is_explained(
    editor: Editor, kind: Kind, text: str, said: list[str]
) -> None:
    told = editor.hover(kind, text)
    for words in said:
        assert words in told
