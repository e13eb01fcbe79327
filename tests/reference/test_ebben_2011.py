"""Loads of push-ups.

Ebben WP et al. 2011. Kinetic analysis of several variations of push-ups. J Strength Cond Res 25:2891-2894,
doi 10.1519/JSC.0b013e31820c8587. Read: abstract for the order (feet raised > floor > hands raised > knees
low); the peak shares of body mass second hand, three pages that agree: 0.64 on the floor, 0.49 on the
knees, 0.70 and 0.74 with the feet at 30 and 61 cm, 0.55 and 0.41 with the hands there. The library's floor
and knee push-ups take another study's still positions (0.69 to 0.75), so the order is the test, at the top
of the push-up.
"""

from setwright.library.table import library


def shares(key: str) -> dict[str, float]:
    found: dict[str, float] = library().movement(key)["body_share"]
    return found


def test_the_higher_the_feet_the_heavier_and_the_higher_the_hands_the_lighter() -> None:
    feet, hands = shares("feet-raised-push-up"), shares("hands-raised-push-up")
    assert feet["feet_60cm"] > feet["feet_30cm"] > shares("push-up")["up"]
    assert hands["hands_60cm"] < hands["hands_30cm"] < shares("push-up")["up"]


def test_knees_are_lighter_than_feet_throughout() -> None:
    floor, knees = shares("push-up"), shares("knee-push-up")
    assert knees["up"] < floor["up"]
    assert knees["down"] < floor["down"]
