"""Keys read by a table: which field each fills and how its value is typed."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any, Final, NamedTuple

from setwright.model.own import Word
from setwright.model.plan import Allowed
from setwright.reading import fields
from setwright.reading import key_rules as rules
from setwright.reading.file_rules import DOUBLE_KEY
from setwright.reading.gathering import Gathering
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Node, Pairs, Scalar
from setwright.reading.retyping import plain_blanks

OTHER_WORDS: Final[Mapping[str, str]] = {
    "title": "plan", "units": "unit", "days": "sessions", "workouts": "sessions",
    "exercises": "work", "lines": "work", "items": "work", "duration": "minutes",
    "exercise": "move", "movement": "move", "dose": "do", "reps": "do", "weight": "load", "intensity": "load",
    "side": "sides", "rir": "effort", "rpe": "effort", "cue": "note", "comment": "note", "comments": "note",
    "equipment": "kit", "coaches": "staff", "players": "athletes", "bodyweight": "body mass",
}  # fmt: skip
"""Words that coaches type for a key of the language (common practice, no source)."""


SURELY: Final = 0.85
"""Likeness (0 to 1) from which a misspelt key is read as the known one, after the finding; choice."""
FEW_KEYS: Final = 12
"""So many keys of a table are listed where none is like a typed one; choice."""


class Key(NamedTuple):
    """A key that fills ``field`` with what ``read`` makes of its value."""

    field: str
    read: Callable[[Node, Gathering], Any]


Table = Mapping[str, Key]


@dataclass(slots=True)
class Keys:
    """What was read: values by field; key and value nodes by the key's own word."""

    values: dict[str, Any] = field(default_factory=dict)
    keys: dict[str, Scalar] = field(default_factory=dict)
    nodes: dict[str, Node] = field(default_factory=dict)


def fold(typed: str) -> str:
    """The one form of a key: case, hyphens and underscores make no difference."""
    return " ".join(plain_blanks(typed).casefold().replace("_", " ").replace("-", " ").split())


def raw(node: Node, _: Gathering) -> Node:
    """The node itself, to be read once the other keys are known."""
    return node


def word_of(typed: Scalar) -> Word:
    """A typed word that is judged later, with its place."""
    return Word(text=typed.text, place=typed.place)


def read_word(node: Node, found: Gathering) -> Word | None:
    """A word that is judged later, or None when nothing or no word is written."""
    typed = fields.word(node, found)
    return word_of(typed) if typed else None


def read_keys(
    pairs: Iterable[tuple[Scalar, Node]],
    table: Table,
    found: Gathering,
    what: str,
    elsewhere: Mapping[str, str] = MappingProxyType({}),
) -> Keys:
    """The values of ``pairs`` by ``table``; ``what`` they are keys of, for people.

    ``elsewhere``: what to do with keys that belong to another place, by their folded word. A key that
    nobody knows is read as the known one it stands for or is almost spelt like, after the finding.
    """
    read = Keys()
    for key, node in pairs:
        name = fold(key.text)
        if name not in table:
            name = _known(key, table, found, what, elsewhere)
        if name in read.keys:
            first = read.keys[name]
            message = f'"{key.text}" says again what "{first.text}" says on line {first.place.line}'
            found.say(DOUBLE_KEY, key.place, message, "keep one of the two and take the other out")
        elif name:
            read.keys[name] = key
            read.nodes[name] = node
    for name, node in read.nodes.items():
        entry = table[name]
        if not is_empty(node):
            value = entry.read(node, found)
            if value is not None:
                read.values[entry.field] = value
    return read


def is_empty(node: Node) -> bool:
    """Whether a key stands without a value: not written."""
    return isinstance(node, Scalar) and node.is_empty


def pairs_of(node: Node, found: Gathering, what: str) -> tuple[tuple[Scalar, Node], ...]:
    """Keys that are names, with their values; ``what`` belongs here, for people."""
    if isinstance(node, Pairs):
        return node.pairs
    change = "write one key with its value a line, two blanks further in"
    found.say(rules.WRONG_FORM, node.place, f"{what} is expected here", change)
    return ()


def not_read_yet(key: Scalar, node: Node, why: str, change: str, found: Gathering) -> None:
    """The finding of something that is known but can't be used yet."""
    said = f" {node.text}" if isinstance(node, Scalar) and node.text else ""
    found.say(rules.NOT_READ_YET, key.place, f"`{key.text}:{said}` is known but not read yet: {why}", change)


def allowed(node: Node, found: Gathering) -> tuple[Allowed, ...]:
    """The rules that are silenced, each with its reason."""
    read = []
    for key, value in pairs_of(node, found, "a rule with its reason"):
        reason = fields.text(value, found)
        if reason:
            read.append(Allowed(rule=key.text, reason=reason, place=key.place))
        elif isinstance(value, Scalar):
            change = f"write `{key.text}: ` and the reason behind it"
            found.say(rules.REASON_MISSING, key.place, f"no reason is given for {key.text}", change)
    return tuple(read)


def _known(key: Scalar, table: Table, found: Gathering, what: str, elsewhere: Mapping[str, str]) -> str:
    """The key that an unknown one surely stands for, after saying so; empty when there is none."""
    name = fold(key.text)
    meant = OTHER_WORDS.get(name, "")
    sure = meant in table
    if not sure:
        meant = "" if name in elsewhere else next(iter(nearest(name, table)), "")
        sure = bool(meant) and bool(nearest(name, [meant], least=SURELY))
    if name in elsewhere:
        change = elsewhere[name]
    elif meant:
        change = f"write `{shown(meant)}:`"
    elif len(table) <= FEW_KEYS:
        change = f"write one of {', '.join(map(shown, table))}"
    else:
        change = "take it out, or write it under `note:`"
    found.say(rules.UNKNOWN_KEY, key.place, f'"{key.text}" is no key of {what}', change)
    return meant if sure else ""


def shown(folded: str) -> str:
    """A folded key as it is typed in the docs."""
    return _HYPHENS.get(folded, folded)


_HYPHENS: Final = {"warm up": "warm-up", "cool down": "cool-down"}
