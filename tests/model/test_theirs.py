"""Who does a line, and with which load: names, groups, loads of somebody's own and what is done instead."""

from setwright.model.theirs import Done, lines_done
from tests.reading.plans import read

SQUAD = """\
squad:
  groups:
    light: [Bo, Cy]
  athletes:
    - name: Ann
    - name: Bo
    - name: Cy
    - name: Di
      participation: out
"""


def done(work: str, people: str = SQUAD) -> list[Done]:
    """The lines of the one session of a plan."""
    week = read(f"plan: A\nunit: kg\n{people}work:\n{work}").week
    assert week is not None
    return list(lines_done(week.sessions[0], week))


def told(one: Done) -> tuple[str, list[str], list[float | None]]:
    """Movement, athletes and the loads of the sets."""
    return (
        one.item.name,
        [athlete.name for athlete in one.athletes],
        [load.low for load in one.item.line_loads],
    )


def test_a_load_of_ones_own_takes_the_place_of_the_lines() -> None:
    lines = done(
        "  - goblet squat: 3 x 8 at 16 kg\n    load:\n      light: 12 kg\n      Ann: 16, 18, 20 kg\n"
    )
    assert [told(one) for one in lines] == [
        ("goblet squat", [], [16]),
        ("goblet squat", ["Ann"], [16, 18, 20]),
        ("goblet squat", ["Bo", "Cy"], [12]),
    ]


def test_no_load_on_purpose_is_none_of_the_groups_either() -> None:
    clean = "      - power clean: 3\n        load:\n          Ann: none\n"
    as_written, anns = done(f"  - complex:\n{clean}    rounds: 3\n    load: 40 kg\n")
    assert as_written.group is not None
    assert anns.group is not None
    assert (as_written.group.load is not None, anns.group.load, told(anns)) == (
        True, None, ("power clean", ["Ann"], []),
    )  # fmt: skip


def test_what_is_done_instead_is_done_by_them_alone_with_their_own_load() -> None:
    text = (
        "  - barbell back squat: 3 x 8 at 60 kg\n    load:\n      Bo: 20 kg\n"
        "    instead:\n      Bo: goblet squat\n"
        "      Cy:\n        - leg press: 3 x 10 at 80 kg\n        - push-up: 1 x 9\n"
    )
    assert [told(one) for one in done(text)] == [
        ("barbell back squat", ["Ann"], [60]),
        ("goblet squat", ["Bo"], [20]),
        ("leg press", ["Cy"], [80]),
        ("push-up", ["Cy"], []),
    ]


def test_without_a_squad_lines_are_nobodys() -> None:
    assert [told(one) for one in done("  - goblet squat: 3 x 8 at 16 kg\n", "")] == [
        ("goblet squat", [], [16])
    ]
