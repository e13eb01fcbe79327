"""All questions of the dose line, and the rules they belong to."""

from setwright.reading import questions_amount, questions_how, questions_signs
from setwright.reading.faults import TextRule
from setwright.reading.question import Question

QUESTIONS: tuple[Question, ...] = tuple(
    value
    for module in (questions_amount, questions_signs, questions_how)
    for value in vars(module).values()
    if isinstance(value, Question)
)
"""Every question, variants included, in the order of the tables."""

TEXT_RULES: tuple[TextRule, ...] = tuple({question.rule.id: question.rule for question in QUESTIONS}.values())
"""The rules of the dose line, each once. ``bad`` and ``good`` are dose lines."""
