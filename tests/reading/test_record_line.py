"""The record line: notation 95 of the plan language, the four states, and every question with its answers."""

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.findings import Finding
from setwright.reading.done import Done
from setwright.reading.done_typed import typed_done
from setwright.reading.faults import TextRule
from setwright.reading.habits import Habits
from setwright.reading.question import Question
from setwright.reading.record_questions import QUESTIONS, RULES
from setwright.reading.recordline import read_done
from tests.reading.dose_lines import KG, at
from tests.reading.test_dose_properties import HABITS, LINES, check_findings


def done(text: str, habits: Habits = KG) -> Done:
    found, findings = read_done(text, at(text), habits)
    assert found is not None, [f.message for f in findings]
    assert findings == ()
    return found


def asked(text: str, habits: Habits = KG) -> Finding:
    found, findings = read_done(text, at(text), habits)
    assert found is None, f"{text} was read"
    (finding,) = findings
    return finding


def test_the_load_stands_first_and_each_set_keeps_it() -> None:
    sets = done("60 kg x 8, 8, 6 at RPE 8").sets
    assert [one.amount.span.low for one in sets] == [8, 8, 6]
    assert {(one.load.low, one.load.unit) for one in sets if one.load} == {(60, "kg")}
    assert {(one.effort.scale, one.effort.low) for one in sets if one.effort} == {("RPE", 8)}


def test_an_effort_needs_no_word_before_it_and_takes_no_set_with_it() -> None:
    """ "10,10,8 RPE 8" was once 10 and 10 at "8 RPE", and an 8 too many."""
    sets = done("40 kg x 10,10,8 RPE 8").sets
    assert [one.amount.span.low for one in sets] == [10, 10, 8]
    assert {(one.effort.scale, one.effort.low) for one in sets if one.effort} == {("RPE", 8)}
    (only,) = done("40 kg x 10, 8 RPE").sets
    assert only.effort is not None
    assert (only.amount.span.low, only.effort.low) == (10, 8)


@pytest.mark.parametrize(("text", "line"), [("40kg 5 5 5", "40kg x 5, 5, 5"), ("60 x 8 8 6", "60 x 8, 8, 6")])
def test_sets_with_blanks_between_them_are_asked_with_the_whole_line(text: str, line: str) -> None:
    assert asked(text).change == f'Write "{line}"'
    done(line)


def test_the_four_states_stay_apart() -> None:
    states = {text: done(text).kind for text in ("", "  ", "done", "not done", "0", "60 kg x 0")}
    assert states == {
        "": "not written", "  ": "not written", "done": "done", "not done": "not done", "0": "sets",
        "60 kg x 0": "sets",
    }  # fmt: skip
    assert done("0").sets[0].amount.span.low == done("60 kg x 0").sets[0].amount.span.high == 0


def test_a_reason_is_kept_as_typed() -> None:
    assert done("not done").reason is None
    assert done("Not done,  Ran out of time, again").reason == "Ran out of time, again"
    assert done("not done，\u00a0späte Züge").reason == "späte Züge"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("60 kg x 8, 8, 6 RPE 8", "60 kg x 8, 8, 6 at RPE 8"),
        ("8, 8, 6 RIR 2", "8, 8, 6 at 2 RIR"),
        ("8, 8, 2 RIR", "8, 8 at 2 RIR"),
        ("60x8, 2 RIR, 62.5x6, 1 RIR", "60 kg x 8 at 2 RIR, then 62.5 kg x 6 at 1 RIR"),
    ],
)
def test_a_scale_with_its_figure_behind_it_leaves_the_set_before_it(text: str, read: str) -> None:
    assert typed_done(done(text)) == read


def test_a_bare_load_has_the_unit_of_the_file_or_none() -> None:
    loads = [done("60x8,8,6", habits).sets[0].load for habits in (KG, Habits(unit="lb"), Habits())]
    assert [load.unit for load in loads if load] == ["kg", "lb", None]
    assert done("62,5 x 5").notes == ("62,5 is read as 62.5",)


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("60 kg x 8, 8, 6 at RPE 8", "60 kg x 8, 8, 6 at RPE 8"),
        ("60 kg x 8 by feel", None),
        ("60kgx8,8,6", "60 kg x 8, 8, 6"),
        ("60 kg by 8", "60 kg x 8"),
        ("8, 8, 7", "8, 8, 7"),
        ("bodyweight + 10 kg x 5, 5", "bodyweight + 10 kg x 5, 5"),
        ("BW - 20 kg x 6", "bodyweight - 20 kg x 6"),
        ("bodyweight x 6", "bodyweight x 6"),
        ("135 lb x 5", "135 lb x 5"),
        ("60x8, 62.5x6, 65x4", "60 kg x 8, then 62.5 kg x 6, then 65 kg x 4"),
        ("65x8, 8, 2 RIR, then 60x6", "65 kg x 8, 8 at 2 RIR, then 60 kg x 6"),
        ("60 kg x 8 to failure", "60 kg x 8 at 0 RIR"),
        ("8, 8 at RPE 7, 8", "8 at RPE 7, then 8 at RPE 8"),
        ("8 at RPE 7-8", "8 at RPE 7-8"),
        ("8, Borg 13", "8 at Borg 13"),
        ("2 x 20 kg x 8, 8", "2 x 20 kg x 8, 8"),
        ("2 red bands x 12", "2 red bands x 12"),
        ("red band to 1.5 m x 12", "red band to 1.5 m x 12"),
        ("band 2 x 12", "band 2 x 12"),
        ("pin 7 x 12", "pin 7 x 12"),
        ("own choice x 12", "own choice x 12"),
        ("bar x 10, then bar + 20 kg a side x 5", "bar x 10, then bar + 20 kg a side x 5"),
        ("60 kg + 20 kg chain x 5", "60 kg + 20 kg chain x 5"),
        ("12, 10 left, 10 right", "12 left, 10 left, 10 right"),
        ("10 each arm, 9 each arm", "10 each arm, 9 each arm"),
        ("8 left, 30 s right", "8 reps left, 30 s right"),
        ("8 + 2 assisted, 8", "8 + 2 assisted, 8"),
        ("40, 40, 35 s hold", "40 s hold, 40 s hold, 35 s hold"),
        ("1:30, 1:20", "1:30, 1:20"),
        ("40 m, 40 m", "40 m, 40 m"),
        ("20 steps", "20 steps"),
        ("done", "done"),
        ("not done, ill", "not done, ill"),
        ("not done", "not done"),
        ("", ""),
    ],
)
def test_what_is_read_is_said_as_a_line_that_reads_the_same(typed: str, said: str | None) -> None:
    if said is None:
        assert asked(typed)
        return
    read = done(typed)
    assert typed_done(read) == said
    assert meaning(done(said)) == meaning(read)


def test_each_line_of_the_page_reads() -> None:
    page = (Path(__file__).parents[2] / "docs" / "plan-language.md").read_text(encoding="utf-8")
    section = page.partition("## Record")[2].partition("A set of 0")[0]
    rows = [row.split(" | ")[1] for row in section.splitlines() if row.startswith("| ")][1:]
    kinds = [done(one).kind for row in rows for one in re.findall(r"`([^`]+)`", row)]
    assert (kinds.count("sets"), kinds.count("done"), kinds.count("not done")) == (16, 1, 2)


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.id)
def test_bad_sets_off_its_rule_and_good_is_read(rule: TextRule) -> None:
    assert asked(rule.bad).rule == rule.id
    done(rule.good)


@pytest.mark.parametrize("question", QUESTIONS, ids=lambda q: f"{q.rule.id} {q.message[:30]}")
def test_every_question_says_what_to_type(question: Question) -> None:
    assert re.search(r'["`{]|Write one|Take', question.change)
    assert question.change[-1] != "."


@pytest.mark.parametrize(
    ("typed", "message", "change"),
    [
        ("3 x 8", "3 x 8: 3 sets of 8, or 3 kg for 8?",
         'Write each set, "8, 8, 8", or the load with its unit, "3 kg x 8"'),
        ("3 x 8 at 60 kg", "3 x 8 at 60 kg: was each of the 3 sets done in full?",
         'Write each set: "60 kg x 8, 8, 8"'),
        ("3 sets of 8", "3 sets of 8: was each of the 3 sets done in full?", 'Write each set: "8, 8, 8"'),
        ("60 kg x 5 x 3", "5 x 3: was each of the 3 sets done in full?", 'Write each set: "60 kg x 5, 5, 5"'),
        ("60 kg x 5 x 20", "5 x 20: was each of the 20 sets done in full?", 'Write each set: "5, 5, ..."'),
        ("✓", "✓: done as the plan says, or with other numbers?",
         'Write "done", or what was done: "60 kg x 8, 8, 6"'),
        ("O", "O: done, missed, or 0 repetitions?",
         'Write "done" or "not done"; a set that failed is "60 kg x 0"'),
        ("-", "-: not done, or not written down?",
         'Write "not done", or leave the place behind the colon empty'),
        ("DNF", "DNF: not done at all, or cut short?",
         'Write "not done, reason", or the sets that were done: "60 kg x 8, 3"'),
        ("60 kg x 8 PR", "PR: a best lift of how much?",
         ('Write the load and the repetitions, "62.5 kg x 5";'
          " the new max belongs in the squad, under `maxes:`")),
        ("5.3 reps", "5.3: 5 full repetitions, or 5 and a part of the next one?",
         'Write "5 reps" for the full ones, or "5 + 1 partials" to keep the part'),
        ("8/8/6", "8/8/6: one set after the other, or left and right?",
         'Write the sets with commas, "8, 8, 6", or the sides in words, "8 left, 8 right"'),
        ("8, 6 at 60 kg", "at 60 kg: for all sets, or for the last one?",
         'Write the load first: "60 kg x 8, 6"; where the sets differ, "50 kg x 8, then 60 kg x 6"'),
        ("not done ran out", "ran out: the reason?",
         'Write a comma before the reason: "not done, ran out"'),
        ("done, easy", "easy: a remark, or what was done?",
         '"done" stands alone; write `- note: easy` for a remark, or the sets: "60 kg x 8, 8, 6"'),
    ],
)  # fmt: skip
def test_both_readings_are_written_out(typed: str, message: str, change: str) -> None:
    finding = asked(typed)
    assert (finding.message, finding.change) == (message, change)


@pytest.mark.parametrize(
    ("typed", "rule"),
    [
        ("x", "record-tick"),
        ("missed, shoulder", "record-tick"),
        ("60 kg x max", "record-amount-open"),
        ("60 kg x 8+", "record-amount-open"),
        ("60 kg x 10-8", "record-amount-open"),
        ("8, AMRAP 12", "record-amount-open"),
        ("failure", "record-amount-open"),
        ("8, tested max minus 2", "record-amount-open"),
        ("60-65 kg x 8", "record-load-not-lifted"),
        ("bodyweight + 5-10 kg x 8", "record-load-not-lifted"),
        ("last time + 5 kg x 8", "record-load-not-lifted"),
        ("rising loads x 8", "record-load-not-lifted"),
        ("60 kg", "record-sets-missing"),
        ("60 kg x", "record-sets-missing"),
        ("60 kg 8, 8", "record-not-read"),
        ("60 kg x 8 8", "record-not-read"),
        ("60 kg x 8,", "record-not-read"),
        ("60 kg x 8, , 8", "record-not-read"),
        ("60 kg x 8, rest 90 s", "record-not-read"),
        ("60 kg x foo", "record-not-read"),
        ("60 kg x 8 x foo", "record-not-read"),
        ("3 x foo", "record-not-read"),
        ("8, then", "record-not-read"),
        ("not done,", "record-not-read"),
        ("8 at", "record-not-read"),
        ("pin x 8", "record-not-read"),
        ("8 reps, 30 s, 8", "record-not-read"),
        ("60 kg x 8" + ", 8" * 200, "record-not-read"),
        ("8 at 8", "record-efforts-differ"),
        ("8, 8, 60 kg", "record-load-behind"),
        ("8, 8-8-6", "record-numbers-joined"),
        ("8*, 8", "brackets-in-dose"),
        ("bodyweight + 10 x 8", "load-without-unit"),
        ("8, RPE 12", "effort-off-scale"),
    ],
)
def test_what_sets_off_each_question(typed: str, rule: str) -> None:
    assert asked(typed, Habits()).rule == rule


def meaning(read: Done) -> tuple[object, ...]:
    return read.kind, read.sets, read.reason


@settings(max_examples=400, deadline=None)
@given(LINES, HABITS)
def test_any_text_is_read_or_asked_and_never_breaks(text: str, habits: Habits) -> None:
    read, findings = read_done(text, at(text), habits)
    assert (read is None) == bool(findings)
    check_findings(text, findings)
    if read is not None:
        assert (read.kind == "sets") == bool(read.sets)
        again = done(typed_done(read), habits)
        assert typed_done(again) == typed_done(read)
        assert (again.kind, len(again.sets)) == (read.kind, len(read.sets))


PARTS = st.tuples(
    st.sampled_from(["60 kg x ", "47.5 lb x ", "bodyweight + 2.5 kg x ", "2 x 12.5 kg x ", "pin 7 x "]),
    st.lists(st.integers(0, 60), min_size=1, max_size=5),
    st.sampled_from(["", " left", " each arm", " s", " m", " steps"]),
    st.sampled_from(["", " at RPE 8", ", 2 RIR", " at Borg 13"]),
)


@settings(max_examples=200, deadline=None)
@given(st.lists(PARTS, min_size=1, max_size=3))
def test_read_said_and_read_again_keeps_the_meaning(
    parts: list[tuple[str, list[int], str, str]],
) -> None:
    line = ", then ".join(
        f"{load}{', '.join(map(str, numbers))}{unit}{effort}" for load, numbers, unit, effort in parts
    )
    read = done(line)
    assert [one.amount.span.low for one in read.sets] == [n for _, numbers, _, _ in parts for n in numbers]
    assert meaning(done(typed_done(read))) == meaning(read)
