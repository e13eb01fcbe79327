"""What holds for every rule: its plans, its texts, its file, its thresholds."""

import ast
import inspect
import re
import sys
from pathlib import Path

import pytest
import yaml

from setwright.findings import Level
from setwright.report.explain import bibliography
from setwright.rules import EVERY_RULE, RULES, Rule, rule
from setwright.rules.aims import EVERYWHERE, LEVELS, ROWS
from tests.rules.plans import checked, rules_in

FOLDER = Path(rule.__file__).parent

every_rule = pytest.mark.parametrize("one", EVERY_RULE, ids=lambda one: one.id)


@every_rule
def test_the_failing_plan_sets_off_its_rule_and_none_that_it_does_not_cover(one: Rule) -> None:
    found = rules_in(checked(one.bad))
    assert one.id in found
    assert set(found) <= {one.id, *one.covers}


@every_rule
def test_the_mended_plan_is_silent(one: Rule) -> None:
    assert rules_in(checked(one.good)) == []


@every_rule
def test_every_text_is_filled_in_the_rule_and_in_its_findings(one: Rule) -> None:
    assert all(text.strip() for text in (one.summary, one.why, one.change, one.source))
    for finding in checked(one.bad).findings:
        assert finding.place.line >= 1
        assert all((finding.where, finding.message, finding.why, finding.change, finding.source))


@every_rule
def test_the_order_in_which_sessions_are_listed_does_not_matter(one: Rule) -> None:
    plan = yaml.safe_load(one.bad)
    if len(plan["sessions"]) < 2:
        plan["sessions"].append({"day": "Sunday", "work": [{"front plank": "2 x 30 s"}]})
    forward = yaml.safe_dump(plan, sort_keys=False, width=200)
    plan["sessions"].reverse()
    backward = yaml.safe_dump(plan, sort_keys=False, width=200)
    forward_says, backward_says = _said(forward), _said(backward)
    assert forward_says == backward_says


def _said(text: str) -> list[tuple[str, ...]]:
    return sorted(
        (f.rule, f.level.name, f.message, re.sub(r"line \d+", "a line", f.change))
        for f in checked(text).findings
    )


@every_rule
def test_a_rule_lives_in_the_file_of_its_name_and_every_threshold_is_read_there(one: Rule) -> None:
    module = sys.modules[f"setwright.rules.{one.id.replace('-', '_')}"]
    assert module.RULE is one
    read = [
        node for node in ast.walk(ast.parse(inspect.getsource(module))) if isinstance(node, ast.Attribute)
    ]
    named = [node.value.id for node in read if node.attr == "value" and isinstance(node.value, ast.Name)]
    own = {name: value for name, value in vars(module).items() if isinstance(value, rule.Option)}
    assert all(name in named for name in own)
    assert all(option in one.options for option in own.values())
    assert all(option.unit and option.source for option in one.options)


@every_rule
def test_its_sources_are_in_the_bibliography(one: Rule) -> None:
    assert set(one.sources) <= bibliography().keys()
    assert all(covered in {other.id for other in EVERY_RULE} for covered in one.covers)


def test_every_file_of_a_rule_is_listed() -> None:
    files = {
        path.stem for path in FOLDER.glob("*.py") if "\nRULE = Rule(" in path.read_text(encoding="utf-8")
    }
    assert files == {one.id.replace("-", "_") for one in EVERY_RULE}


def test_the_table_has_a_level_for_every_row_and_names_only_rules() -> None:
    assert {one.id for one in RULES} == LEVELS.keys() | EVERYWHERE.keys() | {
        "sets-under-range",
        "sets-over-range",
    }
    assert all(len(levels) == len(ROWS) for levels in LEVELS.values())
    assert all(level in {None, *Level} for levels in LEVELS.values() for level in levels)
