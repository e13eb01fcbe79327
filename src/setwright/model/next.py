"""The rule for next time: what is changed in a line, and on what condition, once it was done."""

from typing import Literal

from setwright.places import Place
from setwright.reading.frozen import Frozen
from setwright.reading.words import number

AddUnit = Literal["kg", "lb", "%", "reps", "sets"]


class Add(Frozen):
    """What is added to the load, the repetitions or the sets; a negative ``amount`` is taken off.

    ``of``: the load that a percent is of; the load changed is then that of the line.
    """

    kind: Literal["add"] = "add"
    amount: float
    unit: AddUnit
    of: Literal["first week", "last week"] | None = None


class Repeat(Frozen):
    """The same again."""

    kind: Literal["repeat"] = "repeat"


class WhenReached(Frozen):
    """Add once every set, or the first one, was done with the top of its range."""

    kind: Literal["when reached"] = "when reached"
    add: Add
    sets: Literal["every", "first"]


class EveryWeeks(Frozen):
    """Add every so many weeks, to the line or to the training max, whatever was done."""

    kind: Literal["every weeks"] = "every weeks"
    add: Add
    weeks: int
    to: Literal["line", "training max"] = "line"


class ByEffort(Frozen):
    """Change the load by so many percent for each half point that the effort was off the written one."""

    kind: Literal["by effort"] = "by effort"
    percent: float


class Case(Frozen):
    """What to do after ``low`` to ``high`` repetitions in the last set; ``high`` None: or more."""

    low: int
    high: int | None
    then: Add | Repeat


class ByRepetitions(Frozen):
    """By the repetitions of the last set: the first case that fits, else ``otherwise`` (None: repeat)."""

    kind: Literal["by repetitions"] = "by repetitions"
    cases: tuple[Case, ...]
    otherwise: Add | Repeat | None = None


NextRule = Repeat | WhenReached | EveryWeeks | ByEffort | ByRepetitions


class NextTime(Frozen):
    """A rule for next time as typed (``text``, for paper) and as read (``rule``)."""

    rule: NextRule
    text: str
    place: Place


def typed_next(rule: NextRule) -> str:
    """The rule in the words of the plan language, its cases joined by semicolons.

    >>> typed_next(EveryWeeks(add=Add(amount=1, unit="sets"), weeks=2))
    'add 1 set every 2 weeks'
    """
    match rule:
        case WhenReached():
            sets = "every set reaches" if rule.sets == "every" else "the first set reaches"
            return f"{_change(rule.add)} when {sets} the top"
        case EveryWeeks():
            to = " to the training max" if rule.to == "training max" else ""
            return f"{_change(rule.add)}{to} every {'week' if rule.weeks == 1 else f'{rule.weeks} weeks'}"
        case ByEffort():
            return f"{number(rule.percent)}% for each half point of effort"
        case ByRepetitions():
            cases = [f"{_repetitions(case)}: {_change(case.then)}" for case in rule.cases]
            return "; ".join([*cases, *([f"otherwise: {_change(rule.otherwise)}"] if rule.otherwise else ())])
        case _:
            return _change(rule)


def _repetitions(case: Case) -> str:
    if case.high is None:
        return f"{case.low} or more"
    return f"{case.low}-{case.high}" if case.low != case.high else f"{case.low}"


def _change(change: Add | Repeat) -> str:
    if isinstance(change, Repeat):
        return "repeat"
    figure = number(abs(change.amount))
    unit = change.unit.removesuffix("s") if figure == "1" else change.unit
    of = {"first week": " of the first week's load", "last week": " of last week's load", None: ""}[change.of]
    amount = f"{figure}%" if change.unit == "%" else f"{figure} {unit}"
    return f"{'add' if change.amount > 0 else 'take off'} {amount}{of}"
