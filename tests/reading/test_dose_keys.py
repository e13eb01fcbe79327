"""Item keys written under a movement, and how they join the line."""

from typing import Any

import pytest

from setwright.reading import keys
from setwright.reading.dose import Rest, Span, Tempo, WarmUp
from setwright.reading.habits import Habits
from setwright.reading.merging import dose_with, says, uneven
from setwright.reading.say import say_dose, say_warm_up
from tests.reading.dose_lines import KG, at, read, under


def key(name: str, text: str, habits: Habits = KG) -> Any:
    value, findings = getattr(keys, f"read_{name}")(text, at(text), habits)
    assert not findings, findings
    return value


def rule(name: str, text: str, habits: Habits = KG) -> tuple[str, str]:
    value, findings = getattr(keys, f"read_{name}")(text, at(text), habits)
    assert value is None
    return findings[0].rule, under(text, findings[0])


@pytest.mark.parametrize(
    ("text", "lows"),
    [
        ("60, 65, 70 kg", [60, 65, 70]),
        ("62,5", [62.5]),
        ("75%", [75]),
        ("at 60 kg", [60]),
        ("2 x 20 kg", [20]),
        ("pin 7", [7]),
    ],
)
def test_loads(text: str, lows: list[float]) -> None:
    assert [load.low for load in key("load", text)] == lows


def test_loads_in_words() -> None:
    assert key("load", "own choice")[0].name == "own choice"
    assert key("load", "with red band")[0].name == "red"
    assert key("load", "last time + 5 kg")[0].plus == 5
    assert key("load", "bodyweight - 20 kg")[0].plus == -20


@pytest.mark.parametrize(
    ("text", "efforts"),
    [
        ("2 RIR", [("RIR", 2)]),
        ("RPE 8", [("RPE", 8)]),
        ("3, 2, 1 RIR", [("RIR", 3), ("RIR", 2), ("RIR", 1)]),
        ("to failure", [("RIR", 0)]),
        ("at RPE 8", [("RPE", 8)]),
        ("Borg 13", [("Borg", 13)]),
    ],
)
def test_efforts(text: str, efforts: list[tuple[str, float]]) -> None:
    assert [(effort.scale, effort.low) for effort in key("effort", text)] == efforts


def test_rest_tempo_and_sides() -> None:
    assert key("rest", "2:00") == key("rest", "rest 2:00") == Rest(kind="seconds", low=120, high=120)
    assert key("rest", "none") == Rest(kind="none")
    assert key("tempo", "3-1-1-0") == key("tempo", "tempo 3110") == key("tempo", "3110")
    assert key("tempo", "0310") == Tempo(lower_s=0, bottom_s=3, lift_s=1, top_s=0)
    assert key("tempo", "3 s down, fast up") == Tempo(lower_s=3, lift_s="X")
    assert key("sides", "each arm").word == "arm"
    assert key("sides", "each side, weaker side first").order == "weaker side"
    assert key("sides", "in all").kind == "in_all"


def test_warm_ups() -> None:
    warm_up = key("warm_up", "8 at bar, 2 x 5 at 50%, 3 at 65, 5 min")
    assert [(step.sets, step.amount.span.low) for step in warm_up.steps] == [(1, 8), (2, 5), (1, 3), (1, 300)]
    assert say_warm_up(warm_up, KG) == (
        "warm-up: 8 with the empty bar, 2 sets of 5 with 50 % of the tested max, 3 with 65 kg, 5 minutes"
    )
    assert key("warm_up", "2 sets") == key("warm_up", "2 warm-up sets") == WarmUp(count=2)
    assert key("warm_up", "none") == WarmUp()


@pytest.mark.parametrize(
    ("name", "text", "asked", "marked"),
    [
        ("load", "8", "effort-or-load", "8"),
        ("load", "2 RIR", "value-missing", "2 RIR"),
        ("load", "60 kg foo", "words-not-read", "foo"),
        ("load", "", "words-not-read", ""),
        ("load", "60, 65", "= read", ""),
        ("load", "[60, 65]", "brackets-in-dose", "[60, 65]"),
        ("load", "135 kg (bar)", "brackets-in-dose", "(bar)"),
        ("effort", "60 kg", "value-missing", "60 kg"),
        ("effort", "RPE 12", "effort-off-scale", "12"),
        ("effort", "hard", "load-without-number", "hard"),
        ("rest", "2", "rest-without-unit", "2"),
        ("rest", "long", "words-not-read", "long"),
        ("tempo", "301", "tempo-incomplete", "301"),
        ("tempo", "slow", "words-not-read", "slow"),
        ("sides", "both", "words-not-read", "both"),
        ("sides", "left, right", "words-not-read", "right"),
        ("warm_up", "light jog", "words-not-read", "light"),
        ("warm_up", "8 at", "words-not-read", "at"),
        ("warm_up", "0 sets", "nothing-to-do", "0"),
    ],
)
def test_keys_ask_like_the_line(name: str, text: str, asked: str, marked: str) -> None:
    if asked == "= read":
        key(name, text)
    else:
        assert rule(name, text) == (asked, marked)


def test_what_the_line_says() -> None:
    assert says(read("3 x 8")) == frozenset()
    said = says(read("2 warm-up sets, then 3 x 8 each side at 60 kg, 2 RIR, rest 2:00, tempo 3010"))
    assert said == {"rest", "tempo", "sides", "load", "effort", "warm-up"}
    assert says(read("work up to 5RM")) == {"load"}
    assert says(read("work up to 5RM, then 2 x 5")) == frozenset()


def test_keys_join_every_group_that_has_none() -> None:
    dose = dose_with(
        read("work up to 5RM, then 3 x 5, then 2 x 8, last set max"),
        rest=key("rest", "2:00"),
        tempo=key("tempo", "3010"),
        sides=key("sides", "each"),
        load=key("load", "60 kg"),
        effort=key("effort", "2 RIR"),
        warm_up=key("warm_up", "2 sets"),
    )
    assert [group.rest for group in dose.groups] == [Rest(kind="seconds", low=120, high=120)] * 3
    assert [group.works[0].load.low for group in dose.groups if group.works[0].load] == [5, 60, 60]
    assert dose.groups[0].works[0].effort is None
    assert dose.groups[2].last is not None
    assert dose.groups[2].last.load is not None
    assert dose.warm_up == WarmUp(count=2)


def test_lists_go_set_by_set() -> None:
    dose = dose_with(read("3 x 5"), load=key("load", "60, 65, 70 kg"), effort=key("effort", "3, 2, 1 RIR"))
    assert say_dose(dose, KG) == (
        "3 sets of 5 with 60, 65 and 70 kg, 3 repetitions, 2 repetitions and 1 repetition left"
    )
    assert dose.groups[0].kind == "list"


def test_lists_that_do_not_fit_are_asked() -> None:
    dose = read("3 x 5")
    assert uneven(dose, 1, dose.place) == uneven(dose, 3, dose.place) == ()
    (finding,) = uneven(dose, 2, dose.place)
    assert finding.rule == "set-count-differs"
    assert finding.message == "3 x 5: 3 sets but 2 values"
    with pytest.raises(ValueError, match="2 values do not fit 3 sets"):
        dose_with(dose, load=key("load", "60, 65 kg"))


def test_the_line_keeps_its_own() -> None:
    dose = dose_with(read("3 x 5 at 60 kg, rest 1:00"), load=key("load", "80 kg"), rest=key("rest", "3:00"))
    assert dose.groups[0].works[0].load == key("load", "60 kg")[0]
    assert dose.groups[0].rest == Rest(kind="seconds", low=60, high=60)
    assert dose.groups[0].sets == Span(low=3, high=3)
