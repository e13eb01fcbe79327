"""The block across its weeks: tables of at most 80 columns, and what they come to."""

from collections.abc import Iterator

from setwright.checked import Checked
from setwright.coverage import Sets
from setwright.report.across import across_the_weeks, narrow, table
from setwright.report.terminal import text
from tests.model.blocks import block
from tests.rules.plans import checked, example


def across(block: Checked) -> Iterator[str]:
    return across_the_weeks(block)


LONG = block(
    12,
    "- flat barbell bench press: 3 x 5\n  load: [" + ", ".join(f"{60 + 2.5 * n:g}" for n in range(12)) + "]\n"
    "- bench pull: 3 x 8 at 2 RIR",
)


def test_the_example_block() -> None:
    sets, loads, sentences = across(example("block.yaml"))
    head, first, *_ = sets.splitlines()
    assert head == "hard sets, helpers half, week  1-3    4"
    assert first == "chest, clavicular              12.5   7"
    assert loads.splitlines() == [
        "heaviest load written, week  1      2      3      4",
        "goblet squat                 20 kg  22 kg  24 kg  20 kg",
    ]
    assert sentences.splitlines()[0] == (
        "Lighter: week 4 (half the sets), 16 hard sets; 32 in the fullest week."
    )


def test_a_block_is_printed_across_its_weeks_above_the_note() -> None:
    shown = text(example("block.yaml"), colour=False)
    assert shown.index("Week 4 (half the sets)") < shown.index("hard sets, helpers half, week")
    assert shown.index("One week missed: ") < shown.index("Mechanical figures")
    assert "hard sets, helpers half" not in text(example("week-good.yaml"), colour=False)


def test_many_weeks_go_on_in_a_further_table() -> None:
    shown = list(across(checked(LONG)))
    tables = [piece for piece in shown if piece.startswith("heaviest load written, week")]
    heads = " ".join(piece.splitlines()[0].removeprefix("heaviest load written, week") for piece in tables)
    assert len(tables) > 1
    assert heads.split() == [str(week) for week in range(1, 13)]
    lines = [line for piece in shown for line in piece.splitlines()]
    assert max(map(len, lines)) <= 80
    assert all(line.isascii() for line in lines)


def test_a_column_may_end_at_the_edge_and_not_beyond() -> None:
    row = {"x": ("y" * 30, "z" * 30)}
    (fits,) = table("a" * 10, row, [1, 2])
    assert max(map(len, fits.splitlines())) == 80
    assert len(list(table("a" * 11, row, [1, 2]))) == 2


def test_weeks_that_are_alike_share_a_column_only_side_by_side() -> None:
    (one,) = table("sets", {"back": ("3", "3", "4", "3")}, [1, 2, 3, 5])
    assert one == "sets, week  1-2  3  5\nback        3    4  3"


def test_six_loads_are_shown_and_more_are_counted() -> None:
    lifts = ("back squat", "front squat", "bench pull", "Romanian deadlift", "push press", "leg press")
    every = (*lifts, "power clean", "goblet squat")
    plan = block(2, "\n".join(f"- {lift}: 3 x 5 at 50 kg" for lift in every))
    shown = list(across(checked(plan)))
    loads = next(piece for piece in shown if piece.startswith("heaviest"))
    assert len(loads.splitlines()) == 7
    assert "2 more lifts have a load." in shown[-1]


def test_a_block_without_a_load_has_one_table_and_one_week_none() -> None:
    plan = block(2, "- bench pull: 3 x 8 at 2 RIR")
    assert len(list(across(checked(plan)))) == 2
    alone = block(2, "- bench pull: 3 x 8 at 2 RIR", "lighter weeks:\n  week 2: no training\n")
    assert list(across(checked(alone))) == []


def test_counts_for_narrow_columns() -> None:
    assert [narrow(Sets(*ends)) for ends in ((3, 4.5), (0, 0), (6, float("inf")), (0, 2))] == [
        "3-4.5",
        "-",
        "6+",
        "0-2",
    ]
