"""Reading a dose line in a test: where it stands does not matter, what it says does."""

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading.dose import Dose, SetGroup
from setwright.reading.doseline import read_dose
from setwright.reading.habits import Habits

KG = Habits(unit="kg")


def at(text: str) -> Place:
    return Place("week.yaml", 7, 1, 7, 1 + len(text))


def read(text: str, habits: Habits = KG) -> Dose:
    dose, findings = read_dose(text, at(text), habits)
    assert dose is not None, [f.message for f in findings]
    return dose


def group(text: str, habits: Habits = KG) -> SetGroup:
    (only,) = read(text, habits).groups
    return only


def asked(text: str, habits: Habits = KG) -> tuple[Finding, ...]:
    dose, findings = read_dose(text, at(text), habits)
    assert dose is None, f"{text} was read"
    return findings


def rules(text: str, habits: Habits = KG) -> list[str]:
    return [finding.rule for finding in asked(text, habits)]


def under(text: str, finding: Finding) -> str:
    """The characters a finding underlines."""
    return text[finding.place.column - 1 : finding.place.end_column - 1]
