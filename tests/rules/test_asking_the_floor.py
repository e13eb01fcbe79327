"""The rules about stations, rests, minutes and spotters say what the timetable of the floor says."""

from collections.abc import Callable
from typing import Never

import pytest

from setwright.floor import room
from setwright.floor.room import Floor, NobodyKnown
from tests.floor.rooms import RACKS, floor_of, plan
from tests.rules.plans import checked, of

SQUAT = "back squat: 4 x 8 at 3 RIR, rest {}"
TO_FAILURE = "flat barbell bench press: 3 x 8 at 60 kg, last set to failure, rest 3:00"
ROOM = RACKS.format(1) + "  benches: 1\n"

TWENTY_FOUR = plan(SQUAT.format("2:30"), top="people: 24\n", gym=ROOM)
SHORT_REST = plan(SQUAT.format("60 s"), top="people: 4\n", gym=ROOM)
EIGHT_MINUTES = plan(SQUAT.format("60 s"), top="people: 4\n", gym=ROOM, minutes="8")
TWO_UNDER_A_BAR = plan(TO_FAILURE, top="people: 2\n", gym=ROOM)


@pytest.mark.parametrize(
    ("rule", "text", "said"),
    [
        ("too-few-stations", TWENTY_FOUR, True),
        ("rest-shorter-than-the-floor-allows", SHORT_REST, True),
        ("session-over-time", EIGHT_MINUTES, True),
        ("failure-without-spotter", TWO_UNDER_A_BAR, False),
    ],
)
def test_each_rule_asks_the_room_and_guesses_nothing_in_its_place(
    rule: str,
    text: str,
    said: bool,  # noqa: FBT001 - what is expected
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    assert bool(of(checked(text), rule)) is said
    monkeypatch.setattr(room, "room", _nobody)
    assert bool(of(checked(text), rule)) is not said


def _nobody(*_: object, **__: object) -> Never:
    raise NobodyKnown


def clock(seconds: float) -> str:
    """To the nearest five seconds."""
    minutes, rest = divmod(5 * round(seconds / 5), 60)
    return f"{minutes}:{rest:02}"


@pytest.mark.parametrize(
    ("rule", "text", "words"),
    [
        ("too-few-stations", TWENTY_FOUR, lambda one: f"about {one.finish_s / 60:.0f} minutes at the "),
        (
            "rest-shorter-than-the-floor-allows",
            SHORT_REST,
            lambda one: f"the next turn comes after about {clock(one.stays[0].rest_s)}",
        ),
        ("session-over-time", EIGHT_MINUTES, lambda one: f"takes about {one.finish_s / 60:.0f} minutes"),
    ],
)
def test_the_numbers_are_those_of_the_timetable(rule: str, text: str, words: Callable[[Floor], str]) -> None:
    (message,) = of(checked(text), rule)
    assert words(floor_of(text)) in message
