"""A lifter alone at home: small kilogram plates, and dumbbells stamped in pounds in a plan in kilograms."""

from fractions import Fraction

from setwright.loads.loadable import loadable
from setwright.loads.means_of import LoadedBy
from setwright.model.room import Gym
from tests.loads.rooms import kg
from tests.rules.plans import checked, of, week

HOME = """\
gym:
  unit: kg
  bars:
    20 kg: 1
  plates per rack:
    20 kg: 1 pair
    10 kg: 1 pair
    5 kg: 1 pair
    2.5 kg: 1 pair
    1.25 kg: 1 pair
    0.5 kg: 1 pair
    0.25 kg: 1 pair
  dumbbells:
    25-40 lb by 5: 1 pair
"""


def home() -> Gym:
    one = checked(week("Monday\ndip: 3 x 8", top=HOME)).week
    assert one is not None
    assert one.gym is not None
    return one.gym


def test_a_step_smaller_than_two_and_a_half_kilograms_is_there() -> None:
    """Two plates of 0.25 kg: the load after 62.5 kg is 63 kg."""
    gym = home()
    after = loadable(LoadedBy("bar", stock=gym.bars), gym, kg(62.5) + Fraction(1, 1000)).above
    assert after is not None
    assert after.kg == 63
    assert of(checked(week("Monday\nbench press: 3 x 5 at 63 kg", top=HOME)), "load-not-loadable") == []


def test_thirty_five_in_a_plan_in_kilograms_is_no_dumbbell_of_pounds() -> None:
    one = checked(week("Monday\nincline dumbbell bench press: 3 x 10 at 35", top=HOME))
    (finding,) = [f for f in one.findings if f.rule == "load-not-loadable"]
    assert finding.message == "incline dumbbell bench press at 35 kg: more than anything here"
    assert finding.change.startswith("write `35 lb` if that is stamped on it, else")


def test_pounds_said_as_pounds_are_there() -> None:
    plan = week("Monday\nincline dumbbell bench press: 3 x 10 at 35 lb", top=HOME)
    assert of(checked(plan), "load-not-loadable") == []
