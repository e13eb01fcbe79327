"""Values of a movement of one's own: trunk, forearm, grip, height of a pulley, where the load pulls."""

import re
from typing import Final

from setwright.model.own import Grip, Pull, Vector
from setwright.reading import key_rules as rules
from setwright.reading.fields import word
from setwright.reading.gathering import Gathering
from setwright.reading.measures import CM_A_METRE, number
from setwright.reading.nearest import choice
from setwright.reading.nodes import Listing, Node, Scalar
from setwright.reading.retyping import plain_blanks

_NUMBER: Final = r"(\d+(?:[.,]\d+)?)"
_SIGNED: Final = re.compile(r"-?\d+(?:[.,]\d+)?$")
_LENGTH: Final = re.compile(rf"{_NUMBER} ?(cm|m)$")
_WIDTHS: Final = re.compile(rf"{_NUMBER} ?(?:x )?(?:shoulder )?widths?$")
_TORSO: Final = re.compile(
    rf"(incline|decline|bent over|lean(?:ing)? forward|lean(?:ing)? back) {_NUMBER}(?: ?(?:deg|degrees))?$"
)
_TOWARD: Final = re.compile(
    r"towards? (?:a |the )?(low|chest|shoulder|high)(?:[- ]height)? (?:pulley|anchor)(?: (.+))?$"
)
_STEP: Final = re.compile(rf"{_NUMBER} ?(cm|m) (.+)$")

DIRECTIONS: Final[dict[str, Vector]] = {
    "forward": (1, 0, 0), "back": (-1, 0, 0),
    "up": (0, 1, 0), "down": (0, -1, 0),
    "out": (0, 0, 1), "in": (0, 0, -1),
}  # fmt: skip
"""Where a forearm points, for a lifter who stands upright: forward, up and out of the right shoulder."""

AXES: Final = ("forward", "up", "out")

STEPS: Final[dict[str, Vector]] = {
    **DIRECTIONS, "in front": (1, 0, 0), "ahead": (1, 0, 0), "behind": (-1, 0, 0), "above": (0, 1, 0),
    "below": (0, -1, 0), "to the side": (0, 0, 1), "to the other side": (0, 0, -1),
}  # fmt: skip
SIDES: Final = ("in front", "behind", "to the side", "to the other side")

LYING: Final = {"upright": 0.0, "supine": 90.0, "prone": -90.0}
"""The trunk turned back from upright, degrees."""

KINDS: Final = {
    "down": "gravity", "up": "support vertical", "against the motion": "against path",
    "square to the trunk": "support square", "toward the other hand": "toward other hand",
}  # fmt: skip
"""What a coach types, with the library's word for the direction of the load on the hand."""

PIVOTING: Final = frozenset({"down on a pivoting bar", "down on a landmine"})
FLOOR_PIVOT: Final[Vector] = (1.8, -1.4, 0.0)
"""Place of the pivot, metres forward, up and out of the notch: that of the library's pivoting bar."""

PULLS: Final = (
    "`down`, `up`, `against the motion`, `toward low pulley` or `toward 0.4 m behind, 1.2 m below, 0.9 m out`"
)


def _typed(node: Node, found: Gathering) -> tuple[Scalar, str] | None:
    """The value and its one form: lower case, single blanks."""
    typed = word(node, found)
    return None if typed is None else (typed, " ".join(plain_blanks(typed.text).casefold().split()))


def torso(node: Node, found: Gathering) -> float | None:
    """Degrees the trunk is turned back from upright: "supine", "incline 30 deg", "bent over 45 deg"."""
    read = _typed(node, found)
    if read is None:
        return None
    typed, text = read
    if text in LYING:
        return LYING[text]
    match = _TORSO.match(text)
    if match is None:
        change = (
            "write `upright`, `supine`, `prone`, `incline 30 deg`, `decline 15 deg` or `bent over 45 deg`"
        )
        found.say(rules.NOT_A_CHOICE, typed.place, f'"{typed.text}" is no posture of the trunk', change)
        return None
    angle = number(match[2])
    return {"incline": 90 - angle, "decline": 90 + angle, "leaning back": angle, "lean back": angle}.get(
        match[1], -angle
    )


def forearm(node: Node, found: Gathering) -> Vector | None:
    """Where the forearm points: one of six words, or three numbers forward, up and out."""
    if isinstance(node, Listing):
        parts = [entry.text if isinstance(entry, Scalar) else "" for entry in node.nodes]
        place = node.place
    else:
        read = _typed(node, found)
        if read is None:
            return None
        if read[1] in DIRECTIONS:
            return DIRECTIONS[read[1]]
        parts, place = read[1].split(", "), read[0].place
    if len(parts) == len(AXES) and all(map(_SIGNED.match, parts)) and any(number(part) for part in parts):
        forward, up, out = map(number, parts)
        return forward, up, out
    change = f"write {choice(DIRECTIONS)}, or three numbers: how far forward, up and out"
    found.say(rules.NOT_A_CHOICE, place, "that is no direction of a forearm", change)
    return None


def grip(node: Node, found: Gathering) -> Grip | None:
    """How far apart the hands are: "72 cm", "1.5 shoulder widths"."""
    read = _typed(node, found)
    if read is None:
        return None
    typed, text = read
    if match := _WIDTHS.match(text):
        return Grip(value=number(match[1]), in_widths=True)
    if match := _LENGTH.match(text):
        return Grip(value=number(match[1]) * (1 if match[2] == "cm" else CM_A_METRE), in_widths=False)
    change = "write centimetres between the hands, `72 cm`, or `1.5 shoulder widths`"
    found.say(rules.NOT_A_NUMBER, typed.place, f'"{typed.text}" is no width of a grip', change)
    return None


def metres(node: Node, found: Gathering) -> float | None:
    """A height in metres with its unit: "1.2 m", "120 cm"."""
    read = _typed(node, found)
    match = _LENGTH.match(read[1]) if read else None
    if read and not match:
        change = "write the height above the floor, for example `1.2 m`"
        found.say(rules.NOT_A_NUMBER, read[0].place, f'"{read[0].text}" is no height', change)
    return _metres(match) if match else None


def _metres(match: re.Match[str]) -> float:
    return number(match[1]) / (1 if match[2] == "m" else CM_A_METRE)


def pull(node: Node, found: Gathering) -> Pull | None:
    """Where the load pulls the hand: a word, a pulley in words, or its place in metres."""
    read = _typed(node, found)
    if read is None:
        return None
    typed, text = read
    if text in PIVOTING:
        return Pull(place=typed.place, kind="pivoting bar", point=FLOOR_PIVOT)
    if text in KINDS:
        return Pull(place=typed.place, kind=KINDS[text])
    match = _TOWARD.match(text)
    if match and match[2] in (None, *SIDES):
        return Pull(place=typed.place, kind="toward point", height=match[1], side=match[2])
    point = _point(text)
    if point:
        return Pull(place=typed.place, kind="toward point", point=point)
    found.say(
        rules.NOT_A_CHOICE, typed.place, f'"{typed.text}": where does that pull the hand?', f"write {PULLS}"
    )
    return None


def _point(text: str) -> Vector | None:
    """The place of a pulley from its steps away from the notch, "toward 0.4 m behind, 1.2 m below"."""
    steps = [_STEP.match(step) for step in text.removeprefix("toward ").split(", ")]
    if not text.startswith("toward ") or not all(step and step[3] in STEPS for step in steps):
        return None
    way = [[_metres(step) * axis for axis in STEPS[step[3]]] for step in steps if step]
    forward, up, out = map(sum, zip(*way, strict=True))
    return forward, up, out
