"""Where along its length a part is loaded: tones a sample, the words long and short, the strip of signs."""

from typing import Final, Literal

import numpy as np
from numpy.typing import NDArray

from setwright.engine.frames import Floats

Loaded = Literal["yes", "partly", "no"]

LEAST_LEVER: Final = 10.0
"""Lever from which a part counts as loaded, mm (choice)."""

LEAST_COSINE: Final = 0.3
"""Cosine between pull and need from which a part counts as loaded (choice)."""

MUCH_RESISTANCE: Final = 0.5
"""Share of the path's peak resistance from which a posture loads a part much (choice)."""

SOME_RESISTANCE: Final = 0.25
"""Share of the path's peak resistance from which it loads a part some (choice)."""

NONE, SOME, MUCH = range(3)
"""The tones of a posture."""

LONG: Final = 67.0
"""Percent of the attainable length from which a part is long (choice: the outer third)."""

SHORT: Final = 33.0
"""Percent of the attainable length up to which a part is short (choice: the outer third)."""

NEAR: Final = 5.0
"""Points of length from which a limit is still partly met (choice)."""

STRIP: Final = 40
"""Signs in a strip: shortest at the left, longest at the right."""


def tones(resistance: Floats, lever_at: Floats, cosine_at: Floats) -> NDArray[np.int8]:
    """How much each posture loads each part: 2 much, 1 some, 0 hardly; (..., n, 3).

    ``resistance`` (..., n), ``lever_at`` mm and ``cosine_at`` (..., n, 3) as in ``Scores``.

    >>> tones(np.array([1.0, 0.3]), np.array([[40.0, 5, 40], [40, 40, 40]]), np.full((2, 3), 0.9)).tolist()
    [[2, 0, 2], [1, 1, 1]]
    """
    much, some = resistance >= MUCH_RESISTANCE, resistance >= SOME_RESISTANCE
    loads = (lever_at >= LEAST_LEVER) & (cosine_at >= LEAST_COSINE)
    return np.where(loads, (much.astype(np.int8) + some)[..., None], 0).astype(np.int8)


def loaded_long(length: Floats, tone: NDArray[np.int8]) -> Loaded:
    """Whether one part is loaded at long length; ``length`` percent and ``tone`` (n,) along a path.

    >>> loaded_long(np.array([64.0, 40.0]), np.array([2, 2], dtype=np.int8))
    'partly'
    """
    return _loaded(length - LONG, tone)


def loaded_short(length: Floats, tone: NDArray[np.int8]) -> Loaded:
    """Whether one part is loaded at short length; ``length`` percent and ``tone`` (n,) along a path.

    >>> loaded_short(np.array([64.0, 30.0]), np.array([2, 2], dtype=np.int8))
    'yes'
    """
    return _loaded(SHORT - length, tone)


def _loaded(beyond: Floats, tone: NDArray[np.int8]) -> Loaded:
    """Yes: much, beyond the limit; partly: some beyond it, or much within NEAR points of it."""
    if (tone[beyond >= 0] == MUCH).any():
        return "yes"
    return "partly" if (tone[beyond >= 0] == SOME).any() or (tone[beyond >= -NEAR] == MUCH).any() else "no"


def longest_loaded(length: Floats, tone: NDArray[np.int8]) -> float | None:
    """The longest length, percent up to 100, at which one part is much loaded along a path (n,), or None.

    >>> longest_loaded(np.array([64.0, 30.0]), np.array([1, 2], dtype=np.int8))
    30.0
    """
    long = length[tone == MUCH]
    return float(np.clip(long.max(), 0, 100)) if long.size else None


def strip(length: Floats, tone: NDArray[np.int8]) -> str:
    """The strip of one part along a path: STRIP signs from shortest to longest.

    ``.`` length not used, ``-`` moved and hardly loaded, ``=`` some, ``#`` much, ``|`` where the path ends.
    ``length`` percent and ``tone`` (n,).

    >>> strip(np.array([90.0, 40.0]), np.array([2, 0], dtype=np.int8))
    '................|---------###########...'
    """
    place = np.clip(length / 100 * STRIP, 0, STRIP - 1)
    middle = (place[:-1] + place[1:]) / 2
    around = np.stack([[place[0], *middle], place, [*middle, place[-1]]])  # each sample reaches half way
    tone_at = np.full(STRIP, -1)
    for low, high, value in zip(
        around.min(axis=0).astype(int), around.max(axis=0).astype(int), tone, strict=True
    ):
        tone_at[low : high + 1] = np.maximum(tone_at[low : high + 1], value)
    signs = [".-=#"[value + 1] for value in tone_at]
    signs[int(place[-1])] = "|"
    return "".join(signs)
