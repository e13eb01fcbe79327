"""Each form of the dose line, said back in plain words and in short: its one meaning."""

import pytest

from setwright.reading.dose import WarmUp
from setwright.reading.habits import Habits
from setwright.reading.say import say_dose, say_warm_up
from setwright.reading.short import dose_short
from tests.reading.dose_lines import KG, read

SAID = [
    (
        "test max reps at bodyweight + 10 kg",
        "test of as many repetitions as possible with bodyweight + 10 kg",
        "test max reps",
    ),
    (
        "test max reps at 10RM",
        "test of as many repetitions as possible with the load for 10 at most (10RM)",
        "test max reps",
    ),
    ("3 x 8, tempo 3 s down", "3 sets of 8; 3 s down", "3 x 8"),
    ("3 x 8, last set at 50 kg", "3 sets of 8; last set: with 50 kg", "3 x 8, last set at 50 kg"),
    ("3x8", "3 sets of 8", "3 x 8"),
    ("4 X 6 at 75%, rest 3:00", "4 sets of 6 with 75 % of the tested max; 3 minutes between sets", "4 x 6"),
    ("3 by 8-10, 2 RIR", "3 sets of 8 to 10, 2 repetitions left", "3 x 8-10, 2 left"),
    ("3×8–10 @75%", "3 sets of 8 to 10 with 75 % of the tested max", "3 x 8-10"),
    ("3x8x60kg", "3 sets of 8 with 60 kg", "3 x 8"),
    ("3 x 10 x 60%", "3 sets of 10 with 60 % of the tested max", "3 x 10"),
    ("12,10,8", "3 sets of 12, 10 and 8", "12, 10, 8"),
    ("sets of 12, 10, 8 at 60, 65, 70 kg", "3 sets of 12, 10 and 8 with 60, 65 and 70 kg", "12, 10, 8"),
    (
        "sets of 7, 5, 3, 7, 5, 3 at 70, 75, 80, 72.5, 77.5, 82.5%",
        "6 sets of 7, 5, 3, 7, 5 and 3 with 70, 75, 80, 72.5, 77.5 and 82.5 % of the tested max",
        "7, 5, 3, 7, 5, 3",
    ),
    ("3 x 8 rising to 80 kg", "3 sets of 8 rising to 80 kg in the last set", "3 x 8"),
    ("3 x 8 at rising to 80%", "3 sets of 8 rising to 80 % of the tested max in the last set", "3 x 8"),
    ("1x5+, cap 8", "1 set of 5 or more, as many as possible; 8 at most", "1 x 5+, cap 8"),
    ("3xmax", "3 sets of as many as possible", "3 x max"),
    ("3xAMRAP", "3 sets of as many as possible", "3 x max"),
    ("3 x max to failure", "3 sets of as many as possible, to failure", "3 x max, to failure"),
    ("3 x failure", "3 sets of as many as possible, to failure", "3 x max, to failure"),
    ("3 x tested max minus 2", "3 sets of 2 fewer than the tested number", "3 x tested max minus 2"),
    ("50 total", "50 repetitions in all, in as many sets as it takes", "50 in all"),
    (
        "50 reps total at 2 RIR",
        "50 repetitions in all, in as many sets as it takes, 2 repetitions left",
        "50 in all, 2 left",
    ),
    ("10 repetitions, 3-5 sets", "3 to 5 sets of 10", "3-5 x 10"),
    ("10 reps x 3 sets", "3 sets of 10", "3 x 10"),
    ("3 sets of 8", "3 sets of 8", "3 x 8"),
    ("3 sets x 8 reps", "3 sets of 8", "3 x 8"),
    ("3x10 ea", "3 sets of 10 on each side", "3 x 10 each side"),
    ("3x10/side", "3 sets of 10 on each side", "3 x 10 each side"),
    ("3 x 10 each arm alternating", "3 sets of 10 on each arm, alternating", "3 x 10 each arm alternating"),
    (
        "3 x 20 in all alternating",
        "3 sets of 20 in all, both sides together, alternating",
        "3 x 20 in all alternating",
    ),
    (
        "3 x 12 left, then 2 x 12 right",
        "3 sets of 12 on the left side, then 2 sets of 12 on the right side",
        "3 x 12 left, then 2 x 12 right",
    ),
    (
        "3 x 10 each side, weaker side first",
        "3 sets of 10 on each side, weaker side first",
        "3 x 10 each side, weaker side first",
    ),
    ("3 x 10, left first", "3 sets of 10 on each side, left first", "3 x 10 each side, left first"),
    ("3 x 10 weaker side", "3 sets of 10 on the weaker side", "3 x 10 weaker side"),
    ("3 x 10, each way", "3 sets of 10 each way", "3 x 10 each way"),
    ("1 x max + 3 assisted", "1 set of as many as possible, then 3 assisted", "1 x max + 3 assisted"),
    ("1 x 6 + 4 neg", "1 set of 6, then 4 lowering only", "1 x 6 + 4 lowering only"),
    ("1 x 6 + 4 lowering only", "1 set of 6, then 4 lowering only", "1 x 6 + 4 lowering only"),
    ("1 x 8 + 3 partials", "1 set of 8, then 3 partials", "1 x 8 + 3 partials"),
    ("3 x 5 at 75% of training max", "3 sets of 5 with 75 % of the training max", "3 x 5"),
    ("3 x 5 75% TM", "3 sets of 5 with 75 % of the training max", "3 x 5"),
    ("3 x 5 at 75% of 1RM", "3 sets of 5 with 75 % of the tested max", "3 x 5"),
    (
        "3 x 5 at 70% of back squat, rest 2:00",
        "3 sets of 5 with 70 % of back squat; 2 minutes between sets",
        "3 x 5",
    ),
    ("3 x 5 at 60% of bodyweight", "3 sets of 5 with 60 % of bodyweight", "3 x 5"),
    ("3 x 5 60% BW", "3 sets of 5 with 60 % of bodyweight", "3 x 5"),
    (
        "work up to 5RM, then 2 x 5 at 90% of top set",
        "work up to the 5RM, then 2 sets of 5 with 90 % of the top set",
        "work up to 5RM, then 2 x 5",
    ),
    (
        "1 x 1 at RPE 8, then 3 x 5 at 75%",
        "1 set of 1, at RPE 8, then 3 sets of 5 with 75 % of the tested max",
        "1 x 1, RPE 8, then 3 x 5",
    ),
    ("test 1RM", "test of the 1RM", "test 1RM"),
    ("test max reps", "test of as many repetitions as possible", "test max reps"),
    ("3 x 5 at 70-75%", "3 sets of 5 with 70 to 75 % of the tested max", "3 x 5"),
    ("3 x 5 RPE 7-8", "3 sets of 5, at RPE 7 to 8", "3 x 5, RPE 7-8"),
    (
        "3 x 5 at 3, 2, 1 RIR",
        "3 sets of 5, 3 repetitions, 2 repetitions and 1 repetition left",
        "3 x 5, 3 left, 2 left, 1 left",
    ),
    (
        "3 x 5 RIR 3, 2, 1",
        "3 sets of 5, 3 repetitions, 2 repetitions and 1 repetition left",
        "3 x 5, 3 left, 2 left, 1 left",
    ),
    ("3 x 5 at RPE 7, 8, 9", "3 sets of 5, at RPE 7, 8 and 9", "3 x 5, RPE 7, RPE 8, RPE 9"),
    ("3 x 5 Borg 13-15", "3 sets of 5, at Borg 13 to 15", "3 x 5, Borg 13-15"),
    ("3 x 5 at 62,5", "3 sets of 5 with 62.5 kg", "3 x 5"),
    ("sets of 12, 10, 8, 62,5 kg", "3 sets of 12, 10 and 8 with 62.5 kg", "12, 10, 8"),
    ("sets of 12,10,8,60 kg", "3 sets of 12, 10 and 8 with 60 kg", "12, 10, 8"),
    ("sets of 12, 10, to failure", "2 sets of 12 and 10, to failure", "12, 10, to failure"),
    ("3 x 5 at 62.5kg", "3 sets of 5 with 62.5 kg", "3 x 5"),
    ("3 x 5 135#", "3 sets of 5 with 135 lb", "3 x 5"),
    ("3 x 8 at 2 x 20 kg", "3 sets of 8 with 20 kg in each hand", "3 x 8"),
    ("3 x 8 at 20 kg each", "3 sets of 8 with 20 kg in each hand", "3 x 8"),
    ("3 x 8 at 20-24 kg each hand", "3 sets of 8 with 20 to 24 kg in each hand", "3 x 8"),
    ("3 x 8 at last time + 5 kg", "3 sets of 8 with last time's load + 5 kg", "3 x 8"),
    ("3 x 8 at last week - 2.5%", "3 sets of 8 with last week's load - 2.5 %", "3 x 8"),
    ("3 x 8 at bar", "3 sets of 8 with the empty bar", "3 x 8"),
    ("3 x 8 at bar + 40 kg a side", "3 sets of 8 with the bar + 40 kg a side", "3 x 8"),
    ("3 x 8 pin 7", "3 sets of 8 at pin 7", "3 x 8"),
    ("3 x 8 at BW", "3 sets of 8 with bodyweight", "3 x 8"),
    ("3 x 8 BW+10", "3 sets of 8 with bodyweight + 10 kg", "3 x 8"),
    ("3 x 8 at bodyweight - 20 kg", "3 sets of 8 with bodyweight - 20 kg", "3 x 8"),
    ("3 x 8 at +10 kg", "3 sets of 8 with bodyweight + 10 kg", "3 x 8"),
    ("3 x 8 with red band", "3 sets of 8 with red band", "3 x 8"),
    ("3 x 8 with 2 red bands to 1.5 m", "3 sets of 8 with 2 red bands stretched to 1.5 m", "3 x 8"),
    ("3 x 8 double green band", "3 sets of 8 with 2 green bands", "3 x 8"),
    ("3 x 15 with band 2", "3 sets of 15 with band 2", "3 x 15"),
    (
        "5 x 3 at 60% + 20 kg chain",
        "5 sets of 3 with 60 % of the tested max and 20 kg of chain at the top",
        "5 x 3",
    ),
    ("5 x 3 at 100 kg + 20 lb chain", "5 sets of 3 with 100 kg and 9.072 kg of chain at the top", "5 x 3"),
    ("3 x 8 light", "3 sets of 8 with a light load, no number", "3 x 8"),
    ("3 x 8 at own choice", "3 sets of 8 with a load of the athlete's own choice", "3 x 8"),
    (
        "3 x 3 at 0.5 m/s, stop at 20% slower",
        "3 sets of 3 at 0.5 m/s; stop at 20% slower",
        "3 x 3, stop at 20% slower",
    ),
    ("3 x 10 at 10RM", "3 sets of 10 with the load for 10 at most (10RM)", "3 x 10"),
    ("2 warm-up sets, then 3 x 8", "3 sets of 8; 2 warm-up sets first", "3 x 8"),
    ("3 x 8, 2 warm-up sets", "3 sets of 8; 2 warm-up sets first", "3 x 8"),
    (
        "3 x 8, tempo 3010",
        "3 sets of 8; 3 s down, no pause at the bottom, 1 s up, no pause at the top",
        "3 x 8",
    ),
    (
        "3 x 8, tempo 3-0-1-0",
        "3 sets of 8; 3 s down, no pause at the bottom, 1 s up, no pause at the top",
        "3 x 8",
    ),
    (
        "3 x 8, tempo 3:0:1:0",
        "3 sets of 8; 3 s down, no pause at the bottom, 1 s up, no pause at the top",
        "3 x 8",
    ),
    (
        "3 x 8, tempo 3/0/1/0",
        "3 sets of 8; 3 s down, no pause at the bottom, 1 s up, no pause at the top",
        "3 x 8",
    ),
    (
        "3 x 8, tempo 31X1",
        "3 sets of 8; 3 s down, 1 s at the bottom, as fast as possible up, 1 s at the top",
        "3 x 8",
    ),
    (
        "3 x 8, 3 s down, pause 2 s at the bottom, fast up",
        "3 sets of 8; 3 s down, 2 s at the bottom, as fast as possible up",
        "3 x 8",
    ),
    ("3 x 8, pause 1 s at the chest", "3 sets of 8; 1 s at the chest", "3 x 8"),
    ("3 x 8, rest 90 s", "3 sets of 8; 90 seconds between sets", "3 x 8"),
    ("3 x 8, rest 2'", "3 sets of 8; 2 minutes between sets", "3 x 8"),
    ('3 x 8, rest 90"', "3 sets of 8; 90 seconds between sets", "3 x 8"),
    ("3 x 8, rest :45", "3 sets of 8; 45 seconds between sets", "3 x 8"),
    ("3 x 8, rest 60-90", "3 sets of 8; 60 to 90 seconds between sets", "3 x 8"),
    ("3 x 8, rest 2-3 min", "3 sets of 8; 2 to 3 minutes between sets", "3 x 8"),
    ("3 x 8, rest 1:30-2:00", "3 sets of 8; 90 to 120 seconds between sets", "3 x 8"),
    ("3 x 8, rest 1 min 30 s", "3 sets of 8; 90 seconds between sets", "3 x 8"),
    ("3 x 8, rest as needed", "3 sets of 8; rest as needed", "3 x 8"),
    ("3 x 8, rest none", "3 sets of 8; no rest between sets", "3 x 8"),
    ("3 x 8, rest when partner is done", "3 sets of 8; rest until the partner is done", "3 x 8"),
    ("3 x 8, 60 s rest", "3 sets of 8; 1 minute between sets", "3 x 8"),
    ("6 x 40 s, rest equal to the work", "6 sets of 40 seconds; rest just as long as the work", "6 x 40 s"),
    ("6 x 40 s, rest half the work", "6 sets of 40 seconds; rest half as long as the work", "6 x 40 s"),
    (
        "4 x 8 min, rest 3 times the work",
        "4 sets of 8 minutes; rest 3 times as long as the work",
        "4 x 8 min",
    ),
    ("4 x 400 m, rest 400 m", "4 sets of 400 m; 400 m easy between sets", "4 x 400 m"),
    ("8 x 250 m, rest 1:30", "8 sets of 250 m; 90 seconds between sets", "8 x 250 m"),
    ("6 x 40 s, rest 20 s", "6 sets of 40 seconds; 20 seconds between sets", "6 x 40 s"),
    (
        "5 x cluster 2 + 2 + 2 at 80%, pause 20 s, rest 3:00",
        (
            "5 sets of 2 + 2 + 2 (cluster) with 80 % of the tested max; 20 seconds between the parts; "
            "3 minutes between sets"
        ),
        "5 x cluster 2 + 2 + 2, pause 20 s",
    ),
    (
        "rest-pause 15 + 5 sets of 3, pause 15 s",
        "1 set of 15 + 3 + 3 + 3 + 3 + 3 (rest-pause); 15 seconds between the parts",
        "rest-pause 15 + 3 + 3 + 3 + 3 + 3, pause 15 s",
    ),
    ("3 x partials 7 + 7 + 7", "3 sets of 7 + 7 + 7 (partial repetitions)", "3 x partials 7 + 7 + 7"),
    (
        "ladder 1 to 10, pause 10 s",
        "a ladder from 1 to 10, 55 in all; 10 seconds between the parts",
        "ladder 1 to 10, pause 10 s",
    ),
    ("5 x ladder 1 to 3", "5 ladders from 1 to 3, 6 in all each", "5 x ladder 1 to 3"),
    ("ladder 1 to 10 to 1", "a ladder from 1 to 10 and back to 1, 100 in all", "ladder 1 to 10 to 1"),
    ("ladder 2 to 20 by 2", "a ladder from 2 to 20 by 2, 110 in all", "ladder 2 to 20 by 2"),
    ("10 x 5 every 1:00", "10 sets of 5; a set starts every minute", "10 x 5, every 1:00"),
    ("10 x 5 every minute", "10 sets of 5; a set starts every minute", "10 x 5, every 1:00"),
    ("6 x 3 every 90 s", "6 sets of 3; a set starts every 90 seconds", "6 x 3, every 1:30"),
    ("3 x 8, last set 5+", "3 sets of 8; last set: 5 or more, as many as possible", "3 x 8, last set 5+"),
    ("3 x 8, last set to failure", "3 sets of 8; last set: to failure", "3 x 8, last set to failure"),
    (
        "3 x 8 at 60 kg, last set max at 50 kg",
        "3 sets of 8 with 60 kg; last set: as many as possible, with 50 kg",
        "3 x 8, last set max",
    ),
    (
        "3 x 8, last set at 50 kg, 2 RIR",
        "3 sets of 8; last set: with 50 kg, 2 repetitions left",
        "3 x 8, last set 2 left",
    ),
    (
        "3 x 10 at 40 kg, last set drop 20% for max, drop 20% for max",
        (
            "3 sets of 10 with 40 kg; last set: at once 20 % less, as many as possible, "
            "at once 20 % less, as many as possible"
        ),
        "3 x 10, last set drop 20% for max, drop 20% for max",
    ),
    (
        "3 x 10 at 40 kg, drop to 30 kg for 8",
        "3 sets of 10 with 40 kg; at once with 30 kg, 8",
        "3 x 10, drop to 30 kg for 8",
    ),
    (
        "3 x 10 at 40 kg, last set drop 20%",
        "3 sets of 10 with 40 kg; last set: at once 20 % less, as many as possible",
        "3 x 10, last set drop 20% for max",
    ),
    ("3 x 30 s hold each side", "3 sets of 30 seconds held on each side", "3 x 30 s hold each side"),
    ("3x:30", "3 sets of 30 seconds", "3 x 30 s"),
    ("3x0:30", "3 sets of 30 seconds", "3 x 30 s"),
    ("4 x 8 s fast", "4 sets of 8 seconds, as many fast repetitions as fit", "4 x 8 s fast"),
    ("2 x 30 m in 24 s", "2 sets of 30 m; in 24 seconds", "2 x 30 m, in 24 s"),
    ("3 x 40 m at 2 x 32 kg", "3 sets of 40 m with 32 kg in each hand", "3 x 40 m"),
    ("3 x 20 steps", "3 sets of 20 steps", "3 x 20 steps"),
    ("3 x 10 contacts", "3 sets of 10 contacts", "3 x 10 contacts"),
    ("3 x 15 cal", "3 sets of 15 cal", "3 x 15 cal"),
    ("30 min", "30 minutes", "30 min"),
    ("16 km", "16 km", "16 km"),
    (
        "2 km, split 2:05.3, rate 20",
        "2 km; 20 strokes a minute; 2 minutes 5.3 seconds for 500 m",
        "2 km, rate 20, split 2:05.3",
    ),
    ("20 steps", "20 steps", "20 steps"),
    ("3 x 20-30 s", "3 sets of 20 to 30 seconds", "3 x 20-30 s"),
    ("1 x 1:45", "1 minute 45 seconds", "1:45"),
    ("sets of 30, 40, 50 s", "3 sets of 30 seconds, 40 seconds and 50 seconds", "30 s, 40 s, 50 s"),
    (
        "sets of 1, 2, 3 min, rest 60 s",
        "3 sets of 1 minute, 2 minutes and 3 minutes; 1 minute between sets",
        "60 s, 2 min, 3 min",
    ),
    ("sets of 8, 8, 5+", "3 sets of 8, 8 and 5 or more, as many as possible", "8, 8, 5+"),
    (
        "3 x 8, then 3 x 6, rest 2:00",
        "3 sets of 8; 2 minutes between sets, then 3 sets of 6; 2 minutes between sets",
        "3 x 8, then 3 x 6",
    ),
    ("3 x 100 yd", "3 sets of 91.44 m", "3 x 91.44 m"),
]


@pytest.mark.parametrize(("typed", "said", "short"), SAID, ids=[row[0] for row in SAID])
def test_a_form_has_one_meaning(typed: str, said: str, short: str) -> None:
    dose = read(typed)
    assert say_dose(dose, KG) == said
    assert dose_short(dose) == short


@pytest.mark.parametrize("row", SAID, ids=[row[0] for row in SAID])
def test_case_and_blanks_change_nothing(row: tuple[str, str, str]) -> None:
    typed, said, _ = row
    loud = typed if "of back squat" in typed or "stop" in typed else typed.upper()
    assert say_dose(read(f"  {loud}\u00a0 "), KG) == said


def test_the_files_percent_is_named() -> None:
    habits = Habits(percent_of="training max")
    assert say_dose(read("4 x 6 at 75%", habits), habits) == "4 sets of 6 with 75 % of the training max"


@pytest.mark.parametrize(
    ("member", "typed", "said"),
    [
        ("ladder", "rung", "the rung's number"),
        ("ladder", "rung x 2", "2 times the rung's number"),
        ("each", "at 2 x 20 kg", "as long as the circuit says with 20 kg in each hand"),
        ("rounds", "40 s", "40 seconds"),
    ],
)
def test_members_are_said(member: str, typed: str, said: str) -> None:
    habits = Habits.model_validate({"member": member})
    assert say_dose(read(typed, habits), habits) == said


def test_no_warm_up_sets_on_purpose() -> None:
    assert say_warm_up(WarmUp(), KG) == "no warm-up sets, on purpose"
