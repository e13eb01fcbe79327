"""Questions of the dose line: each rule's own examples, the coach's numbers, the smallest span."""

import re
from pathlib import Path

import pytest

from setwright.reading.doseline import read_dose
from setwright.reading.faults import TextRule
from setwright.reading.fitting import questions
from setwright.reading.habits import Habits
from setwright.reading.question import Question
from setwright.reading.questions import QUESTIONS, TEXT_RULES
from setwright.reading.short import dose_short
from tests.reading.dose_lines import KG, asked, at, read, rules, under

BARE = Habits()
NEEDS_MOVEMENT = frozenset({"side-not-written", "steps-or-each-leg"})
"""Rules that a dose line alone never raises: ``fitting`` asks them, knowing the movement."""
NEEDS_GROUP = frozenset({"sets-in-a-round"})
"""Rules that only a member of a group with rounds, times or a ladder raises."""
LINE_RULES = [rule for rule in TEXT_RULES if rule.id not in NEEDS_MOVEMENT | NEEDS_GROUP]
WORDS = [
    tuple(row.split("\n"))
    for row in (Path(__file__).parent / "dose_questions.txt")
    .read_text(encoding="utf-8")
    .strip()
    .split("\n\n")[1:]
]
BANDS = Habits(unit="kg", bands=frozenset({"green", "Band 2"}))


def test_rules_have_their_own_names() -> None:
    ids = [rule.id for rule in TEXT_RULES]
    assert len(ids) == len(set(ids))
    assert all(re.fullmatch(r"[a-z]+(-[a-z]+)*", name) for name in ids)


@pytest.mark.parametrize("rule", LINE_RULES, ids=lambda rule: rule.id)
def test_bad_sets_off_its_rule_and_good_does_not(rule: TextRule) -> None:
    habits = BARE if rule.id == "load-without-unit" else KG
    assert rule.id in rules(rule.bad, habits)
    read(rule.good, KG)


@pytest.mark.parametrize("question", QUESTIONS, ids=lambda q: f"{q.rule.id} {q.message[:30]}")
def test_every_question_says_what_to_type(question: Question) -> None:
    assert re.search(r'["`{]|Type|Keep|Take|Put', question.change)


@pytest.mark.parametrize(("typed", "message", "change"), WORDS, ids=[row[0] for row in WORDS])
def test_both_readings_are_written_out(typed: str, message: str, change: str) -> None:
    finding = asked(typed, BARE)[0]
    assert (finding.message, finding.change) == (message, change)


@pytest.mark.parametrize(
    ("typed", "marked"),
    [
        ("3 x 8 foo bar, rest 2, RPE 12", ["foo", "rest 2", "12"]),
        ("3 x 8, rest 2, then 3 x 6, RPE 11", ["rest 2", "11"]),
        ("12-10-8, rest 2", ["12-10-8", "rest 2"]),
        ("3 x 8, , rest 2", [",", "rest 2"]),
        ("3 x 8 foo, r90", ["foo", "r90"]),
        ("8 x 3, rest 2, grindy", ["8 x 3", "rest 2", "grindy"]),
        ("3\u200b x 8\u00a0at  challenging", ["challenging"]),
        ("3 x 8 – rest 90 s", ["–"]),
        ("3 x 8 at 60 kg, 65, 70 kg", ["65"]),
        ("bar x10, 40x5, 4x4@75%", ["bar x10, 40x5, 4x4@75%"]),
    ],
)
def test_one_line_tells_each_fault_at_its_place(typed: str, marked: list[str]) -> None:
    assert [under(typed, finding) for finding in asked(typed)] == marked


@pytest.mark.parametrize(
    ("typed", "rule"),
    [
        ("13 x 10", "dose-order"),
        ("8-10 x 3", "dose-order"),
        ("3 x", "reps-missing"),
        ("3 sets", "reps-missing"),
        ("3 sets foo", "words-not-read"),
        ("3 x 8, 2 left", "words-not-read"),
        ("10, 60 kg", "sets-missing"),
        ("3 x, rest 2:00", "reps-missing"),
        ("3 x 60 kg", "reps-missing"),
        ("10", "sets-missing"),
        ("max", "sets-missing"),
        ("10 reps", "sets-missing"),
        ("10, rest 2:00", "sets-missing"),
        ("0 x 8", "nothing-to-do"),
        ("3 x 0", "nothing-to-do"),
        ("ladder 0 to 5", "nothing-to-do"),
        ("ladder 1 to 5 by 0", "nothing-to-do"),
        ("cluster 2 + 0", "nothing-to-do"),
        ("3 x 8.5", "part-of-a-repetition"),
        ("3 x 1000000000", "number-out-of-range"),
        ("3 x tested max minus 1000000000", "number-out-of-range"),
        ("3 x 123456789:00", "number-out-of-range"),
        ("3 x 1111111111111:00", "number-out-of-range"),
        ("ladder 1 to 900", "number-out-of-range"),
        ("cluster 900 sets of 3 + 2", "number-out-of-range"),
        ("cluster 5", "value-missing"),
        ("cluster", "value-missing"),
        ("cluster x + 2", "plus-without-base"),
        ("ladder", "words-not-read"),
        ("ladder 1 to", "ladder-unclear"),
        ("test", "value-missing"),
        ("test five", "words-not-read"),
        ("work hard", "load-without-number"),
        ("work up to 5", "value-missing"),
        ("3 x tested max minus", "value-missing"),
        ("3 x 8 at", "value-missing"),
        ("3 x 8 at, rest 2:00", "value-missing"),
        ("3 x 8 at nothing", "words-not-read"),
        ("3 x 8 pin", "value-missing"),
        ("3 x 8 at 75% of", "value-missing"),
        ("3 x 8 at last time", "value-missing"),
        ("3 x 8 at last week + 5", "= read"),
        ("3 x 8 every", "value-missing"),
        ("3 x 8, cap", "value-missing"),
        ("3 x 30 m in", "value-missing"),
        ("3 x 500 m, rate", "value-missing"),
        ("3 x 500 m, split 2", "value-missing"),
        ("3 x 8, stop", "value-missing"),
        ("3 x 8, drop", "value-missing"),
        ("3 x 8, drop 100%", "value-missing"),
        ("3 x 8, drop 20% for", "value-missing"),
        ("3 x 8, last set", "value-missing"),
        ("3 x 8, last set rest 2:00", "value-missing"),
        ("3 x 8, last", "words-not-read"),
        ("3 x 8, tempo", "value-missing"),
        ("3 x 8, tempo slow", "words-not-read"),
        ("3 x 8, tempo 30-1-0", "tempo-incomplete"),
        ("3 x 8, RPE", "effort-off-scale"),
        ("3 x 8, Borg", "effort-off-scale"),
        ("3 x 8, 11 RIR", "effort-off-scale"),
        ("3 x 8, pause", "pause-without-place"),
        ("3 x 8, pause 2 s", "pause-without-place"),
        ("3 x cluster 2 + 2, pause 20", "pause-without-place"),
        ("3 x 8, rest", "rest-without-unit"),
        ("3 x 8, rest long", "words-not-read"),
        ("3 x 8, rest 20-10 s", "range-falls"),
        ("3 x 8, rest 2:00-1:00", "range-falls"),
        ("3 x 8, rest 3:1", "ratio"),
        ("3 x 8, 20", "time-without-word"),
        ("3 x 8 1:30", "time-without-word"),
        ("3 x 8 at 1:30", "time-without-word"),
        ("3 x 8 at 30 s", "time-without-word"),
        ("3 x 8, 3 sets of 6", "second-dose"),
        ("3 x 8, 40 m", "words-not-read"),
        ("3 x 8 at +5", "plus-without-base"),
        ("3 x 8 at + x", "words-not-read"),
        ("3 x 8 at bar + 20 kg", "plates-without-weight"),
        ("3 x 8 at bar + 20", "load-without-unit"),
        ("3 x 8 at one plate", "plates-without-weight"),
        ("3 x 8 rising", "rising-without-target"),
        ("3 x 8 at 60 kg at 65 kg", "said-twice"),
        ("3 x 8 each side, each arm", "said-twice"),
        ("3 x 8, tempo 3010, 3 s down", "said-twice"),
        ("3 x 8, 3 s down, 2 s down", "said-twice"),
        ("3 x 8, last set 5, 60 kg, 65 kg", "said-twice"),
        ("3 x 8, last set at 60, 65 kg", "set-count-differs"),
        ("3-5 x 8 at 60, 65 kg", "set-count-differs"),
        ("3 x 8 at 2, 1 RIR", "set-count-differs"),
        ("3 x 8 at 150, 75%", "percent-over-max"),
        ("3 x 8 at 110% of tested max", "percent-over-max"),
        ("sets of 30 s, 20, 10 m", "units-mixed"),
        ("sets of 10, 30 s, 12", "units-mixed"),
        ("3 x 8 at 60 kg, 65", "units-mixed"),
        ("sets of", "words-not-read"),
        ("sets", "words-not-read"),
        ("3 x 8 + 5", "bare-plus"),
        ("3 x 8 +5", "plus-without-base"),
        ("3 x 8+5", "bare-plus"),
        ("1 x 6 + 4 lowering", "words-not-read"),
        ("3 x 8, then", "words-not-read"),
        ("then 3 x 8", "words-not-read"),
        ("2 warm-up sets at 50%, then 3 x 8", "words-not-read"),
        ("2 warm-up, then 3 x 8", "words-not-read"),
        ("3 x 8, 2 warm-up", "words-not-read"),
        ("0 warm-up sets, then 3 x 8", "nothing-to-do"),
        ("3 x 8 with red band to far", "words-not-read"),
        ("3 x 8 with 2 bands", "band-not-in-gym"),
        ("3 x 8" + ", rest 2:00" * 50, "words-not-read"),
        ("3 x 8 x 60 x 2", "third-number"),
        ("3 x 8 x heavy single", "words-not-read"),
        ("3 x 8 x", "words-not-read"),
        ("3 x 8 ~", "words-not-read"),
        ("3 x 8 5*", "brackets-in-dose"),
        ("3 x red", "words-not-read"),
        ("1 x 3 sets of 8", "words-not-read"),
        ("3 x 12, then 2 x 12, 2 RIR", "load-on-one-part"),
        ("5 x AMRAP 12", "rounds-or-reps"),
        ("1:30 foo", "words-not-read"),
        ("3 x 8 a/b", "slash-in-dose"),
        ("3 x 8, every week", "words-not-read"),
        ("3 x 8, rest 2 min 30", "time-without-word"),
        ("3 x 8, rest 1:30 - foo", "words-not-read"),
    ],
)
def test_what_sets_off_each_question(typed: str, rule: str) -> None:
    if rule == "= read":
        read(typed)
    else:
        assert rule in rules(typed, KG if "last time" in typed or "RIR" in typed else BARE)


@pytest.mark.parametrize(
    ("typed", "rule"),
    [
        ("with 2 red bands", "band-not-in-gym"),
        ("with band 3", "band-not-in-gym"),
        ("green", "band-not-in-gym"),
    ],
)
def test_bands_are_looked_up_in_the_gym_file(typed: str, rule: str) -> None:
    (finding,) = asked(f"3 x 8 {typed}", BANDS)
    assert finding.rule == rule
    assert "60 N at 2 m" in finding.change or "with green band" in finding.change
    read("3 x 8 with green band, rest 60 s", BANDS)
    read("3 x 8 with band 2", BANDS)
    assert "It has" not in asked("3 x 8 with red band", Habits(bands=frozenset()))[0].change


@pytest.mark.parametrize(
    ("order", "typed", "sets", "reps"),
    [
        ("sets x reps", "8 x 3", 8, 3),
        ("reps x sets", "8 x 3", 3, 8),
        ("reps x sets", "8 sets of 3", 8, 3),
        ("reps x sets", "3 x 8 reps", 3, 8),
        ("reps x sets", "3 x max", 3, 0),
    ],
)
def test_house_order(order: str, typed: str, sets: int, reps: int) -> None:
    habits = Habits.model_validate({"dose_order": order})
    (group,) = read(typed, habits).groups
    assert (group.sets.low, group.works[0].amount.span.low) == (sets, reps)


def test_more_than_twelve_sets_are_asked_in_any_order_unless_every() -> None:
    assert rules("15 x 3", Habits(dose_order="sets x reps")) == ["dose-order"]
    assert read("15 x 3 every 1:00").groups[0].sets.low == 15
    assert read("15 x 30 s, rest 30 s").groups[0].sets.low == 15


def test_percent_over_a_hundred_is_said_back_and_training_maxes_have_room() -> None:
    assert read("3 x 1 at 103%").notes == ("103 % is more than the tested max",)
    assert read("3 x 1 at 110% of training max").notes == ()
    assert read("3 x 1 at 110%", Habits(percent_of="training max")).notes == ()
    assert read("3 x 1 at 120% of top set").notes == ()


@pytest.mark.parametrize(
    ("member", "typed", "short"),
    [
        ("rounds", "12", "1 x 12"),
        ("rounds", "8-10 at 2 RIR", "1 x 8-10, 2 left"),
        ("rounds", "40 s", "40 s"),
        ("rounds", "15 m", "15 m"),
        ("rounds", "max", "1 x max"),
        ("rounds", "5 each side", "1 x 5 each side"),
        ("rounds", "cluster 2 + 2", "cluster 2 + 2"),
        ("each", "at 2 x 20 kg", "by the clock"),
        ("each", "12 at 2 x 20 kg", "1 x 12"),
        ("ladder", "rung", "1 x rung"),
        ("ladder", "rung x 2", "1 x rung x 2"),
    ],
)
def test_members_say_one_round(member: str, typed: str, short: str) -> None:
    assert dose_short(read(typed, Habits.model_validate({"member": member, "unit": "kg"}))) == short


@pytest.mark.parametrize(
    ("member", "typed", "rule"),
    [
        ("rounds", "3 x 10", "sets-in-a-round"),
        ("each", "3 sets of 10", "sets-in-a-round"),
        ("rounds", "3 x", "words-not-read"),
        ("rounds", "at 20 kg", "words-not-read"),
        ("ladder", "rung x", "value-missing"),
        ("rounds", "", "words-not-read"),
    ],
)
def test_members_that_say_sets_are_asked(member: str, typed: str, rule: str) -> None:
    assert rules(typed, Habits.model_validate({"member": member, "unit": "kg"})) == [rule]


@pytest.mark.parametrize(
    ("typed", "kind", "rule"),
    [
        ("3 x 10", {"sides": "one"}, "side-not-written"),
        ("3 x 10", {"sides": "alternating"}, "side-not-written"),
        ("3 x 8-10", {"counted_in": "s"}, "number-without-unit"),
        ("3 x max", {"counted_in": "m"}, "number-without-unit"),
        ("3 x 10", {"counted_in": "steps"}, "steps-or-each-leg"),
        ("40:20", {}, "time-without-word"),
        ("3 x 8 at +10 kg", {"bodyweight": False}, "plus-without-base"),
    ],
)
def test_questions_that_need_the_movement(typed: str, kind: dict[str, object], rule: str) -> None:
    dose = read(typed)
    (finding,) = questions(dose, BARE, **kind)  # type: ignore[arg-type]
    assert finding.rule == rule
    assert finding.place == dose.place


@pytest.mark.parametrize(
    ("typed", "kind"),
    [
        ("3 x 10", {}),
        ("3 x 10 each side", {"sides": "one"}),
        ("3 x 10 left, then 2 x 10 right", {"sides": "one"}),
        ("3 x 20 steps", {"counted_in": "steps"}),
        ("3 x 10 each leg", {"counted_in": "steps"}),
        ("3 x 30 s", {"counted_in": "s"}),
        ("40:20", {"counted_in": "s"}),
        ("3 x 8 at +10 kg", {}),
        ("2 warm-up sets", {"sides": "one"}),
    ],
)
def test_what_the_movement_settles_is_not_asked(typed: str, kind: dict[str, object]) -> None:
    assert questions(read(typed), BARE, **kind) == ()  # type: ignore[arg-type]


def test_the_file_may_settle_the_side() -> None:
    assert questions(read("3 x 10"), Habits(sides="each"), sides="one") == ()


def test_findings_carry_rule_why_and_source() -> None:
    _, (finding,) = read_dose("3 x 8, rest 2", at("3 x 8, rest 2"), KG)
    assert finding.rule == "rest-without-unit"
    assert finding.why
    assert finding.source.startswith("the plan language")


def test_how_far_over_a_max_a_percent_may_go_is_an_option() -> None:
    assert read("3 x 1 at 107%", Habits(percent_at_most=110)).notes == ("107 % is more than the tested max",)
    assert rules("3 x 1 at 107%", Habits(percent_at_most=105)) == ["percent-over-max"]
