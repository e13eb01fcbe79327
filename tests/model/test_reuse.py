"""The keys of a day like another one, as they are typed: what is read, and what is said of a slip."""

import pytest

from setwright.model.plan import Reuse
from tests.reading.plans import read, rules

MONDAY = """\
plan: A
unit: kg
sessions:
  - day: Monday
    work:
      - dip: 3 x 8
      - circuit:
          - push-up: 10
        rounds: 3
"""


def thursday(below: str) -> str:
    """The plan with a Thursday like Monday; ``below``: its other keys, one a line."""
    lines = "".join(f"    {line}\n" for line in below.splitlines())
    return f"{MONDAY}  - day: Thursday\n    like: Monday\n{lines}"


def reuse_of(text: str) -> Reuse:
    week = read(text).week
    assert week is not None
    reuse = week.sessions[1].reuse
    assert reuse is not None
    return reuse


def test_every_key_keeps_its_words_and_their_lines() -> None:
    text = thursday(
        "leave out: [dip, push-up]\nswap:\n  a: b\nchange:\n  - c: 3 x 5\nadd:\n  - pull-up: 3 x 8"
    )
    reuse = reuse_of(text)
    assert (reuse.like.text, reuse.like.place.line) == ("Monday", 11)
    assert [(word.text, word.place.line) for word in reuse.leave_out] == [("dip", 12), ("push-up", 12)]
    (swap,) = reuse.swap
    assert (swap.old.text, swap.new.text, swap.new.place.line) == ("a", "b", 14)
    (change,) = reuse.change
    assert (change.name.text, change.name.place.line) == ("c", 16)
    assert [entry.place.line for entry in reuse.add] == [18]


def test_a_change_is_read_for_every_place_that_its_line_may_stand_in() -> None:
    (change,) = reuse_of(thursday("change:\n  - push-up: 15")).change
    assert set(change.readings) == {"alone", "rounds", "each", "ladder"}
    assert [f.rule for f in change.readings["alone"].findings] == ["sets-missing"]
    assert change.readings["rounds"].findings == ()


@pytest.mark.parametrize(
    ("below", "rule"),
    [
        ("work:\n  - dip: 3 x 8", "value-in-wrong-form"),
        ("leave out:\n  dip: 1", "value-in-wrong-form"),
        ("swap: [dip]", "value-in-wrong-form"),
        ("swap:\n  dip:", "value-in-wrong-form"),
        ("swap:\n  dip: [push-up]", "value-in-wrong-form"),
        ("change: dip", "value-in-wrong-form"),
        ("change:\n  - superset:\n      - dip: 3 x 5", "value-in-wrong-form"),
        ("change:\n  - rest: 2:00", "key-among-movements"),
        ("change:\n  - dip: a few", "words-not-read"),
        ("add: dip", "value-in-wrong-form"),
        ("add:\n  - dip", "dose-missing"),
        ("leave-out: [dip]\nleave out: [dip]", "double-key"),
    ],
)
def test_each_slip_is_one_finding_on_its_line(below: str, rule: str) -> None:
    (finding,) = read(thursday(below)).findings
    assert finding.rule == rule
    assert finding.place.line >= 10


def test_nothing_is_read_twice_where_a_trap_has_spoken() -> None:
    assert rules(thursday("change:\n  - dip: 3 x 8 #2")) == ["text-lost-after-hash"]
