"""A fault on its way to a finding: with its rule, its level, and the faults it speaks for."""

from typing import Final, NamedTuple

from setwright.findings import Finding, Level
from setwright.rules.rule import Fault, Rule

NO_CURE: Final = "nothing in this gym and within everyone's limits closes it"


class Spoken(NamedTuple):
    """A fault with the rule that found it and its level; ``others`` are told under it."""

    rule: Rule
    fault: Fault
    level: Level
    others: tuple["Spoken", ...] = ()

    @property
    def everyone(self) -> tuple["Spoken", ...]:
        """The fault itself and all it speaks for."""
        return (self, *(each for other in self.others for each in other.everyone))

    def speaking_for(self, other: "Spoken") -> "Spoken":
        """The fault with ``other`` told under it, at the worse level of the two."""
        return self._replace(others=(*self.others, other), level=max(self.level, other.level))

    def finding(self) -> Finding:
        """The finding to print."""
        fault = self.fault
        return Finding(
            rule=self.rule.id,
            level=self.level,
            place=fault.place,
            where=fault.where,
            message=fault.message,
            why=fault.why,
            change=fault.cure.text if fault.cure else NO_CURE,
            source=fault.source or self.rule.source,
            seen=fault.seen,
            also=tuple(other.fault.message for other in self.everyone[1:]),
            to_others=fault.to_others,
            who=fault.who,
            about=fault.about,
        )
