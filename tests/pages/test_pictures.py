"""The sheet that the README shows is the sheet that is printed today."""

import os
from pathlib import Path

import pytest
from PIL import Image, ImageChops

from tests.pages import pictures
from tests.pages.browser import Browser, installed

SAME = 0.004
"""Mean difference of a dot up to which two pictures are the same: 16 shades, another browser."""


def shown(path: Path) -> Image.Image:
    with Image.open(path) as picture:
        return picture.convert("L")


needs_a_browser = pytest.mark.skipif(
    installed() is None and os.environ.get("CI") != "true", reason="not run: no Chromium"
)


@needs_a_browser
def test_the_readme_shows_todays_sheet() -> None:
    path = installed()
    assert path
    with Browser(path) as browser:
        found = pictures.difference(pictures.drawn(browser), shown(pictures.SHEET))
    assert found < SAME, "run python -m tests.pages.pictures, and look at what it wrote"


@needs_a_browser
def test_the_picture_is_written(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    size = shown(pictures.SHEET).size
    monkeypatch.setattr(pictures, "SHEET", tmp_path / "sheet.png")
    assert pictures.main() == 0
    assert shown(tmp_path / "sheet.png").size == size


def test_a_line_a_little_lower_is_seen() -> None:
    sheet = shown(pictures.SHEET)
    assert pictures.difference(sheet, sheet) == 0
    assert pictures.difference(sheet, ImageChops.offset(sheet, 0, 1)) > SAME


def test_without_a_browser_nothing_is_drawn(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(pictures, "installed", lambda: None)
    assert pictures.main() == 2
    assert "no Chromium" in capsys.readouterr().out
