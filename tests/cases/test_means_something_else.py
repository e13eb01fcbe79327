"""Doses that every YAML reader takes for something else: as a coach typed them, each in a line of work."""

import pytest

from setwright.findings import Finding
from setwright.model.plan import Item
from setwright.reading.dose import SetGroup
from tests.reading.plans import read

HEAD = "plan: Day ten\nunit: kg\nsides: each\ndose order: sets x reps\nwork:\n  - "


def findings(line: str) -> tuple[Finding, ...]:
    return read(f"{HEAD}{line}\n").findings


def group(line: str) -> SetGroup:
    """The sets of a line of which nothing is asked."""
    one = read(f"{HEAD}{line}\n")
    assert one.findings == ()
    assert one.week is not None
    item = one.week.sessions[0].work[0]
    assert isinstance(item, Item)
    assert item.dose is not None
    return item.dose.groups[0]


@pytest.mark.parametrize(
    ("line", "asked", "instead"),
    [
        ("dip: 3 x >8", "brackets-in-dose", 'Write "3 x 8+" for 8 or more, "3 x 9+" for more than 8'),
        ("dip: 12_10_8", "hyphen-list", 'Write "sets of 12, 10, 8" set by set'),
        ("dip: 0x8", "nothing-to-do", 'write how many, "3 x 8"'),
        ("dip: 3 x 8\n    load: +5", "plus-without-base", 'Write "at last time + 5 kg"'),
        ("dip: 3 x 8\n    rest: 2", "rest-without-unit", 'Write "rest 2 min" or "rest 2 s"'),
        ("dip: 3 x 8\n    rest: 1.30", "rest-without-unit", 'Write "rest 1:30" or "rest 1.3 min"'),
        ("dip: 3 x 8\n    rest: 1:1", "ratio", 'Write "rest equal to the work"'),
        ("dip: 3 x 8\n    rest: 1:2", "ratio", 'Write "rest 2 times the work"'),
        ("pulldown: 3 x 8\n    load: Band #2", "text-lost-after-hash", "write `load: Band 2`"),
        ("bench press: 3 x 8\n    load: 135 #", "text-lost-after-hash", "write `load: 135 lb`"),
        ("bench press: 3 x 8\n    load: [62,5]", "list-not-one-a-week", "write `62, 5` without brackets"),
    ],
)
def test_it_is_asked_once_and_the_text_to_type_is_there(line: str, asked: str, instead: str) -> None:
    (finding,) = findings(line)
    assert finding.rule == asked
    assert finding.change.lower().startswith(instead.lower())


@pytest.mark.parametrize(
    ("typed", "seconds"),
    [("0310", (0, 3, 1, 0)), ("0202", (0, 2, 0, 2)), ("3010", (3, 0, 1, 0)), ("0080", (0, 0, 8, 0))],
)
def test_four_digits_of_a_tempo_are_one_kind_of_thing(typed: str, seconds: tuple[int, ...]) -> None:
    """A YAML 1.1 reader makes 200, 130, 3010 and a text of them: octal where every digit is under 8."""
    tempo = group(f"machine row: 3 x 8\n    tempo: {typed}").tempo
    assert tempo is not None
    assert (tempo.lower_s, tempo.bottom_s, tempo.lift_s, tempo.top_s) == seconds


@pytest.mark.parametrize(("typed", "seconds"), [("1:30", 90), ("0:45", 45), ("90 s", 90)])
def test_a_rest_with_a_colon_is_minutes_and_seconds(typed: str, seconds: int) -> None:
    rest = group(f"dip: 3 x 8\n    rest: {typed}").rest
    assert rest is not None
    assert (rest.low, rest.high) == (seconds, seconds)


def test_a_comma_is_a_decimal_sign_and_pounds_stay_pounds() -> None:
    def load(typed: str) -> tuple[float | None, str | None]:
        (work,) = group(f"bench press: 3 x 8\n    load: {typed}").works
        assert work.load is not None
        return work.load.low, work.load.unit

    assert load("62,5") == (62.5, "kg")
    assert load("135 lb") == (135, "lb")


def test_a_split_is_seconds() -> None:
    assert group("rowing ergometer: 2 km, split 2:05.3").split_s == 125.3


def test_a_name_that_looks_like_a_number_stays_as_typed() -> None:
    """1.10 is no 1.1, and 010 is no 8."""
    for name in ("1.10", "010"):
        week = read(f"plan: {name}\nunit: kg\nwork:\n  - dip: 3 x 8\n").week
        assert week is not None
        assert week.name == name


def test_a_week_is_not_replaced_by_the_same_number_with_a_nought() -> None:
    scheme = (
        "schemes:\n  wave:\n    week 1: 3 x 8 at 70%\n    week 2: 3 x 8 at 75%\n    week 01: 3 x 8 at 65%\n"
    )
    (finding,) = read(f"plan: A\nunit: kg\nweeks: 2\n{scheme}work:\n  - dip: wave\n").findings
    assert finding.rule == "week-named-twice"
    assert finding.message == "week 1 is written on line 6 and again on line 8"
