"""The kilograms that a line asks of an athlete: each kind of load, in their order, and why there is none.

Sums are worked by hand beside each number. The pound is 0.45359237 kg exactly (NIST Special Publication 811).
"""

from typing import Any

import pytest

from setwright.library.table import library
from setwright.loads.asked_for import Kilograms, NoNumber, load_asked_for
from setwright.loads.ranges import Range
from tests.loads.plans import asked_of, week

BENCH = "flat barbell bench press: {}"
TESTED = "flat barbell bench press: 60 kg tested 2027-01-04"
BOTH = f"{TESTED}, training max 90%"
LIFTED = "flat barbell bench press: from 50 kg x 5 on 2027-01-04"


def kg(line: str, maxes: str = "", **more: Any) -> Kilograms:
    found = asked_of(week(line, maxes=maxes, **more))
    assert isinstance(found, Kilograms), found
    return found


def why(line: str, maxes: str = "", **more: Any) -> NoNumber:
    found = asked_of(week(line, maxes=maxes, **more))
    assert isinstance(found, NoNumber), found
    return found


def near(low: float, high: float) -> Range:
    return Range(pytest.approx(low, abs=5e-4), pytest.approx(high, abs=5e-4))  # type: ignore[arg-type]  # approx compares like a float


@pytest.mark.parametrize(
    ("dose", "maxes", "top", "expected"),
    [
        ("3 x 5 at 45 kg", "", "", (45, 45)),
        ("3 x 5 at 100 lb", "", "", (45.359237, 45.359237)),
        ("3 x 5 at 75%", TESTED, "", (45, 45)),
        ("3 x 5 at 70-75%", TESTED, "", (42, 45)),
        ("3 x 5 at 75%", BOTH, "percent of: training max\n", (40.5, 40.5)),  # 0.75 x 0.90 x 60
        ("3 x 5 at 75% of training max", BOTH, "", (40.5, 40.5)),
        ("3 x 5 at 75%", BOTH, "percent of: tested max\n", (45, 45)),
        # 50 kg x 5: lowest 56.25 (Brzycki, O'Conner), highest 59.505 (Mayhew)
        ("3 x 5 at 80%", LIFTED, "", (45, 47.604)),
        ("3 x 5 at 80% of estimated max", LIFTED, "", (45, 47.604)),
        ("3 x 10 at 10RM", TESTED, "", (45, 45)),  # 75 % by the handbook table
        ("3 x 8 at 8-10RM", TESTED, "", (45, 48)),  # 75 and 80 %
        ("3 x 5 at 60% of bodyweight", "", "", (37.8, 37.8)),
        ("3 x 5 at bodyweight", "", "", (63, 63)),
        ("3 x 5 at bar + 20 kg a side", "", "gym:\n  bars:\n    15 kg: 2\n", (55, 55)),
        ("3 x 5 at bar", "", "gym:\n  bars:\n    45 lb: 2\n", (20.41165665, 20.41165665)),
    ],
)
def test_a_barbell_line(dose: str, maxes: str, top: str, expected: tuple[float, float]) -> None:
    found = kg(BENCH.format(dose), maxes, top=top, athlete="body mass: 63 kg")
    assert found.kg == near(*expected)
    assert (found.way, found.lifted) == ("in all", found.kg)


def test_a_percent_of_another_movement_takes_its_max() -> None:
    found = kg(
        "barbell front squat: 3 x 5 at 70% of back squat", "barbell back squat: 100 kg tested 2027-01-04"
    )
    assert found.kg == near(70, 70)


def test_pounds_stay_pounds_and_kilograms_are_exact() -> None:
    found = kg(BENCH.format("3 x 8 at 65%"), "flat barbell bench press: 95 lb tested 2027-01-04")
    assert found.unit == "lb"
    assert found.kg == near(0.65 * 95 * 0.45359237, 0.65 * 95 * 0.45359237)


@pytest.mark.parametrize(("pick", "expected"), [("low", 42), ("middle", 43.5), ("high", 45)])
def test_the_squad_says_which_end_of_a_range(pick: str, expected: float) -> None:
    found = kg(BENCH.format("3 x 5 at 70-75%"), TESTED, squad=f"  pick in a range: {pick}\n")
    assert found.pick == pytest.approx(expected)


@pytest.mark.parametrize(
    ("line", "way"),
    [
        ("flat dumbbell bench press: 3 x 8 at 16 kg", "in each hand"),
        ("flat barbell bench press: 3 x 8 at 2 x 16 kg", "in each hand"),
        ("one-arm dumbbell row: 3 x 8 at 16 kg", "in all"),
        ("pull-up: 3 x 8 at bodyweight", "added to the body"),
    ],
)
def test_the_way_in_which_it_is_held(line: str, way: str) -> None:
    assert kg(line).way == way


@pytest.mark.parametrize(
    ("line", "added", "lifted"),
    [
        ("pull-up: 3 x 5 at bodyweight", (0, 0), (60.48, 60.48)),  # 0.96 x 63
        ("pull-up: 3 x 5 at +10 kg", (10, 10), (70.48, 70.48)),
        ("pull-up: 3 x 5 at 10 kg", (10, 10), (70.48, 70.48)),
        ("pull-up: 3 x 5 at bodyweight - 20-25 kg", (-25, -20), (35.48, 40.48)),
        ("push-up: 3 x 5 at bodyweight", (0, 0), (43.47, 47.25)),  # 0.69 to 0.75 x 63
        ("pull-up: 3 x 5 at 80%", (5.904, 5.904), (66.384, 66.384)),  # 0.8 x 82.98, less 60.48 of the body
    ],
)
def test_bodyweight_carries_its_published_share(
    line: str, added: tuple[float, float], lifted: tuple[float, float]
) -> None:
    maxes = "pull-up: bodyweight + 22.5 kg tested 2027-01-04" if "%" in line else ""
    found = kg(line, maxes, athlete="body mass: 63 kg")
    assert (found.kg, found.lifted) == (near(*added), near(*lifted))


def test_on_an_assisted_movement_more_help_is_less_load() -> None:
    some, more = (kg(f"assisted pull-up: 3 x 5 at {help_kg} kg") for help_kg in (20, 30))
    assert (some.kg, more.kg) == (near(-20, -20), near(-30, -30))
    assert more.pick < some.pick
    ranged = kg("assisted pull-up: 3 x 5 at bodyweight - 20-25 kg")
    assert (ranged.pick, ranged.lifted) == (-25, None)


def test_a_percent_of_a_range_of_the_body_stays_in_order() -> None:
    found = kg(
        "push-up: 3 x 5 at 60%", "push-up: bodyweight + 10 kg tested 2027-01-04", athlete="body mass: 80 kg"
    )
    assert found.kg == near(-18, -16.08)  # 0.6 x 70 - 60 and 0.6 x 65.2 - 55.2
    assert found.lifted == near(39.12, 42)


@pytest.mark.parametrize(
    ("dose", "expected"),
    [
        ("3 x 5 at last time + 2.5 kg", (62.5, 62.5)),
        ("3 x 5 at last time + 5 lb", (62.268, 62.268)),
        ("3 x 5 at last time - 10%", (54, 54)),
        ("3 x 5 at last week + 2.5-5 kg", (62.5, 65)),
    ],
)
def test_last_time_with_more_or_less(dose: str, expected: tuple[float, float]) -> None:
    found = asked_of(week(BENCH.format(dose)), last_kg=60)
    assert isinstance(found, Kilograms)
    assert found.kg == near(*expected)


@pytest.mark.parametrize(
    ("line", "reason"),
    [
        (BENCH.format("3 x 5"), "no load is written"),
        (BENCH.format("3 x 5 at 2 RIR"), "no load is written"),
        (BENCH.format("3 x 5 at own choice"), "a load in words, no number"),
        (BENCH.format("3 x 5 at 0.5 m/s"), "a speed: the load is found on the day"),
        ("band chest press: 3 x 5 with red band", "a band: its pull depends on the stretch"),
        ("machine chest press: 3 x 5 at pin 7", "a setting of a machine"),
        (BENCH.format("3 x 5 at 90% of top set"), "the top set is found on the day"),
        (
            BENCH.format("3 x 5 at 90% of today's max"),
            "today's max is found on the day",
        ),
        (BENCH.format("3 x 5 at 60% of bodyweight"), "the body mass is not written"),
        (BENCH.format("3 x 5 at bodyweight"), "the body mass is not written"),
        (BENCH.format("3 x 5 at bar"), "the weight of the bar is not known"),
        (BENCH.format("3 x 5 at last time + 5 kg"), "what was lifted last time is not known"),
        (BENCH.format("3 x 20 at 20RM"), "the handbook table ends before 20 repetitions"),
        (
            "flat dumbbell bench press: 3 x 8 at 40% of bench press",
            "a share of flat barbell bench press: in each hand, or in all?",
        ),
    ],
)
def test_no_number_is_made_up(line: str, reason: str) -> None:
    found = why(line)
    assert found.why == reason
    assert found.max is None


def test_of_several_bars_the_first_listed_is_the_bar() -> None:
    gym = "gym:\n  bars:\n    EZ bar 10 kg: 1\n    15 kg: 1\n    20 kg: 2\n"
    assert kg(BENCH.format("3 x 5 at bar"), top=gym).kg == (15, 15)
    assert kg(BENCH.format("3 x 5 at bar + 5-10 lb a side"), top=gym).kg == near(19.5359, 24.0718)


def test_bar_and_plates_are_nothing_to_a_dumbbell() -> None:
    found = why("flat dumbbell bench press: 3 x 5 at bar", top="gym:\n  bars:\n    20 kg: 1\n")
    assert found.why == "the weight of the bar is not known"


def test_what_is_each_athletes_own_is_nobodys() -> None:
    one = week(BENCH.format("3 x 5 at 75%"), maxes=TESTED)
    item = one.sessions[0].items()[0]
    assert load_asked_for(item.line_loads[0], item, None, one, library()) == NoNumber(
        "it is each athlete's own"
    )


@pytest.mark.parametrize(
    ("maxes", "dose", "reason"),
    [
        ("", "75%", "no tested max on file"),
        ("flat barbell bench press: none yet", "75%", "none yet, as the squad file says"),
        (TESTED, "75% of training max", "no training max on file, only the tested max"),
        (TESTED, "75% of estimated max", "no estimated max on file, only the tested max"),
        (
            "flat barbell bench press: 9 reps tested 2027-01-04",
            "75%",
            "it was tested in repetitions, not in kilograms",
        ),
        (
            "flat barbell bench press: 9 reps tested 2027-01-04, training max 90%",
            "75% of training max",
            "it was tested in repetitions, not in kilograms",
        ),
        (
            "flat barbell bench press: from 40 kg x 15 on 2027-01-04",
            "75%",
            "lifted 15 times; a max is estimated from 10 repetitions at most",
        ),
        (
            "flat barbell bench press: bodyweight tested 2027-01-04",
            "75%",
            "the body mass, or the published share of it in this movement, is not known",
        ),
        (
            f"{TESTED}, training max bodyweight",
            "75% of training max",
            "the body mass, or the published share of it in this movement, is not known",
        ),
    ],
)
def test_a_max_that_is_not_there_is_told(maxes: str, dose: str, reason: str) -> None:
    found = why(BENCH.format(f"3 x 5 at {dose}"), maxes)
    assert found.why == f"flat barbell bench press: {reason}"
    assert found.movement == "flat barbell bench press"
    assert found.max is not None
    assert not found.max.unread


@pytest.mark.parametrize("dose", ["75%", "75% of training max"])
def test_a_max_that_was_asked_about_is_not_missing(dose: str) -> None:
    text = "flat barbell bench press: 60 kg, training max 90%"
    found = why(BENCH.format(f"3 x 5 at {dose}"), text, faults=True)
    assert found.max is not None
    assert found.max.unread


def test_a_percent_on_a_movement_whose_share_nobody_published() -> None:
    line = "bench dip: 3 x 5 at 50% of bench press"
    assert why(line, TESTED, athlete="body mass: 63 kg").why.startswith(
        "the body mass, or the published share"
    )


def test_a_movement_behind_of_that_nobody_knows() -> None:
    found = why(BENCH.format("3 x 5 at 75% of barbel bak squat"), TESTED, faults=True)
    assert found.why == "barbel bak squat is no movement of the library"
