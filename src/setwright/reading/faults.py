"""Text rules: what can be wrong with the words on a line, each documented once and raised from many places.

A text rule is told by ``setwright explain`` like every other rule; ``TextRule.at`` makes the finding.
"""

from typing import NamedTuple

from setwright.findings import Finding, Level, Seen
from setwright.places import Place

SOURCE = "the plan language (docs/plan-language.md)"


class TextRule(NamedTuple):
    """One way in which typed text can't be read as meant.

    ``bad`` and ``good`` are a line that sets it off and the same line mended; ``{}`` is never filled
    in these texts, the finding's own message and change carry what was typed.
    """

    id: str
    summary: str
    why: str
    bad: str
    good: str
    level: Level = Level.error

    def at(
        self, place: Place, message: str, change: str, where: str = "the text", seen: tuple[Seen, ...] = ()
    ) -> Finding:
        """The finding at ``place``; ``message`` stands alone, ``change`` says what to type instead."""
        return Finding(self.id, self.level, place, where, message, self.why, change, SOURCE, seen)
