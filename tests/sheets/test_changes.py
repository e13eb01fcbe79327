"""The difference list, case by case, and the version mark that goes with it."""

import datetime as dt
from pathlib import Path

import pytest

from setwright.checked import Checked
from setwright.files import CannotRun
from setwright.sheets import Order, asked, print_sheets, sheet_html, words
from setwright.sheets.changes import KeptSheet, changes, kept
from setwright.sheets.editions import LastPrint, all_sheets, last_print, version_mark
from setwright.sheets.editions import this_print as edition_now
from setwright.sheets.html import css_text
from setwright.sheets.kinds import KINDS, Kind
from setwright.sheets.overview_room import MOST_CHANGES, first_of
from tests.pages.plans import CLUB, check

FIRST = dt.date(2027, 11, 14)
LATER = dt.date(2027, 11, 16)
PLAN = """\
plan: Winter
unit: kg
dose order: sets x reps
squad:
  athletes: [Isla, Tam]
sessions:
  - day: Monday
    name: Press and row
    work:
      - flat barbell bench press: 3 x 8 at 60 kg, rest 2:00
      - bench pull: 3 x 8 at 50 kg
      - goblet squat: 3 x 10 at 24 kg
  - day: Thursday
    work:
      - pull-up: 3 x 5
"""


def mark_of(checked: Checked) -> str:
    return version_mark(checked, all_sheets(checked))


def this_print(checked: Checked, last: LastPrint | None, today: dt.date) -> LastPrint:
    return edition_now(checked, all_sheets(checked), last, today)


def kept_of(plan: str) -> tuple[KeptSheet, ...]:
    return kept(all_sheets(check(plan))["session"])


def told(*swaps: tuple[str, str], plan: str = PLAN) -> tuple[str, ...]:
    """The difference list after some texts of the plan were replaced."""
    changed = plan
    for old, new in swaps:
        assert old in changed
        changed = changed.replace(old, new)
    before = this_print(check(plan), None, FIRST)
    assert before.changes == ()
    return this_print(check(changed), before, LATER).changes


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("3 x 8 at 60", "4 x 8 at 60", "Monday: 1 flat barbell bench press: 4 × 8 (was 3 × 8)"),
        ("at 60 kg", "at 62.5 kg", "Monday: 1 flat barbell bench press: 62.5 kg (was 60 kg)"),
        ("rest 2:00", "rest 3:00", "Monday: 1 flat barbell bench press: rest 3:00 (was rest 2:00)"),
        (" at 50 kg", "", "Monday: 2 bench pull: no load written (was 50 kg)"),
        ("bench pull", "leg press", "Monday: 2 leg press, 3 × 8, 50 kg, in place of bench pull"),
        (
            "      - goblet squat: 3 x 10 at 24 kg\n", "",
            "Monday: dropped 3 goblet squat",
        ),
        (
            "24 kg\n", "24 kg\n      - face pull: 3 x 12\n",
            "Monday: added 4 face pull, 3 × 12",
        ),
        ("[Isla, Tam]", "[Isla]", "Monday: no sheet for Tam any more"),
        ("[Isla, Tam]", "[Isla, Tam, Effie]", "Thursday: a sheet for Effie"),
        ("day: Thursday", "day: Friday", "Thursday: no longer in the week"),
        ("day: Thursday", "day: Friday", "Friday: a new session"),
    ],
)  # fmt: skip
def test_each_change_in_words(old: str, new: str, said: str) -> None:
    assert said in told((old, new))


def test_what_changed_for_one_alone_ends_in_their_name() -> None:
    own = "3 x 10\n        load:\n          Isla: 24 kg\n          Tam: 16 kg\n"
    said = "Monday: 3 goblet squat: 16 kg (was 24 kg) (Tam)"
    assert told(("3 x 10 at 24 kg\n", own)) == (said,)


def test_lines_in_another_order() -> None:
    lines = PLAN.splitlines(keepends=True)
    lines[9], lines[10] = lines[10], lines[9]
    before = this_print(check(PLAN), None, FIRST)
    assert this_print(check("".join(lines)), before, LATER).changes == ("Monday: in another order",)


def test_a_plan_for_everybody_and_two_sessions_of_one_day() -> None:
    plan = PLAN.replace("squad:\n  athletes: [Isla, Tam]\n", "").replace(
        "  - day: Thursday\n", "  - day: Monday\n    name: Hang\n"
    )
    assert told(("3 x 5", "4 x 5"), plan=plan) == ("Hang: 1 pull-up: 4 × 5 (was 3 × 5)",)


def test_a_new_name_is_told_as_what_it_is() -> None:
    assert told(("name: Press and row", "name: Push")) == ("Monday: now called Push (was Press and row)",)


def test_a_session_on_another_day_is_still_that_session() -> None:
    assert told(("day: Monday", "day: Tuesday")) == ("Tuesday: on Tuesday (was Monday)",)


def test_a_second_session_on_a_day_leaves_the_first_as_it_was() -> None:
    assert told(("day: Thursday\n", "day: Monday\n    name: Hang\n")) == (
        "Hang: a new session",
        "Thursday: no longer in the week",
    )


def test_two_sessions_of_one_day_without_a_name_are_told_apart() -> None:
    twins = PLAN.replace("    name: Press and row\n", "").replace("day: Thursday", "day: Monday")
    assert told(("3 x 5", "4 x 5"), plan=twins) == ("Monday (2): 1 pull-up: 4 × 5 (was 3 × 5)",)


def test_what_was_kept_before_titles_were_kept_is_read() -> None:
    old = [sheet.model_copy(update={"day": None, "title": None}) for sheet in kept_of(PLAN)]
    assert changes(old, kept_of(PLAN.replace("60 kg", "65 kg"))) == (
        "Monday: 1 flat barbell bench press: 65 kg (was 60 kg)",
    )


def test_many_changes_are_counted() -> None:
    lines = "".join(f"      - goblet squat: 3 x {reps}\n" for reps in range(1, 20))
    changes = told(("      - pull-up: 3 x 5\n", lines))
    shown = first_of(changes, MOST_CHANGES)
    assert len(shown) == MOST_CHANGES
    assert shown[-1] == "and 8 more"
    assert first_of(changes[:MOST_CHANGES], MOST_CHANGES) == changes[:MOST_CHANGES]


def test_the_mark_follows_what_is_printed_not_the_text() -> None:
    mark = mark_of(check(PLAN))
    assert mark == mark_of(check(PLAN + "# a comment\n"))
    assert mark == mark_of(check(PLAN.replace("plan:", "private note: key under the mat\nplan:")))
    assert mark != mark_of(check(PLAN.replace("60 kg", "61 kg")))


def order(out: Path, **more: bool) -> Order:
    return Order(asked("all", "a4"), out, **more)


def printed(plan: str, out: Path, day: dt.date) -> dict[str, bytes]:
    """The bytes of every file after a print."""
    list(print_sheets(check(plan), order(out), day))
    return {path.name: path.read_bytes() for path in out.iterdir()}


def test_printing_again_keeps_mark_day_and_bytes(tmp_path: Path) -> None:
    first = printed(PLAN, tmp_path, FIRST)
    assert printed(PLAN, tmp_path, LATER) == first
    changed = printed(PLAN.replace("60 kg", "65 kg"), tmp_path, LATER)
    assert changed != first
    assert printed(PLAN.replace("60 kg", "65 kg"), tmp_path, LATER + dt.timedelta(days=9)) == changed
    overview = changed["winter-1-week-a4.html"].decode()
    assert "Changed since version" in overview
    assert "of 14 Nov 2027</h2>" in overview
    assert "65\xa0kg (was 60\xa0kg)" in overview
    assert "Changed since" not in first["winter-1-week-a4.html"].decode()


def test_what_is_kept_lies_beside_the_prints_and_holds_nothing_private(tmp_path: Path) -> None:
    squad = PLAN.replace("[Isla, Tam]", "\n    - name: Isla\n      private note: knee\n    - name: Tam")
    files = printed(squad, tmp_path, FIRST)
    kept = files[".winter-last-print.json"].decode()
    assert "Isla" in kept
    assert "knee" not in kept


def test_a_damaged_record_is_one_sentence_and_nothing_is_written(tmp_path: Path) -> None:
    record = tmp_path / ".winter-last-print.json"
    record.write_text("{}")
    assert last_print(tmp_path / "none.json") is None
    with pytest.raises(CannotRun, match=r"is damaged.*delete it and print again"):
        printed(PLAN, tmp_path, FIRST)
    assert list(tmp_path.iterdir()) == [record]


@pytest.mark.parametrize("kind", KINDS)
def test_the_mark_stands_in_the_footers_of_every_kind(kind: Kind) -> None:
    plan = check(CLUB)
    page = sheet_html(plan, kind, KINDS[kind].papers[0], FIRST)
    assert css_text(f"version {mark_of(plan)} of 14 Nov 2027")[1:-1] in page
    assert words.MARK not in page


def test_the_overview_alone_works_out_its_own_mark() -> None:
    page = sheet_html(check(PLAN), "week", "a4", FIRST)
    assert mark_of(check(PLAN)) in page
