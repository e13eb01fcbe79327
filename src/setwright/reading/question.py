"""One question of the dose line: the rule it belongs to, and the words in which it is put."""

from collections.abc import Mapping
from typing import NamedTuple

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading.faults import TextRule


class Question(NamedTuple):
    """What is asked when words on a dose line have two meanings or none.

    ``message`` and ``change`` are templates: ``{typed}`` is the span as typed, other names are
    filled by whoever asks. ``change`` holds the exact text to copy.
    """

    rule: TextRule
    message: str
    change: str

    def variant(self, message: str, change: str) -> "Question":
        """The same rule, put in other words."""
        return Question(self.rule, message, change)

    def at(self, place: Place, words: Mapping[str, str]) -> Finding:
        """The finding at ``place``, with ``words`` in its texts."""
        return self.rule.at(place, self.message.format_map(words), self.change.format_map(words))


def question(  # noqa: PLR0917 - a row of the tables of questions, always in this order
    rule: str, summary: str, why: str, bad: str, good: str, message: str, change: str
) -> Question:
    """A question and its rule. ``bad`` and ``good`` are dose lines: one that raises it, the same mended."""
    return Question(TextRule(rule, summary, why, bad, good), message, change)
