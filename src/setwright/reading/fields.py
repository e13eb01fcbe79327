"""Values by the field they stand in: text, names, whole numbers, one of several words.

A reader takes a node and gives its value, or None and a finding; ``measures`` reads numbers with a unit.
"""

import re
from collections.abc import Callable, Iterable, Mapping
from typing import Final

from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nearest import choice, nearest
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.retyping import plain_blanks

MOST: Final = 999_999
"""Largest whole number that is read (choice)."""

_WHOLE = re.compile(r"\d{1,6}$")


def text(node: Node, found: Gathering) -> str | None:
    """Free text; it may run over lines."""
    if isinstance(node, Scalar):
        return " ".join(plain_blanks(node.text).split()) or None
    found.say(
        rules.WRONG_FORM,
        node.place,
        "text is expected here, not a list or keys",
        "write the text behind the colon",
    )
    return None


def word(node: Node, found: Gathering) -> Scalar | None:
    """A value on one line, with its place."""
    if not isinstance(node, Scalar):
        found.say(
            rules.WRONG_FORM,
            node.place,
            "one value is expected here, not a list or keys",
            "write one value behind the colon",
        )
        return None
    if node.lines > 1:
        typed = node.text.replace("\n", " ")
        found.say(
            rules.OVER_LINES, node.place, "the value runs on into the next line",
            f"write it on one line, `{typed}`, or start the next line with its own key",
        )  # fmt: skip
        return None
    return None if node.is_empty else node


def whole(least: int = 0, most: int = MOST) -> Callable[[Node, Gathering], int | None]:
    """A reader of whole numbers from ``least`` to ``most``."""

    def read(node: Node, found: Gathering) -> int | None:
        typed = word(node, found)
        if typed is None:
            return None
        if _WHOLE.match(typed.text) and least <= int(typed.text) <= most:
            return int(typed.text)
        span = f"from {least} to {most}" if most < MOST else f"from {least} up"
        found.say(
            rules.NOT_A_NUMBER,
            typed.place,
            f'"{typed.text}" is no whole number {span}',
            f"write a whole number {span}",
        )
        return None

    return read


class OneOf:
    """A reader of one of several words. ``spellings``: each word that is read, with the one it stands for."""

    def __init__(self, what: str, words: Mapping[str, str] | Iterable[str]) -> None:
        self._what = what
        self.spellings = words if isinstance(words, Mapping) else {known: known for known in words}

    def __call__(self, node: Node, found: Gathering) -> str | None:
        """The word that ``node`` stands for, or None and a finding."""
        typed = word(node, found)
        if typed is None:
            return None
        folded = " ".join(plain_blanks(typed.text).casefold().split())
        if folded in self.spellings:
            return self.spellings[folded]
        near = nearest(folded, self.spellings)
        known = choice(dict.fromkeys(self.spellings.values()))
        change = f"write `{self.spellings[near[0]]}`; the words are {known}" if near else f"write {known}"
        found.say(rules.NOT_A_CHOICE, typed.place, f'"{typed.text}" is no {self._what}', change)
        return None


def one_of(what: str, words: Mapping[str, str] | Iterable[str]) -> OneOf:
    """A reader of one of several words; a mapping may also name other spellings of them."""
    return OneOf(what, words)


def names(node: Node, found: Gathering) -> tuple[str, ...]:
    """Names in a list, one a line, or with commas between them."""
    return tuple(name.text for name in placed_names(node, found))


def placed_names(node: Node, found: Gathering) -> tuple[Scalar, ...]:
    """Names with their places; a name typed in a text with commas has the place of the whole text."""
    if isinstance(node, Pairs):
        found.say(rules.WRONG_FORM, node.place, "a list of names is expected here", "write `[name, name]`")
        return ()
    if isinstance(node, Listing):
        typed = [name for entry in node.nodes if (name := word(entry, found))]
        return tuple(typed)
    parts = (part.strip() for part in node.text.split(","))
    return tuple(Scalar(part, node.place) for part in parts if part)


def parts(node: Node, found: Gathering) -> tuple[Scalar, ...]:
    """Values in a list, or in one text with a comma and a blank between them ("62,5 kg, 65 kg" is two)."""
    if isinstance(node, Listing):
        return tuple(one for entry in node.nodes for one in parts(entry, found))
    typed = word(node, found)
    split = typed.text.replace(", ", "\n").splitlines() if typed else ()
    return tuple(Scalar(part.strip(), node.place) for part in split if part.strip())


def texts(node: Node, found: Gathering) -> tuple[str, ...]:
    """Sentences: one text, or a list of them."""
    entries = node.nodes if isinstance(node, Listing) else (node,)
    return tuple(sentence for entry in entries if (sentence := text(entry, found)))


def sentences(node: Node, found: Gathering) -> str | None:
    """Texts, or keys with a text each ("12 or more: add 5 lb"), joined by semicolons."""
    said = []
    for entry in node.nodes if isinstance(node, Listing) else (node,):
        if isinstance(entry, Pairs):
            said += [f"{key.text}: {one}" for key, value in entry.pairs if (one := text(value, found))]
        else:
            said.append(text(entry, found) or "")
    return "; ".join(filter(None, said)) or None
