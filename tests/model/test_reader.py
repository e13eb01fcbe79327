"""The plan reader: every key of the language, both forms of an item, groups, and what is asked."""

import datetime as dt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.model.next import Repeat
from setwright.model.plan import Group, Item, Session, Week
from setwright.reading.dose import Amount, Load, Rest, Span, Tempo
from tests.reading.plans import read, rules, whole_plan

FULL = """\
plan: Autumn block, week 3
starts: 2027-10-18
weeks: 1
unit: lbs
Dose Order: sets x reps
percent of: training max
sides: each side
people: 28
ages: 12-13
staff: 2
aim: size
sport: rowing
level: beginner
focus: [pecs, back]
sets a week:
  chest: 8-12
  pull to push: at least 1
follows: week-2.yaml
schemes:
  main lift: 5 x 5 at 80%
next:
  - 12 or more: add 5 lb
  - otherwise: repeat
missed day: skip
if interrupted: finish the station
last week:
  push-up: 300 reps
allow:
  push-without-pull: pull day is with the rowing coach
note: a note that
  runs on
private note: nobody's business
sessions:
  - day: thurs
    date: 2027-10-21
    name: Press day
    minutes: 45 min
    start: 6:45
    place: hall
    after: rowing
    days_to_match: 2
    people: 14
    staff: 1
    warm-up:
      - rope skipping: 3 min
      - our own drill
      - push-up: 2 x 10
    work:
      - flat barbell bench press: Main Lift
        rest: 2:30
        warm-up: 8 at bar, 5 at 50%
        next: add 5 lb every week
        priority: 1
        for: [Ann, light]
        not for: Bo, Cy
        kit: [belt]
        stop: bar slows down
        allow:
          one-side-only: on purpose
        note: tight
        private note: shoulder
      - move: push-up
        do: 3 x max at 2 RIR
        tempo: 3-1-1-0
      - dip:
          do: 3 x 8
          load: bodyweight + 10 lb
          effort: 2 RIR
    cool-down: [walk, stretch]
    if interrupted: go on
    note: session note
    private note: quiet
"""
COPIED = """\
plan: A
sessions:
  - day: Mon
    work: &push
      - dip: DOSE
  - day: Tue
    work: *push
"""


def week(text: str) -> Week:
    result = read(text)
    assert result.findings == ()
    assert result.week is not None
    return result.week


def item(text: str) -> Item:
    entry = week(whole_plan(text)).sessions[0].work[0]
    assert isinstance(entry, Item)
    return entry


def group(text: str) -> Group:
    entry = week(whole_plan(text)).sessions[0].work[0]
    assert isinstance(entry, Group)
    return entry


def change(text: str) -> str:
    (finding,) = read(text).findings
    return finding.change


def test_the_top_of_a_plan() -> None:
    read_week = week(FULL)
    assert read_week.name == "Autumn block, week 3"
    assert read_week.starts == dt.date(2027, 10, 18)
    assert (read_week.unit, read_week.sides, read_week.percent_of) == ("lb", "each", "training max")
    assert (read_week.people, read_week.ages, read_week.staff) == (28, "12-13", 2)
    assert (read_week.aim, read_week.sport, read_week.level) == ("size", "rowing", "beginner")
    assert read_week.aim_place is not None
    assert read_week.aim_place.line == 11
    assert read_week.focus == ("chest", "back")
    asked = [(one.group, one.low, one.high, one.text) for one in read_week.sets_a_week]
    assert asked == [("chest", 8, 12, "8-12"), ("pull to push", 1, None, "at least 1")]
    (before,) = read_week.last_week
    assert (before.key, before.amount, before.unit) == ("push-up", 300, "reps")
    assert read_week.next is not None
    assert read_week.next.text == "12 or more: add 5 lb; otherwise: repeat"
    assert (read_week.missed_day, read_week.if_interrupted) == ("skip", "finish the station")
    assert [(a.rule, a.place.line) for a in read_week.allow] == [("push-without-pull", 29)]
    assert (read_week.note, read_week.private_note) == ("a note that runs on", "nobody's business")


def test_a_session() -> None:
    (session,) = week(FULL).sessions
    assert (session.day, session.date, session.title) == ("Thursday", dt.date(2027, 10, 21), "Thursday")
    assert (session.minutes, session.start, session.where, session.after) == (45, "06:45", "hall", "rowing")
    assert (session.days_to_match, session.people, session.staff) == (2, 14, 1)
    assert [entry.name for entry in session.warm_up] == ["rope skipping", "our own drill", "push-up"]
    assert session.cool_down == ("walk", "stretch")
    assert session.work_place.line == 48


def test_an_item_with_every_word() -> None:
    press = week(FULL).sessions[0].items()[0]
    assert press.key == "flat-barbell-bench-press"
    assert press.dose is not None
    assert press.dose.text == "5 x 5 at 80%"
    assert press.dose.place.line == press.place.line == 49
    assert press.dose.groups[0].rest == press.rest == Rest(kind="seconds", low=150, high=150)
    assert press.dose.warm_up == press.warm_up
    assert (press.priority, press.for_, press.not_for) == (1, ("Ann", "light"), ("Bo", "Cy"))
    assert (press.kit, press.stop) == (("belt",), "bar slows down")
    assert press.next is not None
    assert (press.next.text, press.next.place.line) == ("add 5 lb every week", 52)
    assert (press.allow[0].reason, press.note, press.private_note) == ("on purpose", "tight", "shoulder")


def test_the_three_forms_of_an_item_are_one() -> None:
    short = item("- dip: 3 x 8, tempo 3-1-1-0")
    for text in ("- move: dip\n  do: 3 x 8\n  tempo: 3-1-1-0", "- dip:\n    do: 3 x 8\n    tempo: 3-1-1-0"):
        other = item(text)
        assert short.dose is not None
        assert other.dose is not None
        assert other.dose.groups == short.dose.groups
        assert other.tempo == Tempo(lower_s=3, bottom_s=1, lift_s=1, top_s=0)


def test_a_single_session_has_its_keys_at_the_top() -> None:
    read_week = week("plan: A\nday: Mon\nminutes: 40\nnote: x\nwork:\n  - dip: 3 x 8\n")
    (session,) = read_week.sessions
    assert isinstance(session, Session)
    assert (session.day, session.minutes, read_week.note) == ("Monday", 40, "x")
    assert session.place.line == 1


def test_loads_under_a_line_go_set_by_set() -> None:
    dose = item("- flat barbell bench press: 3 x 5\n  load: 60, 65, 70 kg").dose
    assert dose is not None
    assert [work.load.low for work in dose.groups[0].works if work.load] == [60, 65, 70]


def test_yaml_aliases_are_copies() -> None:
    first, second = week(COPIED.replace("DOSE", "3 x 8")).sessions
    assert first.work == second.work


def test_a_fault_in_copied_lines_is_told_once() -> None:
    assert len(rules(COPIED.replace("DOSE", "3 x"))) == 1


def test_a_superset_and_its_words() -> None:
    pair = group(
        "- superset:\n    - dip: 3 x 8\n    - push-up: 3 x 12\n"
        "  rest: 2:00\n  between moves: none\n  priority: 3\n"
        "  for: light\n  stop: pain\n  next: repeat\n  note: n\n  allow:\n    half-a-pair: yes it is\n"
    )
    assert [one.name for one in pair.items] == ["dip", "push-up"]
    assert pair.rest == Rest(kind="seconds", low=120, high=120)
    assert pair.between_moves == Rest(kind="none")
    assert (pair.priority, pair.for_, pair.stop) == (3, ("light",), "pain")
    assert pair.next is not None
    assert pair.next.rule == Repeat()


def test_a_timed_circuit_needs_no_doses() -> None:
    circuit = group(
        "- circuit:\n    - push-up\n    - dip:\n      kit: [belt]\n    - goblet squat: at 20 kg\n"
        "  rounds: 4\n  each: 40 s\n  between moves: 20 s\n  rest: 2:00"
    )
    assert (circuit.rounds, circuit.each_s) == (4, 40)
    assert [entry.dose is None for entry in circuit.items] == [True, True, False]


@pytest.mark.parametrize(
    ("typed", "low", "high"), [("2 RIR", 2, 2), ("1-2 RIR", 1, 2), ("RPE 8, rest 10 s", 8, 8)]
)
def test_in_a_timed_circuit_an_effort_alone_is_a_member(typed: str, low: float, high: float) -> None:
    found = read(whole_plan(f"- circuit:\n    - push-up: {typed}\n    - sit-up:\n  rounds: 3\n  each: 40 s"))
    assert found.findings == ()
    (item, _) = found.weeks[0].sessions[0].items()
    assert item.dose is not None
    (work,) = item.dose.groups[0].works
    assert work.effort is not None
    assert (work.amount.unit, work.effort.low, work.effort.high) == ("s", low, high)


def test_clocks_ladders_and_complexes() -> None:
    assert group("- circuit:\n    - push-up: 10\n  time: 12 min").time_s == 720
    timed = group("- circuit:\n    - push-up: 10\n  rounds: 5\n  cap: 15:00\n  every: 3:00")
    assert (timed.cap, timed.every_s) == (Amount(unit="s", span=Span(low=900, high=900)), 180)
    assert group("- circuit:\n    - push-up: rung\n  ladder: 1 to 3 to 1").ladder == (1, 2, 3, 2, 1)
    assert group("- circuit:\n    - push-up: rung x 2\n  ladder: 2 to 10 by 4").ladder == (2, 6, 10)
    assert group("- circuit:\n    - push-up: rung\n  ladder: 3 to 1").ladder == (3, 2, 1)
    bar = group("- complex:\n    - power clean: 3\n    - barbell front squat: 3\n  rounds: 3\n  load: 40 kg")
    assert isinstance(bar.load, Load)
    assert bar.load.low == 40


@pytest.mark.parametrize("empty", ["-\n", "- \n- dip: 3 x 8\n- {}"])
def test_empty_lines_of_a_list_are_nothing(empty: str) -> None:
    text = (
        f"plan: A\nwork:\n  - push-up: 3 x 8\n{''.join(f'  {line}' + chr(10) for line in empty.splitlines())}"
    )
    assert rules(text) == []


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("- dip: 3 x 8\n  work: 3", "two-movements-in-one-item"),
        ("- dip: 3 x 8\n  do: 4 x 8", "double-key"),
        ("- move: dip\n  dose: 3 x 8", "unknown-key"),
        ("- move: [dip]\n  do: 3 x 8", "value-in-wrong-form"),
        ("- [dip]", "value-in-wrong-form"),
        ("- A: Bench: 3x8", "second-colon"),
        ("- dip:3 x 8\n- push-up: 3 x 8", "no-blank-after-colon"),
        ("- dip:", "dose-missing"),
        ("- dip\n- push-up: 3 x 8", "dose-missing"),
        ("- dip: 3 x 8\n  priority: 4", "number-expected"),
        ("- dip: 3 x 8\n  priority: [1]", "value-in-wrong-form"),
        ("- dip: 3 x 8\n  kit:\n    belt: 1", "value-in-wrong-form"),
        ("- dip: 3 x 8\n  note: [a]", "value-in-wrong-form"),
        ("- dip: 3 x 8\n  allow: yes", "value-in-wrong-form"),
        ("- dip: 3 x 8\n  tempo: 301", "tempo-incomplete"),
        ("- dip: 3 x 8\n  load: 10, 20 kg", "set-count-differs"),
        ("- dip: 3 x 8 at 20 kg\n  load: 20 kg", "said-in-line-and-below"),
        ("- dip: |\n    3 x 8\n    rest 2:00", "value-over-two-lines"),
        ("- superset:", "work-missing"),
        ("- superset: dip", "work-missing"),
        ("- superset:\n    - dip: 3 x 8\n    - superset:\n        - dip: 3 x 8", "value-in-wrong-form"),
        ("- superset:\n    - dip: 3 x 8\n    - rest: 2:00", "key-among-movements"),
        ("- superset:\n    - dip: 3 x 8\n  load: 20 kg", "value-in-wrong-form"),
        ("- superset:\n    - dip: 3 x 8\n  rest: [1]", "list-not-one-a-week"),
        ("- superset:\n    - dip: 3 x 8\n  between moves: [1]", "value-in-wrong-form"),
        ("- circuit:\n    - dip: 8\n  rounds: 3\n  every: 3:00\n  rest: 1:00", "group-words-disagree"),
        ("- circuit:\n    - dip: 8\n  time: 12", "number-expected"),
        ("- circuit:\n    - dip: 8\n  rounds: 3\n  cap: soon", "number-expected"),
        ("- circuit:\n    - dip: 8\n  rounds: 3\n  cap: [1]", "value-in-wrong-form"),
        ("- circuit:\n    - dip: rung\n  ladder: 1 to 900", "number-expected"),
        ("- circuit:\n    - dip: rung\n  ladder: up", "number-expected"),
        ("- circuit:\n    - dip: rung\n  ladder: [1]", "value-in-wrong-form"),
        ("- complex:\n    - power clean: 3\n  rounds: 3\n  load: heavier", "words-not-read"),
        ("- complex:\n    - power clean: 3\n  rounds: 3\n  load: [40 kg, 50 kg]", "list-not-one-a-week"),
        ("- dip: [3 x 8, 3 x 6]", "list-not-one-a-week"),
        ("- dip: 3 x 8\n  sides: [each, each]", "value-in-wrong-form"),
        ("- dip: 3 x 8\n  rest:\n    Ann: 2:00", "not-read-yet"),
        ("- dip: 3 x 8\n  only in: week 2", "no-such-week"),
        ("weeks: many", "number-expected"),
        ("rotate: [A, B]", "turns-unclear"),
        ("lighter weeks:\n  week 4: half the sets", "no-such-week"),
        ("movements: own.yaml", "file-not-found"),
        ("movements: [crate press]", "value-in-wrong-form"),
        ("schemes:\n  5 by 5: 5 x 5", "not-one-of-the-words"),
        ("schemes: main", "value-in-wrong-form"),
        ("schemes:\n  main: 3 x", "reps-missing"),
        ("leave out: [dip]", "value-in-wrong-form"),
        ("sessions:\n  - day: Monday\n    like:", "work-missing"),
        ("sessions:\n  - day: Monday\n    like: [Tuesday]", "value-in-wrong-form"),
        ("like: Monday", "value-in-wrong-form"),
        ("sessions:\n  - day: Monday\n    work: dip", "value-in-wrong-form"),
        ("sessions:\n  - day: Monday\n    work:", "work-missing"),
        ("sessions:\n  - Monday", "value-in-wrong-form"),
        ("sessions:\n  - day: Xyz\n    work:\n      - dip: 3 x 8", "misspelt-day"),
        ("sessions:\n  - day: [Mon]\n    work:\n      - dip: 3 x 8", "value-in-wrong-form"),
        ("sessions:", "work-missing"),
        ("sessions: none", "value-in-wrong-form"),
        ("sessions:\n  - work:\n      - dip: 3 x 8\nwork:\n  - dip: 3 x 8", "value-in-wrong-form"),
        ("focus: [chets]", "not-one-of-the-words"),
        ("focus: [xyzzy]", "not-one-of-the-words"),
        ("aim: xyzzy", "not-one-of-the-words"),
        ("aim: [size]", "value-in-wrong-form"),
        ("starts: 2027-02-30", "date-not-readable"),
        ("starts: 12/10/2027", "date-not-readable"),
        ("starts: soon", "date-not-readable"),
        ("starts: [2027-02-01]", "value-in-wrong-form"),
        ("start: late", "number-expected"),
        ("start: [6]", "value-in-wrong-form"),
        ("sets a week:\n  chest: [8]", "value-in-wrong-form"),
        ("allow:\n  some-rule: [a]", "value-in-wrong-form"),
        ("warm-up: long", "number-expected"),
        ("monday: push", "unknown-key"),
        ("xyzzy: 3", "unknown-key"),
        (f"{'x' * 99}: 3", "unknown-key"),
        ("squad: [a]", "value-in-wrong-form"),
        ("gym: [a]", "value-in-wrong-form"),
        ("gym: hall.yaml", "file-not-found"),
        ("squad: /etc/squad.yaml", "file-not-found"),
        ('squad: "a\\tb.yaml"', "file-not-found"),
    ],
)  # fmt: skip
def test_each_fault_is_one_finding(text: str, rule: str) -> None:
    assert rules(whole_plan(text)) == [rule]


@pytest.mark.parametrize(
    ("text", "write"),
    [
        ("sessions:\n  - day: Wensday\n    work:\n      - dip: 3 x 8", "write `day: Wednesday`"),
        ("starts: 12/10/2027", "write `2027-10-12` or `2027-12-10`, year-month-day"),
        ("aim: strenght", "write `strength`; the words are general, size, strength, sport or return"),
        ("- flat bench 3x8", "put a colon after the movement: `- flat bench: 3x8`"),
        ("- dip: 3 x 8\n  rests: 2:00", "write `rest:`"),
        ("monday: push", "write `- day: Monday` under `sessions:`"),
        ("priority: 1", "write it in line with the movement that it belongs to"),
        (
            "deload: half",
            "write `lighter weeks:` and under it the week, two blanks further in: `week 4: half the sets`",
        ),
        ("- circuit:\n    - dip: 8\n  time: 12", "write `12 min` or `12 s`"),
    ],
)
def test_the_change_is_what_to_type(text: str, write: str) -> None:
    assert change(whole_plan(text)) == write


@pytest.mark.parametrize(
    "text",
    ["", "# nothing\n", "just words", "- a\n- b\n", "record: A\ndone:\n  Ann: x\n", "a: 1\n"],
)
def test_what_is_no_plan_is_one_finding(text: str) -> None:
    result = read(text)
    assert result.week is None
    assert not result.complete
    assert [f.rule for f in result.findings] == ["not-a-plan"]


def test_an_empty_map_is_no_plan_but_a_plan_without_a_name_is_read() -> None:
    assert rules("{}") == ["not-a-plan"]
    result = read("sessions:\n  - day: Mon\n    work:\n      - dip: 3 x 8\n")
    assert [f.rule for f in result.findings] == ["name-missing"]
    assert result.week is not None
    assert result.week.name == "the plan"
    assert rules("plan: A\n") == ["work-missing"]


def test_findings_in_a_session_say_which() -> None:
    tuesday = "  - day: Tuesday\n    minutes: x\n    work:\n      - dip: 3 x\n"
    text = f"plan: A\nsessions:\n{tuesday}  -\n  - work:\n      - dip: y\n"
    assert [f.where for f in read(text).findings] == ["Tuesday", "Tuesday", "the session"]


def test_faults_of_a_line_are_told_together_and_the_rest_is_read() -> None:
    text = "plan: A\nwork:\n  - dipp: 3 x 8 #2\n    rest: soon\n  - push-up: 3 x 8\n"
    result = read(text)
    assert sorted(f.rule for f in result.findings) == [
        "text-lost-after-hash",
        "unknown-movement",
        "words-not-read",
    ]
    assert result.week is not None
    assert [one.dose is not None for one in result.week.sessions[0].items()] == [False, True]
    assert not result.complete


@given(st.text(max_size=150))
def test_any_text_gives_findings_or_a_week(text: str) -> None:
    result = read(text)
    assert result.week is not None or result.findings


REUSED = """\
plan: Way back
squad:
  athletes:
    - name: Ann
    - name: Pell
  groups:
    light: [Ann]
stages:
  heavy:
    earliest: week 3
    signed off: the physio, 2027-02-01
sessions:
  - day: Monday
    work:
      - dip: 3 x 8
        load:
          Ann: 10 kg
          Pell: none
        instead:
          light: push-up
          Pell:
            - leg press: 3 x 10
      - pull-up: 3 x 8
  - day: Thursday
    like: Monday
    stage: heavy
    leave out: [pull-up]
    swap:
      dip: push-up
    change:
      - push-up: 3 x 12
    add:
      - face pull: 3 x 15
"""


@pytest.mark.parametrize("plan", [FULL, REUSED])
@settings(max_examples=150)
@given(st.data())
def test_a_mutated_plan_never_raises_and_never_passes_in_silence(plan: str, data: st.DataObject) -> None:
    at = data.draw(st.integers(0, len(plan)))
    cut = data.draw(st.integers(0, 6))
    put = data.draw(st.text("ab3: -#@%\t\n\"'{}[],*&|>!\u00a0\u200b", max_size=4))
    result = read(plan[:at] + put + plan[at + cut :])
    for finding in result.findings:
        assert finding.place.line <= plan.count("\n") + 5
        assert result.sources[finding.place.file].line(finding.place.line) is not None
    assert result.week is not None or result.findings


@pytest.mark.parametrize(
    ("do", "key", "load", "effort"),
    [
        ("test max reps", "load: bodyweight + 10 kg", "bodyweight", None),
        ("work up to 5RM", "effort: RPE 9", "rm", "RPE"),
        ("work up to 5RM, then 2 x 5", "load: 60 kg", "rm", None),
    ],
)
def test_a_top_set_takes_what_stands_beneath_where_no_other_sets_do(
    do: str, key: str, load: str, effort: str | None
) -> None:
    result = read(f"plan: A\nwork:\n  - pull-up: {do}\n    {key}\n")
    assert result.findings == ()
    assert result.week is not None
    (item,) = result.week.sessions[0].items()
    assert item.dose is not None
    first = item.dose.groups[0].works[0]
    assert (first.load and first.load.kind, first.effort and first.effort.scale) == (load, effort)


@pytest.mark.parametrize(
    ("line", "rule"),
    [
        ("work up to 5RM, at 60 kg", "said-twice"),
        ("work up to 5RM\n    load: 60 kg", "said-in-line-and-below"),
    ],
)
def test_a_load_beside_a_repetition_maximum_is_said_twice(line: str, rule: str) -> None:
    assert rules(f"plan: A\nwork:\n  - pull-up: {line}\n") == [rule]
