"""A value with two meanings or none, raised where it is read and said by whoever knows its place."""

from setwright.places import Place
from setwright.reading.faults import TextRule


class Asked(Exception):
    """The rule, the question and the text to type; ``place`` None: the whole value."""

    def __init__(self, rule: TextRule, message: str, change: str, place: Place | None = None) -> None:
        super().__init__(message)
        self.rule = rule
        self.message = message
        self.change = change
        self.place = place
