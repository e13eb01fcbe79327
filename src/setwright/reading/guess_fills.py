"""How the texts of a guess are filled, from what its pattern found."""

import re
from typing import Final

from setwright.reading.habits import Habits

Fills = dict[str, str]

MONTHS: Final = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_NUMBERS: Final = (
    "nought",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
)
_PLATE = {"kg": 20, "lb": 45}
MONTH = "|".join(MONTHS)
WORD_NUMBER = "|".join(_NUMBERS[1:])
_PLACEHOLDER = "3 x 10"


def numbers(text: str) -> list[str]:
    """The numbers in a text, as typed."""
    return re.findall(r"\d+(?:\.\d+)?", text)


def listed(match: re.Match[str], _: Habits) -> Fills:
    """Numbers set by set, or as parts."""
    found = numbers(match.group())
    return {"commas": ", ".join(found), "pluses": " + ".join(found), "first": found[0], "second": found[1]}


def pluses(match: re.Match[str], _: Habits) -> Fills:
    """Parts joined by plus signs."""
    parts = [re.sub(r"(\d+)x(\d+)", r"\1 sets of \2", part.strip()) for part in match.group().split("+")]
    return {"pluses": " + ".join(parts), "first": parts[0], "last": parts[-1]}


def slashed(match: re.Match[str], _: Habits) -> Fills:
    """The two sides of a slash as work and rest: bare numbers are seconds."""
    first, second = (
        f"{part} s" if part.isdigit() else part for part in map(str.strip, match.group().split("/"))
    )
    return {"first": first, "second": second, "commas": ", ".join(numbers(match.group()))}


def efforts(match: re.Match[str], habits: Habits) -> Fills:
    """Numbers of an effort, with its scale."""
    return listed(match, habits) | {"scale": match["scale"].upper()}


def every(match: re.Match[str], _: Habits) -> Fills:
    """Sets and repetitions of "EMOM 10: 5", and how often."""
    found = numbers(match.group())
    step = match.groupdict().get("step") or "1"
    sets, reps = (*found[1 if match.groupdict().get("step") else 0 :], "10", "5")[:2]
    return {"sets": sets, "reps": reps, "clock": f"{step}:00"}


def every_for(match: re.Match[str], _: Habits) -> Fills:
    """How many sets of "every 90 s x6"."""
    return {"sets": match["sets"], "reps": "5", "clock": match["time"].strip()}


def by_side(match: re.Match[str], _: Habits) -> Fills:
    """The line with sides in words."""
    words = {"l": "left", "r": "right"}
    found = re.findall(r"\b([lr])\s*(\d+)\s*x\s*(\d+)", match.group(), re.IGNORECASE)
    return {"write": ", then ".join(f"{sets} x {reps} {words[side.lower()]}" for side, sets, reps in found)}


def date(match: re.Match[str], _: Habits) -> Fills:
    """The range that a spreadsheet took for a date."""
    text = match.group().lower()
    month = next((MONTHS.index(name) + 1 for name in MONTHS if name in text), None)
    found = [int(n) for n in numbers(text)]
    low, high = sorted((month, found[0]) if month else found[-2:] if len(found) > 2 else found[:2])  # noqa: PLR2004
    return {"range": f"{low}-{high}"}


def in_digits(match: re.Match[str], _: Habits) -> Fills:
    """Sets and repetitions of "three by ten"."""
    sets, reps = (str(_NUMBERS.index(match[name].lower())) for name in ("sets", "reps"))
    return {"write": f"{sets} x {reps}"}


def plates(match: re.Match[str], habits: Habits) -> Fills:
    """What the plates of one end weigh, in plates of 20 kg or 45 lb."""
    count = match["count"].lower()
    number = int(count) if count.isdigit() else _NUMBERS.index(count)
    unit = habits.unit or "kg"
    return {"load": f"{number * _PLATE[unit]} {unit}"}


def ladder(match: re.Match[str], _: Habits) -> Fills:
    """The ends of a ladder, and its repetitions up, and up and down."""
    found = [int(n) for n in numbers(match.group())]
    first, last = (found[0], found[1]) if len(found) > 1 else (1, found[0])
    low, high = sorted((first, last))
    up = (low + high) * (high - low + 1) // 2
    return {"first": str(first), "last": str(last), "up": str(up), "both": str(2 * up - last)}


def percent(match: re.Match[str], _: Habits) -> Fills:
    """A percent, and what it leaves."""
    percent = float(match["percent"])
    return {"percent": f"{percent:g}", "rest": f"{100 - percent:g}"}


def dots(match: re.Match[str], _: Habits) -> Fills:
    """The parts of "3.3.3"."""
    found = match["parts"].split(".")
    sets = match["sets"] or match["after"]
    return {"sets": f"{sets} x " if sets else "", "pluses": " + ".join(found)}


def warm(match: re.Match[str], _: Habits) -> Fills:
    """Warm-up sets and the work behind a plus."""
    return {"warm": match["warm"], "work": match["work"].strip()}


def weeks(match: re.Match[str], _: Habits) -> Fills:
    """The first dose of the line, and the step a week."""
    dose = re.search(r"\d+\s*x\s*\d+", match.string, re.IGNORECASE)
    step = re.search(r"\+\s*(\d+(?:\.\d+)?\s*(?:kg|lb|%|sets?|reps?)?)", match.string, re.IGNORECASE)
    amount = step.group(1).strip() if step else "2.5 kg"
    bare = amount.replace(".", "").isdigit()
    return {"first": dose.group() if dose else _PLACEHOLDER, "step": f"{amount} kg" if bare else amount}


def base(match: re.Match[str], habits: Habits) -> Fills:
    """A number that is added, with its unit."""
    return {"number": match["number"], "unit": match["unit"] or habits.unit or "kg"}


def named(match: re.Match[str], _: Habits) -> Fills:
    """The groups of the pattern by name."""
    return {name: value or "" for name, value in match.groupdict().items()}
