"""The rule for next time, typed as a sentence or as a list of cases."""

import re
from collections.abc import Callable, Mapping
from typing import Final, Literal

from setwright.model.next import (
    Add,
    ByEffort,
    ByRepetitions,
    Case,
    EveryWeeks,
    NextRule,
    NextTime,
    Repeat,
    WhenReached,
)
from setwright.model.reader import next_questions as ask
from setwright.model.reader.asked import Asked
from setwright.model.reader.quantity import Quantity, quantity
from setwright.reading import fields
from setwright.reading.gathering import Gathering
from setwright.reading.measures import number
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.retyping import plain_blanks

_PLAIN: Final = str.maketrans("–—−’‘", "---''")
_OF: Final = r"(?: of (?:the )?(?P<of>first|last) week's load)?"
_ADD: Final = rf"(?P<way>add|take off) (?P<much>\d[\d.,]* ?(?:[a-z]+|%)?){_OF}"
_STEP: Final = re.compile(_ADD)
_REACHED: Final = re.compile(
    rf"{_ADD} when (?:(?P<every>every set reaches|all sets reach)|(?:the )?first set reaches) the top"
)
_EVERY: Final = re.compile(rf"{_ADD}(?P<max> to the training max)? every (?:(?P<weeks>[1-9]\d?) )?weeks?")
_EFFORT: Final = re.compile(
    r"(?P<percent>\d{1,2}(?:[.,]\d{1,2})?) ?% for (?:each|every) half point of effort"
)
_WEEKS: Final[Mapping[str | None, Literal["first week", "last week"] | None]] = {
    "first": "first week", "last": "last week", None: None,
}  # fmt: skip
_REPETITIONS: Final = re.compile(
    r"(?P<low>\d{1,3})(?: (?P<more>or more)| (?P<fewer>or fewer)| ?(?:-|to) ?(?P<high>\d{1,3}))?(?: reps)?"
)


def read_next(node: Node, found: Gathering) -> NextTime | None:
    """The rule that a text or a list of cases is, or None and a finding."""
    try:
        if isinstance(node, Listing):
            return NextTime(rule=_cases(node), text=fields.sentences(node, found) or "", place=node.place)
        typed = fields.word(node, found)
        return typed and NextTime(rule=_sentence(typed.text), text=typed.text, place=typed.place)
    except Asked as asked:
        found.say(asked.rule, asked.place or node.place, asked.message, asked.change)
    return None


def _folded(typed: str) -> str:
    """The one form of a sentence: case, blanks, curly quotes and long dashes make no difference."""
    return " ".join(plain_blanks(typed).translate(_PLAIN).casefold().split()).rstrip(".")


def _sentence(typed: str) -> NextRule:
    """Raises: Asked when it is none of the sentences."""
    folded = _folded(typed)
    if folded == "repeat":
        return Repeat()
    for pattern, rule in _SENTENCES:
        match = pattern.fullmatch(folded)
        if match:
            return rule(match, typed)
    match = _STEP.fullmatch(folded)
    if match:
        _add(match, typed, behind=" every week")
        raise ask.when(folded)
    raise ask.no_rule(typed)


def _when_reached(match: re.Match[str], typed: str) -> NextRule:
    return WhenReached(add=_add(match, typed), sets="every" if match["every"] else "first")


def _every_weeks(match: re.Match[str], typed: str) -> NextRule:
    if match["max"] and (match["of"] or not _is_mass(match["much"])):
        raise ask.no_rule(typed)
    add = _add(match, typed)
    weeks = int(match["weeks"] or 1)
    return EveryWeeks(add=add, weeks=weeks, to="training max" if match["max"] else "line")


def _is_mass(typed: str) -> bool:
    """Whether a quantity can be added to a training max: a mass, or one that lacks its unit."""
    much = quantity(typed)
    return much is not None and much.unit in ("kg", "lb", None)


def _by_effort(match: re.Match[str], typed: str) -> NextRule:
    percent = number(match["percent"])
    if not percent:
        raise ask.no_rule(typed)
    return ByEffort(percent=percent)


_SENTENCES: Final[tuple[tuple[re.Pattern[str], Callable[[re.Match[str], str], NextRule]], ...]] = (
    (_REACHED, _when_reached),
    (_EVERY, _every_weeks),
    (_EFFORT, _by_effort),
)


def _add(match: re.Match[str], typed: str, behind: str = "") -> Add:
    """What is added or taken off, with its unit. ``behind``: words that the sentence still lacks.

    Raises: Asked when the unit is missing or unknown, or a percent does not say of which load.
    """
    much = _quantity(match)
    if much is None:
        raise ask.no_rule(typed)
    if much.unit is None:
        raise ask.what_unit(typed, *_around(match, behind))
    if much.unit == "%" and not match["of"]:
        raise ask.percent_of_what(typed, *_around(match, behind))
    amount = much.amount if match["way"] == "add" else -much.amount
    return Add(amount=amount, unit=much.unit, of=_WEEKS[match["of"]])


def _around(match: re.Match[str], behind: str) -> tuple[str, str]:
    """The sentence up to the quantity and what follows it, ``behind`` at its end."""
    end = match.end("much")
    return match.string[:end].rstrip(), f"{match.string[end:]}{behind}".strip()


def _quantity(match: re.Match[str]) -> Quantity | None:
    """What is added or taken off; None when it is nothing, or a mass that is of a load."""
    much = quantity(match["much"])
    if much is None or not much.amount or (match["of"] and much.unit != "%"):
        return None
    return much


def _cases(node: Listing) -> ByRepetitions:
    """Raises: Asked, with the place of the entry that can't be read."""
    cases: list[Case] = []
    otherwise: Add | Repeat | None = None
    for entry in node.nodes:
        if not isinstance(entry, Pairs) or len(entry.pairs) != 1:
            raise ask.no_case(entry)
        key, value = entry.pairs[0]
        if otherwise is not None:
            raise ask.behind_otherwise(key.place)
        change = _then(key, value)
        if _folded(key.text) == "otherwise":
            otherwise = change
        else:
            cases.append(_case(key, change))
    if not cases:
        raise ask.case_missing(node.place)
    return ByRepetitions(cases=tuple(cases), otherwise=otherwise)


def _then(key: Scalar, value: Node) -> Add | Repeat:
    """What a case leads to. Raises: Asked."""
    if not isinstance(value, Scalar) or value.is_empty:
        raise ask.no_case(key)
    folded = _folded(value.text)
    if folded == "repeat":
        return Repeat()
    match = _STEP.fullmatch(folded)
    if match is None or _quantity(match) is None:
        raise ask.no_case(value)
    try:
        return _add(match, value.text)
    except Asked as asked:
        asked.place = value.place
        raise


def _case(key: Scalar, change: Add | Repeat) -> Case:
    match = _REPETITIONS.fullmatch(_folded(key.text))
    low = int(match["low"]) if match else 0
    if match is None or (match["high"] and int(match["high"]) < low):
        raise ask.no_case(key)
    if match["fewer"]:
        return Case(low=0, high=low, then=change)
    return Case(low=low, high=None if match["more"] else int(match["high"] or low), then=change)
