"""Movements of a coach's own, from keys under ``movements:`` or from a file beside the plan."""

from collections.abc import Mapping
from typing import Final

from setwright.model.own import OwnMovement, Posture, Word
from setwright.model.reader.beside import Files
from setwright.model.reader.keys import Key, Table, fold, is_empty, pairs_of, read_keys, read_word, word_of
from setwright.model.reader.own_values import forearm, grip, metres, pull, torso
from setwright.reading import fields, measures
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Listing, Node, Pairs, Scalar

FEWEST: Final = 2
MOST: Final = 7
"""Postures of a path (choice: two ends, and as many between as a coach can tell apart)."""
STRAIGHT_DEG: Final = 5.0
"""Bend of the elbow, degrees, up to which nobody sees where the forearm points (choice)."""
ROUND: Final = {"plane": (-90.0, 150.0), "up": (0.0, 180.0), "elbow": (0.0, 160.0)}
"""Degrees that a posture may name: what a shoulder and an elbow do (plane: the girdle's own limits)."""


def _words(node: Node, found: Gathering) -> tuple[Word, ...]:
    return tuple(map(word_of, fields.placed_names(node, found)))


UNITS: Final = {"reps": "reps", "s": "s", "seconds": "s", "m": "m", "metres": "m", "steps": "steps"}
MUSCLE_KEYS: Final[Table] = {"direct": Key("direct", _words), "indirect": Key("indirect", _words)}
POSTURE_KEYS: Final[Table] = {
    "at": Key("at", fields.text),
    "plane": Key("plane", measures.degrees),
    "up": Key("up", measures.degrees),
    "elbow": Key("elbow", measures.degrees),
    "forearm": Key("forearm", forearm),
    "shoulders forward": Key("shoulders_forward", measures.degrees),
}


def _muscles(node: Node, found: Gathering) -> dict[str, tuple[Word, ...]]:
    pairs = pairs_of(node, found, "`direct:` or `indirect:` with the muscles")
    return read_keys(pairs, MUSCLE_KEYS, found, "muscles").values


def _path(node: Node, found: Gathering) -> tuple[Posture, ...] | None:
    entries = node.nodes if isinstance(node, Listing) else ()
    if not FEWEST <= len(entries) <= MOST:
        message = f"a path has {FEWEST} to {MOST} postures, in the order of the lift"
        found.say(
            rules.WRONG_FORM, node.place, message, "start each posture with `- at:`, one below the other"
        )
        return None
    postures = [_posture(entry, found) for entry in entries]
    return tuple(one for one in postures if one) if all(postures) else None


def _posture(node: Node, found: Gathering) -> Posture | None:
    if not isinstance(node, Pairs) or not node.pairs:
        change = "write `- at: start` and below it `plane:`, `up:`, `elbow:` and `forearm:`"
        found.say(rules.WRONG_FORM, node.place, "the keys of a posture are expected here", change)
        return None
    read = read_keys(node.pairs, POSTURE_KEYS, found, "a posture")
    values, place = read.values, node.pairs[0][0].place
    whole = all(_within(key, values[key], read.nodes[key], found) for key in ROUND if key in values)
    missing = [key for key in ("plane", "up") if key not in read.keys]
    if values.get("elbow", 0.0) > STRAIGHT_DEG and "forearm" not in read.keys:
        missing.append("forearm")
    if missing:
        what = " and ".join(f"`{key}`" for key in missing)
        message = f"the posture does not say {what}"
        found.say(
            rules.OWN_UNFINISHED, place, message, f"write {what} in line with `at:`, {_HELP[missing[0]]}"
        )
    if missing or not whole or {"plane", "up"} - set(values):
        return None
    return Posture(place=place, **{"at": "a posture", **values})


_HELP: Final = {
    "plane": "for example `plane: 0` out to the side or `plane: 90` straight ahead",
    "up": "for example `up: 0` hanging or `up: 90` level",
    "forearm": "for example `forearm: up`",
}


def _within(key: str, value: float, node: Node, found: Gathering) -> bool:
    low, high = ROUND[key]
    if low <= value <= high:
        return True
    message = f"{key}: no arm goes to {value:g} deg"
    found.say(rules.NOT_A_NUMBER, node.place, message, f"write degrees from {low:g} to {high:g}")
    return False


KEYS: Final[Mapping[str, Key]] = {
    "like": Key("like", read_word),
    "pattern": Key("pattern", read_word),
    "loaded by": Key("loaded_by", fields.text),
    "sides": Key("sides", fields.one_of("way to work the sides", ("both", "one", "alternating"))),
    "counted in": Key("counted_in", fields.one_of("unit to count in", UNITS)),
    "kit": Key("kit", fields.names),
    "cautions": Key("cautions", fields.texts),
    "muscles": Key("muscles", _muscles),
    "hands": Key("hands", fields.one_of("way to hold", ("fixed apart", "fixed together", "free"))),
    "bench": Key("bench", measures.degrees),
    "arch": Key("arch", measures.degrees),
    "grip": Key("grip", grip),
    "pulley": Key("pulley", metres),
    "hands raised": Key("hands_raised", measures.centimetres),
    "torso": Key("recline", torso),
    "load pulls": Key("pull", pull),
    "path": Key("path", _path),
    "note": Key("note", fields.text),
}


def read_own(node: Node | None, files: Files) -> tuple[tuple[OwnMovement, ...], tuple[str, ...]]:
    """The movements of a coach's own, and the names of those that can't be read."""
    if isinstance(node, Scalar):
        node = files.named(node, "movements")
        if isinstance(node, Pairs) and [fold(key.text) for key, _ in node.pairs] == ["movements"]:
            node = node.pairs[0][1]
    if node is None:
        return (), ()
    pairs = pairs_of(node, files.found, "the name of a movement with its keys below")
    read = [(key.text, _own(key, value, files.found)) for key, value in pairs]
    return tuple(own for _, own in read if own), tuple(name for name, own in read if own is None)


def _own(name: Scalar, node: Node, found: Gathering) -> OwnMovement | None:
    before = len(found.findings)
    if not isinstance(node, Pairs) or not node.pairs:
        change = f"write below `{name.text}:`, two blanks further in, for example `like: push-up`"
        found.say(rules.OWN_UNFINISHED, name.place, f'nothing says what "{name.text}" is', change)
        return None
    with found.of("own movements"):
        read = read_keys(node.pairs, KEYS, found, "a movement of your own")
    values = read.values
    places = {key: read.keys[key].place for key, node in read.nodes.items() if not is_empty(node)}
    unread = [key for key in places if KEYS[key].field not in values]
    values |= values.pop("muscles", {})
    own = OwnMovement(name=name.text, place=name.place, places=places, **values)
    return None if unread or len(found.findings) > before or not _is_whole(own, found) else own


def _is_whole(own: OwnMovement, found: Gathering) -> bool:
    """Whether it is like another one, or has a path with its load, or has muscles, and nothing is lost."""
    if own.like and own.path:
        message = f"{own.name} has a path and is like another movement"
        change = "keep `like:` with its changes, or `path:`"
        found.say(rules.OWN_UNFINISHED, own.places["path"], message, change)
        return False
    if own.like:
        return True
    lost = [key for key in own.changes if not own.path or key in GIVEN_BY_POSTURES]
    missing = _missing(own)
    if missing:
        message = f"{own.name} does not say `{missing[0]}`"
        found.say(rules.OWN_UNFINISHED, own.place, message, _MISSING[missing[0]])
    elif lost:
        why = "its postures say where the hands are" if own.path else "it has no arm path"
        message = f"{own.name}: {why}, so `{lost[0]}:` has nothing to change"
        found.say(rules.OWN_CHANGE, own.places[lost[0]], message, f"take `{lost[0]}:` out, or write `like:`")
    return not missing and not lost


GIVEN_BY_POSTURES: Final = frozenset({"grip", "hands raised"})


def _missing(own: OwnMovement) -> list[str]:
    if not own.path and not own.direct and not own.indirect:
        return ["like"]
    missing = [] if own.pattern else ["pattern"]
    if own.path:
        missing += [] if own.pull else ["load pulls"]
        missing += ["torso"] if own.recline is None and own.bench is None else []
    return missing


_MISSING: Final = {
    "like": "write `like:` and a movement of the library, `path:` with postures, or `muscles:`",
    "pattern": "write `pattern:` and what it is, for example `pattern: horizontal push`",
    "load pulls": "write `load pulls:`, for example `load pulls: down` or `load pulls: toward low pulley`",
    "torso": "write `torso:`, for example `torso: upright`, `torso: supine` or `torso: incline 30 deg`",
}
