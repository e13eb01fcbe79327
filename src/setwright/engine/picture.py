"""What is drawn of one movement: real ways of the strands, joints, tones. Pure arrays; no drawing here."""

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from setwright.engine.frames import Floats, cross
from setwright.engine.geometry import Geometry, geometry
from setwright.engine.paths import arm_paths
from setwright.engine.scores import scores
from setwright.engine.strands import Strands, strands
from setwright.engine.tones import tones
from setwright.engine.wrapping import arc
from setwright.library.rows import Row

POINTS: Final = 40
"""Points of a drawn strand, at equal steps of its way (choice)."""

_FINE: Final = 24  # points of each arc before the way is divided evenly (choice)


@dataclass(frozen=True)
class MovementPicture:
    """One movement of n samples, thorax frame (X forward, Y up, Z right), metres; S strands, 3 parts.

    ``strands`` (n, S, POINTS, 3): from insertion to origin at equal steps of the way: arc on the head,
    straight, arc on the chest. ``part`` (S,): index into ``PARTS``. ``tendon`` (S,): length at the insertion
    that is tendon. ``SC`` (3,). ``AC``, ``GH``, ``elbow``, ``hand`` (n, 3). ``length`` (n, 3): percent of the
    attainable range. ``tone`` (n, 3): 2 much, 1 some, 0 hardly loaded.
    """

    strands: Floats
    part: NDArray[np.intp]
    tendon: Floats
    SC: Floats
    AC: Floats
    GH: Floats
    elbow: Floats
    hand: Floats
    length: Floats
    tone: NDArray[np.int8]


def picture(row: Row) -> MovementPicture:
    """The arrays to draw a movement from. Raises: ValueError for a row without an arm path.

    >>> from setwright.library.rows import load_rows
    >>> picture(load_rows()[0]).strands.shape
    (31, 8, 40, 3)
    """
    if row.path is None:
        raise ValueError(f"{row.key} has no arm path, so there is nothing to draw")
    shoulder = geometry()
    paths = arm_paths([row.path])
    score = scores(paths)
    return MovementPicture(
        strands=polylines(strands(paths.frames, paths.bones, shoulder), shoulder)[0],
        part=shoulder.part,
        tendon=shoulder.tendon,
        SC=shoulder.SC,
        AC=paths.bones.AC[0],
        GH=paths.bones.GH[0],
        elbow=paths.elbow[0],
        hand=paths.hand[0],
        length=score.length[0],
        tone=tones(score.resistance, score.lever_at, score.cosine_at)[0],
    )


def polylines(pulls: Strands, shoulder: Geometry) -> Floats:
    """Ways of strands (..., S) from insertion to origin at equal steps, (..., S, POINTS, 3), metres.

    >>> from setwright.engine.frames import elbow_direction
    >>> from setwright.engine.strands import posed
    >>> polylines(posed(elbow_direction(30.0, 60.0), 0.0, 0.0, geometry()), geometry()).shape
    (8, 40, 3)
    """
    on_head = _head_arcs(pulls)
    on_chest = np.repeat(pulls.origin[..., None, :], _FINE, axis=-2)
    on_chest[..., ~shoulder.on_clavicle, :, :] = _chest_arcs(pulls, shoulder)
    ways = np.concatenate([pulls.insertion[..., None, :], on_head, on_chest], axis=-2)
    return np.array([_even(way) for way in ways.reshape(-1, *ways.shape[-2:])]).reshape(
        *ways.shape[:-2], POINTS, 3
    )


def _head_arcs(pulls: Strands) -> Floats:
    """Points (..., S, _FINE, 3) on the head, from where a strand meets it to where it leaves it."""
    head = pulls.head
    back = (head.angle[..., None] * np.linspace(-1, 0, _FINE))[..., None]
    axis, arm = head.axis[..., None, :], (head.leaves - pulls.centre)[..., None, :]
    return pulls.centre[..., None, :] + np.cos(back) * arm + np.sin(back) * cross(axis, arm)


def _chest_arcs(pulls: Strands, shoulder: Geometry) -> Floats:
    """Points (..., n, _FINE, 3) on the chest, heights linear in the way round."""
    chest, surface = pulls.chest, shoulder.chest
    flat = surface.flat(shoulder.origin[~shoulder.on_clavicle])
    end = np.arctan2(flat[:, 1], flat[:, 0])
    steps = np.linspace(0, 1, _FINE)
    angles = [chest.angle + (end - chest.angle) * step for step in steps]
    start, whole = arc(chest.angle, surface), arc(np.broadcast_to(end, chest.angle.shape), surface)
    low, high = surface.height(chest.meets), surface.height(shoulder.origin[~shoulder.on_clavicle])
    points = []
    for angle in angles:
        done = np.divide(
            arc(angle, surface) - start, whole - start, out=np.ones_like(angle), where=whole != start
        )
        tangent = np.stack([np.cos(angle), np.sin(angle)], axis=-1)
        points.append(surface.at(tangent, low + (high - low) * done))
    return np.stack(points, axis=-2)


def _even(way: Floats) -> Floats:
    """A way (k, 3) at POINTS equal steps of its length."""
    gone = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(way, axis=0), axis=1))])
    at = np.linspace(0, gone[-1], POINTS)
    return np.stack([np.interp(at, gone, column) for column in way.T], axis=-1)
