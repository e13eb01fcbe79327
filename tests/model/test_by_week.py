"""Values by week: lists, week keys, the words that stand for a value, and every way to get them wrong."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.model.plan import Group, Item
from setwright.reading.dose import Rest
from setwright.reading.weeks import say_weeks, speaks_of_weeks, weeks_in
from tests.model.blocks import block, doses, entries, loads, messages, weeks_of
from tests.reading.plans import read

PULL = "- bench pull: 3 x 8\n"


def test_a_list_has_one_entry_a_week() -> None:
    assert loads(block(3, PULL + "  load: [60, 62.5, 65]")) == [60, 62.5, 65]
    assert doses(block(2, "- push-up: [3 x 8, 4 x 8]")) == ["3 x 8", "4 x 8"]
    assert doses(block(2, "- push-up:\n    - 3 x 8, rest 1:30\n    - 4 x 8, rest 1:30")) == [
        "3 x 8, rest 1:30",
        "4 x 8, rest 1:30",
    ]


def test_week_keys_in_every_form() -> None:
    keys = (
        "- push-up:\n    week 1: 3 x 8\n    Weeks 2–3: 3 x 10\n    weeks 4 and 6: same\n    week 5: as week 1"
    )
    assert doses(block(6, keys)) == ["3 x 8", "3 x 10", "3 x 10", "3 x 10", "3 x 8", "3 x 8"]


def test_one_value_holds_in_every_week() -> None:
    assert doses(block(3, "- push-up: 3 x 8")) == ["3 x 8"] * 3
    assert [week.number for week in weeks_of(block(3, "- push-up: 3 x 8"))] == [1, 2, 3]
    assert [week.title for week in weeks_of(block(2, "- push-up: 3 x 8"))] == [
        "A block, week 1 of 2",
        "A block, week 2 of 2",
    ]


def test_none_is_not_this_week_and_stop_is_not_any_more() -> None:
    assert doses(block(4, "- push-up: [3 x 8, none, same, 3 x 10]")) == ["3 x 8", None, None, "3 x 10"]
    assert doses(block(4, "- push-up:\n    week 1: 3 x 8\n    week 2: stop")) == ["3 x 8", None, None, None]


def test_a_session_that_holds_nothing_in_a_week_does_not_take_place() -> None:
    assert [len(week.sessions) for week in weeks_of(block(2, "- push-up: [3 x 8, none]"))] == [1, 0]


def test_effort_rest_and_tempo_go_by_week() -> None:
    lines = (
        PULL
        + "  effort: [3 RIR, 2 RIR]\n  rest: [2:00, none]\n  tempo:\n    week 1: 3-0-1-0\n    week 2: none"
    )
    first, second = (work[0] for work in entries(block(2, lines)))
    assert isinstance(first, Item)
    assert isinstance(second, Item)
    assert [item.dose.groups[0].works[0].effort.low for item in (first, second)] == [3, 2]  # type: ignore[union-attr]  # both have one
    assert (first.rest, second.rest) == (
        Rest(kind="seconds", low=120, high=120),
        Rest(kind="none"),
    )
    assert first.tempo is not None
    assert (second.tempo, second.none) == (None, ("tempo",))


def test_a_load_that_is_none_is_not_a_load_that_nobody_wrote() -> None:
    first, second = (work[0] for work in entries(block(2, PULL + "  load: [60, none]")))
    assert (first.none, second.none) == ((), ("load",))
    assert second.load is None


def test_minutes_and_the_load_of_a_complex_go_by_week() -> None:
    complex_ = "- complex:\n    - power clean: 3\n  rounds: 3\n  rest: [2:00, none]\n  load: [40, none]"
    text = block(2, complex_).replace("day: Monday", "day: Monday\n    minutes: [50, 40 min]")
    assert [week.sessions[0].minutes for week in weeks_of(text)] == [50, 40]
    first, second = (work[0] for work in entries(text))
    assert isinstance(first, Group)
    assert first.load is not None
    assert first.load.low == 40
    assert (second.load, second.none) == (None, ("load",))
    assert second.rest == Rest(kind="none")


def test_a_scheme_by_week_serves_every_line_that_names_it() -> None:
    top = "schemes:\n  main lift:\n    week 1: 3 x 8\n    week 2: none\n    week 3: as week 1\n"
    text = block(3, "- push-up: main lift\n- dip: [3 x 5, 3 x 6, main lift]", top)
    told = [[item.dose.text for item in week.sessions[0].items() if item.dose] for week in weeks_of(text)]
    assert told == [["3 x 8", "3 x 5"], ["3 x 6"], ["3 x 8", "3 x 8"]]


def test_a_value_is_not_asked_for_in_weeks_without_the_line() -> None:
    work = (
        "- bench pull:\n    week 1: 3 x 8\n    week 2: same\n    week 3: stop\n  load:\n    weeks 1-2: 60 kg"
    )
    assert loads(block(4, work)) == [60, 60, None, None]
    assert loads(block(3, PULL + "  only in: weeks 2-3\n  load:\n    week 2: 60 kg\n    week 3: same")) == [
        None,
        60,
        60,
    ]


def test_only_in_on_sessions_groups_and_lines() -> None:
    pair = "- superset:\n    - push-up: 3 x 8\n      only in: week 1\n    - dip: 3 x 8\n  only in: weeks 1-2"
    text = block(3, f"{pair}\n- bench pull: 3 x 8\n  only in: weeks 1 and 3").replace(
        "day: Monday", "day: Monday\n    only in: weeks 1-3"
    )
    told = [[item.name for item in week.sessions[0].items()] for week in weeks_of(text)]
    assert told == [["push-up", "dip", "bench pull"], ["dip"], ["bench pull"]]
    single = "plan: A\nweeks: 2\nonly in: week 2\nwork:\n  - push-up: 3 x 8\n"
    assert [len(week.sessions) for week in weeks_of(single)] == [0, 1]


def test_a_group_without_a_member_in_a_week_is_not_done_then() -> None:
    pair = "- superset:\n    - push-up: [3 x 8, none]\n    - dip: [3 x 8, none]\n- bench pull: 3 x 8"
    assert [len(work) for work in entries(block(2, pair))] == [2, 1]


@pytest.mark.parametrize(
    ("work", "rule", "change"),
    [
        ("  load: [62,5, 65]", "list-not-one-a-week", "write `[62.5, 65]`: a decimal has a point, `62.5`"),
        ("  load: [62,5%, 65%]", "list-not-one-a-week", "write `[62.5%, 65%]`: a decimal has a point"),
        ("  load: [60]", "list-not-one-a-week", "write exactly one entry a week"),
        ("  load: [60, 65, 70]", "list-not-one-a-week", "write exactly one entry a week"),
        ("  load: [60, [65]]", "value-in-wrong-form", "write one value behind the colon"),
        ("  load: [60, 65, [70]]", "list-not-one-a-week", "write exactly one entry a week"),
        ("  load:\n    week 1: 60 kg", "week-not-written", "write `week 2: same` (as the week before), "),
        ("  load:\n    week 2: 60 kg", "week-not-written", "write `week 1: none` (not then) or "),
        ("  load:\n    - 60\n    -", "week-not-written", "`week 2: stop` (not any more)"),
        ("  load: [as week 2, 60]", "no-such-week", "write what is done in week 1"),
        ("  load: [60, as week 9]", "no-such-week", "write `same`, or a week that comes before"),
        ("  load: [same, 60]", "no-such-week", "write what is done in week 1"),
        ("  load: [stop, 60]", "value-after-stop", "write `none` for week 1 to leave out that week"),
        ("  load:\n    weeks 1-2: 60 kg\n    week 3: 65 kg", "no-such-week", "or `weeks: 3` at the top"),
        ("  load:\n    weeks 0-2: 60 kg", "no-such-week", "write a week from week 1 to week 2"),
        ("  load:\n    week 2-1: 60 kg", "no-such-week", "write `weeks 1-2`"),
        ("  load:\n    week 1: 60 kg\n    weeks 1-2: 65 kg", "week-named-twice", "keep one"),
        ("  load:\n    week 1: 60 kg\n    Ann: 50 kg", "weeks-and-other-keys", "line `Ann:` up"),
        ("  week 2: 4 x 8", "weeks-and-other-keys", "leave nothing behind the movement's colon"),
        ("  rest:\n    Ann: 2:00", "not-read-yet", "write one value for all"),
        ("  only in: week 3", "no-such-week", "write a week from week 1 to week 2, or `weeks: 3` at the top"),
        ("  only in: now and then", "no-such-week", "write `week 2`, `weeks 2-3` or `weeks 1-3 and 5`"),
        ("  only in: [week 1]", "value-in-wrong-form", "write one value behind the colon"),
    ],
)  # fmt: skip
def test_each_fault_of_weeks_is_told_once_with_what_to_type(work: str, rule: str, change: str) -> None:
    ((found, line, told),) = messages(block(2, "- front plank: 3 x 30 s\n" + PULL + work))
    assert found == rule
    assert line > 8
    assert change in told


def test_a_line_that_is_never_there_is_told() -> None:
    text = block(3, PULL + "  only in: week 3").replace("day: Monday", "day: Monday\n    only in: weeks 1-2")
    assert [(rule, change) for rule, _, change in messages(text)] == [
        ("no-such-week", "write `only in: weeks 1-2` or take it out")
    ]


def test_nine_entries_of_six_weeks_are_six_decimals() -> None:
    work = PULL + "  load: [62,5, 65, 67,5, 70, 72,5, 75]"
    (finding,) = read(block(6, work)).findings
    assert "9 entries for 6 weeks" in finding.message
    assert finding.change.startswith("write `[62.5, 65, 67.5, 70, 72.5, 75]`")


def test_a_list_without_blanks_is_no_decimal() -> None:
    assert loads(block(2, PULL + "  load: [60,75]")) == [60, 75]


def test_decimals_are_asked_for_even_where_the_count_fits() -> None:
    assert [rule for rule, _, _ in messages(block(3, PULL + "  load: [62,5, 65]"))] == ["list-not-one-a-week"]


def test_a_list_in_a_plan_of_one_week_is_asked() -> None:
    (finding,) = read(block(1, PULL + "  load: [60, 65, 70]")).findings
    assert finding.change == "write `60, 65, 70` without brackets for set by set, or `weeks: 3` at the top"
    (finding,) = read(block(1, PULL + "  load: [62,5, 65]")).findings
    assert finding.change.endswith("; a decimal has a point, `62.5`")


def test_a_date_on_a_session_of_several_weeks_is_asked() -> None:
    text = block(2, PULL).replace("day: Monday", "date: 2027-02-01")
    assert [rule for rule, _, _ in messages(text)] == ["one-date-for-several-weeks"]
    assert messages(text.replace("date: 2027-02-01", "date: 2027-02-01\n    only in: week 1")) == []


def test_a_fault_in_a_week_leaves_the_other_lines_alone() -> None:
    result = read(block(2, "- push-up: [3 x, 3 x 8]\n" + PULL))
    assert [finding.rule for finding in result.findings] == ["reps-missing"]
    assert [[item.dose is None for item in week.sessions[0].items()] for week in result.weeks] == [
        [True, False],
        [False, False],
    ]


CELLS = st.sampled_from(["3 x 8", "4 x 6", "3 x 5, rest 2:00", "same", "none", "as week 1"])


@given(st.lists(CELLS, min_size=1, max_size=7))
def test_a_list_and_week_keys_say_the_same(cells: list[str]) -> None:
    rows = ["3 x 10", *cells]
    listed = "- push-up:\n" + "".join(f"    - {cell}\n" for cell in rows)
    keys = "- push-up:\n" + "".join(f"    week {week}: {cell}\n" for week, cell in enumerate(rows, 1))
    assert doses(block(len(rows), listed)) == doses(block(len(rows), keys))


@given(st.sets(st.integers(1, 104), min_size=1, max_size=12))
def test_weeks_said_are_the_weeks_read(weeks: set[int]) -> None:
    assert weeks_in(say_weeks(sorted(weeks))) == tuple(sorted(weeks))


@given(st.text("weks 1230-–,and_", max_size=20))
def test_any_words_for_weeks_are_read_or_not(typed: str) -> None:
    weeks = weeks_in(typed)
    assert weeks is None or (weeks and speaks_of_weeks(typed))


MUTABLE = """\
plan: A block
weeks: 4
unit: kg
sides: each
training days: [Monday, Friday]
rotate: [A, B]
lighter weeks:
  week 4: half the sets and 80% of the load
schemes:
  main: [3 x 8, 4 x 6, same, as week 1]
sessions:
  - name: A
    minutes: [40, 45, 50, 30]
    work:
      - bench pull: main
        load:
          week 1: 50 kg
          weeks 2-3: 55 kg
          week 4: same
      - superset:
          - push-up: 3 x 8
            only in: weeks 1-3
          - dip: [3 x 5, none, 3 x 6, stop]
        rest: [2:00, 1:30, none, 1:00]
  - name: B
    only in: weeks 1-4
    work:
      - push-up: 3 x 12
"""


@settings(max_examples=150)
@given(st.data())
def test_a_mutated_block_never_raises_and_never_passes_in_silence(data: st.DataObject) -> None:
    at = data.draw(st.integers(0, len(MUTABLE)))
    cut = data.draw(st.integers(0, 8))
    put = data.draw(st.text("week 1234-,:[]\nnoestopsam", max_size=6))
    result = read(MUTABLE[:at] + put + MUTABLE[at + cut :])
    assert result.weeks or result.findings
    assert [week.number for week in result.weeks] == list(range(1, len(result.weeks) + 1))
    for finding in result.findings:
        assert finding.change
        assert finding.place.line <= MUTABLE.count("\n") + 8


def test_the_block_that_is_mutated_is_sound() -> None:
    assert len(weeks_of(MUTABLE)) == 4
