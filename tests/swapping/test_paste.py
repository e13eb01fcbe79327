"""The lines to type: in the coach's own indentation, remarks kept, nothing dropped unsaid, or not shown."""

import pytest

from setwright.findings import Level
from setwright.report.swap import BY_HAND, swap_text
from setwright.rules import heavy_line_not_finished, push_without_pull
from setwright.swapping import proposal as proposal_module
from tests.rules.plans import HEAD, checked
from tests.swapping.plans import proposed, screen, typed_in

PRESS = "flat barbell bench press"
FINISHED = """\
      - bench pull: 4 x 8 at 2 RIR
  - day: Thursday
    work:
      - incline 30 barbell bench press: 4 x 6 at 2 RIR
      - low-to-high cable crossover: 3 x 12 at 1 RIR
      - dip: 3 x 8 at 2 RIR
      - high-to-low cable crossover: 2 x 12 at 1 RIR
      - pull-up: 4 x 8 at 2 RIR
"""


def plan(*press: str) -> str:
    """A week whose flat press is not finished, with that press written as given."""
    lines = "".join(f"      {line}\n" for line in press)
    return f"{HEAD}focus: [chest]\nsessions:\n  - day: Monday\n    work:\n{lines}{FINISHED}"


def block(*press: str) -> list[str]:
    """The one edit for such a week, without its first six blanks; what it makes of the plan is clean."""
    text = plan(*press)
    proposal = proposed(text)
    after = checked(typed_in(text, proposal))
    assert after.complete
    assert [f.message for f in after.findings if f.level >= Level.gap] == []
    assert proposal.edits
    (edit,) = proposal.edits
    return [line[6:] for line in edit.new]


def test_a_line_without_rest_becomes_a_superset() -> None:
    assert block(f"- {PRESS}: 4 x 6 at 2 RIR") == [
        "- superset:",
        f"    - {PRESS}: 4 x 6 at 2 RIR",
        "    - level cable crossover: 3 x 12 at 1 RIR",
    ]


def test_the_rest_in_a_line_becomes_that_of_the_superset() -> None:
    assert block(f"- {PRESS}: 4 x 6 at 2 RIR, rest 2:30, tempo 3-1-1-0   # heavy") == [
        "- superset:",
        f"    - {PRESS}: 4 x 6 at 2 RIR, tempo 3-1-1-0   # heavy",
        "    - level cable crossover: 3 x 12 at 1 RIR",
        "  rest: 2:30",
    ]


def test_the_rest_under_a_line_too_and_other_words_stay_with_the_line() -> None:
    assert block(
        f"- {PRESS}: 4 x 6 at 2 RIR", "  warm-up: 10 at bar", "  # a remark", "", "  rest: 2:00  # long"
    ) == [
        "- superset:",
        f"    - {PRESS}: 4 x 6 at 2 RIR",
        "      warm-up: 10 at bar",
        "      # a remark",
        "",
        "    - level cable crossover: 3 x 12 at 1 RIR",
        "  rest: 2:00",
    ]


def test_a_line_spelled_out() -> None:
    assert block(f"- move: {PRESS}", "  do: 4 x 6 at 2 RIR, rest 2:30") == [
        "- superset:",
        f"    - move: {PRESS}",
        "      do: 4 x 6 at 2 RIR",
        "    - level cable crossover: 3 x 12 at 1 RIR",
        "  rest: 2:30",
    ]


def test_a_member_of_a_group_gets_the_move_behind_it() -> None:
    group = (
        "- superset:",
        f"    - {PRESS}: 4 x 6 at 2 RIR",
        "    - face pull: 4 x 12 at 2 RIR",
        "  rest: 2:00",
    )
    assert block(*group) == ["    - level cable crossover: 3 x 12 at 1 RIR"]


def test_in_rounds_a_member_says_one_round() -> None:
    group = ("- circuit:", f"    - {PRESS}: 6 at 2 RIR", "    - face pull: 12 at 2 RIR", "  rounds: 4")
    assert block(*group) == ["    - level cable crossover: 12 at 1 RIR"]


def test_a_timed_group_is_left_as_it_is() -> None:
    group = (
        "- circuit:",
        f"    - {PRESS}: 6 at 2 RIR",
        "    - face pull: 12 at 2 RIR",
        "  every: 3:00",
        "  rounds: 4",
    )
    proposal = proposed(plan(*group))
    assert proposal.found.best
    assert [change.kind for change in proposal.found.best.changes] == ["add"]


@pytest.mark.parametrize(
    "press",
    [
        ("- {flat barbell bench press: 4 x 6 at 2 RIR}",),
        ("-", f"  {PRESS}: 4 x 6 at 2 RIR"),
        (f"- {PRESS}: 3 x 6 at 2 RIR, rest 2:30, then 1 x 12 at 2 RIR, rest 1:00",),
    ],
    ids=["braces", "hyphen alone", "two rests"],
)
def test_what_is_not_cut_by_lines_is_left_to_the_coach(press: tuple[str, ...]) -> None:
    proposal = proposed(plan(*press))
    assert proposal.found.best
    assert not proposal.found.left
    assert (proposal.edits, proposal.after) == (None, None)
    assert BY_HAND in swap_text(proposal)


def test_a_day_that_another_one_repeats_is_left_to_the_coach() -> None:
    text = heavy_line_not_finished.BAD.replace("    work:", "    work: &push", 1)
    text += "  - day: Saturday\n    work: *push\n"
    proposal = proposed(text)
    assert proposal.found.best
    assert BY_HAND in swap_text(proposal)


def test_a_single_session_with_its_work_at_the_top() -> None:
    text = (
        f"{HEAD}focus: [chest]\nwork:\n- {PRESS}: 6 x 6 at 2 RIR, rest 2:00\n- bench pull: 6 x 8 at 2 RIR\n"
    )
    text += "# the end\nnote: with the crew\n"
    proposal = proposed(text)
    assert proposal.found.best
    after = typed_in(text, proposal)
    assert checked(after).complete
    assert after.endswith("# the end\nnote: with the crew\n")


def test_line_ends_of_windows() -> None:
    text = plan(f"- {PRESS}: 4 x 6 at 2 RIR, rest 2:30").replace("\n", "\r\n")
    proposal = proposed(text)
    assert "\r" not in typed_in(text, proposal)
    assert not proposal.found.left


KITLESS = f"""\
{HEAD}gym:
  racks: 1
  benches: 1
  bars:
    20 kg: 1
sessions:
  - day: Monday
    work:
      - dip: 2 x 8 at 2 RIR
        priority: 3
        # slow today
        tempo: 3-1-1-0
        not for: [Ann]
        note: stop above any pinch
      # then the pull
      - bent-over barbell row: 2 x 8 at 2 RIR
squad:
  athletes:
    - name: Ann
"""


def test_a_line_replaced_hands_on_who_does_it_and_says_what_goes() -> None:
    proposal = proposed(KITLESS)
    assert proposal.edits
    (edit,) = proposal.edits
    assert edit.new[1:] == ("        priority: 3", "        # slow today", "        not for: [Ann]")
    assert edit.gone == ("tempo: 3-1-1-0", "note: stop above any pinch")
    assert "Goes with line 13: tempo: 3-1-1-0; note: stop above any pinch" in screen(KITLESS)
    assert "      # then the pull\n      - bent-over" in typed_in(KITLESS, proposal)
    made = proposal.found.best
    assert made
    (new,) = [item for item in made.state.week.sessions[0].items() if item.place.line == 13]
    assert (new.priority, new.not_for) == (3, ("Ann",))


def test_names_below_each_other_are_handed_on_with_their_word() -> None:
    text = KITLESS.replace(
        "not for: [Ann]", "not for:\n        - Ann\n        stop: at a pinch\n          or pain"
    )
    proposal = proposed(text)
    assert proposal.edits
    (edit,) = proposal.edits
    assert edit.new[-2:] == ("        not for:", "        - Ann")
    assert edit.gone == ("tempo: 3-1-1-0", "stop: at a pinch", "or pain", "note: stop above any pinch")


def test_a_rest_in_a_remark_is_no_rest() -> None:
    assert block(f"- {PRESS}: 4 x 6 at 2 RIR  # was 5, rest 3:00")[1:] == [
        f"    - {PRESS}: 4 x 6 at 2 RIR  # was 5, rest 3:00",
        "    - level cable crossover: 3 x 12 at 1 RIR",
    ]


def test_nothing_is_added_behind_a_line_in_braces() -> None:
    text = push_without_pull.BAD.replace(
        "- goblet squat: 4 x 10 at 3 RIR", "- {goblet squat: 4 x 10 at 3 RIR}"
    )
    proposal = proposed(text)
    assert proposal.found.best
    assert proposal.edits is None


@pytest.mark.parametrize("text", ["plan: nothing\n", KITLESS])
def test_lines_that_do_not_read_as_proposed_are_not_shown(text: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(proposal_module, "pasted", lambda *_: text)
    proposal = proposed(KITLESS)
    assert proposal.found.best
    assert (proposal.edits, proposal.after) == (None, None)


def test_a_heavy_lift_is_added_before_the_first_crossing_move() -> None:
    text = f"{HEAD}focus: [chest]\nwork:\n  - level cable crossover: 4 x 12 at 1 RIR\n"
    proposal = proposed(text)
    assert proposal.edits
    assert proposal.edits[0].first == 7
    assert "before level cable crossover (line 7)" in screen(text)
    assert typed_in(text, proposal).index("press") < typed_in(text, proposal).index("crossover")
