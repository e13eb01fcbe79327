"""Look-up in the compiled library. Plain dicts from ``data/library.json``: no numpy, no YAML, no models."""

from collections import Counter, defaultdict
from collections.abc import Mapping
from functools import cache, cached_property
from itertools import chain
from pathlib import Path
from typing import Any, Final, NamedTuple

from pydantic_core import from_json

from setwright.library.names import fold, likeness, pairs, without_dose_words

LIBRARY_FILE: Final = Path(__file__).parents[1] / "data" / "library.json"

Movement = Mapping[str, Any]
"""A movement as ``data/library.json`` has it, figures of the engine too where it is scored."""

MODEL_NOTE: Final = "Mechanical figures from one cadaver-sized model; not muscle activity, not growth"
"""Stands wherever a figure of the model is shown."""

NEAREST: Final = 3
"""How many names are proposed for an unknown one; choice: what a coach reads at a glance."""

LIKE_ENOUGH: Final = 0.4
"""Lowest likeness that is proposed; choice, from typed errors tried by hand."""


class Match(NamedTuple):
    """What a typed movement name means.

    ``key`` and ``name`` (the library's own) when it is known; else ``ask``, a question, for a word
    with several readings; else ``nearest``, names to propose, best first. ``stripped``: typed words
    that change the dose and not the movement, taken out to find it.
    """

    key: str | None = None
    name: str | None = None
    nearest: tuple[str, ...] = ()
    ask: str | None = None
    stripped: tuple[str, ...] = ()


class Library:
    """The movements and their names, from a mapping in the form "setwright-library/1"."""

    def __init__(self, data: Mapping[str, Any]) -> None:
        self._movements: Mapping[str, Movement] = data["movements"]
        self._names: Mapping[str, str] = data["names"]
        self._ambiguous: Mapping[str, Mapping[str, Any]] = data["ambiguous"]

    def extended(self, movements: Mapping[str, Movement], names: Mapping[str, str]) -> "Library":
        """A library with more or other movements, by key, and more names, folded, with their keys."""
        return Library(
            {
                "movements": {**self._movements, **movements},
                "names": {**self._names, **names},
                "ambiguous": self._ambiguous,
            }
        )

    def movement(self, key: str) -> Movement:
        """One movement by its key. Raises: KeyError."""
        return self._movements[key]

    def movements(self) -> Mapping[str, Movement]:
        """Every movement by its key, in the order of the library."""
        return self._movements

    def keys(self) -> list[str]:
        """The key of every movement, in the order of the library."""
        return list(self._movements)

    def names(self) -> list[str]:
        """The name of every movement, in the order of the library."""
        return [movement["name"] for movement in self._movements.values()]

    def find(self, name: str) -> Match:
        """What a typed name means: a movement, a question, or the nearest names."""
        found = self._known(name)
        if found:
            return found
        rest, stripped = without_dose_words(name)
        found = self._known(rest) if stripped else None
        return found._replace(stripped=stripped) if found else Match(nearest=self._nearest(rest))

    def _known(self, name: str) -> Match | None:
        folded = fold(name)
        if folded in self._names:
            key = self._names[folded]
            return Match(key=key, name=self._movements[key]["name"])
        if folded in self._ambiguous:
            return Match(ask=self._ambiguous[folded]["question"])
        return None

    @cached_property
    def _by_pair(self) -> dict[str, list[str]]:
        """The names that hold each pair of letters: only names with something in common are scored."""
        found: dict[str, list[str]] = defaultdict(list)
        for folded in self._names:
            for pair in pairs(folded):
                found[pair].append(folded)
        return found

    @cached_property
    def _sizes(self) -> dict[str, int]:
        return {folded: len(pairs(folded)) for folded in self._names}

    def _nearest(self, name: str) -> tuple[str, ...]:
        typed = pairs(fold(name))
        shared = Counter(chain.from_iterable(self._by_pair.get(pair, ()) for pair in typed))
        fewest = LIKE_ENOUGH / 2 * len(typed)
        best: dict[str, float] = {}
        for folded, count in shared.items():
            if count >= fewest and (score := likeness(count, len(typed), self._sizes[folded])) >= LIKE_ENOUGH:
                key = self._names[folded]
                best[key] = max(best.get(key, 0.0), score)
        ranked = sorted((-score, key) for key, score in best.items())
        return tuple(self._movements[key]["name"] for _, key in ranked[:NEAREST])


@cache
def library() -> Library:
    """The library shipped with the package, read once a process."""
    return Library(from_json(LIBRARY_FILE.read_bytes()))
