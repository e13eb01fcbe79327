"""docs/sources.md: every cited work, and the links between it and the pages of the rules."""

import re
from pathlib import Path

import pytest

from setwright.report.explain import bibliography
from setwright.report.rule_docs import pages
from setwright.report.source_docs import sources_page
from setwright.rules import EVERY_RULE, Rule

DOCS = Path(__file__).parents[2] / "docs"


def links(page: str) -> set[str]:
    return set(re.findall(r"\]\(([^)\s]+)\)", page))


def section(key: str) -> str:
    """What the page says of one work, in one line."""
    (found,) = (part for part in sources_page().split("\n## ")[1:] if part.startswith(f"{key}\n"))
    return " ".join(found.split())


def test_every_work_is_a_heading_once_and_in_the_order_of_the_data() -> None:
    assert re.findall(r"^## (.+)$", sources_page(), re.MULTILINE) == list(bibliography())


@pytest.mark.parametrize("key", bibliography())
def test_a_work_says_what_it_is_where_and_how_it_was_read_and_what_was_taken(key: str) -> None:
    work = bibliography()[key]
    told = section(key)
    assert " ".join(work["cite"].split()) in told
    assert f"Read: {work['read_via']} ({work['where_read']})." in told
    assert f"Taken: {work['taken']}." in told


@pytest.mark.parametrize("rule", EVERY_RULE, ids=lambda rule: rule.id)
def test_the_page_of_a_rule_and_its_works_link_to_each_other(rule: Rule) -> None:
    own = links(pages()[f"{rule.id}.md"])
    assert {link for link in own if "sources.md" in link} == {f"../sources.md#{key}" for key in rule.sources}
    back = {key for key in bibliography() if f"rules/{rule.id}.md" in links(section(key))}
    assert back == set(rule.sources)


def test_a_work_that_no_rule_leans_on_says_so() -> None:
    leaned_on = {key for rule in EVERY_RULE for key in rule.sources}
    silent = {key for key in bibliography() if section(key).endswith("Rules that lean on it: none.")}
    assert silent == bibliography().keys() - leaned_on


def test_the_list_of_rules_leads_to_the_sources() -> None:
    assert "../sources.md" in links(pages()["README.md"])
