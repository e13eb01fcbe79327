"""Published rules for the load of the next session, in the words of ``next`` and on their own figures.

DAPRE, the table of adjustments of K. L. Knight (1979), second hand, in two accounts that agree on it: Millar
AL, Action Plan for Arthritis, Human Kinetics (chapter 4, as printed on healthline.com), and "Practical Guide
to Hip and Knee Strengthening", physio-pedia.com (column "next session"). Where a row is a range of pounds its
ends are tried one by one. Both read the repetitions of the set with the full load; a plan whose line ends
with that set says the same.

Effort: J Hum Kinet 2024;91:87-103, doi 10.5114/jhk/185637, table 1D (read on PMC11057620): for a target of
RPE 8 the load of accessory lifts changes by +5 kg at RPE 6, +2.5 kg at 7, 0 at 8, -2.5 kg at 9, -5 kg at 10.
That is 2.5 kg a point; at 62.5 kg it is the 2 % for half a point of the plan language.
"""

import pytest

from tests.records.test_progress import after, new

KILOGRAMS = 62.5
"""At this load 2.5 kg are 4 %, two half points of 2 %."""
POUNDS = 100


@pytest.mark.parametrize(
    ("reps", "steps"),
    [
        (0, (-5, -10)), (2, (-5, -10)), (3, (0,)), (4, (0,)), (5, (5, 10)), (6, (5, 10)), (7, (5, 15)),
        (10, (5, 15)), (11, (10, 20)), (15, (10, 20)),
    ],
)  # fmt: skip
@pytest.mark.parametrize("end", [0, -1])
def test_the_adjustments_of_daily_adjustable_progressive_resistance(
    reps: int, steps: tuple[int, ...], end: int
) -> None:
    off, small, more, most = ((5, 5, 5, 10), (10, 10, 15, 20))[end]
    rows = (
        ("2 or fewer", f"take off {off} lb"),
        ("3-4", "repeat"),
        ("5-6", f"add {small} lb"),
        ("7-10", f"add {more} lb"),
        ("11 or more", f"add {most} lb"),
    )
    rule = "".join(f"\n          - {reached}: {then}" for reached, then in rows)
    change = after(f"{POUNDS} lb x {reps}", f"goblet squat: 1 x max at {POUNDS} lb", rule)
    assert new(change) == f"{POUNDS + steps[end]} lb"


@pytest.mark.parametrize(("rpe", "more"), [(6, 5), (7, 2.5), (8, 0), (9, -2.5), (10, -5)])
def test_the_load_by_effort_at_a_target_of_8(rpe: int, more: float) -> None:
    line = f"goblet squat: 1 x 8 at {KILOGRAMS} kg, RPE 8"
    change = after(f"{KILOGRAMS} kg x 8 at RPE {rpe}", line, "2% for each half point of effort")
    assert new(change) == f"{KILOGRAMS + more:g} kg"
