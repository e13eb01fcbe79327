"""Good weeks of eight kinds, and three typical mistakes in each: what a colleague would see comes first.

All weeks are invented. A mistake is a small edit of the text; an empty replacement takes the line out.
"""

from pathlib import Path
from typing import NamedTuple

import pytest

from setwright.checked import Checked
from setwright.findings import Level
from tests.rules.plans import checked

HERE = Path(__file__).parent
GOOD = {
    path.stem.removeprefix("good-"): path.read_text(encoding="utf-8") for path in HERE.glob("good-*.yaml")
}
KINDS = ("general", "size", "strength", "beginner", "sport", "return", "bands", "no-chest")
MOST_ADVICE = 2


class Mistake(NamedTuple):
    """An edit of a good week, and the rule that must speak first."""

    kind: str
    rule: str
    old: str
    new: str = ""


BENCH = "          - flat barbell bench press: 4 x 8 at 2 RIR\n"
CROSSOVER = "          - level cable crossover: 3 x 12 at 1 RIR\n"

MISTAKES = (
    Mistake("general", "one-side-only", "4 x 10 each arm", "4 x 10 left"),
    Mistake("general", "same-part-hard-next-day", "day: Wednesday", "day: Tuesday"),
    Mistake("general", "session-over-time", "minutes: 40", "minutes: 25"),
    Mistake("size", "heavy-line-not-finished", "level cable crossover: 3 x 12", "dumbbell curl: 3 x 12"),
    Mistake("size", "sets-under-range", "      - chest-supported dumbbell row: 4 x 10 at 2 RIR, rest 2:00\n"),
    Mistake("size", "light-before-heavy", f"{BENCH}{CROSSOVER}", f"{CROSSOVER}{BENCH}"),
    Mistake("strength", "no-warm-up-for-heavy-lift", "    warm-up: 8 min\n"),
    Mistake(
        "strength", "reps-not-possible-at-load", "back squat: 5 x 5 at 80%", "back squat: 5 x 5 at 92.5%"
    ),
    Mistake("strength", "same-part-hard-next-day", "day: Thursday", "day: Tuesday"),
    Mistake(
        "beginner", "push-without-pull", "      - one-arm dumbbell row: 3 x 10 each arm at 3 RIR, rest 90 s\n"
    ),
    Mistake("beginner", "sets-over-range", "push-up: 3 x 8", "push-up: 7 x 8"),
    Mistake(
        "beginner",
        "beginner-maximal-test",
        "Romanian deadlift: 3 x 10 at 4 RIR",
        "Romanian deadlift: work up to 1RM",
    ),
    Mistake("sport", "session-over-time", "minutes: 50", "minutes: 35"),
    Mistake("sport", "half-a-pair", "          - push-up: 2 x 15 at 2 RIR\n"),
    Mistake("sport", "one-side-only", "hold each side", "hold left"),
    Mistake("return", "limit-broken", "machine row", "wide-grip pulldown"),
    Mistake("return", "avoided-move", "barbell floor press: 3 x 12", "dip: 3 x 12"),
    Mistake("return", "session-over-time", "minutes: 25", "minutes: 15"),
    Mistake("bands", "nobody-can-use", "band row: 4 x 15", "close-grip seated cable row: 4 x 15"),
    Mistake("bands", "sets-under-range", "      - band row: 4 x 15 at 2 RIR, rest 60 s\n"),
    Mistake("bands", "one-side-only", "2 x 15 each arm", "2 x 15 right"),
    Mistake("no-chest", "same-part-hard-next-day", "day: Friday", "day: Wednesday"),
    Mistake(
        "no-chest",
        "big-jump-from-last-week",
        "sessions:",
        "last week:\n  back squat: 2 sets\n  front squat: 1 set\nsessions:",
    ),
    Mistake("no-chest", "session-over-time", "minutes: 30", "minutes: 15"),
)


def rules_of(one: Checked) -> list[str]:
    return [finding.rule for finding in one.findings]


def test_there_is_a_good_week_for_each_row_of_the_table_of_aims() -> None:
    rows = {kind: aim.row for kind, text in GOOD.items() if (aim := checked(text).aim)}
    assert rows == {kind: kind.replace("-", " ") for kind in KINDS} | {"bands": "general"}


@pytest.mark.parametrize("kind", KINDS)
def test_a_good_week_has_no_gap_and_little_advice(kind: str) -> None:
    findings = checked(GOOD[kind]).findings
    assert [f.rule for f in findings if f.level > Level.advice] == []
    assert len(findings) <= MOST_ADVICE


@pytest.mark.parametrize("mistake", MISTAKES, ids=lambda one: f"{one.kind}: {one.rule}")
def test_a_typical_mistake_is_what_is_said_first(mistake: Mistake) -> None:
    week = GOOD[mistake.kind]
    assert mistake.old in week
    one = checked(week.replace(mistake.old, mistake.new))
    assert rules_of(one)[0] == mistake.rule
    assert mistake.rule not in rules_of(checked(week))


def test_there_are_three_mistakes_of_each_kind() -> None:
    assert sorted(mistake.kind for mistake in MISTAKES) == sorted(KINDS * 3)
