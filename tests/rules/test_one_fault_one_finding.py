"""A fault that stands on several days or in several weeks is one finding, with its days and weeks."""

from setwright.findings import Finding, Level
from tests.rules.plans import HEAD, checked

FEW, PULLS = "too-few-stations", "push-without-pull"
CLASS = (
    "people: 24\ngym:\n  benches: 2\n  racks: 2\n  bars:\n    20 kg: 2\n  dumbbells:\n    20 kg: 12 pairs\n"
)
BENCH = "flat dumbbell bench press: 4 x 10 at 3 RIR, rest 60 s"
SQUAT = "back squat: 8 x 15 at 3 RIR, rest 60 s"


def found(rule: str, *days: str, top: str = CLASS) -> list[Finding]:
    """What a rule finds; each day is its keys and then its lines, one a line: "day: Monday\\ndip: 3 x 8"."""
    sessions = ""
    for day in days:
        keys, *lines = day.splitlines()
        work = "".join(f"{line}\n" if line.startswith(" ") else f"      - {line}\n" for line in lines)
        sessions += f"  - {keys}\n    minutes: 30\n    work:\n{work}"
    return [one for one in checked(f"{HEAD}{top}sessions:\n{sessions}").findings if one.rule == rule]


def test_one_kind_of_place_on_three_days_is_told_on_the_first_with_the_others_under_it() -> None:
    (one,) = found(FEW, *(f"day: {day}\n{BENCH}" for day in ("Monday", "Wednesday", "Friday")))
    assert one.where == "Monday"
    assert [also.split(":")[0] for also in one.also] == ["Wednesday", "Friday"]


def test_two_kinds_of_place_are_two_and_a_rack_with_its_bar_is_one() -> None:
    (first, second) = found(FEW, f"day: Monday\n{BENCH}\n{SQUAT}", f"day: Friday\n{SQUAT}\n{BENCH}")
    assert "at the benches" in first.message
    assert "at the benches" in first.also[0]
    assert "at the racks" in second.message
    assert len(first.also) == len(second.also) == 1


def test_the_same_stations_of_a_circuit_on_two_days_are_one() -> None:
    moves = "flat dumbbell bench press: at 2 x 20 kg", "push-up", "chest-supported dumbbell row: at 20 kg"
    circuit = "circuit:\n" + "\n".join(f"          - {move}" for move in moves)
    circuit += "\n        rounds: 4\n        each: 35 s"
    top = CLASS.replace("12 pairs", "1 pair").replace("people: 24", "people: 4")
    (one,) = found(FEW, f"day: Monday\n{circuit}", f"day: Thursday\n{circuit}", top=top)
    assert [also.split(":")[0] for also in one.also] == [
        "Thursday's circuit needs 4 dumbbells of 20 kg at once, 2 there"
    ]


ROTATED = "weeks: 2\ntraining days: [Monday, Wednesday, Friday]\nrotate: [A, B]\n"


def test_in_a_block_whose_days_go_round_it_is_one_in_every_week() -> None:
    days = (f"name: A\n{BENCH}", f"name: B\n{BENCH}")
    (one,) = found(FEW, *days, top=f"{ROTATED}{CLASS}")
    assert one.weeks == (1, 2)
    pushes = ("name: A\npush-up: 4 x 10 at 2 RIR", "name: B\npush-up: 5 x 10 at 2 RIR")
    (one,) = found(PULLS, *pushes, top=ROTATED)
    assert one.weeks == (1, 2)
    assert one.also == ("week 2: 14 hard pushes and no pull at all in the week",)


def test_too_few_pulls_in_some_weeks_and_none_in_another_is_one_at_the_worse_level() -> None:
    lines = "push-up: 9 x 10 at 2 RIR\nbench pull: [3 x 8 at 2 RIR, none, 3 x 8 at 2 RIR]"
    (one,) = found(PULLS, f"day: Monday\n{lines}", top="weeks: 3\n")
    assert (one.level, one.weeks) == (Level.gap, (1, 2, 3))
    assert one.message == "9 hard pushes and no pull at all in the week"
    assert one.also == ("weeks 1 and 3: 9 hard pushes and only 3 hard pulls in the week",)
