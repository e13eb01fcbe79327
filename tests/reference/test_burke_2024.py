"""The time that supersets save, against a published comparison: on the clock of a session and on the floor.

Burke R et al. Less time, same gains: superset vs traditional set training. SportRxiv preprint 2024,
doi 10.51224/SRXIV.419, read as an abstract: six movements of four sets of 8 to 12 RM with two minutes of
rest took 36 % less time when they were done in pairs.
"""

import pytest

from tests.floor.rooms import floor_of, plan
from tests.rules.plans import HEAD, checked

PUBLISHED = 0.36
TOLERANCE = 0.02
"""The study's seconds of a repetition, of setting up and of changing over are not in the abstract."""

MOVES = ("leg press", "leg curl", "machine chest press", "machine row", "wide-grip pulldown", "barbell curl")
DOSE = "4 x 8-12 to failure"
PAIRS = tuple(zip(MOVES[::2], MOVES[1::2], strict=True))

ONE_OF_EACH = (
    "  bars:\n    20 kg: 1\n  stations:\n    leg press: 1\n    leg curl machine: 1\n"
    "    chest press machine: 1\n    row machine: 1\n    pulldown station: 1\n"
)


def minutes(work: str) -> float:
    coverage = checked(f"{HEAD}work:\n{work}").coverage
    assert coverage is not None
    return coverage.sessions[0].minutes


def test_pairs_save_the_published_share_of_the_session() -> None:
    straight = "".join(f"  - {move}: {DOSE}, rest 2:00\n" for move in MOVES)
    paired = "".join(
        f"  - superset:\n      - {one}: {DOSE}\n      - {other}: {DOSE}\n    rest: 2:00\n"
        for one, other in PAIRS
    )
    assert 1 - minutes(paired) / minutes(straight) == pytest.approx(PUBLISHED, abs=TOLERANCE)


def on_the_floor(*work: str) -> float:
    """Seconds until one person is through, in a room with one of each machine."""
    return floor_of(plan(*work, top="people: 1\n", gym=ONE_OF_EACH)).finish_s


@pytest.mark.parametrize("pairs", [*((pair,) for pair in PAIRS), PAIRS])
def test_and_so_they_do_on_the_floor_one_pair_or_all(pairs: tuple[tuple[str, str], ...]) -> None:
    in_a_row = [f"{move}: {DOSE}, rest 2:00" for pair in pairs for move in pair]
    alternated = [
        f"superset:\n          - {one}: {DOSE}\n          - {other}: {DOSE}\n        rest: 2:00"
        for one, other in pairs
    ]
    saved = 1 - on_the_floor(*alternated) / on_the_floor(*in_a_row)
    assert saved == pytest.approx(PUBLISHED, abs=TOLERANCE)
