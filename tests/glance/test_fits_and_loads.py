"""Minutes, stations and loads at a glance; what is counted here was counted by hand."""

from setwright.glance.stations import scarce
from setwright.model.room import Gym
from tests.glance.plans import of, of_example
from tests.model.blocks import block
from tests.rules.plans import HEAD, checked, example, week

GYM = """\
gym:
  racks: 2
  people per rack: 3
  benches: 2
  bars:
    20 kg: 2
    EZ bar 10 kg: 1
  plates per rack:
    20 kg: 2 pairs
    1.25 kg: 1 pair
  cables:
    - name: tower
      number: 3
      stack: 5-90 kg by 5
  stations:
    dip bars: 1
"""


def gym() -> Gym:
    one = checked(week("Monday\npush-up: 3 x 8 at 2 RIR", top=GYM)).week
    assert one is not None
    assert one.gym is not None
    return one.gym


def session(minutes: str, *lines: str) -> str:
    work = "".join(f"      - {line}\n" for line in lines)
    return f"{HEAD}sessions:\n  - day: Monday\n{minutes}    work:\n{work}"


def test_minutes_of_each_session_and_of_its_blocks() -> None:
    minutes, blocks, _ = of_example("week-good.yaml", "fits")
    assert minutes == "Monday 43 of 70 min, Wednesday 43 of 70 min, Friday 38 of 70 min: it fits."
    assert blocks.startswith("Minutes by block: Monday warm-up 8, 16, 9, 6, 5; Wednesday warm-up 8, 16,")


def test_what_is_over_and_what_has_no_minutes() -> None:
    """3 sets of 8 by 3 s, two rests of 2 min and a minute to set up: 60 + 72 + 240 s."""
    line = "push-up: 3 x 8 at 2 RIR"
    assert of(session("    minutes: 5\n", line), "fits")[0] == "Monday 6 of 5 min: Monday 1 min over."
    assert of(session("", line), "fits")[0] == "Monday 6 min: no minutes are written for Monday."
    assert of(session("    minutes: 6\n", line), "fits")[0] == "Monday 6 of 6 min: it fits."


def test_a_week_off() -> None:
    off = block(2, "- push-up: 3 x 8", "lighter weeks:\n  week 2: no training\n")
    assert of(off, "fits", 2) == ("No training this week.",)


def test_the_sixth_session_is_counted() -> None:
    days = [
        f"{day}\npush-up: 3 x 8 at 2 RIR" for day in ("Monday", "Tuesday", "Wednesday", "Friday", "Sunday")
    ]
    assert of(week(*days), "fits")[1].endswith("Friday 6; and 1 more session.")


def test_a_bench_inside_a_rack_is_the_racks() -> None:
    one = checked(week("Monday\nflat barbell bench press: 3 x 5 at 2 RIR", top=GYM))
    assert one.coverage is not None
    (press,) = one.coverage.works
    assert list(scarce(gym(), press, 6)) == []
    assert list(scarce(gym(), press, 7)) == [("racks", 6)]


def test_stations_against_people_fewest_places_first() -> None:
    lines = (
        "Monday\ndip: 3 x 8 at 2 RIR\nlow-to-high cable crossover: 3 x 12 at 1 RIR\none-arm cable row: 3 x 8"
    )
    told = of(week(lines, top=GYM + "people: 4\n"), "fits")[2]
    assert told == "4 people; at a time fit: dip bars 1 and cables 1."
    alone = of(week(lines, top=GYM + "people: 1\n"), "fits")[2]
    assert alone == "1 person: every station that the gym file counts holds them."


def test_a_session_with_people_of_its_own() -> None:
    plan = week("Monday\ndip: 3 x 8 at 2 RIR", top=GYM + "people: 4\n")
    plan = plan.replace("  - day: Monday\n", "  - day: Monday\n    people: 1\n")
    assert of(plan, "fits")[2].startswith("4 people: every station")


def test_without_people_or_gym_no_station_is_counted() -> None:
    plan = week("Monday\npush-up: 3 x 8 at 2 RIR")
    assert of(plan, "fits")[2] == "Nobody says how many train, so stations are not counted."
    assert of(plan + "people: 4\n", "fits")[2] == "4 people, no gym written, so stations are not counted."


def test_loads_that_are_there() -> None:
    fine, kinds = of_example("week-good.yaml", "loading")
    assert fine == "Every movement has its kit here, and no load in kg or lb is out of reach."
    assert kinds == "Loads: 2 lines in kg or lb and 13 lines without a number."


def test_loads_that_are_not() -> None:
    lines = [
        f"{lift}: 3 x 5 at 61.7 kg" for lift in ("back squat", "front squat", "flat barbell bench press")
    ]
    told = of(week("\n".join(["Monday", *lines, "dip: 3 x 8 at 80%"]), top=GYM), "loading")
    assert [line.split(":")[0] for line in told] == ["Advice", "Advice", "And 1 more", "Loads"]
    assert "back squat at 61.7 kg" in told[0]
    assert told[-1] == "Loads: 3 lines in kg or lb and 1 line as a percent."


def test_without_a_gym_and_without_a_line() -> None:
    plan = week("Monday\npush-up: 3 x")
    assert of(plan, "loading") == (
        "No gym written, so no load is held against what is there.",
        "No line is counted.",
    )


def test_a_week_of_a_block_is_asked_about_itself() -> None:
    assert of_example("block.yaml", "fits", 4)[0] == "Monday 25 of 50 min, Thursday 24 of 50 min: it fits."
    assert example("block.yaml").only(4).across == example("block.yaml").weeks
