"""``sets a week`` and ``last week``: typed, and asked where they are unclear."""

import pytest

from setwright.findings import Finding
from tests.reading.plans import read, whole_plan


def asked(text: str) -> Finding:
    (finding,) = read(whole_plan(text)).findings
    return finding


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [("8-12", 8, 12), ("8 – 12 sets", 8, 12), ("10", 10, 10), ("at least 6", 6, None), ("0", 0, 0)],
)
def test_sets_a_week(text: str, low: float, high: float | None) -> None:
    result = read(whole_plan(f"sets a week:\n  pecs: {text}"))
    assert result.week is not None
    (one,) = result.week.sets_a_week
    assert (one.group, one.low, one.high, one.text, one.place.line) == ("chest", low, high, text, 3)


@pytest.mark.parametrize(("text", "least"), [("at least 1", 1), ("1.5", 1.5), ("at least 1,5", 1.5)])
def test_pull_to_push(text: str, least: float) -> None:
    result = read(whole_plan(f"sets a week:\n  Pull to push: {text}"))
    assert result.week is not None
    (one,) = result.week.sets_a_week
    assert (one.group, one.low, one.high) == ("pull to push", least, None)


@pytest.mark.parametrize(
    ("line", "rule", "change"),
    [
        ("chest: plenty", "number-expected", "write `8-12`, `10` or `at least 8`"),
        ("chest: 12-8", "number-expected", "write `8-12`, `10` or `at least 8`"),
        ("chets: 8", "not-one-of-the-words", "write `chest`"),
        ("tail: 8", "not-one-of-the-words", "write one of chest, back, front deltoid"),
        ("chest: 8\n  pecs: 9", "double-key", "keep one of the two and take the other out"),
        ("pull to push: 1 to 1", "number-expected", "write `pull to push: at least 1` for one pull"),
        ("chest: [8, 12]", "value-in-wrong-form", "write one value behind the colon"),
    ],
)
def test_what_is_asked_about_sets_a_week(line: str, rule: str, change: str) -> None:
    finding = asked(f"sets a week:\n  {line}")
    assert finding.rule == rule
    assert finding.change.startswith(change)


@pytest.mark.parametrize(
    ("text", "amount", "unit"),
    [("300 reps", 300, "reps"), ("12 sets", 12, "sets"), ("62,5 kg", 62.5, "kg"), ("0 reps", 0, "reps")],
)
def test_last_week(text: str, amount: float, unit: str) -> None:
    result = read(whole_plan(f"last week:\n  Push-ups: {text}"))
    assert result.findings == ()
    assert result.week is not None
    (one,) = result.week.last_week
    assert (one.name, one.key, one.amount, one.unit, one.text) == ("Push-ups", "push-up", amount, unit, text)


@pytest.mark.parametrize(
    ("line", "rule"),
    [
        ("push-up: 300", "number-expected"),
        ("push-up: 50%", "number-expected"),
        ("push-up: a lot", "number-expected"),
        ("push-up: 2.5 sets", "number-expected"),
        ("push-up: [3]", "value-in-wrong-form"),
        ("pusch-upp: 300 reps", "unknown-movement"),
        ("row: 12 sets", "movement-unclear"),
    ],
)
def test_what_is_asked_about_last_week(line: str, rule: str) -> None:
    finding = asked(f"last week:\n  {line}")
    assert finding.rule == rule
    assert finding.place.line == 3


def test_a_name_of_last_week_says_where_it_stands() -> None:
    assert asked("last week:\n  nosuchlift: 3 sets").where == "last week"


def test_the_block_of_a_plan_of_one_week() -> None:
    result = read(whole_plan("block: autumn.yaml, week 3"))
    assert result.findings == ()
    assert result.week is not None
    assert result.week.block is not None
    assert (result.week.block.file, result.week.block.week) == ("autumn.yaml", 3)


@pytest.mark.parametrize(
    ("typed", "rule", "change"),
    [
        ("autumn.yaml", "no-such-week", "write the block's file and the week, `block: autumn.yaml, week 1`"),
        ("[autumn.yaml]", "value-in-wrong-form", "write one value behind the colon"),
    ],
)
def test_a_block_without_its_week_is_asked(typed: str, rule: str, change: str) -> None:
    finding = asked(f"block: {typed}")
    assert (finding.rule, finding.change) == (rule, change)
