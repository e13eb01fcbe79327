"""Whatever is typed, a check is printed in every form, and nothing is raised."""

import json

from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.glance import glance
from setwright.report.machine import github, json_text, short
from setwright.report.summary import summary_text
from setwright.report.terminal import text
from tests.rules.plans import EXAMPLES, beside_the_example, checked

FILES = [
    (EXAMPLES / name).read_text(encoding="utf-8").splitlines() for name in ("week-flawed.yaml", "block.yaml")
]


@st.composite
def mutated(draw: st.DrawFn) -> str:
    """A plan of the example crew with some lines left out, doubled, cut or garbled."""
    lines = list(draw(st.sampled_from(FILES)))
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(lines) - 1))
        how = draw(st.sampled_from(("gone", "twice", "cut", "garbled")))
        if how == "gone":
            lines[at : at + 1] = [] if len(lines) > 1 else lines
        elif how == "twice":
            lines.insert(at, lines[at])
        elif how == "cut":
            lines[at] = lines[at][: draw(st.integers(0, len(lines[at])))]
        else:
            place = draw(st.integers(0, len(lines[at])))
            lines[at] = lines[at][:place] + draw(st.text(max_size=3)) + lines[at][place:]
    return "\n".join(lines)


@given(mutated())
@settings(max_examples=60, deadline=None)
def test_a_garbled_plan_is_checked_in_every_form(plan: str) -> None:
    one = checked(plan, beside_the_example)
    assert text(one, colour=False).endswith("\n")
    assert json.loads(json_text([one]))["format"] == "setwright-findings/1"
    assert short(one).count("\n") == len(one.findings) == github(one).count("\n")
    for number in range(1, len(one.weeks) + 1):
        assert summary_text(glance(one.only(number))).endswith("\n")
    assert all(f.why and f.change and f.source for f in one.findings)
