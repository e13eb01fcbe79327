"""The scored fields of library rows: every figure of a movement that needs no other movement."""

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from setwright.engine.extremes import extremes, outside_trust, refusal, rounded, shoulder_angles
from setwright.engine.geometry import PARTS, geometry
from setwright.engine.lines import NO_LINE, along_line, crosses, follows, line, served
from setwright.engine.paths import arm_paths
from setwright.engine.scores import Scores, resistance_by_length, scores
from setwright.engine.tones import loaded_long, loaded_short, longest_loaded, strip, tones
from setwright.library.rows import Row

STERNAL = PARTS.index("sternal")
COSTAL = PARTS.index("costal")


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
    return [
        {
            **_fields(row, score, tone, n, refusal(outside[n], angles["arm_up"][n])),
            "extremes": extremes(angles, n),
        }
        for n, row in enumerate(rows)
    ]


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
