"""Questions that need the movement: what it is counted in, which sides it works, what loads it."""

import re
from typing import Literal

from setwright.findings import Finding
from setwright.reading import questions_amount as amounts
from setwright.reading import questions_how as how
from setwright.reading.dose import Dose, SetGroup
from setwright.reading.habits import Habits
from setwright.reading.lexer import lex
from setwright.reading.question import Question

_HEAD = re.compile(
    r"\d+(?:-\d+)?\s*(?:[x×*]|by|sets? of)\s*(?:\d+(?:-\d+)?|max|amrap)(?![-\d+]|\s*\+)(?:\s*reps?\b)?\s*",
    re.IGNORECASE,
)
"""Sets and repetitions at the start of a line; what stands behind them is kept in what is proposed."""
Worked = Literal["both", "one", "alternating"]


def questions(
    dose: Dose,
    habits: Habits,
    *,
    sides: Worked = "both",
    counted_in: str = "reps",
    bodyweight: bool = True,
) -> tuple[Finding, ...]:
    """What a dose leaves open on a movement of this kind, one finding of each sort at most.

    ``sides``: whether the movement works both sides at once, one, or both in turn. ``counted_in``:
    reps, s, m or steps. ``bodyweight``: whether body mass is part of its load.
    """
    reps = next((g for g in dose.groups if g.works[0].amount.unit == "reps" and g.kind == "straight"), None)
    clock = lex(dose.text).tokens[0].kind == "clock" and len(dose.groups) == 1
    open_side = any(group.sides is None for group in dose.groups)
    found = []
    if counted_in in ("s", "m") and reps is not None:
        found.append(_ask(how.NUMBER_UNIT, dose, reps, unit=counted_in))
    elif counted_in == "steps" and reps is not None and open_side:
        found.append(_ask(amounts.STEPS, dose, reps))
    elif sides != "both" and open_side and habits.sides is None:
        found.append(_ask(amounts.SIDES_MISSING, dose, dose.groups[0]))
    if clock and counted_in != "s":
        found.append(_ask(how.CLOCK_ALONE, dose, dose.groups[0]))
    if not bodyweight and any(
        work.load and work.load.lone_plus for group in dose.groups for work in group.works
    ):
        found.append(_lone_plus(dose))
    return tuple(found)


def _ask(question: Question, dose: Dose, group: SetGroup, **fills: str) -> Finding:
    span = group.works[0].amount.span
    amount = (
        f"{span.low:g}" if span.high == span.low else f"{span.low:g}-{span.high:g}" if span.high else "max"
    )
    behind = _HEAD.sub("", dose.text.strip())
    rest = (
        "" if behind == dose.text.strip() else re.sub(r"^(?=[^\s,])", " ", re.sub(r"^/\s*", "each ", behind))
    )
    words = {
        "typed": dose.text.strip(),
        "sets": f"{group.sets.low:g}",
        "number": amount,
        "rest": rest,
        **fills,
    }
    return question.at(dose.place, words)


def _lone_plus(dose: Dose) -> Finding:
    load = next(w.load for g in dose.groups for w in g.works if w.load and w.load.lone_plus)
    words = {"typed": dose.text.strip(), "number": f"{load.plus:g}", "unit": str(load.unit)}
    return how.PLUS_BASE.at(dose.place, words)
