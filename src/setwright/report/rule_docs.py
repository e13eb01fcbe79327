"""docs/rules, written from the rules: the text of `setwright explain`, and what check really prints."""

from collections.abc import Mapping
from typing import Final

from setwright.checked import check_plan
from setwright.reading.text_rules import TEXT_RULES
from setwright.report.explain import rule_text, text_rule_text
from setwright.report.source_docs import linked
from setwright.report.terminal import text
from setwright.rules import EVERY_RULE, Rule

TYPED: Final = "typed-text.md"
"""The page of all rules about typed text."""


def pages() -> Mapping[str, str]:
    """Every page by its file name."""
    index = "".join(f"- [{rule.id}]({rule.id}.md): {rule.summary}\n" for rule in EVERY_RULE)
    head = "# Rules\n\nWritten from the code; `setwright explain RULE` prints the same text. "
    head += "Every work they cite: [sources](../sources.md).\n\n"
    typed = (
        f"- [rules about typed text]({TYPED}): {len(TEXT_RULES)} ways in which words can't be read as meant\n"
    )
    return {
        "README.md": head + index + typed,
        TYPED: "\n".join(text_rule_text(rule) for rule in TEXT_RULES.values()),
    } | {f"{rule.id}.md": _page(rule) for rule in EVERY_RULE}


def _page(rule: Rule) -> str:
    checked = check_plan("week.yaml", rule.bad, lambda _: None)
    screen = text(checked, colour=False)
    indented = "".join(f"    {line}\n" if line else "\n" for line in screen.splitlines())
    read = f"\nHow they were read: {linked(rule.sources)}.\n" if rule.sources else ""
    return f"{rule_text(rule)}{read}\nWhat check says about the first plan:\n\n{indented}"
