"""Muscle groups, and the fractional count: how much of a set each group gets from a movement."""

from collections.abc import Iterable, Mapping
from typing import Final

from setwright.coverage.shapes import PARTS, PUSHES, Work
from setwright.model.muscles import GROUP_WORDS

GROUPS: Final[Mapping[str, frozenset[str]]] = {
    "chest": frozenset({"pectoralis major", "pectoralis major costal part"}),
    "back": frozenset({"latissimus dorsi", "teres major", "rhomboids", "middle trapezius", "upper back"}),
    "front deltoid": frozenset({"anterior deltoid", "deltoid"}),
    "side deltoid": frozenset({"middle deltoid", "deltoid"}),
    "rear deltoid": frozenset({"posterior deltoid"}),
    "elbow flexors": frozenset(
        {"biceps brachii", "biceps brachii short head", "brachialis", "brachioradialis"}
    ),
    "triceps": frozenset({"triceps brachii", "triceps brachii long head"}),
    "quadriceps": frozenset({"quadriceps"}),
    "hamstrings": frozenset({"hamstrings"}),
    "glutes": frozenset({"gluteus maximus"}),
    "calves": frozenset({"gastrocnemius", "soleus"}),
}
"""The groups a coach counts, by the library's muscle names (common practice, no source)."""

MAIN_GROUPS: Final = ("chest", "back", "quadriceps", "hamstrings", "glutes")
"""Judged for too few sets without being asked; the small ones get much of their work from these (choice)."""

WHOLE, HALF = 1.0, 0.5
"""Sets credited for the muscle a movement is for, and for one that helps (pelland2024, abstract)."""

Shares = Mapping[str, float]


def group_named(word: str) -> str | None:
    """The muscle group that a coach's word means, or None."""
    return GROUP_WORDS.get(word.strip().casefold())


def shares(work: Work) -> Shares:
    """How much of one hard set each group gets: 1 for what the movement is for, 0.5 for what helps.

    The library tags every muscle but the chest for scored movements. Where the chest leads, the tagged
    muscles help; in every push the triceps helps (common practice, no source).
    """
    prime = frozenset(work.movement["prime"])
    helping = prime | frozenset(work.movement["assist"])
    push = work.movement["pattern"] in PUSHES
    credit = {"chest": _chest_share(work)}
    for group, muscles in GROUPS.items():
        if group == "chest" or not muscles & helping:
            continue
        leads = muscles & prime and not work.serves and not (push and group == "triceps")
        credit[group] = WHOLE if leads else HALF
    return {group: share for group, share in credit.items() if share}


def shares_by_movement(works: Iterable[Work]) -> dict[str, Shares]:
    """``shares`` of each movement of some works, by its key, worked out once a movement."""
    one_each = {work.movement["key"]: work for work in works}
    return {key: shares(work) for key, work in one_each.items()}


def _chest_share(work: Work) -> float:
    counted = not work.movement["scored"] and GROUPS["chest"] & frozenset(work.movement["prime"])
    if work.direct_chest or counted:
        return WHOLE
    helps = any(work.dose(part) for part in PARTS)
    return HALF if helps or GROUPS["chest"] & frozenset(work.movement["assist"]) else 0.0
