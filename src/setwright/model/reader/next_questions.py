"""What is asked about a rule for next time, with the nearest rule that can be read."""

import re
from typing import Final

from setwright.model.reader.asked import Asked
from setwright.model.reader.quantity import quantity
from setwright.places import Place
from setwright.reading import next_rules as rules
from setwright.reading.nodes import Node, Scalar

_LIST: Final = "a list, `- 12 or more: add 5 lb` and `- otherwise: repeat`"
_NEAREST: Final = (
    (r"\d+ ?(?:or more|\+|-)? ?(?:\d+ )?reps? ?(?:->|:|,)|\bif\b|\bor more\b|\botherwise\b", _LIST),
    (r"\brpe\b|\brir\b|\beffort\b|\bpoints?\b", "`2% for each half point of effort`"),
    (r"\btraining max\b|\btm\b", "`add {step} to the training max every 3 weeks`"),
    (r"\bfirst set\b", "`add {step} when the first set reaches the top`"),
    (r"\btop\b|\ball\b|\brange\b|\bwhen\b", "`add {step} when every set reaches the top`"),
    (r"\bw(?:ee)?ks?\b|->|→|=>", "`add {step} every week`"),
    (r"\d", "`add {step} every week` or `add {step} when every set reaches the top`"),
    (r"\bsame\b|\bnothing\b|\bnone\b|\bno\b|\brepeat\b|\bhold\b|\bkeep\b", "`repeat`"),
)
"""What a rule that can't be read may have meant, first match first."""
_ANY: Final = "`add 2.5 kg when every set reaches the top`, `add 2.5 kg every week` or `repeat`"
_STEP: Final = re.compile(r"(\d+(?:[.,]\d+)?) ?(kg|lb|reps?|sets?)?")


def no_rule(typed: str, place: Place | None = None) -> Asked:
    """The question about a text that is none of the rules."""
    folded = typed.casefold()
    near = next((write for pattern, write in _NEAREST if re.search(pattern, folded)), _ANY)
    message = f'"{typed}" is no rule for next time'
    return Asked(rules.NOT_READ, message, f"write {near.format(step=_step(folded, near))}", place)


def _step(folded: str, near: str) -> str:
    """The step that a text names, if the rule proposed takes it; else a usual one."""
    match = _STEP.search(folded)
    typed = f"{match[1].replace(',', '.')} {match[2] or 'kg'}" if match else ""
    much = quantity(typed)
    fits = much is not None and much.amount and (much.unit in ("kg", "lb") or "training max" not in near)
    return typed if fits else "2.5 kg"


def what_unit(typed: str, before: str, after: str) -> Asked:
    """The question about a step without a unit; ``before`` and ``after`` the place where it belongs."""
    change = f"write `{f'{before} kg {after}'.strip()}`, or lb, reps or sets in its place"
    return Asked(rules.NOT_READ, f'"{typed}": {before.rpartition(" ")[2]} what?', change)


def percent_of_what(typed: str, before: str, after: str) -> Asked:
    """The question about a percent, between ``before`` and ``after``, that does not say of which load."""
    last, first = (
        " ".join([before, f"of {week} week's load", after]).strip() for week in ("last", "the first")
    )
    return Asked(rules.PERCENT, f'"{typed}": a percent of which load?', f"write `{last}` or `{first}`")


def when(typed: str) -> Asked:
    """The question about a step that does not say when it is taken."""
    change = f"write `{typed} every week` or `{typed} when every set reaches the top`"
    return Asked(rules.WHEN, f'"{typed}": when?', change)


def no_case(node: Node) -> Asked:
    """The question about a line of the list that is no number of repetitions with what to do."""
    said = f'"{node.text}" is no case' if isinstance(node, Scalar) else "this is no case"
    return Asked(rules.NOT_READ, f"{said} of a rule for next time", f"write {_LIST}", node.place)


def case_missing(place: Place) -> Asked:
    """The question about a list that holds no number of repetitions."""
    return Asked(rules.NOT_READ, "the list names no number of repetitions", f"write {_LIST}", place)


def behind_otherwise(place: Place) -> Asked:
    """The question about a case that is never reached."""
    change = "put `otherwise:` last, once"
    return Asked(rules.NOT_READ, "nothing behind `otherwise` is ever reached", change, place)
