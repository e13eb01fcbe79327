"""Every rule about typed text, by id: of the file, of keys and values, and of the dose line."""

from collections.abc import Mapping
from typing import Final

from setwright.reading import file_rules, key_rules, max_rules, questions
from setwright.reading.faults import TextRule

TEXT_RULES: Final[Mapping[str, TextRule]] = {
    rule.id: rule for rule in (*file_rules.RULES, *key_rules.RULES, *max_rules.RULES, *questions.TEXT_RULES)
}
