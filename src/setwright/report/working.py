"""Words for work: which part works hardest, what works beside the chest, and how far each number goes."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final

from setwright.coverage import Coverage
from setwright.report.phrases import PARTS, joined

Movement = Mapping[str, Any]

WORDS: Final[Mapping[str, str]] = {
    "deltoid_anterior": "front deltoid",
    "deltoid_middle": "side deltoid",
    "deltoid_posterior": "rear deltoid",
    "latissimus_dorsi": "latissimus",
    "teres_major": "teres major",
    "coracobrachialis": "coracobrachialis",
}
"""What the parts outside the chest are called; those that no coach programmes for come last."""

LEADING: Final = tuple(WORDS)[:-1]
"""Those that may be said to work harder than the chest; coracobrachialis holds too much in the model."""

TIE: Final = 10.0
"""Points of work below which two are alike (choice: a tenth of the scale)."""

TOLD_FROM: Final = 5.0
"""Points of work from which a part beside the chest is named (choice)."""

WEAKEST: Final = {
    "start": "at the start of the lift",
    "middle": "in the middle",
    "end": "at the end",
}


def hardest(movement: Movement) -> str:
    """Which part of the chest works hardest, and which other part harder still, in a phrase marked soft."""
    if movement["refused"]:
        return "work not told"
    chest = {part: movement["parts"][part]["work"] for part in PARTS}
    others = {part: movement["other_parts"][part]["work"] for part in LEADING}
    best, other = max(chest, key=lambda part: chest[part]), max(others, key=lambda part: others[part])
    if chest[best] < TOLD_FROM:
        return f"the chest hardly works, the {WORDS[other]} hardest (soft)"
    alike = [part for part in PARTS if chest[best] - chest[part] < TIE]
    said = f"the {joined(alike, 'and')} part{'s' if len(alike) > 1 else ''} of the chest"
    verb = f"work{'' if len(alike) > 1 else 's'} hardest"
    ahead = others[other] - chest[best]
    harder = (
        "" if ahead <= -TIE else f", the {WORDS[other]} {'harder still' if ahead >= TIE else 'about as hard'}"
    )
    return f"{said} {verb}{harder} (soft)"


def figure(part: Mapping[str, Any]) -> str:
    """The work of a part as a number, with its mark where it is not solid.

    >>> figure({"work": 41.4, "trust": "soft"}), figure({"work": 41.4, "trust": "not usable"})
    ('41 soft', '-')
    """
    if part["trust"] == "not usable":
        return "-"
    return f"{part['work']:.0f}{'' if part['trust'] == 'solid' else ' soft'}"


def beside(movement: Movement) -> str:
    """The parts beside the chest that work, hardest first."""
    others = movement["other_parts"]
    found = [part for part in WORDS if others[part]["work"] >= TOLD_FROM and not movement["refused"]]
    ranked = sorted(found, key=lambda part: -others[part]["work"])
    return f"{', '.join(f'{WORDS[part]} {figure(others[part])}' for part in ranked) or 'nothing to tell'}."


def gives_out(movement: Movement) -> str:
    """Where a set ends: the weakest point of the path, the elbow, and whether the load is small anyway."""
    if movement["refused"]:
        return "not told."
    first = "the elbow gives out before the shoulder, " if movement["elbow_limited"] else "weakest "
    light = " Light by nature." if movement["light_by_nature"] else ""
    return f"{first}{WEAKEST[movement['weakest_point']]} (soft).{light}"


def trust(movement: Movement) -> Iterator[str]:
    """How far the numbers go, one sentence a kind of number."""
    yield "solid: line, midline, lever, length. Soft: which part of one movement works hardest."
    parts = {**movement["parts"], **movement["other_parts"]}
    told = {part: one for part, one in parts.items() if _told(one)}
    if solid := [WORDS.get(part, part) for part, one in told.items() if one["trust"] == "solid"]:
        yield f"Work ranks movements for {joined(solid, 'and')}; under {TIE:.0f} points apart is a tie."
    reasons: dict[str, list[str]] = {}
    for part, one in told.items():
        if one["trust"] != "solid":
            reasons.setdefault(f"{one['trust']}: {one['trust_why']}", []).append(WORDS.get(part, part))
    for reason, names in reasons.items():
        yield f"Work of {joined(names, 'and')} {reason}."


def work_in(coverage: Coverage) -> str:
    """Which move of a week works each part of the chest hardest; empty when none of them is scored."""
    most = []
    for part in PARTS:
        loading = [work for work in coverage.works if work.dose(part)]
        if loading:
            best = max(loading, key=lambda work: work.movement["parts"][part]["work"])
            most.append(f"{part} most in {best.name}, {figure(best.movement['parts'][part])}")
    return f"Work, 0-100 (soft; no dose): {'; '.join(most)}." if most else ""


def _told(part: Mapping[str, Any]) -> bool:
    return bool(part["work"] >= TOLD_FROM)


def ranking(movements: Sequence[Movement]) -> Iterator[str]:
    """For each part of the chest the movements that work it, hardest first."""
    for part in PARTS:
        usable = [one for one in movements if one["scored"] and one["parts"][part]["trust"] != "not usable"]
        worked = sorted(
            (one for one in usable if _told(one["parts"][part])), key=lambda one: -one["parts"][part]["work"]
        )
        if worked:
            names = ", ".join(f"{one['name']} {figure(one['parts'][part])}" for one in worked)
            yield f"{part:<13}{names}"
