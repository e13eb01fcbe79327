"""docs/movements: every movement of the library is there once, what is scored with its page and picture."""

import re
from typing import get_args

import pytest

from setwright.library.closed import Pattern
from setwright.library.rows import load_rows
from setwright.library.table import library
from setwright.report.move import move_text
from setwright.report.movement_docs import movement_pages

PAGES = movement_pages(library())
ROWS = {row.key: row for row in load_rows()}


def _section(page: str, name: str) -> str:
    """What stands under a heading, on one line."""
    return " ".join(PAGES[page].split(f"## {name}\n")[1].split("\n## ")[0].split())


def test_every_movement_has_one_row_and_the_scored_ones_a_link() -> None:
    cells = re.findall(r"^\| (\[?)([^|\]]+)[^|]*\|", PAGES["README.md"], flags=re.MULTILINE)
    names = [name.strip() for _, name in cells if name.strip() != "movement"]
    assert sorted(names) == sorted(row.name for row in ROWS.values())
    linked = {name.strip() for bracket, name in cells if bracket}
    assert linked == {row.name for row in ROWS.values() if row.path is not None}


def test_patterns_stand_in_the_order_of_the_closed_list() -> None:
    headings = re.findall(r"^## (.+)$", PAGES["README.md"], flags=re.MULTILINE)
    assert headings == list(get_args(Pattern))


def test_a_scored_movement_is_explained_as_move_explains_it() -> None:
    told = _section("fly.md", "level cable crossover")
    sentence = move_text([library().movement("level-cable-crossover")]).split("\n\n")[0].partition(": ")[2]
    assert " ".join(sentence.split())[1:] in told
    assert "![level cable crossover](pictures/level-cable-crossover.svg)" in told
    for caution in ROWS["level-cable-crossover"].cautions:
        assert f"Watch: {caution}" in told


def test_a_movement_that_the_model_is_not_trusted_with_is_not_drawn() -> None:
    told = _section("shoulder-extension.md", "dumbbell pullover")
    assert "Not drawn." in told
    assert "![" not in told


@pytest.mark.parametrize("page", [name for name in PAGES if name != "README.md"])
def test_every_page_with_pictures_says_what_the_figures_are(page: str) -> None:
    assert "from one cadaver-sized model" in PAGES[page]
