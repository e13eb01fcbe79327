"""Every muscle of the joint: ``data/shoulder-strands.yaml`` as arrays, and their moments in postures."""

from dataclasses import dataclass, replace
from functools import cache, cached_property
from importlib.resources import files
from typing import Any, Final, Literal

import numpy as np
import yaml
from numpy.typing import NDArray

from setwright.engine.frames import Floats, cross, norm, plane_elevation, unit
from setwright.engine.geometry import PARTS, Geometry, geometry
from setwright.engine.girdle import Girdle
from setwright.engine.wrapping import round_head

Trust = Literal["solid", "soft", "not usable"]

OTHER_PARTS: Final = (
    "deltoid_anterior",
    "deltoid_middle",
    "deltoid_posterior",
    "latissimus_dorsi",
    "teres_major",
    "coracobrachialis",
)
"""The parts outside the chest whose figures are shown."""

CUFF: Final = ("subscapularis", "infraspinatus", "teres_minor", "supraspinatus")
"""Parts that take their share and are never shown."""

ALL_PARTS: Final = (*PARTS, *OTHER_PARTS, *CUFF)
"""The order of the parts wherever all of them stand on one axis."""


@dataclass(frozen=True)
class Muscles:
    """S strands of the parts outside the chest. Lengths in metres, forces in newtons, moments in N m.

    ``origin`` (S, 3): in the scapula's frame where ``on_scapula``, else in the thorax frame. ``insertion``
    (S, 3): humerus frame. ``radius`` (S,): of the sphere about GH. ``part`` (S,): index into ``ALL_PARTS``
    less the chest's. ``force`` (S,). ``reserve``: moment about the humerus held by no muscle. ``elbow``:
    largest moments of extension and flexion.
    """

    origin: Floats
    insertion: Floats
    radius: Floats
    on_scapula: NDArray[np.bool_]
    part: NDArray[np.intp]
    force: Floats
    reserve: float
    elbow: tuple[float, float]

    @cached_property
    def pulls(self) -> Floats:
        """Forces (parts, S) that turn moment arms a strand into moments a part."""
        member = self.part == np.arange(len(ALL_PARTS) - len(PARTS))[:, None]
        return np.where(member, self.force, 0.0)


def muscle_data() -> dict[str, Any]:
    """The data file as it stands.

    >>> muscle_data()["parts"]["teres_major"]["trust"]
    'soft'
    """
    text = files("setwright").joinpath("data", "shoulder-strands.yaml").read_text(encoding="utf-8")
    data: dict[str, Any] = yaml.safe_load(text)
    return data


@cache
def model_muscles() -> Muscles:
    """The muscles of the model's right shoulder.

    >>> model_muscles().origin.shape
    (22, 3)
    """
    data = muscle_data()
    parts = [data["parts"][name] for name in (*OTHER_PARTS, *CUFF)]
    rows = [(n, part, strand) for n, part in enumerate(parts) for strand in part["strands"]]
    elbow = data["sharing"]["elbow"]
    return Muscles(
        origin=np.array([strand["origin"] for _, _, strand in rows]),
        insertion=np.array([strand["insertion"] for _, _, strand in rows]),
        radius=np.array([part["radius"] for _, part, _ in rows]),
        on_scapula=np.array([part["body"] == "scapula" for _, part, _ in rows]),
        part=np.array([n for n, _, _ in rows]),
        force=np.array([strand["force"] for _, _, strand in rows], dtype=float),
        reserve=data["sharing"]["reserve"],
        elbow=(elbow["extension"], elbow["flexion"]),
    )


def muscles_of(shoulder: Geometry) -> Muscles:
    """The muscles of a shoulder: the model's, at its size and on its side; moments grow with its lengths.

    >>> bool(np.allclose(muscles_of(geometry().mirrored()).origin[:, 2], -model_muscles().origin[:, 2]))
    True
    """
    model, size = model_muscles(), shoulder.upper_arm / geometry().upper_arm
    place = size * np.array([1.0, 1.0, shoulder.side])
    return replace(
        model,
        origin=model.origin * place,
        insertion=model.insertion * place,
        radius=model.radius * size,
        reserve=model.reserve * size,
        elbow=(model.elbow[0] * size, model.elbow[1] * size),
    )


@dataclass(frozen=True)
class OtherStrands:
    """S strands in postures: ``length`` (..., S), m; ``pull``, ``moment`` (..., S, 3) as in ``Strands``."""

    length: Floats
    pull: Floats
    moment: Floats


def other_strands(frames: Floats, bones: Girdle, muscles: Muscles) -> OtherStrands:
    """The strands of ``muscles`` in postures (...), thorax frame, each the shorter way round its sphere.

    ``frames`` (..., 3, 3): humerus axes in columns. ``bones``: girdles of the same postures.

    >>> from setwright.engine.frames import elbow_direction, turned
    >>> from setwright.engine.girdle import girdle
    >>> u = elbow_direction(0.0, 60.0)
    >>> other_strands(turned(0.0, u), girdle(u, 0.0, geometry()), model_muscles()).moment.shape
    (22, 3)
    """
    GH = bones.GH[..., None, :]
    insertion = GH + np.einsum("...ij,sj->...si", frames, muscles.insertion)
    on_scapula = bones.AC[..., None, :] + np.einsum("...ij,sj->...si", bones.scapula, muscles.origin)
    origin = np.where(muscles.on_scapula[:, None], on_scapula, muscles.origin)
    head = round_head(insertion, GH, origin, None, radius=muscles.radius)
    pull = unit(origin - head.leaves)
    return OtherStrands(head.length + norm(origin - head.leaves), pull, cross(head.leaves - GH, pull))


def part_moments(chest_arms: Floats, frames: Floats, bones: Girdle, shoulder: Geometry) -> Floats:
    """Moments about GH of every part at full activation, N m (..., parts, 3), in the order of ``ALL_PARTS``.

    ``chest_arms`` (..., 3, 3): mean moment of a unit pull of each part of the chest, metres.

    >>> from setwright.engine.frames import elbow_direction, turned
    >>> from setwright.engine.girdle import girdle
    >>> u = elbow_direction(0.0, 60.0)
    >>> part_moments(np.zeros((3, 3)), turned(0.0, u), girdle(u, 0.0, geometry()), geometry()).shape
    (13, 3)
    """
    muscles = muscles_of(shoulder)
    others = np.einsum("ps,...si->...pi", muscles.pulls, other_strands(frames, bones, muscles).moment)
    return np.concatenate([shoulder.force[:, None] * chest_arms, others], axis=-2)


@cache
def part_forces() -> Floats:
    """Largest force of every part, N (13,), in the order of ``ALL_PARTS``.

    >>> part_forces().round().tolist()[:4]
    [409.0, 683.0, 571.0, 708.0]
    """
    forces: Floats = np.concatenate([geometry().force, model_muscles().pulls.sum(axis=1)])
    return forces


def in_zone(zone: dict[str, Any], u: Floats, side: int) -> NDArray[np.bool_]:
    """Whether upper-arm directions ``u`` (..., 3) lie in a zone of the data file (``side`` of the body).

    >>> from setwright.engine.frames import elbow_direction
    >>> in_zone({"behind": 25}, elbow_direction([-90.0, -90.0], [20.0, 30.0]), 1).tolist()
    [False, True]
    """
    if "behind" in zone:
        behind: NDArray[np.bool_] = np.degrees(np.arcsin(np.clip(-u[..., 0], -1, 1))) >= zone["behind"]
        return behind
    within: NDArray[np.bool_] = np.ones(u.shape[:-1], dtype=bool)
    for angle, (low, high) in zip(
        plane_elevation(u * [1.0, 1.0, side]), (zone["plane"], zone["elevation"]), strict=True
    ):
        within &= (low <= angle) & (angle <= high)
    return within
