"""`setwright explain` and the pages written from the same text."""

import re
from pathlib import Path

import pytest

from setwright.reading.text_rules import TEXT_RULES
from setwright.report.explain import bibliography, explain
from setwright.report.rule_docs import pages
from setwright.rules import EVERY_RULE, Rule

DOCS = Path(__file__).parents[2] / "docs" / "rules"


@pytest.mark.parametrize("name", [rule.id for rule in EVERY_RULE])
def test_a_rule_is_told_whole(name: str) -> None:
    text, known = explain(name)
    assert known
    for word in (f"# {name}", "Why: ", "Change: ", "Source: ", "Sets it off:", "Mended:"):
        assert word in text
    assert max(map(len, text.splitlines())) <= 120


@pytest.mark.parametrize("rule", EVERY_RULE, ids=lambda rule: rule.id)
def test_every_threshold_is_told_with_its_unit_and_its_source(rule: Rule) -> None:
    text, _ = explain(rule.id)
    told = " ".join(text.split())
    listed = "".join(
        f" - {option.name}: {option.value:g} {option.unit} ({option.source})" for option in rule.options
    )
    assert (f"Thresholds:{listed} " in told) if rule.options else ("Thresholds:" not in told)
    works = re.findall(r"[a-z]+\d{4}[a-z]?(?=:| )", " ".join(option.source for option in rule.options))
    assert set(works) <= set(rule.sources)


@pytest.mark.parametrize("name", TEXT_RULES)
def test_a_rule_about_typed_text_is_told_too(name: str) -> None:
    text, known = explain(name)
    assert known
    assert TEXT_RULES[name].bad.splitlines()[0] in text


def test_without_a_word_every_rule_is_listed() -> None:
    text, known = explain(None)
    assert known
    assert all(f"{rule.id}\n" in text for rule in EVERY_RULE)
    assert all(f"{name}\n" in text for name in TEXT_RULES)


def test_sources_are_the_notice_and_every_cited_work() -> None:
    text, known = explain("sources")
    assert known
    assert "Seth, Dong, Matias, Delp" in text
    assert all(f"- {key}: " in text for key in bibliography())


def test_cautions_are_told_and_stand_in_the_docs_with_a_link() -> None:
    text, known = explain("cautions")
    assert known
    assert "It gives no medical advice." in text
    assert max(map(len, text.splitlines())) <= 80
    page = (DOCS.parent / "cautions.md").read_text(encoding="utf-8")
    assert page.replace("[engine.md](engine.md)", "docs/engine.md") == text
    assert explain("caution")[0].endswith("did you mean cautions?")


def test_every_cited_work_says_how_it_was_read_and_what_was_taken() -> None:
    for work in bibliography().values():
        assert work.keys() == {"cite", "where_read", "read_via", "taken"}
        assert work["read_via"] in {"abstract", "full text", "mirror", "second hand"}
        assert all(work.values())


def test_an_unknown_word_gets_the_nearest() -> None:
    assert explain("heavy-line-not-finish") == (
        "there is no rule heavy-line-not-finish; did you mean heavy-line-not-finished?",
        False,
    )
    assert explain("zzz") == ("there is no rule zzz; `setwright explain` lists them all", False)


def test_pages_hold_what_check_really_prints() -> None:
    page = pages()["heavy-line-not-finished.md"]
    assert "gap [1]: Monday's flat barbell bench press is never finished past the midline" in page


def test_docs_hold_a_page_a_rule_and_no_other() -> None:
    assert {path.name for path in DOCS.glob("*.md")} == set(pages())
