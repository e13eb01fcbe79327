"""`read` says every line back in plain words, and what holds where nothing was written."""

from pathlib import Path

import pytest

from setwright.report.read import read_text
from tests.model.test_people_and_room import GYM, SQUAD
from tests.model.test_reader import FULL
from tests.reading.plans import read


def said(text: str) -> str:
    """The text on one line, so that wrapping does not matter."""
    return " ".join(read_text(read(text, {"squad.yaml": SQUAD, "gym.yaml": GYM})).split())


def test_every_line_of_a_full_plan_is_said_back() -> None:
    text = said(FULL)
    for words in (
        "Autumn block, week 3: what holds for the whole plan",
        "aim: size", "sport: rowing", "level: beginner", "focus: chest, back", "loads without a unit: lb",
        "percent of: training max", "sides: each", "starts: 2027-10-18", "sets a week, chest: 8-12",
        "last week, push-up: 300 reps", "people: 28", "ages: 12-13", "staff: 2", "follows: week-2.yaml",
        "next time, where a line does not say: 12 or more: add 5 lb; otherwise: repeat", "a missed day: skip",
        "if interrupted: finish the station",
        "allowed: push-without-pull, because pull day is with the rowing coach",
        "note: a note that runs on", "private note, never printed: nobody's business",
        "Thursday, 2027-10-21, Press day, 45 minutes, starts 06:45, at hall, after rowing",
        "2 days to the match",
        "warm-up, never counted: rope skipping: 3 minutes", "our own drill",
        "1. flat barbell bench press: 5 sets of 5 with 80 % of the training max",
        "2 minutes 30 seconds between sets", "warm-up: 8 with the empty bar",
        "next time: add 5 lb every week; first to keep; only for Ann, light; not for Bo, Cy",
        "stop: bar slows down; kit: belt; allowed: one-side-only, because on purpose; note: tight",
        "private note, never printed: shoulder",
        "2. push-up: 3 sets of as many as possible",
        'typed "dip"', "cool-down: walk", "cool-down: stretch", "if interrupted: go on",
    ):  # fmt: skip
        assert words in text


def test_what_was_not_written_is_said_too() -> None:
    text = said("plan: A\nwork:\n  - paused push-up: 3 x 12\n")
    for words in (
        "aim: none written, so general", "loads without a unit: none written, so asked",
        "dose order: none written", "sides: none written", "next time: not written",
        "squad: none", "gym: none", '"paused" names no other movement',
    ):  # fmt: skip
        assert words in text
    assert "The session" in text


def test_people_and_room_are_said_back() -> None:
    text = said("plan: A\nsquad: squad.yaml\ngym: gym.yaml\nwork:\n  - dip: 3 x 8\n")
    for words in (
        "Squad: Ostrel",
        "Tove: intermediate; modified; flat barbell bench press: 52.5 kg, tested on 2026-12-14, training",
        "max 90 % of it", "left arm behind at most 0 degrees until 2027-02-15",
        "load at most 20 kg until cleared",
        "no overhead, no hanging, avoids dip, avoids push-up until cleared", "avoids dip",
        "Gym: Hall", "racks: 2", "bars: 2 of 20 kg, 1 of 45 lb",
        "plates in the room, for all racks together: 2 pairs of 2.5 kg",
        "dumbbells: 1 pair of 4 to 32 kg in steps of 2", "kettlebells: none",
        "cables: 1 x twin tower, two stacks by its name, stack not written, pulley not written",
        "2 x tower, pulley from the floor to 2.1 m, stack 5 to 90 kg in steps of 5, the handle pulls the pin",
        "the pin divided by 2", "bands: 4 x Red 60 N at 2 m; green 110 N at 2 m; blue of unknown pull",
        "stations: 1 x dip bars", "spotter: none",
    ):  # fmt: skip
        assert words in text


def test_groups_say_how_they_run() -> None:
    text = said(
        "plan: A\nsquad:\n  athletes: []\ngym: {bars: {20 kg: 1}}\nwork:\n"
        "  - circuit:\n      - push-up\n      - dip: 8\n        load: bodyweight + 5 kg\n"
        "    each: 40 s\n    rounds: 3\n"
        "    between moves: 20 s\n    rest: 2:00\n    next: repeat\n    priority: 3\n"
        "  - circuit:\n      - push-up: rung\n    ladder: 1 to 5 to 1\n    every: 60 s\n"
        "  - circuit:\n      - push-up: 10\n    time: 12:00\n"
        "  - circuit:\n      - push-up: 10\n    rounds: 5\n    cap: 15:00\n"
        "  - complex:\n      - power clean: 3\n    rounds: 2\n    load: 40 kg\n"
    )
    for words in (
        "Squad: no name", "Gym: no name", "racks: not written",
        "1. circuit: 3 rounds; 40 seconds each move; 2 minutes after each round",
        "20 seconds between moves; next time: repeat; first to drop",
        "1a push-up: as long as the circuit says", "a ladder of 1 to 5 and back to 1",
        "a round starts every", "as many rounds as fit into 12 minutes", "stopped at 15 minutes",
        "complex: 2 rounds; all with 40 kg; rest after a round not written; straight on between moves",
        "5a power clean: 3",
    ):  # fmt: skip
        assert words in text


def test_a_dose_without_its_name_for_time_says_what_stands_underneath() -> None:
    text = said(
        "plan: A\nwork:\n  - circuit:\n      - push-up:\n        rest: 30 s\n        load: bodyweight\n"
        "        warm-up: 2 sets\n    each: 40 s\n"
    )
    assert (
        "as long as the circuit says; with bodyweight; 30 seconds between sets; 2 warm-up sets first" in text
    )


def test_long_groups_have_numbers_behind_z() -> None:
    members = "".join("      - push-up\n" for _ in range(27))
    assert "1-27 push-up" in said(f"plan: A\nwork:\n  - circuit:\n{members}    each: 40 s\n")


def test_faults_follow_what_was_read() -> None:
    text = said("plan: A\nwork:\n\t- dip: 3 x\n\t- push-up: 3 x 8\n")
    assert "no dose that could be read" in text
    assert (
        "Could not be read as written week.yaml, line 3: a tab instead of blanks (and on 1 more lines)"
        in text
    )
    assert "line 4: write" in text
    assert text.endswith("(setwright explain reps-missing)")


def test_advice_follows_under_its_own_head() -> None:
    assert "Also week.yaml, line 3" in said("plan: A\nwork:\n  - dip: 3\u00a0x 8\n")


def test_a_file_that_is_no_plan() -> None:
    assert read_text(read("")).startswith("Could not be read as written\n  week.yaml, line 1: ")


def test_lines_keep_to_80_columns() -> None:
    text = Path(__file__).parents[2] / "examples" / "skerrow-bay" / "week-good.yaml"
    for line in read_text(read(text.read_text(encoding="utf-8"))).splitlines():
        assert len(line) <= 80


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ("55 kg tested 2026-12-14", "55 kg, tested on 2026-12-14"),
        ("9 reps tested 2026-12-14", "9 repetitions, tested on 2026-12-14"),
        ("1 rep tested 2026-12-14", "1 repetition, tested on 2026-12-14"),
        ("none yet", "none yet"),
        ("from 50 kg x 5 on 2026-12-14", "50 kg lifted 5 times on 2026-12-14 (max 56.2 to 59.5 kg)"),
        ("from 50 kg x 1 on 2026-12-14", "50 kg lifted once on 2026-12-14"),
        (
            "from 50 kg x 15 on 2026-12-14",
            "50 kg lifted 15 times on 2026-12-14 (too often to estimate a max from)",
        ),
        ("from bodyweight + 10 kg x 5 on 2026-12-14", "bodyweight + 10 kg lifted 5 times on 2026-12-14"),
        ("55 kg tested 2026-12-14, training max 50 kg", "55 kg, tested on 2026-12-14, training max 50 kg"),
        ("about 55", "about 55"),
    ],
)
def test_maxes_are_said_back(typed: str, words: str) -> None:
    people = f"squad:\n  athletes:\n    - name: Ann\n      maxes:\n        pull-up: {typed}\n"
    assert f"Ann: pull-up: {words} " in said(f"plan: A\n{people}work:\n  - dip: 3 x 8\n")


def test_a_day_like_another_one_says_what_is_different() -> None:
    monday = "  - day: Monday\n    minutes: 40\n    work:\n      - dip: 3 x 8\n      - push-up: 3 x 9\n"
    below = (
        "    leave out: [dip]\n    swap:\n      push-up: pull-up\n    change:\n      - pull-up: 3 x 5\n"
        "    add:\n      - superset:\n          - push press: 3 x 5\n          - face pull: 3 x 9\n"
        "      - dip: 1 x 8\n"
    )
    text = said(f"plan: A\nsessions:\n{monday}  - day: Friday\n    like: Monday\n{below}")
    assert (
        "like Monday, a copy of its own: dip left out, pull-up in place of push-up, a new dose of pull-up, "
        "a superset of push press and face pull added, dip added; minutes from there"
    ) in text
    assert "Friday, 40 minutes" in text
    assert "1. pull-up: 3 sets of 5" in text


def test_what_is_done_instead_and_loads_by_athlete_are_said_back() -> None:
    squad = "squad:\n  athletes:\n    - name: Ann\n    - name: Pell\n"
    line = "  - goblet squat: 3 x 8 at 16 kg\n    load:\n      Ann: 8, 10, 12 kg\n      Pell: none\n"
    instead = "    instead:\n      Ann: dip\n      Pell:\n        - leg press: 3 x 10\n"
    instead += "        - push-up: 1 x 9\n"
    member = "  - circuit:\n      - push-up: 9\n        instead:\n          Ann: pull-up\n    rounds: 3\n"
    text = said(f"plan: A\nunit: kg\n{squad}work:\n{line}{instead}{member}")
    for words in (
        "1. goblet squat: 3 sets of 8 with 16 kg; Ann with 8 kg, with 10 kg, with 12 kg; Pell with no load",
        "no load, on purpose",
        'Ann instead: leaning parallel-bar dip: 3 sets of 8 with 16 kg; typed "dip"',
        "Pell instead: leg press: 3 sets of 10",
        "Pell instead: push-up: 1 set of 9",
        "2a push-up: 9 Ann instead: pull-up: 9",
    ):
        assert words in text
