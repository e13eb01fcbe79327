"""The parser in C and the one in Python read the same; a PyYAML built without C will do."""

import subprocess
import sys

import pytest
import yaml

from setwright.reading import builder
from setwright.reading.tree import Tree, read_tree
from tests.fuzz.garble import garbled
from tests.fuzz.seeds import EXAMPLES, seeds

PARSERS = (yaml.CBaseLoader, yaml.BaseLoader)


def trees(text: str, monkeypatch: pytest.MonkeyPatch) -> list[Tree]:
    """The text read by each parser."""
    read = []
    for parser in PARSERS:
        monkeypatch.setattr(builder, "PARSER", parser)
        read.append(read_tree("week.yaml", text))
    return read


def test_both_parsers_read_every_plan_and_trap_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    known = seeds()
    texts = [*known.plans, *known.slow, *known.squads, *known.gyms, "", "---", "a: &x [*x]\n", "[" * 60]
    texts += [garbled(1, number).plan.decode("ascii", "ignore") for number in range(150)]
    for text in texts:
        by_c, by_python = trees(text, monkeypatch)
        assert by_c == by_python, text


def test_without_the_parser_in_c_a_check_prints_the_same() -> None:
    plan = str(EXAMPLES / "skerrow-bay/week-flawed.yaml")
    run = "from setwright.cli import main; main()"
    with_c, without = (
        subprocess.run(
            [sys.executable, "-c", code, "check", plan], capture_output=True, text=True, check=False
        )
        for code in (run, f"import yaml; del yaml.CBaseLoader; {run}")
    )
    assert (with_c.returncode, with_c.stdout) == (without.returncode, without.stdout)
    assert "2 gaps" in without.stdout
    assert not without.stderr
