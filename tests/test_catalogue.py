"""The compiled files are what their sources give."""

import json
from pathlib import Path

import pytest

from setwright import catalogue
from setwright.library.rows import load_rows
from setwright.library.table import LIBRARY_FILE, library


def test_the_shipped_library_and_the_pages_are_what_their_sources_give() -> None:
    assert catalogue.check() == [], "run python -m setwright.catalogue --write"


def test_every_row_is_in_the_library_one_movement_a_line() -> None:
    text = LIBRARY_FILE.read_text(encoding="utf-8")
    data = json.loads(text)
    assert data["format"] == "setwright-library/1"
    assert list(data["movements"]) == [row.key for row in load_rows()]
    lines = text.splitlines()
    for key in data["movements"]:
        assert sum(line.startswith(f'"{key}":{{"key"') for line in lines) == 1
    assert {"names", "ambiguous"} < set(data)


def test_movements_with_a_path_are_scored_and_the_others_only_described() -> None:
    for row in load_rows():
        one = library().movement(row.key)
        assert one["scored"] is (row.path is not None)
        assert ("parts" in one) is one["scored"]
        assert ("partners" in one) is one["scored"]


def test_ratios_and_shares_of_body_mass_keep_their_source() -> None:
    assert library().movement("close-grip-barbell-bench-press")["load_ratio"]["source"]
    assert library().movement("push-up")["share_source"]


def test_partners_are_named_both_ways() -> None:
    for key in library().keys():  # noqa: SIM118  # a Library is no mapping
        for one in library().movement(key).get("partners", ()):
            other = library().movement(one["key"])
            assert one["name"] == other["name"]
            if one["finishes"]:
                assert key in [back["key"] for back in other["partners"] if back["finishes"]]


@pytest.fixture
def product(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """One product in a folder of its own."""
    path = tmp_path / "made.json"
    monkeypatch.setattr(catalogue, "products", lambda: iter([(path, "made\n")]))
    monkeypatch.setattr(catalogue, "GENERATED", (tmp_path,))
    return path


def test_check_says_what_is_stale_and_write_mends_it(
    product: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert catalogue.main(["--check"]) == 1
    assert "differs from its sources" in capsys.readouterr().out
    assert catalogue.main(["--write"]) == 0
    assert product.read_text() == "made\n"
    assert str(product) in capsys.readouterr().out
    assert catalogue.main(["--check"]) == 0
    assert capsys.readouterr().out == ""


def test_a_page_of_a_movement_that_is_no_more_is_named(
    product: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert catalogue.main(["--write"]) == 0
    old = product.with_name("old.md")
    old.write_text("made once\n")
    assert catalogue.main(["--check"]) == 1
    assert f"{old} is made from nothing any more: delete it" in capsys.readouterr().out


def test_other_arguments_are_refused(capsys: pytest.CaptureFixture[str]) -> None:
    assert catalogue.main([]) == 2
    assert "--write" in capsys.readouterr().out
