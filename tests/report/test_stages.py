"""What is said of stages: by `read` in full, by `check` in one line each, on paper nothing."""

from pathlib import Path

import pytest

from setwright.report.terminal import text as screen
from setwright.sheets import sheet_html
from setwright.sheets.sessions import session_sheets
from tests.commands import run
from tests.model.test_stages import STAGES, signed
from tests.report.test_read import said
from tests.rules.plans import checked


def shown(text: str) -> str:
    return " ".join(screen(checked(text), colour=False).split())


def test_read_says_every_word_and_which_sessions_are_not_in_force() -> None:
    told = said(STAGES)
    for words in (
        "stage light: signed off by the physio on 2027-02-01",
        "stage middle: not before week 3; by week 6 at the latest, which opens and closes nothing",
        "enter when: full range; enter when: no pain the day after; not signed off; stop: pain over 3 of 10",
        "note: slowly; private note, never printed: calls on the phone",
        "stage heavy: not signed off",
        "Monday stage light, in force 1. push-up",
        "Tuesday stage Middle, not in force: not signed off 1. leaning parallel-bar dip",
        "Friday 1. pull-up",
    ):
        assert words in told
    assert told.index("Tuesday") < told.index("Friday")
    assert "stage xyz, not in force: no stage of the plan" in said(
        STAGES.replace("stage: heavy", "stage: xyz")
    )


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        (
            STAGES,
            ["stage middle: not signed off, its session is", "stage heavy: not signed off, its session is"],
        ),
        (
            f"{STAGES}  - day: Sunday\n    like: Thursday\n",
            ["stage heavy: not signed off, its 2 sessions are left out"],
        ),
        (signed("middle"), ["stage middle: signed off, but not before week 3, its session is left out"]),
        (
            signed("heavy"),
            ["stage light: over since the later stage heavy is signed off, its session is left out"],
        ),
    ],
)
def test_check_says_in_one_line_a_stage_what_is_left_out(text: str, lines: list[str]) -> None:
    told = shown(text)
    for line in lines:
        assert line in told
    assert told.startswith("Way back: 2 sessions")


def test_what_is_not_in_force_is_not_counted_and_not_printed() -> None:
    found = checked(STAGES)
    assert found.coverage is not None
    assert found.week is not None
    assert [one.session.day for one in found.coverage.sessions] == ["Monday", "Friday"]
    assert {work.item.name for one in found.coverage.sessions for work in one.works} == {"push-up", "pull-up"}
    assert [sheet.title for sheet in session_sheets(found.week, "a")] == ["Monday", "Friday"]
    for kind in ("session", "week"):
        page = sheet_html(found, kind, "a4").split("</head>")[1]
        for word in ("middle", "physio", "pain", "Thursday", "dip"):
            assert word not in page


def test_where_nothing_is_in_force_nothing_is_judged_or_printed(tmp_path: Path) -> None:
    text = STAGES.replace("    signed off: the physio, 2027-02-01\n", "").partition("  - day: Friday")[0]
    text = text.replace(
        "plan: Way back\n", "plan: Way back\nfocus: [chest, back]\nallow:\n  half-a-pair: once\n"
    )
    found = checked(text)
    assert found.findings == ()
    assert "0 sessions" in shown(text)
    plan = tmp_path / "plan.yaml"
    plan.write_text(text, encoding="utf-8")
    stopped = run("sheet", str(plan), "--out", str(tmp_path))
    assert stopped.exit_code == 2
    assert "no session is in force, so no sheet is written: stage light: not signed off" in stopped.output
    assert list(tmp_path.iterdir()) == [plan]


def test_a_return_is_never_told_to_open_a_stage() -> None:
    found = checked(STAGES.replace("plan: Way back\n", "plan: Way back\naim: return\n"))
    assert found.aim is not None
    assert found.aim.row == "return"
    assert found.findings == ()
