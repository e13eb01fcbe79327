"""A path typed as postures, as an arm path of the library."""

from math import cos, hypot, radians, sin
from typing import Final

from setwright.library.rows import ElbowKey, ElbowPath, Force, Torso
from setwright.model.own import OwnMovement, Posture, Pull, Vector
from setwright.own.body import Size
from setwright.own.fault import Unfit

LEAST_ASIDE: Final = 0.2
"""Sine of the least angle between arm and word that still says where the elbow bends (choice: 12 deg)."""

HEIGHTS: Final = {"low": -1.25, "chest": -0.05, "shoulder": 0.0, "high": 0.85}
"""Height of a pulley above the notch, metres: those of the library's cable movements."""

PLACES: Final = {
    "in front": (1.4, 0.1), "behind": (-0.9, 0.45),
    "to the side": (-0.35, 0.9), "to the other side": (0.12, -0.45),
}  # fmt: skip
"""Metres forward and out of the notch: those of the library's cable movements."""

USUAL: Final = {
    "fly": "to the side", "horizontal push": "behind", "vertical push": "behind", "downward push": "behind",
    "horizontal pull": "in front", "vertical pull": "in front", "shoulder extension": "in front",
    "rear raise": "in front",
}  # fmt: skip
"""Where the pulley stands when nobody says (common practice, no source)."""


def path_of(own: OwnMovement, pattern: str, size: Size) -> ElbowPath:
    """The arm path of a movement that is typed as postures, at the model's size. Raises: Unfit."""
    assert own.pull is not None
    return ElbowPath(
        given="elbow",
        torso=Torso(posture="as typed", recline_deg=_recline(own)),
        force=force_of(own.pull, pattern, size),
        keys=tuple(map(_key, own.path)),
    )


def _recline(own: OwnMovement) -> float:
    """Degrees the trunk is turned back from upright; an arch turns it back further."""
    lying = own.recline if own.bench is None else 90.0 - own.bench
    assert lying is not None
    return lying + (own.arch or 0.0)


def _key(posture: Posture) -> ElbowKey:
    return ElbowKey(
        at=posture.at,
        plane_elevation_deg=(posture.plane, posture.up),
        forearm=_forearm(posture),
        protraction_deg=posture.shoulders_forward,
    )


def _forearm(posture: Posture) -> Vector:
    """Unit direction from elbow to hand."""
    arm = arm_at(posture.plane, posture.up)
    if posture.forearm is None:
        return arm
    toward = _unit(posture.forearm)
    if posture.elbow is None:
        return toward
    along = sum(a * b for a, b in zip(arm, toward, strict=True))
    aside = tuple(b - along * a for a, b in zip(arm, toward, strict=True))
    if hypot(*aside) < LEAST_ASIDE:
        raise Unfit(
            posture.place,
            f"{posture.at}: the upper arm points that way too, so it is not said where the elbow bends",
            "write another of forward, back, up, down, out and in: the side on which the hand is",
        )
    bend = radians(posture.elbow)
    hand = _unit(aside)
    x, y, z = (cos(bend) * a + sin(bend) * b for a, b in zip(arm, hand, strict=True))
    return x, y, z


def arm_at(plane: float, elevation: float) -> Vector:
    """Unit direction from shoulder to elbow, thorax frame; plane and elevation of the arm in degrees.

    Source: as ``engine.frames.elbow_direction``, without its arrays.
    """
    p, e = radians(plane), radians(elevation)
    return sin(p) * sin(e), -cos(e), cos(p) * sin(e)


def _unit(vector: tuple[float, ...]) -> Vector:
    size = hypot(*vector)
    x, y, z = (one / size for one in vector)
    return x, y, z


def force_of(pull: Pull, pattern: str, size: Size) -> Force:
    """The load of a movement, at the model's size. Raises: Unfit."""
    placed = pull.point is not None or pull.height is not None
    point = _point(pull, pattern, size) if placed else None
    return Force.model_validate({"kind": pull.kind, "point_m": point})


def _point(pull: Pull, pattern: str, size: Size) -> Vector:
    """The pulley, metres at the model's size."""
    if pull.point is not None:
        x, y, z = (one / size.factor for one in pull.point)
        return x, y, z
    assert pull.height is not None
    side = pull.side or USUAL.get(pattern)
    if side is None:
        raise Unfit(
            pull.place,
            f"where does the pulley of a {pattern} stand?",
            "write `in front`, `behind`, `to the side` or `to the other side` behind it",
        )
    forward, out = PLACES[side]
    return forward, HEIGHTS[pull.height], out
