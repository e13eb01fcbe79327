"""The questions of the plan language, each with both readings in its text and a line to copy that is read."""

import re

import pytest

from setwright.findings import Finding
from tests.reading.plans import read

HEAD = "plan: A week\n"
BENCH = "flat barbell bench press"
SQUAD = (
    "squad:\n  athletes:\n    - name: Ann\n      maxes:\n"
    f"        {BENCH}: 55 kg tested 2026-12-14, training max 90%\n"
)
GYM = "gym:\n  bands:\n    green: 60 N at 2 m\n"
ASKED = [
    ("dose-order", "8 x 3", ["8 sets of 3", "3 sets of 8"], ["8 sets of 3", "3 sets of 8"]),
    ("third-number", "3x8x60", ["60 what"], ["3 x 8 at 60 kg", "3 x 8 at 60%"]),
    ("load-first", "60 kg x 5", ["load", "sets first"], ["1 x 5 at 60 kg"]),
    ("time-without-word", "4 x 8, 120 s", ["rest", "how long a set lasts"],
     ["4 x 8, rest 120 s", "4 x 120 s"]),
    ("brackets-in-dose", "5 x [4-5]", ["brackets and stars"], ["5 x 4-5"]),
    ("brackets-in-dose", "3 x >8", ["8 or more", "more than 8"], ["3 x 8+", "3 x 9+"]),
    ("hyphen-list", "12-10-8", ["one after the other", "breaks"],
     ["sets of 12, 10, 8", "cluster 12 + 10 + 8"]),
    ("slash-in-dose", "12/10/8", ["set by set", "by week", "work and rest", "two groups"],
     ["sets of 12, 10, 8"]),
    ("set-count-differs", "3 x 12, 10", ["3 sets but 2 numbers"], ["sets of 12, 10"]),
    ("bare-plus", "10+3+3", ["what is the plus"],
     ["rest-pause 10 + 3 + 3", "cluster 10 + 3 + 3", "partials 10 + 3 + 3"]),
    ("max-minus", "3 x max-1", ["failure today", "tested number"],
     ["3 x max at 1 RIR", "3 x tested max minus 1"]),
    ("rm-as-amount", "10RM x 3", ["3 sets of 10", "sets of 3"], ["3 x 10 at 10RM", "3 x 3 at 10RM"]),
    ("side-in-wrong-place", "3 x 10 at 20 kg each side", ["repetitions a side", "load a side"],
     ["3 x 10 each side at 20 kg"]),
    ("effort-or-load", "3 x 5 at 8", ["RPE 8", "8 kg"], ["3 x 5 at RPE 8", "3 x 5 at 8 kg"]),
    ("load-without-unit", "3 x 5 at 60", ["kg or lb"], ["3 x 5 at 60 kg", "3 x 5 at 60 lb"]),
    ("plus-without-base", "3 x 8, +5", ["more than what"],
     ["3 x 8, at last time + 5 kg", "3 x 8, at bodyweight + 5 kg"]),
    ("plates-without-weight", "3 x 8 at 2 plates", ["which plates"], ["3 x 8 at bar + 40 kg a side"]),
    ("load-without-number", "3 x 8, hard", ["no number to print"], ["3 x 8, own choice", "3 x 8, 2 RIR"]),
    ("rest-without-unit", "3 x 8, rest 2", ["2 minutes", "2 seconds"],
     ["3 x 8, rest 2 min", "3 x 8, rest 2 s"]),
    ("rest-without-unit", "3 x 8, rest 1.30", ["1 min 30 s", "1.3 minutes"],
     ["3 x 8, rest 1:30", "3 x 8, rest 1.3 min"]),
    ("number-out-of-range", "3 x 8, rest 1:90", ["2:30", "90 seconds"],
     ["3 x 8, rest 2:30", "3 x 8, rest 90 s"]),
    ("plus-without-base", "3x8 +5", ["5 more than what"], ["3x8 at last time + 5 kg"]),
    ("letter-for-a-word", "3 x 8, r90", ["rest", "rowing rate", "repetitions"], ["3 x 8, rest 90 s"]),
    ("letter-for-a-word", "L 3x12, R 2x12", ["a letter for a side"], ["3 x 12 left, then 2 x 12 right"]),
    ("tempo-incomplete", "3 x 8, tempo 301", ["which phase"], ["3 x 8, tempo 3-0-1-0", "3 x 8, 3 s down"]),
    ("ratio", "6 x 40 s, rest 2:1", ["work to rest", "rest to work"],
     ["6 x 40 s, rest half the work", "6 x 40 s, rest 2 times the work"]),
    ("pause-without-place", "3 x 8, pause 2 s", ["where"], ["3 x 8, pause 2 s at the bottom"]),
    ("ladder-unclear", "1-10 ladder", ["55 in all", "100 in all"], ["ladder 1 to 10", "ladder 1 to 10 to 1"]),
    ("every-minute-code", "E2MOM", ["how many sets", "how long"], ["10 x 5 every 2:00"]),
    ("rounds-or-reps", "AMRAP 12", ["12 minutes of rounds", "as many repetitions as possible"],
     ["1 x max, cap 12"]),
    ("date-for-reps", "10-Aug", ["spreadsheet", "8-10"], ["3 x 8-10"]),
    ("date-for-reps", "three by ten", ["numbers in words"], ["3 x 10"]),
    ("load-on-one-part", "3 x 12, then 2 x 12 at 20 kg", ["stands only on 2 x 12", "3 x 12"], []),
    ("number-without-unit", "hold 30", ["30 what"], ["3 x 30 s hold", "3 x 30 reps"]),
    ("moves-that-go-together", "A1 3 x 8", ["moves that go together"], []),
    ("change-over-weeks", "3 x 8, +2.5/wk", ["week by week", "rule for next time"], []),
    ("change-over-weeks", "3 x 8, +2%/wk", ["last week's load", "first week's"], []),
    ("second-dose", "3 x 8, 3 x 6", ["sets of another kind"], ["3 x 8, then 3 x 6"]),
    ("effort-off-scale", "3 x 5 RPE 12", ["RPE ends at 10"], ["3 x 5 Borg 12"]),
    ("words-not-read", "3 x 8, full", ["full is not a word"], ["3 x 8, rest as needed"]),
    ("change-over-weeks", "deload half", ["half the sets", "half the load"], []),
    ("percent-off-nothing", "work up to 5RM, then -10% 2x5", ["off what"],
     ["work up to 5RM, then 2x5 at 90% of top set"]),
]  # fmt: skip


def _asked(move: str, typed: str, top: str = "") -> Finding:
    (finding,) = read(f"{HEAD}{top}work:\n  - {move}: {typed}\n").findings
    return finding


@pytest.mark.parametrize(("rule", "typed", "readings", "lines"), ASKED, ids=lambda v: str(v)[:30])
def test_a_question_has_both_readings_and_a_line_to_copy(
    rule: str, typed: str, readings: list[str], lines: list[str]
) -> None:
    finding = _asked(BENCH, typed)
    assert finding.rule == rule
    for words in readings:
        assert words in finding.message
    for line in lines:
        assert f'"{line}"' in finding.change
        assert read(f"{HEAD}work:\n  - {BENCH}: {line}\n").findings == ()
    _is_a_sentence(finding)


def _is_a_sentence(finding: Finding) -> None:
    """Plain words, no brackets left to fill in, no loose ends."""
    for text in (finding.message, finding.change, finding.why):
        assert not re.search(r"[{}]|\bNone\b|\.\.$| {2}", text)
    assert re.match(r"[A-Z`0-9]", finding.change)


def test_a_one_sided_move_is_asked_each_side_or_in_all() -> None:
    finding = _asked("one-arm dumbbell row", "3 x 10 at 20 kg, rest 60 s")
    assert finding.message.endswith("10 each side, or 10 in all?")
    for line in ("3 x 10 each side at 20 kg, rest 60 s", "3 x 10 in all at 20 kg, rest 60 s"):
        assert f'"{line}"' in finding.change
        assert read(f"{HEAD}work:\n  - one-arm dumbbell row: {line}\n").findings == ()
    assert "`sides: each`" in finding.change


def test_steps_are_asked_steps_or_each_leg() -> None:
    finding = _asked("walking lunge", "3 x 10, rest 60 s")
    assert finding.message.endswith("10 steps, or 10 each leg?")
    for line in ("3 x 10 steps, rest 60 s", "3 x 10 each leg, rest 60 s"):
        assert f'"{line}"' in finding.change
        assert read(f"{HEAD}work:\n  - walking lunge: {line}\n").findings == ()


def test_a_band_that_the_gym_lacks_is_asked() -> None:
    finding = _asked("band row", "3 x 15 with red band", GYM)
    assert (finding.rule, "makers differ" in finding.message) == ("band-not-in-gym", True)
    assert '"3 x 15 with green band"' in finding.change
    assert '"red: 60 N at 2 m"' in finding.change


def test_a_percent_is_asked_of_which_max() -> None:
    finding = _asked(BENCH, "3 x 5 at 75%", SQUAD)
    assert "tested max and training max on file; of which?" in finding.message
    for line in ("3 x 5 at 75% of tested max", "3 x 5 at 75% of training max"):
        assert f'"{line}"' in finding.change
        assert read(f"{HEAD}{SQUAD}work:\n  - {BENCH}: {line}\n").findings == ()


def test_a_movement_without_a_colon_gets_one() -> None:
    (finding,) = read(f"{HEAD}work:\n  - {BENCH} 3 x 8\n").findings
    assert (finding.rule, f"`- {BENCH}: 3 x 8`" in finding.change) == ("dose-missing", True)


def test_a_load_on_one_part_of_a_chain_is_offered_on_each() -> None:
    finding = _asked(BENCH, "3 x 12, then 2 x 12 at 20 kg")
    assert '"3 x 12 at 20 kg' in finding.change
    assert read(f"{HEAD}work:\n  - {BENCH}: 3 x 12 at 20 kg, then 2 x 12 at 20 kg\n").findings == ()
