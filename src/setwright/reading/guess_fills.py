"""How the texts of a guess are filled, from what its pattern found."""

import re
from typing import Final

from setwright.reading.guess_lists import Fills, listed, numbers
from setwright.reading.habits import Habits

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


def pluses(match: re.Match[str], _: Habits) -> Fills:
    """Parts joined by plus signs."""
    parts = [re.sub(r"(\d+)x(\d+)", r"\1 sets of \2", part.strip()) for part in match["parts"].split("+")]
    sets = match["before"] or match["after"]
    times = f"{sets} x " if sets else ""
    return {
        "pluses": " + ".join(parts),
        "helped": f"{sets or 1} x {parts[0]}",
        "last": parts[-1],
        "sets": times,
    }


def inside(match: re.Match[str], _: Habits) -> Fills:
    """The sub-part of "3x20 (5 each way)" as what is done."""
    return {"write": f"{match['sets']} x {match['inside']}"}


def more_than(match: re.Match[str], _: Habits) -> Fills:
    """The number of ">8", and the next one."""
    return {"reps": match["reps"], "next": str(int(match["reps"]) + 1)}


_SPREAD: Final = 2
"""Repetitions from the least to the most of a range that is proposed (choice: 6-8)."""


def fewer_than(match: re.Match[str], _: Habits) -> Fills:
    """The number of "<8" as the top of a range, and one that ends before it."""
    most = int(match["reps"])
    least = max(most - _SPREAD, 1)
    return {
        "reps": match["reps"],
        "least": f"{least}-" if least < most else "",
        "fewer": f"{least}-{most - 1}" if least < most - 1 else f"{least}",
    }


def set_by_set(match: re.Match[str], _: Habits) -> Fills:
    """The load of "40kg 5 5 5", and its sets with commas."""
    return {"load": match["load"].strip(), "commas": ", ".join(numbers(match["once"]))}


def two_loads(match: re.Match[str], habits: Habits) -> Fills:
    """The two loads of "3x8 24/16"."""
    dose = f"{match['dose']} " if match["dose"] else ""
    return {"dose": dose, "first": match["first"], "second": match["second"], "unit": habits.unit or "kg"}


def slashed(match: re.Match[str], _: Habits) -> Fills:
    """The two sides of a slash as work and rest: bare numbers are seconds."""
    first, second = (
        f"{part} s" if part.isdigit() else part for part in map(str.strip, match["work"].split("/"))
    )
    times = match.groupdict().get("times")
    sets = f"{times} x " if times else ""
    return {"first": first, "second": second, "sets": sets, "commas": ", ".join(numbers(match["work"]))}


def reps_at(match: re.Match[str], habits: Habits) -> Fills:
    """Repetitions behind the slash and the load in front of it: "(75%/4)3", "60%/2; 70%/2", "80/3x4"."""
    unit = habits.unit or "kg"
    found = re.findall(r"([\d.]+)(%?)\s*/\s*(\d+)\)?\s*x?\s*(\d*)", match.group(), re.IGNORECASE)
    sets = [
        f"{times or 1} x {reps} at {load}{'%' if sign else f' {unit}'}" for load, sign, reps, times in found
    ]
    return {"write": ", then ".join(sets)}


def efforts(match: re.Match[str], habits: Habits) -> Fills:
    """Numbers of an effort, with its scale."""
    return listed(match, habits) | {"scale": match["scale"].upper()}


def every(match: re.Match[str], _: Habits) -> Fills:
    """Sets and repetitions of "EMOM 10: 5", and how often."""
    step = match["step"] or "1"
    found = numbers(f"{match['before'] or ''} {match['behind'] or ''}")[:2]
    sets, reps = (*found, *("10", "5")[len(found) :])
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
    return {"load": f"{number * _PLATE[unit] + float(match['more'] or 0):g} {unit}"}


def percent(match: re.Match[str], _: Habits) -> Fills:
    """A percent, and what it leaves."""
    percent = float(match["percent"])
    dose = f"{match['dose'].strip()} " if match["dose"] else ""
    return {"percent": f"{percent:g}", "rest": f"{100 - percent:g}", "dose": dose}


def single(match: re.Match[str], _: Habits) -> Fills:
    """One set of "heavy single @8"."""
    reps = str(("single", "double", "triple").index(match["word"].lower()) + 1)
    effort = f" at RPE {match['effort']}" if match["effort"] else ""
    return {"reps": reps, "write": f"1 x {reps}{effort}"}


def race(match: re.Match[str], _: Habits) -> Fills:
    """The minutes of a race against the clock."""
    return {"minutes": match["cap"] or "15"}


def ramp(match: re.Match[str], habits: Habits) -> Fills:
    """Warm-up steps typed load first, and the work behind them."""
    unit = habits.unit or "kg"
    found = re.findall(r"(bar|[\d.]+)\s*(kg|lb|%)?\s*x\s*(\d+)", match["steps"], re.IGNORECASE)
    said = [
        f"{reps} at {load}{'' if load.lower() == 'bar' else own if own == '%' else f' {own or unit}'}"
        for load, own, reps in found
    ]
    return {"ramp": ", ".join(said), "work": (match.groupdict().get("work") or "").strip()}


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


def with_comma(match: re.Match[str], _: Habits) -> Fills:
    """The line with a comma for a dash."""
    before, after = match.string[: match.start()].rstrip(), match.string[match.end() :].lstrip()
    return {"write": f"{before}, {after}"}


def named(match: re.Match[str], _: Habits) -> Fills:
    """The groups of the pattern by name."""
    return {name: value or "" for name, value in match.groupdict().items()}
