"""Rules that count the floor: minutes of a session, people at a rack, sets at a station."""

import pytest

from setwright.findings import Level
from setwright.rules.queues import takes
from tests.rules.plans import checked, example, of, week

OVER, REST, FEW = "session-over-time", "rest-shorter-than-the-floor-allows", "too-few-stations"


def hour(minutes: int, *lines: str) -> str:
    text = week("Monday\n" + "\n".join(lines))
    return text.replace("    work:", f"    minutes: {minutes}\n    work:")


ROWS = "bench pull: 4 x 10 at 2 RIR, rest 2:00"  # 60 s to set up, 4 x 30 s, 3 x 120 s: 9 min
PAIR = "superset:\n          - push-up: 4 x 10\n          - bench pull: 4 x 10\n        rest: 2:00"
# 60 s to set up, 4 x (30 + 10 + 30) s, 3 x 120 s: 11 min 40 s


def test_a_session_clearly_over_its_minutes_says_what_to_leave_out() -> None:
    kept, dropped = "back squat: 4 x 10 at 3 RIR, rest 2:00", f"{ROWS}\n        priority: 3"
    (found,) = (f for f in checked(hour(20, dropped, PAIR, kept)).findings if f.rule == OVER)
    assert found.message == "Monday takes about 30 minutes, 20 are written"
    assert found.change == (
        "leave out bench pull (9 min), back squat (9 min), pair lines as a superset, or write `minutes: 30`"
    )
    assert [seen.text for seen in found.seen] == [
        "bench pull 9 min",
        "push-up with bench pull 12 min",
        "back squat 9 min",
    ]


def test_a_tenth_over_is_within_what_the_clock_can_know() -> None:
    assert not of(checked(hour(9, ROWS)), OVER)
    assert not of(checked(hour(17, ROWS, ROWS)), OVER)
    assert of(checked(hour(16, ROWS, ROWS)), OVER)
    assert not of(checked(week(f"Monday\n{ROWS}\n{ROWS}")), OVER)


def test_one_line_that_is_too_long_by_itself_keeps_its_line() -> None:
    (found,) = (f for f in checked(hour(5, ROWS)).findings if f.rule == OVER)
    assert found.change == "shorten the rests, pair lines as a superset, or write `minutes: 9`"


def test_the_warm_up_is_part_of_the_session() -> None:
    text = hour(20, ROWS).replace("    work:", "    warm-up: 15 min\n    work:")
    (found,) = (f for f in checked(text).findings if f.rule == OVER)
    assert found.seen[0].text == "warm-up 15 min"


def test_who_takes_turns_at_a_rack_takes_longer_than_one_alone() -> None:
    """Alone 60 + 4 x 24 + 3 x 60 s, 6 min; four at a rack 60 + 3 x (4 x 44 - 20) + 24 + 3 x 44 s, 11 min."""
    text = hour(8, SQUAT.format("60 s"))
    assert not of(checked(text), OVER)
    room = (
        RACKS.replace("people: 8", "people: 4")
        .replace("racks: 2", "racks: 1")
        .replace("20 kg: 2", "20 kg: 1")
    )
    (found,) = (f for f in checked(text.replace("sessions:", f"{room}sessions:")).findings if f.rule == OVER)
    assert found.message == "Monday takes about 11 minutes, 8 are written"
    assert found.seen[0].text == "back squat 11 min"


RACKS = "people: 8\ngym:\n  racks: 2\n  people per rack: 4\n  bars:\n    20 kg: 2\n  spotter: yes\n"
SQUAT = "back squat: 4 x 8 at 3 RIR, rest {}"


@pytest.mark.parametrize(
    ("people", "per_rack", "said"),
    [(8, 4, "with 4 at a rack the next turn comes after about 2:10"), (6, 4, "with 3"), (12, 3, "with 3")],
)
def test_so_many_share_a_rack_as_there_are_people_and_as_may(people: int, per_rack: int, said: str) -> None:
    top = RACKS.replace("people: 8", f"people: {people}").replace("rack: 4", f"rack: {per_rack}")
    (message,) = of(checked(week(f"Monday\n{SQUAT.format('45 s')}", top=top)), REST)
    assert said in message


@pytest.mark.parametrize("rest", ["1:45", "2:30", "as needed", "none"])
def test_a_rest_that_is_long_enough_or_has_no_number_is_silent(rest: str) -> None:
    assert not of(checked(week(f"Monday\n{SQUAT.format(rest)}", top=RACKS)), REST)


def test_no_rest_no_rack_no_people_or_a_pair_is_not_judged() -> None:
    lines = [
        "back squat: 4 x 8 at 3 RIR",
        "deadlift: 4 x 8 at 3 RIR, rest 15 s",
        PAIR.replace("push-up", "back squat"),
    ]
    assert not of(checked(week("Monday\n" + "\n".join(lines), top=RACKS)), REST)
    line = f"Monday\n{SQUAT.format('60 s')}"
    assert of(checked(week(line, top=RACKS)), REST)
    assert not of(checked(week(line, top=RACKS.replace("people: 8\n", ""))), REST)
    assert not of(checked(week(line, top=RACKS.replace("  people per rack: 4\n", ""))), REST)
    assert of(checked(week(line, top=RACKS.replace("  racks: 2\n", ""))), REST)
    assert not of(checked(week(line)), REST)


def test_a_rest_underneath_the_line_is_read_too_and_sessions_fold() -> None:
    line = "back squat: 4 x 8 at 3 RIR\n        rest: 60 s"
    days = [f"{day}\n{line}" for day in ("Monday", "Thursday")]
    (found,) = (f for f in checked(week(*days, top=RACKS)).findings if f.rule == REST)
    assert found.also[0].startswith("Thursday's back squat: rest 1:00")


CLASS = "people: 24\ngym:\n  benches: 2\n  dumbbells:\n    4-20 kg by 2: 12 pairs\n"
BENCH = "flat dumbbell bench press: 4 x 10 at 3 RIR, rest 60 s"


def test_two_benches_for_a_class_do_not_fit_a_lesson() -> None:
    """Six groups of four at two benches: each 60 + 3 x (4 x 50 - 20) + 30 + 3 x 50 s, 13 min; 39 in all."""
    text = hour(30, BENCH).replace("sessions:", f"{CLASS}sessions:")
    (found,) = (f for f in checked(text).findings if f.rule == FEW)
    assert found.level is Level.gap
    assert (
        found.message
        == "Monday: everybody's sets take about 39 minutes at the benches (2 there), 30 are written"
    )
    assert not of(checked(text.replace("minutes: 30", "minutes: 40")), FEW)
    assert not of(checked(text.replace("    minutes: 30\n", "")), FEW)
    assert not of(checked(text.replace("  benches: 2\n", "")), FEW)


def test_sets_at_one_kind_of_place_add_up_over_the_lines() -> None:
    top = "people: 12\ngym:\n  cables:\n    - name: tower\n      number: 2\n  stations:\n    row station: 1\n"
    crossing = "level cable crossover: 3 x 12 at 1 RIR"  # a pair: 12 x 3 x 56 s, over one pair 33.6 min
    curls = "triceps pushdown: 3 x 10 at 1 RIR"  # 12 x 3 x 50 s over two 15 min
    text = hour(40, crossing, curls).replace("sessions:", f"{top}sessions:")
    assert of(checked(text), FEW) == [
        "Monday: everybody's sets take about 49 minutes at the cables (2 there), 40 are written"
    ]
    one = hour(5, "close-grip seated cable row: 2 x 10 at 2 RIR").replace("sessions:", f"{top}sessions:")
    assert any("at the row station (1 there)" in message for message in of(checked(one), FEW))


def test_a_circuit_by_the_clock_moves_everybody_on() -> None:
    moves = "          - flat dumbbell bench press\n          - push-up\n"
    lines = f"circuit:\n{moves}        rounds: 9\n        each: 60 s"
    text = hour(20, lines).replace("sessions:", f"{CLASS}sessions:")
    assert not of(checked(text), FEW)


CIRCUIT = """Monday
circuit:
          - flat dumbbell bench press: at 2 x 20 kg
          - push-up
          - chest-supported dumbbell row: at 20 kg
          - front plank
        rounds: 4
        each: 35 s"""
ONE_PAIR = "people: {}\ngym:\n  benches: 2\n  dumbbells:\n    20 kg: 1 pair\n    16 kg: 1 pair\n"


@pytest.mark.parametrize(("people", "said"), [(4, 1), (3, 1), (2, 0), (0, 0)])
def test_a_pair_of_dumbbells_at_two_stations_is_in_use_twice_at_once(people: int, said: int) -> None:
    """Three on four stations that follow each other are at any two of them at some time; two are not."""
    top = ONE_PAIR.format(people) if people else ONE_PAIR.replace("people: {}\n", "")
    found = of(checked(week(CIRCUIT, top=top)), FEW)
    assert len(found) == said
    assert all(
        message.startswith("Monday's circuit needs 4 dumbbells of 20 kg at once, 2 there")
        for message in found
    )


@pytest.mark.parametrize(
    ("old", "new"),
    [("row: at 20 kg", "row: at 16 kg"), ("row: at 20 kg", "row"), ("row: at 20 kg", "row: at 22 kg"),
     ("20 kg: 1 pair", "20 kg: 2 pairs"), ("row: at 20 kg", "row: at 60%")],
)  # fmt: skip
def test_another_load_no_load_or_a_second_pair_is_enough(old: str, new: str) -> None:
    assert not of(checked(week(CIRCUIT, top=ONE_PAIR.format(4)).replace(old, new)), FEW)


def test_one_dumbbell_in_one_hand_leaves_the_other_for_somebody_else() -> None:
    text = week(CIRCUIT.replace("flat dumbbell bench press: at 2 x 20 kg", "goblet squat: at 20 kg"), top="")
    text = text.replace("chest-supported dumbbell row", "one-arm dumbbell row")
    assert not of(checked(text.replace("sessions:", f"{ONE_PAIR.format(4)}sessions:")), FEW)


def test_of_a_squad_those_count_who_do_the_line() -> None:
    squad = "squad:\n  athletes:\n" + "".join(f"    - name: A{n}\n" for n in range(12))
    text = hour(16, BENCH).replace("sessions:", f"{CLASS.replace('people: 24', squad.rstrip())}\nsessions:")
    text = text.replace("\n\n", "\n")
    assert of(checked(text), FEW)
    others = "\n        not for: [A1, A2, A3, A4, A5, A6]"
    assert not of(checked(text.replace("rest 60 s", f"rest 60 s{others}")), FEW)


def test_a_place_that_the_gym_has_none_of_is_another_rules() -> None:
    text = hour(9, "pull-up: 4 x 8 at 2 RIR, rest 60 s").replace("sessions:", f"{CLASS}sessions:")
    assert not of(checked(text), FEW)
    one = checked(text)
    assert one.coverage is not None
    assert one.week is not None
    assert one.week.gym is not None
    assert list(takes(one.week.gym, one.coverage.works[0])) == []


def test_the_example_week_fits_its_room() -> None:
    assert example("week-good.yaml").findings == ()
