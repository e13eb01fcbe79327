"""The summary on the screen: eight questions in order, 80 columns, only ASCII, for the coach alone."""

import pytest

from setwright.glance import glance
from setwright.report.summary import summary_text
from setwright.rules import EVERY_RULE, Rule
from tests.pages.plans import CIRCUIT, LONG, NO_CHEST, SIX_DAYS
from tests.rules.plans import checked, example

QUESTIONS = (
    "Does it fit?",
    "Can it be loaded?",
    "Who is hurt?",
    "Is it balanced?",
    "How much work?",
    "Where does it go?",
    "What is odd?",
    "What changed?",
)


@pytest.mark.parametrize("plan", [LONG, CIRCUIT, SIX_DAYS, NO_CHEST])
def test_eight_questions_in_80_columns(plan: str) -> None:
    shown = summary_text(glance(checked(plan)))
    lines = shown.splitlines()
    asked = [line for line in lines if line[0].isdigit()]
    assert asked == [f"{number}. {question}" for number, question in enumerate(QUESTIONS, 1)]
    assert max(map(len, lines)) <= 80
    assert shown.isascii()
    assert shown.endswith("\n")


@pytest.mark.parametrize("rule", EVERY_RULE, ids=lambda rule: rule.id)
def test_every_plan_that_a_rule_shows_has_a_summary(rule: Rule) -> None:
    for plan in (rule.bad, rule.good):
        told = glance(checked(plan))
        assert all(line for answer in told.answers for line in answer.lines)
        assert all(answer.lines for answer in told.answers)
        assert max(map(len, summary_text(told).splitlines())) <= 80


def test_it_says_whom_it_is_for_and_how_far_its_figures_go() -> None:
    shown = summary_text(glance(example("week-good.yaml")))
    assert shown.startswith(
        "Autumn block, week 3, in half a minute. For the coach alone: it names athletes.\nAim: "
    )
    assert shown.splitlines()[-1].startswith("Mechanical figures from one cadaver-sized model")
