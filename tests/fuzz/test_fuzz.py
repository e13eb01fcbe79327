"""The fuzz run itself: it repeats, it notices what is wrong, and it makes a failing input small."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

from setwright.checked import Checked, check_file
from setwright.files import read_text
from setwright.places import Place
from tests.fuzz import verdict
from tests.fuzz.__main__ import run
from tests.fuzz.garble import garbled
from tests.fuzz.seeds import Input

PLAN = Input(b"plan: A\nwork:\n  - dip: 3 x 8\n  - rop climb: 3 x 8\n", b"", b"")

Check = Callable[[str, str, Callable[[str], str | None]], Checked]


def check_with(monkeypatch: pytest.MonkeyPatch, check: Check) -> None:
    monkeypatch.setattr(verdict, "check_file", check)


def test_a_short_run_finds_nothing(tmp_path: Path) -> None:
    assert not run(range(100), 7, tmp_path)


def test_the_same_two_numbers_give_the_same_input() -> None:
    assert garbled(3, 4) == garbled(3, 4) != garbled(3, 5)


def test_a_fault_is_repeatable_and_made_small(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def breaks(file: str, text: str, beside: Callable[[str], str | None]) -> Checked:
        if "push-up" in text:
            raise ZeroDivisionError("planted")
        return check_file(file, text, beside)

    check_with(monkeypatch, breaks)
    met = run(range(200), 1, tmp_path)
    assert sum(met.values()) == 1
    assert "ZeroDivisionError in" in capsys.readouterr().out
    (plan,) = tmp_path.glob("1-*/week.yaml")
    text = read_text(plan)
    assert text.count("\n") <= 2  # UTF-16 keeps its mark, and so its first line
    assert "push-up" in text


def test_a_check_that_does_not_end_is_a_fault(monkeypatch: pytest.MonkeyPatch) -> None:
    def never_ends(*_: object) -> Checked:
        while True:
            pass

    check_with(monkeypatch, never_ends)
    monkeypatch.setattr(verdict, "LONGEST_S", 0.05)
    assert "TooSlow" in str(verdict.fault(PLAN, printed=False))


@pytest.mark.parametrize(
    ("line", "column", "end_column"), [(99, 1, 1), (4, 1, 99), (4, 9, 3), (0, 1, 1), (4, 40, 41)]
)
def test_a_place_outside_the_text_is_a_fault(
    line: int, column: int, end_column: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    def misplaced(file: str, text: str, beside: Callable[[str], str | None]) -> Checked:
        one = check_file(file, text, beside)
        place = Place(file, line, column, line, end_column)
        return one._replace(findings=(replace(one.findings[0], place=place),))

    assert verdict.fault(PLAN, printed=True) is None
    check_with(monkeypatch, misplaced)
    assert "stands outside the text" in str(verdict.fault(PLAN, printed=False))


def test_a_finding_told_twice_is_a_fault(monkeypatch: pytest.MonkeyPatch) -> None:
    def doubled(file: str, text: str, beside: Callable[[str], str | None]) -> Checked:
        one = check_file(file, text, beside)
        return one._replace(findings=one.findings * 2)

    check_with(monkeypatch, doubled)
    assert "told twice" in str(verdict.fault(PLAN, printed=False))
