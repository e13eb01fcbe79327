"""Every text rule about files, keys and names: its bad line sets it off alone, its good line is silent."""

import pytest

from setwright.reading.faults import TextRule
from setwright.reading.file_rules import RULES as FILE_RULES
from setwright.reading.gym_rules import RULES as GYM_RULES
from setwright.reading.key_rules import RULES as KEY_RULES
from setwright.reading.max_rules import RULES as MAX_RULES
from setwright.reading.next_rules import RULES as NEXT_RULES
from setwright.reading.text_rules import TEXT_RULES
from setwright.reading.week_rules import RULES as WEEK_RULES
from tests.reading.plans import read, rules, whole_plan

EVERY = (*FILE_RULES, *KEY_RULES, *GYM_RULES, *MAX_RULES, *WEEK_RULES, *NEXT_RULES)
EACH = pytest.mark.parametrize("rule", EVERY, ids=lambda rule: rule.id)


@EACH
def test_the_bad_line_sets_off_this_rule_alone(rule: TextRule) -> None:
    assert rules(whole_plan(rule.bad)) == [rule.id]


@EACH
def test_the_good_line_is_silent_and_read_in_full(rule: TextRule) -> None:
    result = read(whole_plan(rule.good))
    assert result.findings == ()
    assert result.complete


@EACH
def test_the_finding_says_what_to_type(rule: TextRule) -> None:
    (finding,) = read(whole_plan(rule.bad)).findings
    assert finding.why == rule.why
    assert finding.place.file == "week.yaml"
    assert finding.change[-1] != "."
    for jargon in ("token", "mapping", "scalar", "indicator", "parse", "context"):
        assert jargon not in f"{finding.message} {finding.change} {finding.why}"


def test_rules_have_one_id_each_and_can_be_explained() -> None:
    ids = [rule.id for rule in EVERY]
    assert len(set(ids)) == len(ids)
    assert set(ids) < set(TEXT_RULES)
    assert "dose-order" in TEXT_RULES
