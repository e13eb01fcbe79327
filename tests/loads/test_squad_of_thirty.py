"""Thirty lifters with maxes in kilograms and pounds: every load printed is there, and it is the nearest.

The squad is drawn by chance from a fixed seed; everyone is invented. The check knows nothing of the code that
finds loads: it counts plates in every number, and takes the pound as 0.45359237 kg (NIST Handbook 44).
"""

import json
import random
from fractions import Fraction
from itertools import product
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner

from setwright.cli import app

POUND = Fraction(45359237, 100000000)
BARS = {"45 lb": 45 * POUND, "20 kg": Fraction(20)}
PLATES = {
    "lb": {"45": 2, "35": 1, "25": 1, "10": 2, "5": 1, "2.5": 1},
    "kg": {"20": 2, "10": 1, "5": 1, "2.5": 1, "1.25": 1},
}
PERCENTS = (62.5, 70, 77.5, 85, 92.5)
LIFTS = ("flat barbell bench press", "barbell back squat")


def squad(seed: int) -> dict[str, dict[str, tuple[float, str]]]:
    """The maxes of thirty lifters, each lift in either unit."""
    chance = random.Random(seed)
    people: dict[str, dict[str, tuple[float, str]]] = {}
    for number in range(30):
        maxes = {}
        for lift in LIFTS:
            unit = chance.choice(("kg", "lb"))
            maxes[lift] = (chance.randrange(80, 320) / 2 if unit == "kg" else chance.randrange(90, 350), unit)
        people[f"Lifter {number + 1}"] = maxes
    return people


def plan(people: dict[str, dict[str, tuple[float, str]]], rounding: str) -> str:
    bars = "".join(f"    {bar}: 4\n" for bar in BARS)
    plates = "".join(
        f"    {mass} {unit}: {pairs} {'pair' if pairs == 1 else 'pairs'}\n"
        for unit, kinds in PLATES.items()
        for mass, pairs in kinds.items()
    )
    squad = "".join(
        f"    - name: {name}\n      maxes:\n"
        + "".join(
            f"        {lift}: {best:g} {unit} tested 2027-09-06\n" for lift, (best, unit) in maxes.items()
        )
        for name, maxes in people.items()
    )
    work = "".join(f"  - {lift}: 3 x 3 at {percent}%\n" for lift in LIFTS for percent in PERCENTS)
    return (
        "plan: Mixed units\nunit: kg\ndose order: sets x reps\nstarts: 2027-09-20\npercent of: tested max\n"
        f"gym:\n  racks: 4\n  bars:\n{bars}  plates per rack:\n{plates}"
        f"squad:\n  rounding: {rounding}\n  athletes:\n{squad}work:\n{work}"
    )


def every_load() -> set[Fraction]:
    """Every load that can be put on, counted plate by plate: each bar takes the plates of its own unit."""
    found = set()
    for bar, mass in BARS.items():
        unit = bar[-2:]
        each = POUND if unit == "lb" else Fraction(1)
        kinds = PLATES[unit]
        for counts in product(*(range(pairs + 1) for pairs in kinds.values())):
            side = sum((Fraction(kind) * n for kind, n in zip(kinds, counts, strict=True)), Fraction(0))
            found.add(mass + 2 * each * side)
    return found


def put_on(plates: str) -> Fraction:
    """The kilograms of a load in words, "45 lb bar, 35 + 2.5 a side"; fails when a plate is not there."""
    bar, _, side = plates.removeprefix("the empty ").partition(", ")
    bar = bar.removesuffix(" bar")
    unit = bar[-2:]
    masses = side.removesuffix(" a side").split(" + ") if side else []
    for mass in masses:
        assert masses.count(mass) <= PLATES[unit][mass]
    each = POUND if unit == "lb" else Fraction(1)
    return BARS[bar] + 2 * each * sum(map(Fraction, masses), Fraction(0))


def rounded(asked: Fraction, there: set[Fraction], rounding: str) -> set[Fraction]:
    """What may be put on: by the rounding, of two equally far either."""
    below, above = (max(kg for kg in there if kg <= asked), min(kg for kg in there if kg >= asked))
    if rounding != "nearest":
        return {below if rounding == "down" else above}
    least = min(asked - below, above - asked)
    return {kg for kg in (below, above) if abs(kg - asked) == least}


@pytest.mark.parametrize(("seed", "rounding"), [(1, "nearest"), (2, "down"), (3, "up")])
def test_every_load_is_there_and_follows_the_rounding(tmp_path: Path, seed: int, rounding: str) -> None:
    people, there = squad(seed), every_load()
    file = tmp_path / "week.yaml"
    file.write_text(plan(people, rounding), encoding="utf-8")
    result = CliRunner().invoke(app, ["loads", str(file), "--format", "json"])
    assert result.exit_code == 0, result.output
    lines: list[dict[str, Any]] = json.loads(result.output)["sessions"][0]["lines"]
    assert len(lines) == len(LIFTS) * len(PERCENTS)
    for line, (lift, percent) in zip(lines, product(LIFTS, PERCENTS), strict=True):
        (sets,) = line["sets"]
        assert [row["athletes"] for row in sets["loads"]] == [[name] for name in people]
        for row in sets["loads"]:
            best, unit = people[row["athletes"][0]][lift]
            asked = Fraction(best) * (POUND if unit == "lb" else 1) * Fraction(percent) / 100
            total = put_on(row["plates"])
            assert total in there
            assert total in rounded(asked, there, rounding)
            assert row["load_kg"] == pytest.approx(float(total), abs=1e-4)
            assert row["off_percent"] == pytest.approx(float((total - asked) / asked * 100), abs=0.051)
