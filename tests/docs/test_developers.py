"""DEVELOPERS.md follows one line of a plan through the house; each value it tells is the one found there."""

from pathlib import Path

from setwright.checked import check_plan
from setwright.files import read_beside, read_text
from setwright.findings import exit_status
from setwright.library.table import library
from setwright.model.plan import Item

ROOT = Path(__file__).parents[2]
SAID = " ".join((ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").split())
PLAN = ROOT / "examples" / "skerrow-bay" / "week-flawed.yaml"
CHECKED = check_plan(PLAN.name, read_text(PLAN), lambda name: read_beside(PLAN, name))
(WEEK,) = CHECKED.weeks
BENCH = WEEK.week.sessions[0].work[0]


def test_the_line_as_it_is_typed_and_where() -> None:
    assert isinstance(BENCH, Item)
    assert BENCH.dose
    assert f"- {BENCH.name}: {BENCH.dose.text}" in SAID
    assert f"`setwright check {PLAN.relative_to(ROOT)}`, line {BENCH.place.line}" in SAID
    key, value = BENCH.place, BENCH.dose.place
    assert f"a key at {key.line}:{key.column} to {key.end_line}:{key.end_column}" in SAID
    assert f"a value at {value.line}:{value.column} to {value.end_line}:{value.end_column}" in SAID


def test_the_dose() -> None:
    assert isinstance(BENCH, Item)
    assert BENCH.dose
    (group,) = BENCH.dose.groups
    (work,) = group.works
    assert work.effort
    assert group.rest
    told = (
        f"{group.kind}, sets `Span({group.sets.low:g}, {group.sets.high:g})`, "
        f"reps `Span({work.amount.span.low:g}, {work.amount.span.high:g})`, "
        f"effort {work.effort.low:g} {work.effort.scale}, rest {group.rest.low:g} s"
    )
    assert told in SAID


def test_the_movement() -> None:
    assert isinstance(BENCH, Item)
    assert BENCH.key
    movement = library().movement(BENCH.key)
    part = movement["parts"]["sternal"]
    told = (
        f"the item's key is `{BENCH.key}`",
        f"line {movement['line']} (tilt {movement['tilt']:.2f}), sternal lever {part['lever_mm']} mm",
        f"length {part['length_start']:.0f} to {part['length_end']:.0f} % of its range",
        f"hand {-movement['past_midline']['hand_cm']:.0f} cm short of the midline; {movement['class']};",
        f"best partner {next(one['name'] for one in movement['partners'] if one['finishes'])}",
    )
    assert [words for words in told if words not in SAID] == []


def test_the_count_and_the_finding() -> None:
    work = WEEK.coverage.works[0]
    hard = work.hard.low
    assert f"counts {hard:g} hard sets: {hard * work.dose('sternal'):g} for the sternal part" in SAID
    assert f"{hard * work.dose('clavicular'):g} each for the clavicular and costal part" in SAID
    assert work.dose("clavicular") == work.dose("costal")
    sternal = next(part for part in WEEK.coverage.parts if part.part == "sternal")
    assert f"The week has {sternal.sets} sternal sets" in SAID
    assert f'puts `focus: [chest]` on the row "{WEEK.aim.row}"' in SAID
    first = CHECKED.findings[0]
    assert first.rule.replace("-", "_") in SAID
    assert f"the exit status is {exit_status(CHECKED.findings)}" in SAID
