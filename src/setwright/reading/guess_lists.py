"""How the texts of a guess about several numbers are filled: set by set, as parts, as a ladder."""

import re
from typing import Final

from setwright.reading.habits import Habits

Fills = dict[str, str]

MOST_WAVES: Final = 10
"""Most waves that are written out (choice)."""


def numbers(text: str) -> list[str]:
    """The numbers in a text, as typed."""
    return re.findall(r"\d+(?:\.\d+)?", text)


def listed(match: re.Match[str], _: Habits) -> Fills:
    """Numbers set by set, or as parts."""
    found = numbers(match.group())
    return {"commas": ", ".join(found), "pluses": " + ".join(found), "first": found[0], "second": found[1]}


def waves(match: re.Match[str], _: Habits) -> Fills:
    """Numbers set by set, as often as "x2" behind them says."""
    once = numbers(match.groupdict().get("once") or match.group())
    found = once * min(int(match.groupdict().get("times") or 1), MOST_WAVES)
    unit = "%" if "%" in match.group() else ""
    by_week = ", ".join(f"{number}{unit}" for number in found)
    return {"commas": ", ".join(found), "pluses": " + ".join(once), "unit": unit, "by_week": by_week}


def steps(match: re.Match[str], habits: Habits) -> Fills:
    """A run such as 1-10-1 or 1-2-3 as a ladder."""
    found = numbers(match["once"])
    ends = found if match["turn"] else [found[0], found[-1]]
    sets = f"{match['times']} x " if match["times"] else ""
    return waves(match, habits) | {"ladder": " to ".join(ends), "sets": sets}


def drops(match: re.Match[str], _: Habits) -> Fills:
    """One set and what is done at once after it, lighter."""
    first, *rest = found = numbers(match.group())
    line = ", ".join([f"1 x {first}", *(f"drop 20% for {reps}" for reps in rest)])
    return {"drops": line, "commas": ", ".join(found)}


def ratio(match: re.Match[str], _: Habits) -> Fills:
    """The rest that a ratio asks for, if the work stands first and if the rest does."""
    one, other = (int(number) or 1 for number in numbers(match.group()))
    return {"first": _rest(one / other), "second": _rest(other / one)}


def _rest(times: float) -> str:
    return "rest half the work" if times == 1 / 2 else f"rest {times:.2g} times the work"


def bracketed(match: re.Match[str], _: Habits) -> Fills:
    """A cluster of "4x(1+1+1) 20s" or "3x(3x3)"."""
    parts = numbers(match["parts"])
    if "x" in match["parts"].lower():
        parts = parts[1:] * min(int(parts[0]), MOST_WAVES)
    sets = f"{match['before']} x " if match["before"] else ""
    return {"write": f"{sets}cluster {' + '.join(parts)}, pause {match['pause'] or 20} s"}


def ladder(match: re.Match[str], _: Habits) -> Fills:
    """The ends of a ladder, and its repetitions up, and up and down."""
    found = [int(n) for n in numbers(match.group())]
    first, last = (found[0], found[1]) if len(found) > 1 else (1, found[0])
    low, high = sorted((first, last))
    up = (low + high) * (high - low + 1) // 2
    return {"first": str(first), "last": str(last), "up": str(up), "both": str(2 * up - last)}


def countdown(match: re.Match[str], _: Habits) -> Fills:
    """The ends of "10,9,8...1"."""
    found = numbers(match.group().replace("...", " "))
    return {"first": found[0], "last": found[-1]}


def stars(match: re.Match[str], _: Habits) -> Fills:
    """Sets with a star as the work, the others as warm-up."""
    marked = re.findall(r"(\d+)(\*?)", match.group())
    work = [reps for reps, star in marked if star]
    others = [reps for reps, star in marked if not star]
    line = f"{len(work)} x {work[0]}" if len(set(work)) == 1 else f"sets of {', '.join(work)}"
    return {"work": line, "others": ", ".join(others) or "none"}


def dots(match: re.Match[str], _: Habits) -> Fills:
    """The parts of "3.3.3"."""
    found = match["parts"].split(".")
    sets = match["sets"] or match["after"]
    return {"sets": f"{sets} x " if sets else "", "pluses": " + ".join(found)}
