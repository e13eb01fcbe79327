"""Text rules about maxes: what a max in the squad file must say, and which of several a percent is of."""

from typing import Final

from setwright.reading.faults import TextRule


def _squad(best: str) -> str:
    return f"squad:\n  athletes:\n    - name: Ann\n      maxes:\n        flat barbell bench press: {best}"


def _percent(line: str) -> str:
    both = _squad("55 kg tested 2026-12-14, training max 90%")
    return f"plan: A\n{both}\nwork:\n  - flat barbell bench press: 3 x 5 at 75%{line}"


MAX_DATE: Final = TextRule(
    "max-without-date",
    "a max that does not say from which day it is",
    "a max grows stale, and of two the later one holds",
    _squad("55 kg tested"),
    _squad("55 kg tested 2026-12-14"),
)
MAX_HOW: Final = TextRule(
    "max-without-how",
    "a max that does not say whether it was tested or worked out",
    "a tested max is one number, one worked out from repetitions is a range",
    _squad("55 kg"),
    _squad("55 kg tested 2026-12-14"),
)
TRAINING_MAX: Final = TextRule(
    "training-max-unclear",
    "a training max without its number, or without the max that its percent is of",
    "coaches take 85 to 90 % or a number of their own; none of them is assumed",
    _squad("55 kg tested 2026-12-14, training max"),
    _squad("55 kg tested 2026-12-14, training max 90%"),
)
MAX_UNREAD: Final = TextRule(
    "max-not-readable",
    "words of a max that are not read",
    "every load of the athlete on this movement hangs on it",
    _squad("about 55"),
    _squad("none yet"),
)
WHICH_MAX: Final = TextRule(
    "percent-of-which-max",
    "a percent where an athlete has several kinds of max and nothing says which is meant",
    "75 % of a training max of 90 % is 67.5 % of the tested one",
    _percent(""),
    _percent(" of training max"),
)
RULES: Final = (MAX_DATE, MAX_HOW, TRAINING_MAX, MAX_UNREAD, WHICH_MAX)
