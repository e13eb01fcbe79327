"""The example weeks: the good one is silent, and what is taken out of it is missed."""

import pytest

from tests.rules.plans import EXAMPLES, beside_the_example, checked, example, without

GOOD = (EXAMPLES / "week-good.yaml").read_text(encoding="utf-8")
PULLS = ("bench pull", "face pull", "pull-up", "chest-supported dumbbell row")


def test_the_good_week_has_nothing_to_say() -> None:
    assert example("week-good.yaml").findings == ()


def test_the_flawed_week_sets_off_each_midline_rule_once_on_its_session() -> None:
    one = example("week-flawed.yaml")
    found = {finding.rule: finding for finding in one.findings}
    assert len(one.findings) == 2
    flat, thursday = found["heavy-line-not-finished"], found["no-work-across-the-midline"]
    assert (flat.where, thursday.where) == ("Monday", "Thursday")
    assert "level cable crossover" in flat.change
    assert "low-to-high cable crossover" in thursday.change
    assert [row.heaviest.finding for row in one.matrix] == [None, flat, None]


@pytest.mark.parametrize(
    ("gone", "rule", "on"),
    [
        (("level cable crossover",), "heavy-line-not-finished", "flat barbell bench press"),
        (("low-to-high cable crossover",), "heavy-line-not-finished", "incline 30 barbell bench press"),
        (("high-to-low cable crossover",), "heavy-line-not-finished", "dip"),
        (("flat barbell bench press",), "no-heavy-lift-for-part", "level cable crossover"),
        (("incline 30 barbell bench press",), "no-heavy-lift-for-part", "low-to-high cable crossover"),
        (("dip",), "no-heavy-lift-for-part", "high-to-low cable crossover"),
        (PULLS, "push-without-pull", "work"),
    ],
)
def test_what_is_taken_out_of_the_good_week_is_missed_at_its_line(
    gone: tuple[str, ...], rule: str, on: str
) -> None:
    text = without(GOOD, *gone)
    found = [f for f in checked(text, beside_the_example).findings if f.rule != "half-a-pair"]
    assert [f.rule for f in found] == [rule]
    line = text.splitlines()[found[0].place.line - 1]
    start, end = found[0].place.column - 1, found[0].place.end_column - 1
    assert line[start:end] == on
    if gone != PULLS:
        proposed = {"dip": "leaning parallel-bar dip"}.get(gone[0], gone[0])
        assert proposed in found[0].change
