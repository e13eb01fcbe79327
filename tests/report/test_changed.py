"""What `check` says of the difference from the plan that a plan follows."""

from setwright.report.terminal import text
from tests.model.blocks import block
from tests.rules.plans import checked, week

MONDAY = "Monday\nflat barbell bench press: 4 x 8 at 2 RIR\nbench pull: 4 x 8 at 2 RIR"
FRIDAY = "Friday\npull-up: 4 x 8 at 2 RIR\ndip: 3 x 8 at 2 RIR"
BEFORE = week(MONDAY, FRIDAY)


def since(*days: str, before: str = BEFORE, top: str = "") -> str:
    now = week(*days, top=f"follows: week-2.yaml\n{top}")
    screen = text(checked(now, {"week-2.yaml": before}.get), colour=False)
    (said,) = (part for part in screen.split("\n\n") if part.startswith("Since"))
    assert len(said.splitlines()) <= 3
    assert all(len(line) <= 80 for line in said.splitlines())
    return " ".join(said.split())


def test_the_same_week_says_that_nothing_changed() -> None:
    assert since(MONDAY, FRIDAY) == "Since week-2.yaml: nothing changed."
    assert since(FRIDAY, MONDAY) == "Since week-2.yaml: nothing changed."


def test_lines_come_first_then_sets_then_doses() -> None:
    monday = MONDAY.replace("press: 4 x 8", "press: 5 x 8").replace("pull: 4 x 8", "pull: 4 x 6")
    friday = FRIDAY.replace("dip: 3 x 8 at 2 RIR", "level cable crossover: 3 x 12 at 1 RIR")
    assert since(monday, friday) == (
        "Since week-2.yaml: + level cable crossover on Friday; - dip on Friday; flat barbell bench press "
        "5 sets, before 4; bench pull 4 x 6 at 2 RIR, before 4 x 8 at 2 RIR."
    )


def test_a_line_that_changes_its_day_is_told_once() -> None:
    moved = since(f"{MONDAY}\ndip: 3 x 8 at 2 RIR", FRIDAY.replace("\ndip: 3 x 8 at 2 RIR", ""))
    assert moved == "Since week-2.yaml: dip from Friday to Monday."


def test_another_name_of_a_movement_or_a_blank_is_no_change() -> None:
    assert since(MONDAY.replace("flat barbell bench press: 4 x 8 at", "bench press: 4  x 8  at"), FRIDAY) == (
        "Since week-2.yaml: nothing changed."
    )


def test_a_movement_twice_in_a_session_is_two_lines() -> None:
    back_off = f"{MONDAY}\nflat barbell bench press: 2 x 12 at 2 RIR"
    assert since(back_off, FRIDAY) == "Since week-2.yaml: + flat barbell bench press on Monday."


def test_what_does_not_fit_three_lines_is_counted() -> None:
    many = [f"{move}: 3 x 10 at 3 RIR" for move in ("leg press", "leg curl", "hip thrust", "goblet squat")]
    said = since("\n".join(["Tuesday", *many]), "\n".join(["Saturday", *many]))
    assert said.endswith("; and 4 more.")
    assert said.startswith("Since week-2.yaml: + leg press on Tuesday; + leg curl on Tuesday;")


def test_loads_by_name_are_told_without_them() -> None:
    def monday(kg: float) -> str:
        return MONDAY.replace("2 RIR", f"2 RIR\n        load:\n          Ann: {kg} kg", 1)

    squad = "squad:\n  athletes:\n    - name: Ann\n"
    said = since(monday(42.5), FRIDAY, before=week(monday(40), FRIDAY, top=squad), top=squad)
    assert said == "Since week-2.yaml: other loads by name: flat barbell bench press."


def test_a_load_underneath_is_part_of_the_dose() -> None:
    now, before = (MONDAY.replace("2 RIR", f"2 RIR\n        load: {kg} kg", 1) for kg in (62.5, 60))
    said = since(now, FRIDAY, before=week(before, FRIDAY))
    assert said == (
        "Since week-2.yaml: flat barbell bench press 4 x 8 at 2 RIR at 62.5 kg, "
        "before 4 x 8 at 2 RIR at 60 kg."
    )


def test_one_change_that_is_too_long_for_three_lines_is_told_whole() -> None:
    long = "flat barbell bench press: sets of " + ", ".join(["8"] * 60) + " at 2 RIR"
    before = week(f"Monday\n{long}")
    now = week("Monday\n" + long.replace("2 RIR", "1 RIR"), top="follows: week-2.yaml\n")
    screen = text(checked(now, {"week-2.yaml": before}.get), colour=False)
    assert "before sets of 8, 8" in " ".join(screen.split())


def test_a_block_is_compared_by_its_first_week_and_without_a_file_nothing_is_said() -> None:
    now = block(2, "- bench pull: [5 x 8 at 2 RIR, 6 x 8 at 2 RIR]", "follows: week-2.yaml\n")
    before = week("Monday\nbench pull: 4 x 8 at 2 RIR")
    screen = text(checked(now, {"week-2.yaml": before}.get), colour=False)
    assert "Since week-2.yaml: bench pull 5 sets, before 4." in screen
    assert "Since" not in text(checked(now), colour=False)


def test_a_line_of_a_circuit_by_the_clock_has_no_dose_to_compare() -> None:
    rounds = (
        "Monday\ncircuit:\n          - push-up\n          - goblet squat\n        rounds: 3\n        each: {}"
    )
    assert since(rounds.format("40 s"), before=week(rounds.format("30 s"))).endswith("nothing changed.")
