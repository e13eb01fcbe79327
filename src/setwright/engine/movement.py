"""The scored fields of library rows: every figure of a movement that needs no other movement."""

from collections.abc import Sequence
from functools import cache
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from setwright.engine.extremes import extremes, outside_trust, refusal, rounded, shoulder_angles
from setwright.engine.frames import Floats
from setwright.engine.geometry import PARTS, geometry
from setwright.engine.lines import NO_LINE, along_line, crosses, follows, line, served
from setwright.engine.muscles import ALL_PARTS, OTHER_PARTS
from setwright.engine.paths import arm_paths
from setwright.engine.scores import Scores, resistance_by_length, scores
from setwright.engine.tones import loaded_long, loaded_short, longest_loaded, strip, tones
from setwright.engine.trust import mark
from setwright.engine.work import Works, works
from setwright.library.rows import Row, load_rows

STERNAL = PARTS.index("sternal")
COSTAL = PARTS.index("costal")

LIGHT_BELOW: Final = 0.65
"""Load of the model, as a share of the flat barbell press's, below which a movement is light (choice)."""

STANDARD: Final = "flat-barbell-bench-press"
"""The movement that loads are compared with."""


def scored_fields(rows: Sequence[Row]) -> list[dict[str, Any]]:
    """Scored fields of rows with an arm path, in their order, as stored in library.json (without partners).

    Lever mm, lengths percent, angles degrees, distances cm, shares and resistances 0 to 1.
    Raises: ValueError for a row without an arm path.

    >>> from setwright.library.rows import load_rows
    >>> scored_fields(load_rows()[:1])[0]["line"]
    'sternal'
    """
    without = [row.key for row in rows if row.path is None]
    if without:
        raise ValueError(f"no arm path: {', '.join(without)}")
    if not rows:
        return []
    paths = arm_paths([row.path for row in rows if row.path is not None])
    score = scores(paths)
    angles = shoulder_angles(paths)
    outside = outside_trust(paths.u, geometry())
    tone = tones(score.resistance, score.lever_at, score.cosine_at)
    work = works(paths, score)
    scored = []
    for n, row in enumerate(rows):
        refused = refusal(outside[n], angles["arm_up"][n])
        fields = _fields(row, score, tone, n, refused)
        for part, worked in _chest_work(work, n, paths.u[n], refused).items():
            fields["parts"][part] |= worked
        scored.append(
            {**fields, **_joint(row, work, n, paths.u[n], refused), "extremes": extremes(angles, n)}
        )
    return scored


def _fields(row: Row, score: Scores, tone: NDArray[np.int8], n: int, refused: str | None) -> dict[str, Any]:
    arm, hand = float(score.arm_past[n]), float(score.hand_past[n])
    along = [
        along_line(*pair) for pair in zip(score.lever[n].tolist(), score.align_load[n].tolist(), strict=True)
    ]
    classed = follows(row.pattern, row.key)
    path = line(score.align_path[n].tolist())
    serves = served(path, score.share[n].tolist(), along) if classed and not refused else ()
    parts = {part: _part(score, tone, n, p, along=along[p]) for p, part in enumerate(PARTS)}
    for p, part in enumerate(PARTS):
        loads = classed and not refused and along[p]
        parts[part] |= {"serves": part in serves, "dose": 1 if part in serves else 0.5 if loads else 0}
    third = resistance_by_length(score.resistance[n], score.length[n, :, STERNAL])
    return {
        "parts": parts,
        "line": path.name if classed else NO_LINE,
        "tilt": rounded(path.tilt, 2) if classed and path.tilt is not None else None,
        "serves": list(serves),
        "assists": [] if classed else [part for part, on in zip(PARTS, along, strict=True) if on],
        "crossing": classed and crosses(arm, hand),
        "past_midline": {"arm_deg": rounded(arm, 1), "hand_cm": rounded(hand, 1)},
        "resistance": {
            end: None if one is None else rounded(one, 2)
            for end, one in zip(("long", "middle", "short"), third, strict=True)
        },
        "load_arm_cm": rounded(score.load_arm[n], 1),
        "refused": refused,
    }


def _part(score: Scores, tone: NDArray[np.int8], n: int, p: int, *, along: bool) -> dict[str, Any]:
    length, toned = score.length[n, :, p], tone[n, :, p]
    longest = longest_loaded(length, toned) if p == COSTAL else None
    start, end = np.clip(length[[0, -1]], 0, 100)
    return {
        "align_path": rounded(score.align_path[n, p], 2),
        "align_load": rounded(score.align_load[n, p], 2),
        "lever_mm": rounded(score.lever[n, p], 1),
        "share": rounded(score.share[n, p], 3),
        "length_start": rounded(start, 1),
        "length_end": rounded(end, 1),
        "loaded_long": loaded_long(length, toned),
        "loaded_short": loaded_short(length, toned),
        "loaded_long_percent": None if longest is None else rounded(longest, 1),
        "along_its_line": along,
        "strip": strip(length, toned),
    }


def _chest_work(work: Works, n: int, u: Floats, refused: str | None) -> dict[str, dict[str, Any]]:
    """Work of each part of the chest in one movement, 0 to 100; None for what does not happen on its path."""
    return {
        part: {
            **_work(work, n, p, u, refused),
            "worked": {
                "long": _known(work.long[n, p]),
                "short": _known(work.short[n, p]),
                "across": _known(work.past[n, p]),
            },
        }
        for p, part in enumerate(PARTS)
    }


def _joint(row: Row, work: Works, n: int, u: Floats, refused: str | None) -> dict[str, Any]:
    """What load sharing says of a whole movement."""
    return {
        "other_parts": {
            part: {
                "lever_mm": rounded(work.lever[n, ALL_PARTS.index(part)], 1),
                **_work(work, n, ALL_PARTS.index(part), u, refused),
            }
            for part in OTHER_PARTS
        },
        "weakest_point": ("start", "middle", "end")[min(int(3 * work.weakest[n]), 2)],
        "elbow_limited": bool(work.elbow_limited[n]),
        "light_by_nature": row.loading.load_class == "light"
        or (not refused and bool(work.load[n] < LIGHT_BELOW * _standard_load())),
    }


def _work(work: Works, n: int, p: int, u: Floats, refused: str | None) -> dict[str, Any]:
    trust, why = mark(ALL_PARTS[p], u, float(work.lever[n, p]), float(work.spread[n, p]), refused)
    return {"work": rounded(work.work[n, p], 1), "trust": trust, "trust_why": why}


def _known(value: float) -> float | None:
    return None if np.isnan(value) else rounded(value, 1)


@cache
def _standard_load() -> float:
    """What the model holds in the standard movement, N on one hand; never shown."""
    paths = arm_paths([row.path for row in load_rows() if row.key == STANDARD and row.path is not None])
    return float(works(paths, scores(paths)).load[0])
