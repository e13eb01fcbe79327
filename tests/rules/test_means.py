"""What may be proposed: this gym, and the limits of everyone who trains."""

import pytest

from setwright.library.table import library
from setwright.model.people import Athlete, Limit, Squad
from setwright.model.plan import Week
from setwright.model.room import Band, Cable, Gym, Stock
from setwright.places import Place
from setwright.rules.means import Means, means
from tests.rules.plans import checked, week

PLACE = Place("week.yaml", 1, 1, 1, 5)
BAR = Stock(low=20, high=20, unit="kg")
TRAP_BAR = BAR.model_copy(update={"name": "trap bar"})


def at_hand(gym: Gym | None = None, *athletes: Athlete) -> Means:
    squad = Squad(athletes=athletes) if athletes else None
    return means(Week(name="A week", place=PLACE, sessions=(), gym=gym, squad=squad))


def keys(one: Means) -> set[str]:
    return {movement["key"] for movement in one.movements}


def limited(**fields: object) -> Athlete:
    return Athlete(
        name="Isla",
        place=PLACE,
        limits=(Limit.model_validate({"place": PLACE, "until": "cleared", **fields}),),
    )


def test_without_a_gym_file_the_whole_library_is_there() -> None:
    assert len(keys(at_hand())) == len(library().keys())
    assert at_hand().hardest == "heavy"


@pytest.mark.parametrize(
    ("gym", "there", "not_there"),
    [
        (Gym(place=PLACE, bars=(BAR,)), "flat-barbell-bench-press", "level-cable-crossover"),
        (Gym(place=PLACE, bars=(BAR,), racks=0), "bent-over-barbell-row", "flat-barbell-bench-press"),
        (Gym(place=PLACE, bars=(BAR,), benches=0), "back-squat", "flat-barbell-bench-press"),
        (
            Gym(place=PLACE, cables=(Cable(name="tower"),)),
            "one-arm-cable-fly-across",
            "level-cable-crossover",
        ),
        (Gym(place=PLACE, cables=(Cable(name="tower", number=2),)), "level-cable-crossover", "leg-press"),
        (Gym(place=PLACE, bars=(TRAP_BAR,)), "trap-bar-deadlift", "flat-barbell-bench-press"),
        (Gym(place=PLACE, bands=(Band(name="red"),)), "band-fly", "barbell-curl"),
        (Gym(place=PLACE, bands=(Band(name="red", number=1),)), "one-arm-band-press-across", "band-fly"),
        (Gym(place=PLACE, kettlebells=(BAR,)), "goblet-squat", "dumbbell-curl"),
        (Gym(place=PLACE, dumbbells=(BAR,)), "dumbbell-curl", "kettlebell-swing"),
        (Gym(place=PLACE, stations={"dip bars": 1}), "parallel-bar-dip-leaning", "pull-up"),
        (Gym(place=PLACE), "push-up", "parallel-bar-dip-leaning"),
    ],
)
def test_a_gym_has_what_its_stations_allow(gym: Gym, there: str, not_there: str) -> None:
    found = keys(at_hand(gym))
    assert there in found
    assert not_there not in found


def test_every_station_of_the_library_can_be_named_in_a_gym_file() -> None:
    needs = {need for key in library().keys() for need in library().movement(key)["needs"]}  # noqa: SIM118 - no dict
    everything = at_hand(Gym(place=PLACE, stations=dict.fromkeys(needs, 1)))
    assert len(keys(everything)) == len(library().keys())


def test_heavy_is_the_hardest_class_the_gym_gives() -> None:
    assert at_hand(Gym(place=PLACE, bands=(Band(name="red"),))).hardest == "moderate"
    light = Gym(place=PLACE, dumbbells=(Stock(low=2, high=10, unit="kg"),))
    pounds = Gym(place=PLACE, dumbbells=(Stock(low=5, high=50, unit="lb"),))
    press = library().movement("flat-dumbbell-bench-press")
    assert at_hand(light).load_class(press) == "moderate"
    assert at_hand(pounds).load_class(press) == "heavy"


def test_what_nears_a_limit_is_not_proposed() -> None:
    behind = keys(at_hand(None, limited(angle="arm behind", at_most_deg=10)))
    assert "flat-barbell-bench-press" not in behind
    assert "barbell-floor-press" in behind
    assert "leg-press" in behind
    assert "back-squat" not in behind, "a hand on the bar at an angle that nobody computed"


@pytest.mark.parametrize(
    ("word", "gone", "left"),
    [
        ("overhead", "pull-up", "push-up"),
        ("bar grip", "bent-over-barbell-row", "machine-row"),
        ("chest on a bench", "bench-pull", "one-arm-dumbbell-row"),
        ("hanging", "chin-up", "wide-grip-pulldown"),
        ("hands on the floor", "push-up", "barbell-floor-press"),
        ("jumping", "no such movement", "push-up"),
    ],
)
def test_what_a_limit_bans_is_not_proposed(word: str, gone: str, left: str) -> None:
    found = keys(at_hand(None, limited(no=(word,))))
    assert gone not in found
    assert left in found


def test_what_someone_avoids_is_not_proposed_under_any_name() -> None:
    own = Athlete(name="Tam", place=PLACE, avoid=("bench press",))
    assert keys(at_hand()) - keys(at_hand(None, own)) == {"flat-barbell-bench-press"}
    assert "parallel-bar-dip-leaning" not in keys(at_hand(None, limited(avoid=("dip",))))
    out = own.model_copy(update={"participation": "out"})
    assert "flat-barbell-bench-press" in keys(at_hand(None, out))


FLAT = "Monday\nflat barbell bench press: 5 x 6 at 2 RIR\nbench pull: 4 x 8 at 2 RIR"
GYM = "gym:\n  bars:\n    20 kg: 1\n"
CABLES = "  cables:\n    - name: tower\n      number: 2\n"
BANDS = "  bands:\n    red:\n      pull: 60 N at 2 m\n      number: 2\n"
ACROSS = "one-arm band press across the body"
FLY = "  stations:\n    fly machine: 1\n"


@pytest.mark.parametrize(
    ("room", "proposed"),
    [
        (CABLES, "level cable crossover: 3 x 12 at 1 RIR (same line, 18 cm past; about 6 min)"),
        (BANDS, f"{ACROSS}: 3 x 12 each side at 1 RIR (same line, 18 cm past; about 8 min)"),
        (FLY, "machine fly: 3 x 10 at 2 RIR (to the short end, not across; about 6 min)"),
    ],
)
def test_the_proposal_falls_back_from_cable_to_band_to_machine(room: str, proposed: str) -> None:
    one = checked(week(FLAT, top=f"focus: [chest]\n{GYM}{room}"))
    finished = [f.change for f in one.findings if f.rule == "heavy-line-not-finished"]
    assert finished == [f"straight after flat barbell bench press, without rest, {proposed}"]
