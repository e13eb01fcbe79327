"""Maxes as a coach types them: what each becomes, what is asked, and which of several a percent is of."""

import datetime as dt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.model.people import Best, Max, TrainingMax
from setwright.model.theirs import lines_done
from setwright.reading.dose import Load
from tests.reading.plans import read

WORK = "work:\n  - flat barbell bench press: 3 x 5\n"
DAY = dt.date(2026, 12, 14)
LATER = dt.date(2027, 2, 1)


def kg(value: float) -> Load:
    return Load(kind="mass", low=value, high=value, unit="kg")


def lb(value: float) -> Load:
    return Load(kind="mass", low=value, high=value, unit="lb")


def squad(best: str, unit: str = "unit: kg\n") -> str:
    text = f"plan: A\n{unit}squad:\n  athletes:\n    - name: Ann\n      maxes:\n"
    return f"{text}        flat barbell bench press: {best}\n{WORK}"


def one(best: str, unit: str = "unit: kg\n") -> Max:
    result = read(squad(best, unit))
    assert result.findings == ()
    assert result.week is not None
    assert result.week.squad is not None
    (found,) = result.week.squad.athletes[0].maxes
    return found


@pytest.mark.parametrize(
    ("typed", "bests", "training"),
    [
        ("55 kg tested 2026-12-14", (Best(how="tested", on=DAY, load=kg(55)),), None),
        ("55 tested on 2026-12-14", (Best(how="tested", on=DAY, load=kg(55)),), None),
        ("62,5 kg tested 2026-12-14", (Best(how="tested", on=DAY, load=kg(62.5)),), None),
        ("135# tested 2026-12-14", (Best(how="tested", on=DAY, load=lb(135)),), None),
        ("9 reps tested 2026-12-14", (Best(how="tested", on=DAY, reps=9),), None),
        ("0 reps tested 2026-12-14", (Best(how="tested", on=DAY, reps=0),), None),
        ("from 60 kg x 5 on 2026-12-14", (Best(how="estimated", on=DAY, load=kg(60), reps=5),), None),
        ("from 135lbx5 2026-12-14", (Best(how="estimated", on=DAY, load=lb(135), reps=5),), None),
        (
            "bodyweight + 20 kg tested 2026-12-14",
            (Best(how="tested", on=DAY, load=Load(kind="bodyweight", plus=20, plus_high=20, unit="kg")),),
            None,
        ),
        (
            "55 kg tested 2026-12-14, training max 90%",
            (Best(how="tested", on=DAY, load=kg(55)),),
            TrainingMax(percent=90),
        ),
        (
            "from 90 kg x 5 on 2026-12-14, training max 77.5 kg",
            (Best(how="estimated", on=DAY, load=kg(90), reps=5),),
            TrainingMax(load=kg(77.5)),
        ),
        (
            "[55 kg tested 2026-12-14, from 52.5 kg x 5 on 2027-02-01]",
            (
                Best(how="tested", on=DAY, load=kg(55)),
                Best(how="estimated", on=LATER, load=kg(52.5), reps=5),
            ),
            None,
        ),
    ],
)
def test_what_is_typed_becomes_bests_and_a_training_max(
    typed: str, bests: tuple[Best, ...], training: TrainingMax | None
) -> None:
    found = one(typed)
    assert (found.bests, found.training, found.none_yet, found.unread) == (bests, training, False, False)


def test_none_yet_is_on_purpose_and_nothing_written_is_no_max() -> None:
    assert one("none yet").none_yet
    assert one("None yet").bests == ()
    result = read(squad(""))
    assert result.week is not None
    assert result.week.squad is not None
    assert result.week.squad.athletes[0].maxes == ()


def test_the_unit_of_the_squad_comes_before_that_of_the_plan() -> None:
    text = squad("55 tested 2026-12-14", "unit: kg\n").replace("  athletes", "  unit: lb\n  athletes")
    result = read(text)
    assert result.week is not None
    assert result.week.squad is not None
    assert result.week.squad.athletes[0].maxes[0].bests[0].load == lb(55)


@pytest.mark.parametrize(
    ("typed", "rule", "change"),
    [
        ("55 kg", "max-without-how", "write `55 kg tested 2026-12-14`"),
        ("55 kg 2027-01-10", "max-without-how", "write `55 kg tested 2027-01-10`"),
        ("9 reps", "max-without-how", "write `9 reps tested 2026-12-14`"),
        ("55 kg tested", "max-without-date", "`55 kg tested 2026-12-14`"),
        ("from 60 kg x 5", "max-without-date", "`from 60 kg x 5 on 2026-12-14`"),
        ("55 kg tested 14.12.2026", "date-not-readable", "`2026-12-14`"),
        ("from 60 kg x 5 on 2026-02-30", "date-not-readable", "year-month-day"),
        ("55 kg tested 2026-12-14, training max", "training-max-unclear", "`training max 90%`"),
        ("55 kg tested 2026-12-14, training max 110%", "training-max-unclear", "up to 100"),
        ("training max 90%", "training-max-unclear", "`55 kg tested 2026-12-14, training max 90%`"),
        ("training max 50 kg", "training-max-unclear", "`55 kg tested 2026-12-14, training max 50 kg`"),
        ("tested 2026-12-14", "max-not-readable", "`55 kg tested 2026-12-14`"),
        ("about 55", "max-not-readable", "`none yet`"),
        ("heavy tested 2026-12-14", "max-not-readable", "`none yet`"),
        ("50-55 kg tested 2026-12-14", "max-not-readable", "`none yet`"),
        ("0 kg tested 2026-12-14", "max-not-readable", "`none yet`"),
        ("from 60 kg x 0 on 2026-12-14", "max-not-readable", "how often"),
        ("none yet, 55 kg tested 2026-12-14", "max-not-readable", "keep one"),
        ("55 kg tested 2026-12-14, training max 90%, training max 85%", "max-not-readable", "keep one"),
        ("{a: b}", "value-in-wrong-form", "one value"),
    ],
)
def test_what_is_not_said_is_asked_with_the_line_to_type(typed: str, rule: str, change: str) -> None:
    result = read(squad(typed))
    assert [finding.rule for finding in result.findings] == [rule]
    assert change in result.findings[0].change
    assert result.findings[0].place.line == 7


def test_a_max_without_a_unit_anywhere_is_asked() -> None:
    result = read(squad("55 tested 2026-12-14", ""))
    assert [finding.rule for finding in result.findings] == ["load-without-unit"]
    assert '"55 kg"' in result.findings[0].change


def test_a_max_that_was_asked_about_stays_on_file_as_unread() -> None:
    result = read(squad("55 kg"))
    assert result.week is not None
    assert result.week.squad is not None
    assert result.week.squad.athletes[0].maxes[0].unread


loads = st.integers(min_value=1, max_value=400).map(lambda halves: halves / 2)
days = st.dates(min_value=dt.date(2000, 1, 1), max_value=dt.date(2099, 12, 31))


@settings(max_examples=60, deadline=None)
@given(loads, st.sampled_from(["kg", "lb"]), st.integers(min_value=1, max_value=30), days)
def test_any_load_and_day_is_read_as_typed(load: float, unit: str, reps: int, day: dt.date) -> None:
    tested = one(f"{load:g} {unit} tested {day}")
    lifted = one(f"from {load:g} {unit} x {reps} on {day}")
    assert [(best.on, best.load and best.load.low, best.reps) for best in (*tested.bests, *lifted.bests)] == [
        (day, load, None),
        (day, load, reps),
    ]


@settings(max_examples=60, deadline=None)
@given(st.text(alphabet="0123456789 kglbxtesdfromainypw%,-+.#×", max_size=40))
def test_any_text_is_read_or_asked_about(typed: str) -> None:
    result = read(squad(typed))
    assert result.week is not None
    maxes = result.week.squad.athletes[0].maxes if result.week.squad else ()
    for best in maxes:
        assert best.bests or best.none_yet or result.findings
        assert not best.unread or result.findings


TWO_KINDS = "55 kg tested 2026-12-14, training max 90%"


def plan(best: str, line: str, top: str = "", keys: str = "") -> str:
    text = squad(best).replace("plan: A\n", f"plan: A\n{top}")
    return text.replace("flat barbell bench press: 3 x 5\n", f"flat barbell bench press: {line}\n{keys}")


def questions(text: str) -> list[str]:
    return [finding.message for finding in read(text).findings]


def test_a_percent_is_asked_about_when_several_kinds_are_on_file() -> None:
    assert questions(plan(TWO_KINDS, "3 x 5 at 75%")) == [
        "flat barbell bench press at 75%: Ann has tested max and training max on file; of which?"
    ]
    (finding,) = read(plan(TWO_KINDS, "3 x 5 at 75%, then 1 x 5 at 65%")).findings
    assert '"75% of tested max" or "75% of training max"' in finding.change
    assert "`percent of: tested max`" in finding.change


@pytest.mark.parametrize(
    "text",
    [
        plan("55 kg tested 2026-12-14", "3 x 5 at 75%"),
        plan(TWO_KINDS, "3 x 5 at 75%", top="percent of: tested max\n"),
        plan(TWO_KINDS, "3 x 5 at 75% of training max"),
        plan(TWO_KINDS, "3 x 5 at 40 kg"),
        plan(TWO_KINDS, "1 x 5 at 50 kg, then 3 x 5 at 90% of top set"),
        plan(TWO_KINDS, "3 x 5 at 75%", keys="    not for: [Ann]\n"),
    ],
)
def test_a_percent_of_one_meaning_is_not_asked(text: str) -> None:
    assert questions(text) == []


def test_the_max_of_another_movement_is_asked_about_too_and_lines_are_listed() -> None:
    text = plan(TWO_KINDS, "3 x 5 at 75%").rstrip("\n")
    other = f"{text}\n  - push press: 3 x 5 at 60% of bench press\n"
    (finding,) = read(other).findings
    assert [(seen.text, seen.line) for seen in finding.seen] == [("push press at 60%", 10)]


def test_a_movement_nobody_knows_behind_of_is_told() -> None:
    text = plan("55 kg tested 2026-12-14", "3 x 5 at 70% of barbel bak squat")
    (finding,) = read(text).findings
    assert finding.rule == "unknown-movement"
    assert "barbell back squat" in finding.change


def test_who_does_a_line_follows_from_names_and_groups() -> None:
    text = squad("none yet").replace(
        "    - name: Ann\n", "    - name: Bo\n    - name: Cy\n      participation: out\n    - name: Ann\n"
    )
    grouped = text.replace("  athletes:", "  groups:\n    girls: [Ann]\n  athletes:").replace(
        "  - flat barbell bench press: 3 x 5\n",
        "  - dip: 3 x 5\n    for: [girls]\n  - dip: 3 x 5\n    not for: [Ann]\n"
        "  - superset:\n      - dip: 3 x 5\n      - push-up: 3 x 5\n        for: [Bo]\n    not for: [Bo]\n"
        "  - dip: 3 x 5\n",
    )
    week = read(grouped).week
    assert week is not None
    doing = [[athlete.name for athlete in done.athletes] for done in lines_done(week.sessions[0], week)]
    assert doing == [["Ann"], ["Bo"], ["Ann"], [], ["Bo", "Ann"]]
    nobody = week.model_copy(update={"squad": None})
    assert all(done.athletes == () for done in lines_done(nobody.sessions[0], nobody))


@pytest.mark.parametrize(
    ("typed", "write"),
    [
        ("60 kg x 5", "`from 60 kg x 5 on 2026-12-14`"),
        ("60x5", "`from 60x5 on 2026-12-14`"),
        ("62,5 kg x 3 on 2027-01-04", "`from 62,5 kg x 3 on 2027-01-04`"),
    ],
)
def test_several_repetitions_typed_alone_are_given_back_as_a_set_with_its_day(typed: str, write: str) -> None:
    squad = f"squad:\n  athletes:\n    - name: Ann\n      maxes:\n        dip: {typed}\n"
    (finding,) = read(f"plan: A\nunit: kg\n{squad}work:\n  - dip: 3 x 8 at 2 RIR\n").findings
    assert write in finding.change
    assert not read(
        f"plan: A\nunit: kg\n{squad}work:\n  - dip: 3 x 8 at 2 RIR\n".replace(typed, write.strip("`"))
    ).findings
