"""The matrix: words, tones, and the findings its cells lead to."""

import pytest

from setwright.rules.matrix import short_name
from tests.rules.plans import checked, week


@pytest.mark.parametrize(
    ("name", "short"),
    [
        ("dip", "dip"),
        ("flat barbell bench press", "flat bench press"),
        ("incline 30 barbell bench press", "incline 30 press"),
        ("flat dumbbell bench press", "flat press"),
        ("one-arm low-to-high cable fly across", "one-arm low-to-."),
        ("barbell", "barbell"),
        ("dumbbellfloorpressing", "dumbbellfloorpr."),
    ],
)
def test_short_names_fit_their_cell(name: str, short: str) -> None:
    assert short_name(name) == short
    assert len(short) <= 16


def test_cells_lead_to_the_findings_that_speak_of_them() -> None:
    one = checked(week("Monday\nincline 45 barbell bench press: 6 x 8 at 2 RIR\nbench pull: 4 x 8 at 2 RIR"))
    clavicular, sternal, costal = one.matrix
    assert clavicular.across.text == "NEVER"
    assert clavicular.across.finding is not None
    assert clavicular.across.finding.rule in {"heavy-line-not-finished", "no-work-across-the-midline"}
    assert sternal.sets.text == "0"
    assert sternal.heaviest.text == "none"
    assert sternal.sets.finding is not None
    assert sternal.sets.finding.rule == "part-not-loaded"
    assert costal.across.text == "cannot be"
    assert costal.long.text == "no"


def test_a_line_that_another_crossing_move_passes_by_leads_from_the_lift() -> None:
    lines = ("flat barbell bench press: 4 x 8", "high-to-low cable crossover: 3 x 12", "bench pull: 4 x 8")
    text = week("\n".join(("Monday", *(f"{line} at 2 RIR" for line in lines))))
    sternal = checked(text).matrix[1]
    assert sternal.across.text == "yes, 18 deg"
    assert sternal.across.finding is None
    assert sternal.heaviest.finding is not None
    assert sternal.heaviest.finding.rule == "heavy-line-not-finished"
