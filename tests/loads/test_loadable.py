"""The load that can be put on: rounding, ties, words, and why there is none."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.loads.loadable import Loadable, Rounding, loadable
from setwright.loads.means_of import LoadedBy
from setwright.loads.put import Put
from setwright.model.room import Gym, Stock
from setwright.reading.measures import Unit
from tests.loads.rooms import KG_PLATES, LB_PLATES, bar, kg, plates, room, typed

HALL = room(
    bars=(bar(20),),
    plates=plates(KG_PLATES),
    dumbbells=(Stock(low=4, high=32, step=2, unit="kg", pairs=True), bar(35, "lb")),
    kettlebells=(bar(16, number=2), bar(24)),
)
SCHOOL = room(
    bars=(bar(45, "lb", 8),),
    plates=plates(LB_PLATES, "lb"),
    dumbbells=(Stock(low=10, high=50, step=5, unit="lb", pairs=True),),
)


def on_the_bar(gym: Gym, asked: Fraction, rounding: Rounding = "nearest") -> Loadable:
    return loadable(LoadedBy("bar", stock=gym.bars), gym, asked, rounding)


def in_hand(asked: Fraction, hands: int = 2, stock: tuple[Stock, ...] = HALL.dumbbells) -> Loadable:
    return loadable(LoadedBy("weight", hands, stock), HALL, asked)


def chosen(one: Loadable, unit: Unit = "kg") -> str:
    assert one.put is not None
    return one.words(one.put, unit)


@pytest.mark.parametrize(
    ("rounding", "words"),
    [
        ("nearest", "72.5 kg: 20 kg bar, 20 + 5 + 1.25 a side (0.5 kg or 0.7 % less)"),
        ("down", "72.5 kg: 20 kg bar, 20 + 5 + 1.25 a side (0.5 kg or 0.7 % less)"),
        ("up", "75 kg: 20 kg bar, 20 + 5 + 2.5 a side (2 kg or 2.7 % more)"),
    ],
)
def test_rounding_is_the_squads(rounding: Rounding, words: str) -> None:
    assert chosen(on_the_bar(HALL, kg(73), rounding)) == words


def test_a_load_that_is_there_is_said_without_a_difference() -> None:
    one = on_the_bar(HALL, kg(60))
    assert chosen(one) == "60 kg: 20 kg bar, 20 a side"
    assert not one.tie
    assert one.fault is None


def test_pounds_are_said_in_pounds() -> None:
    """65 % of 95 lb is 61.75 lb: 60 lb, 2.8 % less (worked by hand)."""
    words = "60 lb: 45 lb bar, 5 + 2.5 a side (1.75 lb or 2.8 % less)"
    assert chosen(on_the_bar(SCHOOL, kg(61.75, "lb")), "lb") == words


def test_the_nearest_of_two_equally_far_is_the_lighter() -> None:
    one = on_the_bar(HALL, kg(73.75))
    assert one.tie
    assert chosen(one).startswith("72.5 kg")
    assert on_the_bar(HALL, kg(73.75), "up").put == one.above


@pytest.mark.parametrize(
    ("one", "fault"),
    [
        (on_the_bar(SCHOOL, kg(39, "lb")), "below the bar"),
        (on_the_bar(HALL, kg(300)), "too heavy"),
        (on_the_bar(room(), kg(60)), "not there"),
        (in_hand(kg(3)), "too light"),
        (in_hand(kg(33)), "too heavy"),
        (in_hand(kg(20), stock=()), "not there"),
    ],
)
def test_what_can_not_be_loaded_has_a_reason_and_no_load(one: Loadable, fault: str) -> None:
    assert one.fault == fault
    assert one.put is None
    assert not one.tie


def test_dumbbells_in_two_hands_need_two() -> None:
    """35 lb are 15.88 kg, and there is one of it."""
    asked = kg(35, "lb")
    one = in_hand(asked)
    assert chosen(one) == "16 kg in each hand (0.12 kg or 0.8 % more)"
    assert one.note == "there is one 35 lb only, and none for the other hand"
    assert chosen(in_hand(asked, hands=1)) == "15.88 kg: 35 lb with one dumbbell"
    assert in_hand(kg(20)).note == ""


def test_kettlebells_are_named() -> None:
    assert chosen(in_hand(kg(24), 1, HALL.kettlebells)) == "24 kg with one kettlebell"
    assert in_hand(kg(24), 2, HALL.kettlebells).fault == "too heavy"


TOWERS = typed("""\
cables:
  - name: tower
    number: 2
    stack: 5-90 kg by 5
    pulley: 2 to 1
  - name: low row
    stack: 10-100 kg by 10, 7.5 kg
    pulley: 1 to 1
  - name: bare""")


@pytest.mark.parametrize(
    ("asked", "stacks", "words"),
    [
        (35, 1, "35 kg: pin 35 kg, 17.5 kg at the handle"),
        (35, 2, "35 kg: pin 35 kg, 17.5 kg at the handle on each side"),
        (7.5, 1, "7.5 kg: pin 7.5 kg"),
        (7.5, 2, "5 kg: pin 5 kg, 2.5 kg at the handle on each side (2.5 kg or 33.3 % less)"),
        (100, 1, "100 kg: pin 100 kg"),
    ],
)
def test_pins_of_a_stack(asked: float, stacks: int, words: str) -> None:
    assert chosen(loadable(LoadedBy("stack", stacks), TOWERS, kg(asked))) == words


def test_two_stacks_need_the_pin_twice() -> None:
    assert loadable(LoadedBy("stack", 2), TOWERS, kg(100)).fault == "too heavy"


def test_plates_on_one_sleeve() -> None:
    assert chosen(loadable(LoadedBy("sleeve"), HALL, kg(30))) == "30 kg: 20 + 10 kg on the sleeve"


def test_a_load_of_no_kilograms_is_no_division_by_zero() -> None:
    nothing = loadable(LoadedBy("sleeve"), HALL, kg(0))
    assert nothing.off_percent(Put(kg(1), "1 kg")) == 0


def test_what_no_gym_file_knows_is_refused() -> None:
    with pytest.raises(ValueError, match="loaded by bodyweight"):
        loadable(LoadedBy("bodyweight"), HALL, kg(10))


ASKED = st.integers(0, 1500).map(lambda tenths: Fraction(tenths, 10))


@settings(max_examples=80, deadline=None)
@given(ASKED, ASKED, st.sampled_from(["nearest", "down", "up"]))
def test_more_asked_is_never_less_put_on_and_rounding_keeps_its_direction(
    first: Fraction, second: Fraction, rounding: Rounding
) -> None:
    for gym in (HALL, SCHOOL):
        light, heavy = (on_the_bar(gym, asked, rounding) for asked in sorted((first, second)))
        if light.put and heavy.put:
            assert light.put.kg <= heavy.put.kg
        for one in (light, heavy):
            if one.put and rounding == "down":
                assert one.put.kg <= one.asked
            if one.put and rounding == "up":
                assert one.put.kg >= one.asked
            for other in filter(None, (one.below, one.above)):
                assert (
                    not one.put
                    or rounding != "nearest"
                    or abs(one.off_percent(one.put)) <= abs(one.off_percent(other))
                )
