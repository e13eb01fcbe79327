"""Movements of a coach's own, as typed: like another one, by postures of the arm, or by muscles only."""

from typing import Final, Literal

from setwright.places import Place
from setwright.reading.frozen import Frozen

Vector = tuple[float, float, float]
Side = Literal["in front", "behind", "to the side", "to the other side"]


class Word(Frozen):
    """A word that only the library can judge, with its place."""

    text: str
    place: Place


class Posture(Frozen):
    """One posture of the right arm, degrees: ``plane`` 0 sideways and 90 forward, ``up`` 0 hanging, 90 level.

    ``forearm`` is a direction, forward, up and out: the side to which an elbow bent by ``elbow`` brings the
    hand; with ``elbow`` None the direction from elbow to hand itself; None with a straight elbow.
    """

    place: Place
    at: str
    plane: float
    up: float
    elbow: float | None = None
    forearm: Vector | None = None
    shoulders_forward: float = 0.0


class Pull(Frozen):
    """Where the load pulls the hand. ``kind`` as in the library.

    ``point``: a pulley, metres forward, up and out of the notch above the breastbone; else ``height``
    (low, chest, shoulder, high) and, where it was said, ``side`` tell its place.
    """

    place: Place
    kind: str
    point: Vector | None = None
    height: str | None = None
    side: Side | None = None


class Grip(Frozen):
    """How far apart the hands are: centimetres, or widths of the lifter's shoulders."""

    value: float
    in_widths: bool


class OwnMovement(Frozen):
    """A movement of a coach's own. Angles in degrees, ``pulley`` in metres and ``hands_raised`` in cm.

    ``recline``: the trunk turned back from upright (90 lying on the back, negative leaning forward).
    ``places``: of each key that was typed, by its word.
    """

    name: str
    place: Place
    like: Word | None = None
    pattern: Word | None = None
    loaded_by: str | None = None
    sides: Literal["both", "one", "alternating"] | None = None
    counted_in: Literal["reps", "s", "m", "steps"] | None = None
    kit: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    direct: tuple[Word, ...] = ()
    indirect: tuple[Word, ...] = ()
    hands: Literal["fixed apart", "fixed together", "free"] | None = None
    bench: float | None = None
    arch: float | None = None
    grip: Grip | None = None
    pulley: float | None = None
    hands_raised: float | None = None
    recline: float | None = None
    pull: Pull | None = None
    path: tuple[Posture, ...] = ()
    note: str | None = None
    places: dict[str, Place]

    @property
    def changes(self) -> tuple[str, ...]:
        """The keys that were typed and that change the arm path of the movement it is like."""
        return tuple(key for key in CHANGES if key in self.places)


CHANGES: Final = ("torso", "bench", "arch", "load pulls", "grip", "pulley", "hands raised")
"""Keys that change the arm path of a movement, in the order in which they are applied."""
