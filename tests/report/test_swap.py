"""The screen of swap: in 80 columns, from what is open to what it costs, every state said."""

from setwright.report.swap import INSIDE, SHOW, swap_text
from setwright.report.wrapping import WIDTH
from setwright.rules import line_never_followed, no_heavy_lift_for_part, push_without_pull, sets_over_range
from tests.rules.plans import example
from tests.swapping.plans import FLAWED, GOOD, proposed, screen


def test_the_flawed_week_from_what_is_open_to_what_it_costs() -> None:
    text = swap_text(proposed(FLAWED, crew=True))
    order = (
        "2 open gaps", INSIDE, "1 change", "Thursday: straight after incline 30 dumbbell bench press",
        "in the place of line 33, type", "  |           - level cable crossover: 3 x 12",
        "Thursday: 40 min before, 44",
        "Lost: nothing.", "Stays open: nothing.", "Tried ", "Before\n", "After\n", SHOW,
    )  # fmt: skip
    found = [text.index(part) for part in order]
    assert found == sorted(found)
    assert all(len(line) <= WIDTH for line in text.splitlines() if not line.startswith("  |"))


def test_the_matrix_after_is_that_of_the_check_of_the_changed_plan() -> None:
    text = swap_text(proposed(FLAWED, crew=True))
    assert "flat bench press [1]" in text.split("After\n", maxsplit=1)[0]
    assert "[1]" not in text.split("After\n", maxsplit=1)[1]


def test_a_plan_without_a_gap() -> None:
    assert example("week-good.yaml").findings == ()
    assert swap_text(proposed(GOOD, crew=True)) == (
        "Autumn block, week 3: no gap is open that a movement closes; there is nothing to\nchange\n"
    )
    assert INSIDE not in screen(no_heavy_lift_for_part.GOOD)


def test_what_is_lost_by_a_replacement_is_said() -> None:
    text = screen(push_without_pull.BAD.replace("    work:", "    minutes: 17\n    work:"))
    assert "in the place of" in text
    assert "Lost: nothing." not in text


def test_gaps_that_no_movement_closes_are_named() -> None:
    text = sets_over_range.BAD.replace("unit: kg", "unit: kg\naim: size")
    text += "      - machine row: 4 x 10 at 2 RIR\n"
    assert "Not for a swap, see `setwright check`: sets-over-range." in screen(text)


def test_a_search_that_stopped_says_where() -> None:
    proposal = proposed(push_without_pull.BAD)
    found = proposal.found
    stopped = proposal._replace(found=found._replace(best=None, tried=1, stopped_at=2))
    said = " ".join(swap_text(stopped).split())
    assert "Tried 1 set of changes and stopped there, with sets of 2 tried in part: one" in said
    assert "and stopped there, with sets of 3 tried in part" in " ".join(
        swap_text(proposal._replace(found=found._replace(stopped_at=3))).split()
    )


def test_a_set_that_is_proven_says_so() -> None:
    said = " ".join(screen(line_never_followed.BAD.replace("unit: kg", "unit: kg\nfocus: [chest]")).split())
    assert "2 changes" in said
    assert "sets of changes: no set of fewer than 2 closes as much." in said
