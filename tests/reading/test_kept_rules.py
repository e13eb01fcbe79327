"""Text rules about records held against a plan, and about their tables: bad sets off this rule alone."""

from pathlib import Path

import pytest

from setwright.reading.faults import TextRule
from setwright.reading.kept_rules import PLAN
from setwright.reading.kept_rules import RULES as KEPT_RULES
from setwright.reading.table_rules import RULES as TABLE_RULES
from setwright.records.keeping import hold, plan_of
from setwright.records.table import read_table


def kept(folder: Path, text: str) -> list[str]:
    """The rules that a record breaks, held against the plan of the rules."""
    plan = folder / "week-3.yaml"
    plan.write_text(PLAN, encoding="utf-8")
    return [finding.rule for finding in hold(folder / "monday.yaml", text, plan_of(plan)).findings]


@pytest.mark.parametrize("rule", KEPT_RULES, ids=lambda rule: rule.id)
def test_a_rule_about_kept_records(rule: TextRule, tmp_path: Path) -> None:
    assert kept(tmp_path, rule.bad) == [rule.id]
    assert kept(tmp_path, rule.good) == []


@pytest.mark.parametrize("rule", TABLE_RULES, ids=lambda rule: rule.id)
def test_a_rule_about_tables(rule: TextRule) -> None:
    assert [finding.rule for finding in read_table("t.csv", rule.bad).findings] == [rule.id]
    assert read_table("t.csv", rule.good).findings == ()
