"""The dose line of a movement, week by week: typed there, or the line of a scheme that is named."""

from typing import NamedTuple

from setwright.model.reader import by_week
from setwright.model.reader.house import Absent, House, Value
from setwright.model.reader.keys import fold, is_empty
from setwright.reading import key_rules as rules
from setwright.reading.dose import Dose
from setwright.reading.doseline import read_dose
from setwright.reading.nodes import Node, Scalar


class DoseLine(NamedTuple):
    """A dose line as typed for one week, and what it means: the line of a scheme, or itself."""

    typed: Value = None
    meant: Value = None

    @property
    def is_done(self) -> bool:
        """Whether the movement is done in that week, as far as can be read."""
        return not isinstance(self.meant, Absent)


def dose_lines(name: Scalar, node: Node | None, house: House) -> tuple[DoseLine, ...]:
    """One dose line a week; a finding where nothing is written and a dose is needed."""
    if node is None or is_empty(node):
        if not house.dose_may_wait:
            change = f"write how much behind the colon, for example `- {name.text}: 3 x 8`"
            house.found.say(rules.DOSE_MISSING, name.place, f"{name.text} has no dose", change)
        return (DoseLine(),) * house.weeks
    typed = by_week.values(name, node, house)
    return tuple(DoseLine(one, _meant(one, week, house)) for week, one in enumerate(typed))


def dose_of(line: DoseLine, house: House) -> Dose | None:
    """The dose of a line, or None, with findings when it can't be read."""
    if not isinstance(line.typed, Scalar) or not isinstance(line.meant, Scalar):
        return None
    dose, findings = read_dose(line.meant.text, line.meant.place, house.habits)
    house.found.add(*findings)
    named = line.typed is not line.meant
    return dose.model_copy(update={"place": line.typed.place}) if dose and named else dose


def _meant(typed: Value, week: int, house: House) -> Value:
    scheme = house.schemes.get(fold(typed.text)) if isinstance(typed, Scalar) else None
    return scheme[week] if scheme else typed
