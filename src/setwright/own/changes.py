"""An arm path of the library with something changed: bench, arch, grip, pulley, height of the hands."""

from collections.abc import Callable, Mapping, Sequence
from math import asin, cos, degrees, hypot, radians, sin
from typing import Final

import numpy as np

from setwright.engine.paths import SAMPLES, arm_paths
from setwright.library.rows import ElbowKey, HandKey, HandPath, Path, Row
from setwright.model.own import OwnMovement, Vector
from setwright.own.body import CM_A_METRE, Size
from setwright.own.fault import Unfit
from setwright.own.postures import arm_at, force_of

NOTCH_M: Final = 1.4
"""Height of the notch of a model that stands (choice: the library's floor pivot lies as deep)."""

FEET_TO_SHOULDER_M: Final = 1.4
SHOULDER_OVER_HANDS_M: Final = 0.195
"""With these a trunk leans as in the library: -82 deg, hands on the floor; -55, on a 60 cm box (choice)."""

UPRIGHT_DEG: Final = 15.0
"""Lean up to which the floor is where it is for a lifter who stands (choice)."""

EVEN_M: Final = 1e-6


def changed(row: Row, own: OwnMovement, size: Size) -> Path:
    """The path of ``row`` with the changes of ``own``, at the model's size. Raises: Unfit.

    Lengths that were written hold for the lifter of ``size``: 72 cm are more for a short one.
    """
    assert row.path is not None
    path = row.path
    for key in own.changes:
        path = _CHANGES[key](path, row, own, size)
    return (
        _within_reach(path, row.path)
        if isinstance(path, HandPath) and isinstance(row.path, HandPath)
        else path
    )


def _torso(path: Path, _row: Row, own: OwnMovement, _: Size) -> Path:
    """The trunk at another angle, the arms moving against it as before."""
    assert own.recline is not None
    return _leant(path, own.recline)


def _load_pulls(path: Path, row: Row, own: OwnMovement, size: Size) -> Path:
    """Another load on the same way of the arm."""
    assert own.pull is not None
    pattern = own.pattern.text.casefold() if own.pattern else row.pattern
    return path.model_copy(update={"force": force_of(own.pull, pattern, size)})


def _bench(path: Path, row: Row, own: OwnMovement, _: Size) -> Path:
    """The trunk on another bench; the load still travels straight up."""
    assert own.bench is not None
    if row.station.bench_deg is None or path.torso.recline_deg != 90 - row.station.bench_deg:
        raise _unfit(own, "bench", f"a {row.name} is not done with the back on a bench")
    return _reclined(path, 90 - own.bench)


def _arch(path: Path, row: Row, own: OwnMovement, _: Size) -> Path:
    """The chest raised off the bench."""
    assert own.arch is not None
    if path.torso.recline_deg <= 0:
        raise _unfit(own, "arch", f"a {row.name} is not done on the back")
    return _reclined(path, path.torso.recline_deg + own.arch)


def _grip(path: Path, row: Row, own: OwnMovement, size: Size) -> Path:
    """The hands set further apart or closer; the touch point stays as high on the trunk."""
    assert own.grip is not None
    wide = own.grip.value * size.shoulder_width if own.grip.in_widths else own.grip.value / CM_A_METRE
    if not isinstance(path, HandPath) or _spread(path) > EVEN_M:
        raise _unfit(own, "grip", f"the hands of a {row.name} do not stay one width apart")
    half = wide / 2 / size.factor
    keys = tuple(key.model_copy(update={"hand_m": (*key.hand_m[:2], half)}) for key in path.keys)
    return path.model_copy(update={"keys": keys})


def pulley_at(path: Path, own: OwnMovement, size: Size) -> Path:
    """The path with its pulley at the height that was written. Raises: Unfit."""
    assert own.pulley is not None
    point = path.force.point_m
    if path.force.kind != "toward point" or point is None:
        raise _unfit(own, "pulley", "nothing pulls the hand toward a pulley")
    if abs(path.torso.recline_deg) > UPRIGHT_DEG or "seated" in path.torso.posture:
        raise _unfit(own, "pulley", "it is not done standing, so nobody knows how deep the floor is")
    return _with_pulley(path, point, own.pulley / size.factor)


def _pulley(path: Path, _row: Row, own: OwnMovement, size: Size) -> Path:
    return pulley_at(path, own, size)


def _with_pulley(path: Path, point: Vector, height: float) -> Path:
    """The path with its pulley ``height`` metres above the floor, at the model's size."""
    lean = radians(path.torso.recline_deg)
    up = (sin(lean), cos(lean))
    x, y, z = point
    higher = height - NOTCH_M - (x * up[0] + y * up[1])
    force = path.force.model_copy(update={"point_m": (x + higher * up[0], y + higher * up[1], z)})
    return path.model_copy(update={"force": force})


def _hands_raised(path: Path, row: Row, own: OwnMovement, size: Size) -> Path:
    """The hands of a push-up on something high: the trunk leans less, the arms go the same way.

    What is high and solid is pushed square to the trunk, as in the library's own push-ups on a box.
    """
    assert own.hands_raised is not None
    if "push-up" not in row.key or not path.force.kind.startswith("support"):
        raise _unfit(own, "hands raised", f"a {row.name} is no push-up")
    height = own.hands_raised / CM_A_METRE / size.factor + SHOULDER_OVER_HANDS_M
    if height >= FEET_TO_SHOULDER_M:
        raise _unfit(own, "hands raised", "the hands would be higher than the shoulders")
    leant = _leant(path, degrees(asin(height / FEET_TO_SHOULDER_M)) - 90)
    if "strap" in row.key or not own.hands_raised:
        return leant
    return leant.model_copy(update={"force": path.force.model_copy(update={"kind": "support square"})})


_CHANGES: Final[Mapping[str, Callable[[Path, Row, OwnMovement, Size], Path]]] = {
    "torso": _torso,
    "bench": _bench,
    "arch": _arch,
    "load pulls": _load_pulls,
    "grip": _grip,
    "pulley": _pulley,
    "hands raised": _hands_raised,
}


def _unfit(own: OwnMovement, key: str, why: str) -> Unfit:
    change = f"take `{key}:` out, or write `like:` and a movement that has one"
    return Unfit(own.places[key], f"{own.name}: {why}", change)


def _spread(path: HandPath) -> float:
    out = [key.hand_m[2] for key in path.keys]
    return max(out) - min(out)


def _leant(path: Path, recline: float) -> Path:
    """The trunk at another angle; the arms move against it as before."""
    more = recline - path.torso.recline_deg
    keys = tuple(
        key if key.recline_deg is None else key.model_copy(update={"recline_deg": key.recline_deg + more})
        for key in path.keys
    )
    torso = path.torso.model_copy(update={"recline_deg": recline, "posture": "as typed"})
    return path.model_copy(update={"torso": torso, "keys": keys})


def _reclined(path: Path, recline: float) -> Path:
    """The trunk at another angle; the way of the hand keeps its direction in the room."""
    turn = path.torso.recline_deg - recline
    leant = _leant(path, recline)
    if isinstance(leant, HandPath):
        start = leant.keys[0].hand_m
        touch = _touch(start, arm_paths([path]).bones.GH[0, 0].tolist(), turn)
        keys = tuple(_hand_turned(key, start, touch, turn) for key in leant.keys)
        return leant.model_copy(update={"keys": keys})
    first, *others = leant.keys
    return leant.model_copy(update={"keys": (first, *(_elbow_turned(key, turn) for key in others))})


def _touch(start: Vector, joint: Sequence[float], turn: float) -> Vector:
    """Where the hands start: as deep as before, as far up the trunk as a turn about the joint takes them."""
    _, along, _ = _turned((start[0] - joint[0], start[1] - joint[1], 0.0), turn)
    return start[0], joint[1] + along, start[2]


def _hand_turned(key: HandKey, start: Vector, touch: Vector, turn: float) -> HandKey:
    way = _turned((key.hand_m[0] - start[0], key.hand_m[1] - start[1], key.hand_m[2] - start[2]), turn)
    hand = (touch[0] + way[0], touch[1] + way[1], touch[2] + way[2])
    return key.model_copy(update={"hand_m": hand, "swivel": _turned(key.swivel, turn)})


def _elbow_turned(key: ElbowKey, turn: float) -> ElbowKey:
    x, y, z = _turned(arm_at(*key.plane_elevation_deg), turn)
    plane = degrees(np.arctan2(x, z))
    elevation = degrees(np.arccos(np.clip(-y, -1, 1)))
    return key.model_copy(
        update={"plane_elevation_deg": (plane, elevation), "forearm": _turned(key.forearm, turn)}
    )


def _turned(vector: Vector, turn: float) -> Vector:
    """A direction turned by so many degrees about the axis that points out to the right: forward to up."""
    x, y, z = vector
    c, s = cos(radians(turn)), sin(radians(turn))
    return c * x - s * y, s * x + c * y, z


def _within_reach(path: HandPath, before: HandPath) -> HandPath:
    """The path with its hands no further from the shoulder joint than before: a wider grip ends lower."""
    old = arm_paths([before])
    at = np.round(np.linspace(0, SAMPLES - 1, len(before.keys))).astype(int)
    joints, hands = old.bones.GH[0, at], old.hand[0, at]
    far = float(np.linalg.norm(hands - joints, axis=1).max())
    keys = tuple(_pulled_in(key, joint.tolist(), far) for key, joint in zip(path.keys, joints, strict=True))
    return path.model_copy(update={"keys": keys})


def _pulled_in(key: HandKey, joint: Sequence[float], far: float) -> HandKey:
    x, y, z = (hand - place for hand, place in zip(key.hand_m, joint, strict=True))
    if hypot(x, y, z) <= far or abs(z) >= far:
        return key
    less = (far**2 - z**2) ** 0.5 / hypot(x, y)
    return key.model_copy(update={"hand_m": (joint[0] + less * x, joint[1] + less * y, key.hand_m[2])})
