"""Weights of a gym file: one mass or a run of them, with how many there are."""

import re
from collections.abc import Iterator, Mapping
from fractions import Fraction
from itertools import pairwise
from typing import Final, NamedTuple

from setwright.model.reader.keys import is_empty, pairs_of
from setwright.model.room import Stock, exactly, kilograms
from setwright.reading import fields, measures
from setwright.reading import gym_rules as gym_faults
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Node, Scalar

MOST_OF_A_RUN: Final = 200
"""Most weights that one run is read as (choice: no stack and no rack of dumbbells is half as long)."""
LIKELY_KG: Final[Mapping[str, tuple[float, float]]] = {
    "bars": (1, 60), "plates": (0.1, 60), "dumbbells": (0.1, 150), "kettlebells": (0.5, 150),
    "stack": (0.1, 400),
}  # fmt: skip
"""Lightest and heaviest in kg that are taken as meant (choice: well outside what is sold)."""
_NOUNS: Final = re.compile(
    r"(bars?|barbells?|plates?|discs?|dumbbells?|kettlebells?|stacks?)$", re.IGNORECASE
)
"""What a coach says again behind a weight, and what it says already (common practice, no source)."""

_UNIT: Final = "kgs?|kilos?|lbs?|pounds?"
_NUMBER: Final = r"\d{1,4}(?:[.,]\d{1,3})?"
_WEIGHT: Final = re.compile(
    rf"(?P<before>[a-z][a-z -]*\s)?\s*(?P<low>{_NUMBER})\s*(?P<unit>{_UNIT})?"
    rf"(?:\s*(?:-|–|to)\s*(?P<high>{_NUMBER})\s*(?P<unit2>{_UNIT})?)?"
    rf"(?:\s+(?:by|in steps of)\s+(?P<step>{_NUMBER})\s*(?P<unit3>{_UNIT})?)?(?P<after>\s+[a-z][a-z -]*)?$",
    re.IGNORECASE,
)
_SEVERAL: Final = re.compile(
    r"(?P<masses>\d+(?:\.\d+)?(?:,\s+\d+(?:\.\d+)?)+)\s*(?P<unit>kg|lb)?", re.IGNORECASE
)
"""Several weights on one line: "5, 7.5, 10 kg"."""
_BOTH_UNITS: Final = re.compile(r"(?=.*\d\s*(?:kg|kilo))(?=.*\d\s*(?:lb|pound))", re.IGNORECASE)
_MANY: Final = re.compile(r"(\d{1,4})\s*(pairs?)?$", re.IGNORECASE)


class HowMany(NamedTuple):
    """A number of things, or of pairs of them."""

    number: int
    pairs: bool


def weights(kind: str, default: measures.Unit, node: Node, found: Gathering) -> tuple[Stock, ...]:
    """Weights with how many there are: ``20 kg: 2 pairs``, ``4-32 kg by 2: 1 pair``.

    ``kind``: a key of ``LIKELY_KG``. ``default``: the unit of a weight that names none.
    """
    read: list[Stock] = []
    for key, value in pairs_of(node, found, "a weight with how many there are"):
        stock = weight(kind, default, key, found)
        many = how_many(value, found)
        if stock is not None and many is not None and not _known_already(stock, read, key, found):
            read.append(stock.model_copy(update={"number": many.number, "pairs": many.pairs}))
    return tuple(read)


def weight(kind: str, default: measures.Unit, typed: Scalar, found: Gathering) -> Stock | None:
    """One weight or run of weights as stock; None and a finding when it can't be read."""
    match = _WEIGHT.match(" ".join(typed.text.split()))
    if _BOTH_UNITS.search(typed.text):
        _say_two_units(typed, match, found)
        return None
    name = "" if match is None else _named(match)
    if match is None or (name and kind != "bars"):
        change = _one_a_line(typed.text) or (
            "write the weight first, for example `20 kg: 2` or `4-32 kg by 2: 1 pair`"
        )
        found.say(rules.NOT_A_NUMBER, typed.place, f'"{typed.text}" is no weight', change)
        return None
    typed_unit = match["unit"] or match["unit2"] or match["unit3"]
    low, high, step = (match[end] and measures.number(match[end]) for end in ("low", "high", "step"))
    stock = Stock(
        low=low,
        high=high or low,
        step=step,
        unit=measures.UNITS[typed_unit.casefold()] if typed_unit else default,
        name=name or None,
    )
    fine = _is_a_run(stock, typed, found) and _is_likely(kind, stock, typed, found)
    return stock if fine else None


def how_many(node: Node, found: Gathering) -> HowMany | None:
    """How many, and whether in pairs; an empty value is one."""
    typed = fields.word(node, found)
    if typed is None:
        return HowMany(1, pairs=False) if is_empty(node) else None
    match = _MANY.match(typed.text)
    if match is None:
        message = f'"{typed.text}" is no number of things'
        found.say(rules.NOT_A_NUMBER, typed.place, message, "write `2` or `2 pairs`")
        return None
    return HowMany(int(match[1]), pairs=bool(match[2]))


def _named(match: re.Match[str]) -> str:
    """The words beside a weight, without those that only say again what it is."""
    said = [(match[end] or "").strip() for end in ("before", "after")]
    return " ".join(word for word in said if word and not _NOUNS.match(word))


def _one_a_line(typed: str) -> str | None:
    """What to write for several weights on one line: the run that they are, else the first of them."""
    several = _SEVERAL.fullmatch(typed)
    if several is None:
        return None
    masses = [Fraction(mass) for mass in re.split(r",\s+", several["masses"])]
    steps = {after - before for before, after in pairwise(masses)}
    low, high = (f"{float(mass):g}" for mass in (masses[0], masses[-1]))
    unit = f" {several['unit']}" if several["unit"] else ""
    if len(steps) == 1 and (step := steps.pop()) > 0:
        return f"write them as a run: `{low}-{high}{unit} by {float(step):g}: 1 pair`"
    return f"write each weight on a line of its own: `{low}{unit}: 1 pair`"


def _say_two_units(typed: Scalar, match: re.Match[str] | None, found: Gathering) -> None:
    message = f'"{typed.text}" says kilograms and pounds'
    change = "write the one that is stamped on it, for example `20 kg` or `45 lb`"
    if match is not None and match["step"]:
        change = "write the run in one unit, and a line of its own for what is in the other"
    found.say(gym_faults.TWO_UNITS, typed.place, message, change)


def _is_a_run(stock: Stock, typed: Scalar, found: Gathering) -> bool:
    """Whether the step leads from the first weight of a run to its last."""
    said = _run_fault(stock)
    if said is not None:
        found.say(gym_faults.WEIGHT_RUN, typed.place, f'"{typed.text}" {said[0]}', said[1])
    return said is None


def _run_fault(stock: Stock) -> tuple[str, str] | None:
    """What is wrong with a run, and what to type instead."""
    low, high, unit = exactly(stock.low), exactly(stock.high), stock.unit
    if stock.step is None:
        if low == high:
            return None
        return "does not say by which steps", f"write the step, for example `{_run(low, high, unit)} by 2`"
    step = exactly(stock.step)
    if high <= low:
        return "does not rise", f"write the lighter end first, `{_run(high, low, unit)} by {_said(step)}`"
    steps = (high - low) / step if step else Fraction(MOST_OF_A_RUN + 1)
    if steps > MOST_OF_A_RUN:
        return (
            "has too small a step",
            f"write the step between two neighbours, at most {MOST_OF_A_RUN} of them",
        )
    if steps.denominator > 1:
        last = low + int(steps) * step
        ends = " or ".join(f"`{_run(low, end, unit)} by {_said(step)}`" for end in (last, last + step))
        return f"does not come out: steps of {_said(step)} lead past {_said(high)}", f"write {ends}"
    return None


def _run(low: Fraction, high: Fraction, unit: str) -> str:
    return f"{_said(low)}-{_said(high)} {unit}"


def _said(number: Fraction) -> str:
    return f"{float(number):g}"


def _is_likely(kind: str, stock: Stock, typed: Scalar, found: Gathering) -> bool:
    """Whether the weights are such as are made."""
    a_unit = float(kilograms(Fraction(1), stock.unit))
    least, most = (kg / a_unit for kg in LIKELY_KG[kind])
    if least <= stock.low and stock.high <= most:
        return True
    span = f"{least:.3g} to {most:.3g} {stock.unit}"
    change = f"write what is stamped on it, with its unit; from {span} is read"
    message = f'"{typed.text}" under {kind} is lighter or heavier than any'
    found.say(gym_faults.WEIGHT_UNLIKELY, typed.place, message, change)
    return False


def _known_already(stock: Stock, before: list[Stock], key: Scalar, found: Gathering) -> bool:
    """Whether a weight is listed already, after saying so."""
    masses = set(stock.masses())
    for other in before:
        again = sorted(masses.intersection(other.masses()))
        if again and (other.unit, other.name) == (stock.unit, stock.name):
            message = f'"{key.text}" lists {_said(again[0])} {stock.unit} again'
            change = "write each weight once with how many there are, and split the run around it"
            found.say(gym_faults.WEIGHT_TWICE, key.place, message, change)
            return True
    return False


def runs(kind: str, default: measures.Unit, node: Node, found: Gathering) -> Iterator[Stock]:
    """Runs of weights in a text with commas, or in a list: ``5-50 kg by 5, 60-100 kg by 10``."""
    for typed in fields.parts(node, found):
        stock = weight(kind, default, typed, found)
        if stock is not None:
            yield stock
