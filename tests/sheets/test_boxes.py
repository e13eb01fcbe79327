"""The boxes of a dose and the rows of its warm-up."""

from typing import Any

import pytest

from setwright.reading.dose import Extra, Load, SetWork, Span, WarmUp, WarmUpStep
from setwright.sheets.boxes import MOST_BOXES, boxes, ramps
from setwright.sheets.view import Box, LoadWords, Ramp
from tests.sheets.hand import amount, dose, kg, left, sets, span, straight


def targets(*groups: Any) -> list[str]:
    return [box.target for box in boxes(dose(*groups))]


def test_one_box_a_set_with_its_target() -> None:
    assert boxes(straight(4, 6)) == (Box("6"),) * 4


@pytest.mark.parametrize(("reps", "reserve"), [(2, True), (0, False)])
def test_a_corner_is_cut_off_where_reps_left_are_asked(reps: float, reserve: bool) -> None:  # noqa: FBT001 - a parameter of the table
    assert boxes(straight(1, 6, effort=left(reps))) == (Box("6", reserve),)


def test_sets_of_different_kinds() -> None:
    work = SetWork(amount=amount(8))
    assert targets(sets(3, work, last=SetWork(amount=amount(12)))) == ["8", "8", "12"]
    ladder = sets(2, SetWork(amount=amount(6)), kind="ladder", rungs=(1, 2, 3))
    assert targets(ladder) == ["1", "2", "3", "1", "2", "3"]
    assert targets(sets(1, work, kind="total", sets=Span(low=1, high=None))) == [""] * 4
    cluster = SetWork(amount=amount(6), parts=(span(2), span(2), span(2)))
    assert targets(sets(1, cluster, kind="cluster")) == ["2+2+2"]
    assert targets(sets(1, SetWork(amount=amount(6), extra=Extra(reps=3, kind="assisted")))) == ["6 + 3"]
    listed = [SetWork(amount=amount(reps)) for reps in (12, 10, 8)]
    assert targets(sets(3, *listed, kind="list")) == ["12", "10", "8"]
    assert targets(sets(1, work), sets(2, listed[0])) == ["8", "12", "12"]


def test_a_range_of_sets_gets_a_box_for_each_that_may_be_done() -> None:
    assert len(boxes(dose(sets(0, SetWork(amount=amount(8)), sets=span(3, 4))))) == 4


def test_open_sets_get_as_many_boxes_as_are_certain() -> None:
    assert len(boxes(dose(sets(0, SetWork(amount=amount(8)), sets=Span(low=3, high=None))))) == 3


def test_too_many_sets_are_tallied_in_one_box() -> None:
    assert len(boxes(straight(MOST_BOXES, 5))) == MOST_BOXES
    assert boxes(straight(MOST_BOXES + 1, 5)) == (Box("21 sets"),)


def words(load: Load) -> LoadWords:
    return LoadWords(f"{load.low:g}")


def test_warm_up_sets_are_rows() -> None:
    steps = (
        WarmUpStep(sets=2, amount=amount(10), load=kg(20)),
        WarmUpStep(sets=1, amount=amount(30, unit="s")),
    )
    row = Ramp("warm-up: 10 reps", LoadWords("20"), Box("10"))
    bare = Ramp("warm-up: 30 s", LoadWords(), Box("30 s"))
    assert ramps(WarmUp(steps=steps), [LoadWords("20"), LoadWords()]) == (row, row, bare)


def test_warm_up_sets_left_to_the_athlete_have_a_blank() -> None:
    blank = LoadWords(blank="kg")
    assert ramps(WarmUp(count=2), [blank, blank]) == (Ramp("warm-up set", blank, Box("")),) * 2


def test_no_warm_up_no_rows() -> None:
    assert ramps(None, []) == ramps(WarmUp(), []) == ()
