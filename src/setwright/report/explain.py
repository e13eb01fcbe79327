"""What a rule looks at, why, what to change and on whose word; every source; the cautions."""

import json
from collections.abc import Iterable, Mapping
from functools import cache
from importlib.resources import files
from typing import Any

from setwright.reading.faults import TextRule
from setwright.reading.text_rules import TEXT_RULES
from setwright.report.wrapping import wrapped
from setwright.rules import EVERY_RULE, Rule
from setwright.rules.aims import EVERYWHERE, LEVELS, ROWS
from setwright.rules.rule import Option
from setwright.rules.unknown_rule_in_allow import nearest


@cache
def bibliography() -> Mapping[str, Mapping[str, Any]]:
    """Every cited work by its key: cite, where_read, read_via and what was taken from it."""
    text = files("setwright").joinpath("data", "sources.json").read_text(encoding="utf-8")
    works: dict[str, dict[str, Any]] = json.loads(text)["sources"]
    return works


def explain(word: str | None) -> tuple[str, bool]:
    """The text about a rule, sources or cautions, and whether the word is known; without one, every rule."""
    if word is None:
        return rule_list(), True
    if word == "sources":
        return sources_text(), True
    if word == "cautions":
        return cautions_text(), True
    rules = {rule.id: rule for rule in EVERY_RULE}
    if word in rules:
        return rule_text(rules[word]), True
    if word in TEXT_RULES:
        return text_rule_text(TEXT_RULES[word]), True
    near = nearest(word, [*rules, *TEXT_RULES, "sources", "cautions"])
    meant = f"; did you mean {near}?" if near else "; `setwright explain` lists them all"
    return f"there is no rule {word}{meant}", False


def rule_list() -> str:
    """Every rule with its summary: first those about the training, then those about typed text."""
    training = "\n".join(_listed(rule.id, rule.summary) for rule in EVERY_RULE)
    typed = "\n".join(_listed(rule.id, rule.summary) for rule in TEXT_RULES.values())
    return f"{training}\n\nAbout typed text:\n\n{typed}\n"


def text_rule_text(rule: TextRule) -> str:
    """Everything about a rule on typed text, in Markdown that reads well as plain text."""
    blocks = (
        f"# {rule.id}",
        wrapped(_sentence(rule.summary)),
        wrapped(f"Why: {_sentence(rule.why)}"),
        f"Level: {rule.level.name}; no allow silences it.",
        f"Sets it off:\n\n{_code(rule.bad)}",
        f"Mended:\n\n{_code(rule.good)}",
    )
    return "\n\n".join(blocks) + "\n"


def _listed(name: str, summary: str) -> str:
    return f"{name}\n{wrapped(summary, '    ', '    ')}"


def sources_text() -> str:
    """The notice of the data that is shipped, and every cited work with how it was read."""
    notice = files("setwright").joinpath("data", "NOTICE").read_text(encoding="utf-8")
    works = "\n".join(_cited(key) for key in bibliography())
    return f"{notice}\nCited works, and how each was read:\n\n{works}"


def cautions_text() -> str:
    """What Setwright does not know and does not decide, in Markdown that reads well as plain text."""
    return files("setwright").joinpath("data", "cautions.md").read_text(encoding="utf-8")


def rule_text(rule: Rule) -> str:
    """Everything about a rule, in Markdown that reads well as plain text."""
    blocks = [
        f"# {rule.id}",
        wrapped(f"{_sentence(rule.summary)} Looks at the {rule.looks_at}."),
        wrapped(f"Why: {rule.why}."),
        wrapped(f"Change: {rule.change}."),
        wrapped(f"Source: {rule.source}."),
        *_levels(rule),
        *_options(rule.options),
        *_covers(rule),
        f"Sets it off:\n\n{_code(rule.bad)}",
        f"Mended:\n\n{_code(rule.good)}",
        wrapped(f'To silence it where it is meant: "allow:" and under it "{rule.id}: your reason".'),
        *(
            ["Cited works:\n\n" + "\n".join(_cited(key) for key in rule.sources).rstrip()]
            if rule.sources
            else ()
        ),
    ]
    return "\n\n".join(blocks) + "\n"


def _levels(rule: Rule) -> Iterable[str]:
    if rule.id in EVERYWHERE:
        yield f"Level: {EVERYWHERE[rule.id].name}, whatever the week is for."
    if rule.id not in LEVELS:
        return
    rows = [
        f"- {row}: {level.name if level else 'silent'}"
        for row, level in zip(ROWS, LEVELS[rule.id], strict=True)
    ]
    yield "Level, by what the week is for:\n\n" + "\n".join(rows)


def _options(options: tuple[Option, ...]) -> Iterable[str]:
    if options:
        told = (f"{option.name}: {option.value:g} {option.unit} ({option.source})" for option in options)
        yield "Thresholds:\n\n" + "\n".join(wrapped(text, "- ", "  ") for text in told)


def _covers(rule: Rule) -> Iterable[str]:
    if rule.covers:
        yield wrapped(f"Speaks for {', '.join(rule.covers)} where both are found for the same part.")


def _cited(key: str) -> str:
    work = bibliography()[key]
    told = f"{key}: {work['cite']}. Read: {work['read_via']} ({work['where_read']}). Taken: {work['taken']}."
    return wrapped(told, "- ", "  ") + "\n"


def _code(text: str) -> str:
    return "".join(f"    {line}\n" if line else "\n" for line in text.splitlines()).rstrip("\n")


def _sentence(text: str) -> str:
    return f"{text[0].upper()}{text[1:].rstrip('.')}."
