"""Nothing of the YAML parser's or of pydantic's own wording reaches a coach, however a plan is broken."""

from collections.abc import Iterator

import pytest
import yaml

from setwright.files import CannotRun, decode
from tests.reading.plans import read

PLAN = (
    "plan: A\nfocus: [chest]\nunit: kg\nwork:\n"
    "  - dip: 3 x 8\n    note: 'slow'\n  - pull-up: 3 x 8, rest 2:00\n"
)
BREAKS = (
    "\t", "[", "]", "{", "}", "*x ", "&", "!", "%", "@", "`", "'", '"', ": ", "- ", "| ", "? ", ", ", "\n",
)  # fmt: skip
STEP = 2
"""Every second place of the plan is broken with every sign."""
PYDANTIC = ("pydantic", "validation error", "Input should", "Field required", "type=", "input_value")


def _broken() -> list[str]:
    return [PLAN[:at] + sign + PLAN[at:] for at in range(0, len(PLAN), STEP) for sign in BREAKS]


def _wording(text: str) -> Iterator[str]:
    """What both of the parser's loaders would say about the text."""
    for loader in (yaml.CBaseLoader, yaml.BaseLoader):
        try:
            yaml.load(text, Loader=loader)
        except yaml.MarkedYAMLError as error:
            yield from (said for said in (error.problem, error.context) if said)


BROKEN = _broken()
WORDING = sorted({said for text in BROKEN for said in _wording(text)})


def test_the_plans_are_broken_in_many_ways() -> None:
    assert len(WORDING) >= 30
    assert any("could not find expected ':'" in said for said in WORDING)


@pytest.mark.parametrize("sign", BREAKS)
def test_a_broken_plan_is_told_in_a_coachs_words(sign: str) -> None:
    for text in (text for text in BROKEN if len(text) == len(PLAN) + len(sign)):
        for finding in read(text).findings:
            told = f"{finding.message} {finding.change} {finding.why}"
            assert [said for said in (*WORDING, *PYDANTIC) if said in told] == [], text


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("weeks", "many"), ("people", "-1"), ("minutes", "[60]"), ("starts", "2025-02-30"), ("unit", "stone"),
        ("focus", "{a: b}"), ("allow", "x"), ("squad", "[1]"), ("gym", "7"), ("movements", "[a]"),
        ("schemes", "8"), ("aim", "~"), ("sides", "0x1F"), ("percent of", "1e400"),
    ],
)  # fmt: skip
def test_a_value_of_the_wrong_kind_is_told_in_a_coachs_words(key: str, value: str) -> None:
    for finding in read(f"plan: A\n{key}: {value}\nwork:\n  - dip: 3 x 8\n").findings:
        told = f"{finding.message} {finding.change} {finding.why}"
        assert [said for said in (*WORDING, *PYDANTIC) if said in told] == []


def test_an_old_eight_bit_file_is_one_sentence() -> None:
    with pytest.raises(CannotRun) as stop:
        decode("plan: Träning\n".encode("latin-1"), "old.yaml")
    assert "codec" not in str(stop.value)
