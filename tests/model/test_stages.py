"""Stages as typed, and which sessions are in force: opened by a sign-off, never by a date."""

import datetime as dt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.model.in_force import in_force
from setwright.model.plan import Week
from setwright.model.stages import SignOff, Stage
from tests.reading.plans import read, rules

STAGES = """\
plan: Way back
stages:
  light:
    signed off: the physio, 2027-02-01
  middle:
    earliest: week 3
    latest: 6
    enter when:
      - full range
      - no pain the day after
    stop: pain over 3 of 10
    note: slowly
    private note: calls on the phone
  heavy:
sessions:
  - day: Monday
    stage: light
    work:
      - push-up: 2 x 8
  - day: Tuesday
    stage: Middle
    work:
      - dip: 2 x 8
  - day: Thursday
    stage: heavy
    work:
      - dip: 5 x 5
  - day: Friday
    work:
      - pull-up: 3 x 8
"""


def week(text: str = STAGES) -> Week:
    result = read(text)
    assert result.findings == ()
    assert result.week is not None
    return result.week


def days(one: Week) -> tuple[list[str], list[str]]:
    """The days in force and those held back."""
    return [session.title for session in one.sessions], [session.title for session in one.held_back]


def signed(*names: str) -> str:
    """The plan with a sign-off in these stages too."""
    text = STAGES
    for name in names:
        text = text.replace(f"  {name}:\n", f"  {name}:\n    signed off: the physio, 2027-03-01\n")
    return text


def test_every_word_of_a_stage() -> None:
    light, middle, heavy = week().stages
    assert light.signed_off == SignOff(who="the physio", on=dt.date(2027, 2, 1))
    assert (middle.earliest, middle.latest, middle.stop) == (3, 6, "pain over 3 of 10")
    assert middle.enter_when == ("full range", "no pain the day after")
    assert (middle.note, middle.private_note) == ("slowly", "calls on the phone")
    assert (heavy.name, heavy.signed_off) == ("heavy", None)


@pytest.mark.parametrize(
    ("names", "number", "there", "held"),
    [
        ((), 1, ["Monday", "Friday"], ["Tuesday", "Thursday"]),
        (("middle",), 1, ["Monday", "Friday"], ["Tuesday", "Thursday"]),
        (("middle",), 3, ["Tuesday", "Friday"], ["Monday", "Thursday"]),
        (("middle", "heavy"), 1, ["Thursday", "Friday"], ["Monday", "Tuesday"]),
        (("heavy",), 52, ["Thursday", "Friday"], ["Monday", "Tuesday"]),
    ],
)
def test_the_last_stage_that_is_open_is_in_force(
    names: tuple[str, ...], number: int, there: list[str], held: list[str]
) -> None:
    one = week(signed(*names))
    every = sorted((*one.sessions, *one.held_back), key=lambda session: session.place)
    whole = one.model_copy(update={"sessions": tuple(every), "number": number})
    assert days(in_force(whole)) == (there, held)


def test_no_date_opens_a_stage_however_late() -> None:
    text = STAGES.replace("plan: Way back\n", "plan: Way back\nstarts: 2031-01-06\n")
    assert days(week(text.replace("    earliest: week 3\n", ""))) == (
        ["Monday", "Friday"],
        ["Tuesday", "Thursday"],
    )


def test_a_day_like_one_of_a_stage_belongs_to_it_unless_it_says_another() -> None:
    copies = "  - day: Saturday\n    like: Thursday\n  - day: Sunday\n    like: Thursday\n    stage: light\n"
    assert days(week(f"{STAGES}{copies}")) == (
        ["Monday", "Friday", "Sunday"],
        ["Tuesday", "Thursday", "Saturday"],
    )


@given(st.lists(st.tuples(st.booleans(), st.sampled_from([None, 1, 2, 3])), max_size=5), st.integers(1, 3))
def test_at_most_one_stage_is_in_force_and_it_is_signed_off(
    made: list[tuple[bool, int | None]], number: int
) -> None:
    base = week()
    (session,) = (one for one in base.sessions if one.day == "Monday")
    assert session.stage is not None
    stages = tuple(
        Stage(
            name=str(at),
            place=session.place,
            earliest=earliest,
            signed_off=SignOff(who="her", on=dt.date(2027, 1, 1)) if done else None,
        )
        for at, (done, earliest) in enumerate(made)
    )
    sessions = tuple(
        session.model_copy(update={"stage": session.stage.model_copy(update={"text": one.name})})
        for one in stages
    )
    whole = base.model_copy(update={"stages": stages, "sessions": sessions, "number": number})
    split = in_force(whole)
    open_ones = [at for at, (done, earliest) in enumerate(made) if done and (earliest or 1) <= number]
    assert [one.stage.text for one in split.sessions if one.stage] == [str(at) for at in open_ones[-1:]]
    assert len(split.held_back) == len(made) - len(split.sessions)


@pytest.mark.parametrize(
    ("stages", "rule"),
    [
        ("  light: open", "value-in-wrong-form"),
        ("  light:\n    earliest: 2027-03-01", "number-expected"),
        ("  light:\n    earliest: 0", "number-expected"),
        ("  light:\n    earliest: [1]", "value-in-wrong-form"),
        ("  light:\n    earliest: 3\n    latest: 2", "number-expected"),
        ("  light:\n    signed off: yes", "sign-off-incomplete"),
        ("  light:\n    signed off: 2027-03-01", "sign-off-incomplete"),
        ("  light:\n    signed off: the physio, soon", "date-not-readable"),
        ("  light:\n    signed off: [yes]", "value-in-wrong-form"),
        ("  light:\n    until: 2027-03-01", "unknown-key"),
    ],
)
def test_each_slip_is_one_finding_and_opens_nothing(stages: str, rule: str) -> None:
    result = read(f"plan: A\nstages:\n{stages}\nsessions:\n  - work:\n      - dip: 3 x 8\n")
    assert [finding.rule for finding in result.findings] == [rule]
    assert result.week is not None
    assert [stage.signed_off for stage in result.week.stages if stage.signed_off] == []


@pytest.mark.parametrize("word", ["none", "not yet", ""])
def test_not_signed_off_on_purpose(word: str) -> None:
    assert rules(STAGES.replace("the physio, 2027-02-01", word)) == []


@pytest.mark.parametrize(
    ("old", "new", "change"),
    [
        ("stage: heavy", "stage: havy", "write `stage: heavy`"),
        ("stage: heavy", "stage: xyz", "write `stage: light` or `stage: middle` or `stage: heavy`"),
    ],
)
def test_a_stage_that_the_plan_does_not_have(old: str, new: str, change: str) -> None:
    result = read(STAGES.replace(old, new))
    (finding,) = result.findings
    assert (finding.rule, finding.change) == ("not-one-of-the-words", change)
    assert result.week is not None
    assert "Thursday" in days(result.week)[1]


def test_a_stage_without_any_and_stages_that_can_not_be_read() -> None:
    session = "sessions:\n  - stage: light\n    work:\n      - dip: 3 x 8\n"
    (finding,) = read(f"plan: A\n{session}").findings
    assert finding.change == "write the stage under `stages:` at the top, `light:`"
    assert rules(f"plan: A\nstages: [light]\n{session}") == ["value-in-wrong-form"]
    assert rules(STAGES.replace("    stage: heavy", "    stage: [heavy]")) == ["value-in-wrong-form"]
