"""A movement of a coach's own in the form of the library: plain data, without figures of the engine."""

import re
from collections.abc import Mapping
from typing import Any, Final, get_args

from setwright.library.closed import Muscle, Pattern
from setwright.library.names import split
from setwright.model.own import OwnMovement, Word
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nearest import nearest

Entry = Mapping[str, Any]

COUNTED: Final = {"reps": "each rep once", "s": "seconds", "m": "metres", "steps": "steps"}
"""The library's sentence about counting for each unit."""

_OTHER_WORDS: Final = {"press": "push", "row": "pull", "curl": "elbow flexion"}
"""Words for a pattern that coaches type, with those of the library (common practice, no source)."""
LOADED_BY: Final = {
    "barbell": "bar and plates", "trap bar": "trap bar and plates", "dumbbell": "dumbbell",
    "dumbbells": "dumbbell pair", "kettlebell": "kettlebell", "kettlebells": "kettlebells", "cable": "cable",
    "band": "band",
}  # fmt: skip
"""The station that each load needs, in the library's words; a load of one's own needs none of them."""
_OF_A_LOAD: Final = frozenset({
    *LOADED_BY.values(), "rack", "rack set low", "guided-bar rack", "bar and bumper plates", "cable pair",
    "band pair", "band or cable", "cable or band", "dumbbell or kettlebell", "weight", "pair of weights",
    "plate",
})  # fmt: skip
"""Stations that are there for the load alone."""
_A_WIDTH: Final = re.compile(r"\d cm\b")


def key_of(own: OwnMovement) -> str:
    """The key of a movement of one's own; the library has none that starts like it."""
    return "-".join(("own", *split(own.name)))


def copied(own: OwnMovement, base: Entry, found: Gathering) -> dict[str, Any]:
    """The entry of a movement that is like ``base``: everything of it but the names, and what was typed.

    A caution about a width in cm does not hold for a grip of one's own.
    """
    names: dict[str, Any] = {
        "aliases": [],
        "read_only_aliases": [],
        "easier": [],
        "harder": [],
        "load_ratio": None,
    }
    cautions = [one for one in base["cautions"] if own.grip is None or not _A_WIDTH.search(one)]
    return {**base, **names, "cautions": cautions, "needs": _needs(own, base), **_typed(own, found)}


def _needs(own: OwnMovement, base: Entry) -> list[str]:
    """The stations of ``base``, without those of a load that is another one here."""
    if own.loaded_by is None:
        return list(base["needs"])
    kept = [need for need in base["needs"] if need not in _OF_A_LOAD]
    return [*kept, *filter(None, [LOADED_BY.get(_load_word(own.loaded_by))])]


def _load_word(typed: str) -> str:
    """What loads a movement, in the library's word where it has one."""
    return " ".join(
        word for word in typed.casefold().split() if word not in ("a", "one", "two", "pair", "of")
    )


def described(own: OwnMovement, found: Gathering) -> dict[str, Any]:
    """The entry of a movement that is like no other, counted by its muscles."""
    loaded_by = _load_word(own.loaded_by or "none")
    return {
        "aliases": [], "read_only_aliases": [], "pattern": "", "implement": loaded_by, "needs": [],
        "bench_deg": None, "hands": "free", "sides": "both", "banned_by": None, "counting": COUNTED["reps"],
        "load_kind": "bodyweight" if loaded_by == "bodyweight" else "external",
        "load_write": "as the plan says",
        "class": "moderate", "class_why": "a movement of your own, taken as moderate", "load_ratio": None,
        "prime": [], "assist": [], "cautions": [], "easier": [], "harder": [], "scored": False,
        **_typed(own, found),
    }  # fmt: skip


def _typed(own: OwnMovement, found: Gathering) -> dict[str, Any]:
    typed = {
        "pattern": _known(own.pattern, get_args(Pattern), "pattern of the library", found),
        "implement": own.loaded_by and _load_word(own.loaded_by),
        "needs": list(own.kit),
        "bench_deg": own.bench,
        "hands": own.hands,
        "sides": own.sides,
        "counting": own.counted_in and COUNTED[own.counted_in],
        "prime": _muscles(own.direct, found),
        "assist": _muscles(own.indirect, found),
        "cautions": list(own.cautions),
    }
    written = {field: value for field, value in typed.items() if value not in (None, [])}
    return {**written, "key": key_of(own), "name": own.name, "own": True}


def _muscles(words: tuple[Word, ...], found: Gathering) -> list[str]:
    read = (_known(word, get_args(Muscle), "muscle of the library", found) for word in words)
    return [muscle for muscle in read if muscle]


def _known(word: Word | None, known: tuple[str, ...], what: str, found: Gathering) -> str | None:
    if word is None:
        return None
    typed = " ".join(word.text.casefold().split())
    if typed in known:
        return typed
    meant = _OTHER_WORDS.get(typed, typed)
    near = [one for one in known if meant in one] or nearest(typed, known, most=3)
    change = (
        f"write {' or '.join(f'`{one}`' for one in near)}" if near else f"write one of {', '.join(known)}"
    )
    found.say(rules.NOT_A_CHOICE, word.place, f'"{word.text}" is no {what}', change)
    return None
