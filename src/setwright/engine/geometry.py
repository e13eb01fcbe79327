"""The numbers of the model: ``data/shoulder-geometry.yaml`` as arrays, for either arm and any body size."""

from dataclasses import dataclass, replace
from functools import cache, cached_property
from importlib.resources import files
from typing import Any, Final, Literal, Self

import numpy as np
import yaml
from numpy.typing import NDArray

from setwright.engine.frames import Floats, across, cross, dot, unit

Part = Literal["clavicular", "sternal", "costal"]
PARTS: Final[tuple[Part, Part, Part]] = ("clavicular", "sternal", "costal")


@dataclass(frozen=True)
class Rhythm:
    """A girdle angle in degrees: constant + plane x plane of elevation + elevation x elevation."""

    constant: float
    plane: float
    elevation: float

    def angle(self, plane_deg: Floats, elevation_deg: Floats) -> Floats:
        """The angle, degrees (...)."""
        return self.constant + self.plane * plane_deg + self.elevation * elevation_deg


@dataclass(frozen=True)
class GirdleLaw:
    """The published girdle rhythm and what was added to it; angles in degrees."""

    clavicle: dict[str, Rhythm]
    scapula: dict[str, Rhythm]
    clavicle_lowered: float
    plane_limits: tuple[float, float]
    elevation_limits: tuple[float, float]
    plane_at_poles: float
    blend_width: float


@dataclass(frozen=True)
class Chest:
    """Elliptic cylinders, one for each of n strands, thorax frame; lengths in metres.

    ``axis``, ``front``, ``side``: orthogonal unit vectors (n, 3), front forward, side outward.
    ``semi``: semi-axes along front and side (n, 2).
    """

    centre: Floats
    axis: Floats
    front: Floats
    side: Floats
    semi: Floats

    def flat(self, points: Floats) -> Floats:
        """Points (..., n, 3) seen along the axes, in semi-axes (..., n, 2): the ellipse is a unit circle."""
        arm = points - self.centre
        flat: Floats = np.stack([dot(arm, self.front), dot(arm, self.side)], axis=-1) / self.semi
        return flat

    def height(self, points: Floats) -> Floats:
        """Heights of points (..., n, 3) along the axes, metres (..., n)."""
        return dot(points - self.centre, self.axis)

    def at(self, flat: Floats, height: Floats) -> Floats:
        """Points (..., n, 3) from what ``flat`` and ``height`` return."""
        in_plane = flat * self.semi
        in_front, aside = in_plane[..., :1] * self.front, in_plane[..., 1:] * self.side
        point: Floats = self.centre + in_front + aside + height[..., None] * self.axis
        return point


@dataclass(frozen=True)
class Geometry:
    """One shoulder. Lengths in metres, forces in newtons; S strands in the order of ``PARTS``.

    ``SC`` in the thorax frame, ``AC`` in the clavicle's, ``GH`` in the scapula's (3,). ``origin`` (S, 3): in
    the clavicle's frame where ``on_clavicle``, else in the thorax frame, on the surface of the chest.
    ``insertion`` (S, 3): humerus frame. ``part`` (S,): index into ``PARTS``. ``tendon`` (S,). ``force`` (3,):
    largest force of each part. ``chest``: for the strands not on the clavicle. ``side``: 1 for the right arm,
    -1 for the left. ``refused`` and ``attainable``: postures, degrees, as in the data file.
    """

    upper_arm: float
    elbow_to_grip: float
    SC: Floats
    AC: Floats
    GH: Floats
    girdle: GirdleLaw
    head_radius: float
    side_from_deg: float
    origin: Floats
    insertion: Floats
    on_clavicle: NDArray[np.bool_]
    part: NDArray[np.intp]
    tendon: Floats
    force: Floats
    chest: Chest
    refused: dict[str, Any]
    attainable: dict[str, Any]
    side: int = 1

    @cached_property
    def averaging(self) -> Floats:
        """Weights (3, S) that turn a value a strand into the mean a part."""
        member = self.part == np.arange(len(PARTS))[:, None]
        weights: Floats = member / member.sum(axis=1, keepdims=True)
        return weights

    def scaled(self, factor: float) -> Self:
        """The same shoulder with every length times ``factor``."""
        chest = replace(self.chest, centre=self.chest.centre * factor, semi=self.chest.semi * factor)
        lengths = (
            "upper_arm",
            "elbow_to_grip",
            "SC",
            "AC",
            "GH",
            "head_radius",
            "origin",
            "insertion",
            "tendon",
        )
        return replace(self, chest=chest, **{name: getattr(self, name) * factor for name in lengths})

    def mirrored(self) -> Self:
        """The other arm of the same body."""
        flip = np.array([1.0, 1.0, -1.0])
        axes = ("centre", "axis", "front", "side")
        chest = replace(self.chest, **{name: getattr(self.chest, name) * flip for name in axes})
        points = ("SC", "AC", "GH", "origin", "insertion")
        return replace(
            self, chest=chest, side=-self.side, **{name: getattr(self, name) * flip for name in points}
        )


def geometry_data() -> dict[str, Any]:
    """The data file as it stands.

    >>> geometry_data()["arm"]["upper_arm"]
    0.284
    """
    text = files("setwright").joinpath("data", "shoulder-geometry.yaml").read_text(encoding="utf-8")
    data: dict[str, Any] = yaml.safe_load(text)
    return data


@cache
def geometry() -> Geometry:
    """The model's right shoulder.

    >>> geometry().insertion.shape
    (8, 3)
    """
    data = geometry_data()
    rows = [(part, strand) for part in PARTS for strand in data["parts"][part]["strands"]]
    parts = [data["parts"][part] for part, _ in rows]
    on_clavicle = np.array([part["body"] == "clavicle" for part in parts])
    chest = _chest([data["chest"][part["chest"]] for part in parts if part["chest"]])
    origin = np.array([strand["origin"] for _, strand in rows])
    origin[~on_clavicle] = _lifted(origin[~on_clavicle], chest)
    return Geometry(
        upper_arm=data["arm"]["upper_arm"],
        elbow_to_grip=data["arm"]["elbow_to_grip"],
        SC=np.array(data["joints"]["SC"]),
        AC=np.array(data["joints"]["AC"]),
        GH=np.array(data["joints"]["GH"]),
        girdle=_girdle_law(data["girdle"]),
        head_radius=data["humeral_head"]["radius"],
        side_from_deg=data["humeral_head"]["side_from"],
        origin=origin,
        insertion=np.array([strand["insertion"] for _, strand in rows]),
        on_clavicle=on_clavicle,
        part=np.array([PARTS.index(part) for part, _ in rows]),
        tendon=np.array([part["tendon"] for part in parts]),
        force=np.array([data["parts"][part]["force"] for part in PARTS]),
        chest=chest,
        refused=data["refused"],
        attainable=data["attainable"],
    )


def _girdle_law(data: dict[str, Any]) -> GirdleLaw:
    bones = {
        bone: {axis: Rhythm(**law) for axis, law in data[bone].items()} for bone in ("clavicle", "scapula")
    }
    return GirdleLaw(**{**data, **bones})


def _chest(cylinders: list[dict[str, Any]]) -> Chest:
    axis = unit(np.array([one["axis"] for one in cylinders]))
    side = unit(across(np.broadcast_to([0.0, 0.0, 1.0], axis.shape), axis))
    return Chest(
        centre=np.array([one["centre"] for one in cylinders]),
        axis=axis,
        front=cross(axis, side),
        side=side,
        semi=np.array([[one["semi_axis_front"], one["semi_axis_side"]] for one in cylinders]),
    )


def _lifted(points: Floats, chest: Chest) -> Floats:
    """Points (n, 3) moved onto the surface: a strand that starts inside would jump when it first touches."""
    flat = chest.flat(points)
    return chest.at(flat / np.hypot(*flat.T)[:, None], chest.height(points))
