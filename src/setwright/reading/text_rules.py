"""Every rule about typed text, by id: of the file, of keys and values, the gym, doses and records."""

from collections.abc import Mapping
from typing import Final

from setwright.reading import (
    file_rules,
    gym_rules,
    key_rules,
    max_rules,
    next_rules,
    questions,
    record_questions,
    week_rules,
)
from setwright.reading.faults import TextRule

TEXT_RULES: Final[Mapping[str, TextRule]] = {
    rule.id: rule
    for rule in (
        *file_rules.RULES,
        *key_rules.RULES,
        *max_rules.RULES,
        *gym_rules.RULES,
        *week_rules.RULES,
        *next_rules.RULES,
        *questions.TEXT_RULES,
        *record_questions.RULES,
    )
}
