"""One part of a muscle as a fan on the page: its strands' real paths, filled with slices that taper."""

from typing import Final, Literal

import numpy as np
from numpy.typing import NDArray

from setwright.sheets.svg import Points, path, polygon, tag

Tone = Literal["much", "some", "none"]

INK: Final = {"much": 0.68, "some": 0.25}
"""Share of each slice that is black; choice: the two stay apart when a copy is copied."""

STEPS: Final = 24
"""Points along each edge of a fan; choice: no corner shows at 0.01 mm."""

OUTLINE: Final = 0.2
DASHED_OUTLINE: Final = 0.26
"""mm; choice: nothing that carries meaning is thinner than 0.2."""

FAN_DASH: Final = "1.3 0.8"
"""mm of line and of gap; choice: shorter dashes are lost when a copy is copied."""


def fan(strands: Points, shown: NDArray[np.float64], tone: Tone, pitch: float) -> str:
    """The fan of one part: white ground, its tone, its outline, and the bare tendon.

    ``strands``: (s, n, 2) projected paths from the humerus to the origin, equal steps along each, mm on
    the page; ``shown``: (s,) fraction of each path that is tendon, 0 to 1; ``pitch``: width of one
    slice near the origin, mm.
    """
    tendon = _resampled(strands, np.zeros_like(shown), shown)
    flesh = _resampled(strands, shown, np.ones_like(shown))
    slices = max(2, round(float(_width(flesh[:, -1])) / pitch))
    return "".join(
        [
            tag("path", d=polygon(_band(tendon, 0, 1)), fill="#fff", stroke_width=OUTLINE),
            tag("path", d=polygon(_band(flesh, 0, 1)), fill="#fff", stroke="none"),
            _filled(flesh, slices, tone),
            _outlined(flesh, tone),
        ]
    )


def _filled(flesh: Points, slices: int, tone: Tone) -> str:
    if tone == "none":
        return ""
    half = INK[tone] / 2
    bands = [_band(flesh, (i + 0.5 - half) / slices, (i + 0.5 + half) / slices) for i in range(slices)]
    return tag("path", d="".join(polygon(band) for band in bands), fill="#000", stroke="none")


def _outlined(flesh: Points, tone: Tone) -> str:
    edge = polygon(_band(flesh, 0, 1))
    if tone == "none":
        return path(edge, DASHED_OUTLINE, stroke_dasharray=FAN_DASH)
    return path(edge, OUTLINE)


def _resampled(strands: Points, start: NDArray[np.float64], end: NDArray[np.float64]) -> Points:
    """(s, STEPS, 2): each strand between two fractions of its way."""
    steps = np.arange(strands.shape[1]) / (strands.shape[1] - 1)
    at = start[:, None] + (end - start)[:, None] * np.linspace(0, 1, STEPS)
    return np.stack(
        [
            np.stack([np.interp(where, steps, strand[:, axis]) for axis in (0, 1)], axis=-1)
            for strand, where in zip(strands, at, strict=True)
        ]
    )


def _across(flesh: Points, share: float) -> Points:
    """(STEPS, 2): the fibre at ``share`` of the way from the first strand to the last."""
    place = share * (len(flesh) - 1)
    below = min(int(place), len(flesh) - 2)
    fibre: Points = flesh[below] + (place - below) * (flesh[below + 1] - flesh[below])
    return fibre


def _band(flesh: Points, first: float, last: float) -> Points:
    """The outline between two fibres; its edges at origin and tendon follow every strand between them."""
    count = len(flesh) - 1
    between = [i / count for i in range(count + 1) if first < i / count < last]
    fibres = [_across(flesh, share) for share in (first, *between, last)]
    far = [fibre[-1] for fibre in fibres[1:-1]]
    near = [fibre[0] for fibre in reversed(fibres[1:-1])]
    return np.array([*fibres[0], *far, *fibres[-1][::-1], *near])


def _width(ends: Points) -> float:
    return float(np.hypot(*np.diff(ends, axis=0).T).sum())
