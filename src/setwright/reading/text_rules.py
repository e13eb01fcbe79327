"""Every rule about typed text, by id: of files, keys and values, the gym, doses, records and their tables."""

from collections.abc import Mapping
from typing import Final

from setwright.reading import (
    file_rules,
    gym_rules,
    kept_rules,
    key_rules,
    max_rules,
    next_rules,
    paper_rules,
    questions,
    record_questions,
    table_rules,
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
        *paper_rules.RULES,
        *questions.TEXT_RULES,
        *record_questions.RULES,
        *table_rules.RULES,
        *kept_rules.RULES,
    )
}
