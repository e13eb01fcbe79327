"""What a movement is loaded by, from its row and the gym."""

import pytest

from setwright.library.table import library
from setwright.loads.means_of import LoadedBy, means_of
from setwright.model.room import Band, Cable, Stock
from tests.loads.rooms import bar, plates, room

DUMBBELLS = (Stock(low=4, high=32, step=2, unit="kg", pairs=True),)
KETTLEBELLS = (bar(16, number=2),)
EZ, TRAP = (bar(mass).model_copy(update={"name": name}) for mass, name in ((10, "EZ bar"), (25, "trap bar")))
FULL = room(
    bars=(bar(20), EZ, TRAP),
    plates=plates({20: 2}),
    dumbbells=DUMBBELLS,
    kettlebells=KETTLEBELLS,
    cables=(Cable(name="tower", number=2),),
    bands=(Band(name="red"),),
)


@pytest.mark.parametrize(
    ("key", "loaded_by"),
    [
        ("flat-barbell-bench-press", LoadedBy("bar", stock=(bar(20),))),
        ("barbell-curl", LoadedBy("bar", stock=(bar(20), EZ))),
        ("trap-bar-deadlift", LoadedBy("bar", stock=(TRAP,))),
        ("flat-dumbbell-bench-press", LoadedBy("weight", 2, DUMBBELLS)),
        ("one-arm-dumbbell-bench-press", LoadedBy("weight", 1, DUMBBELLS)),
        ("one-arm-dumbbell-row", LoadedBy("weight", 1, DUMBBELLS)),
        ("goblet-squat", LoadedBy("weight", 1, (*DUMBBELLS, *KETTLEBELLS))),
        ("kettlebell-swing", LoadedBy("weight", 1, KETTLEBELLS)),
        ("farmers-walk", LoadedBy("weight", 2, (*DUMBBELLS, *KETTLEBELLS))),
        ("level-cable-crossover", LoadedBy("stack", 2)),
        ("face-pull", LoadedBy("stack")),
        ("t-bar-row", LoadedBy("sleeve")),
        ("band-fly", LoadedBy("band", 2)),
        ("one-arm-band-press-across", LoadedBy("band")),
        ("push-up", LoadedBy("bodyweight")),
        ("front-plank", LoadedBy("bodyweight")),
        ("assisted-pull-up", LoadedBy("other")),
        ("machine-chest-press", LoadedBy("other")),
        ("standing-calf-raise", LoadedBy("other")),
        ("guided-bar-bench-press", LoadedBy("other")),
        ("sled-push", LoadedBy("other")),
    ],
)
def test_each_movement_has_its_means(key: str, loaded_by: LoadedBy) -> None:
    assert means_of(library().movement(key), FULL) == loaded_by


@pytest.mark.parametrize("name", ["curl bar", "EZ bar"])
def test_a_curved_bar_under_either_name_serves_the_elbow_alone(name: str) -> None:
    curved = bar(10).model_copy(update={"name": name})
    gym = room(bars=(bar(20), curved))
    assert means_of(library().movement("barbell-curl"), gym).stock == (bar(20), curved)
    assert means_of(library().movement("bent-over-barbell-row"), gym).stock == (bar(20),)


def test_of_two_implements_the_one_that_is_there() -> None:
    deadlift = library().movement("romanian-deadlift")
    assert means_of(deadlift, FULL).kind == "bar"
    assert means_of(deadlift, room(dumbbells=DUMBBELLS)) == LoadedBy("weight", 2, DUMBBELLS)
    assert means_of(deadlift, room()) == LoadedBy("bar")
    pallof = library().movement("cable-anti-rotation-press")
    assert means_of(pallof, room(bands=(Band(name="red"),))).kind == "band"
    assert means_of(library().movement("t-bar-row"), room()).kind == "sleeve"


def test_every_movement_of_the_library_has_some() -> None:
    kinds = {means_of(library().movement(key), FULL).kind for key in library().keys()}  # noqa: SIM118 - no dict
    assert kinds == {"bar", "sleeve", "weight", "stack", "band", "bodyweight", "other"}
