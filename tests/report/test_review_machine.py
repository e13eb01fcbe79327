"""``review --format json``: what was done for programs; whose it was and why only with ``--with-names``."""

import json
from pathlib import Path
from typing import Any

from tests.commands import run, said
from tests.records.test_told import RECORD, THURSDAY, hall

BENCH = """\
record: Hall, week 3
session: Monday
date: 2027-11-{}
done:
  Isla Marrack:
    - flat barbell bench press: 40 kg x 8, 8 at RPE 8
    - pull-up: bodyweight + 2 kg x 5 at 0 RIR
"""


def told(file: Path, *more: str) -> dict[str, Any]:
    result = run("review", file, "--format", "json", *more)
    assert result.exit_code == 0, result.output
    data: dict[str, Any] = json.loads(result.output)
    return data


def test_what_was_done_line_by_line(tmp_path: Path) -> None:
    data = told(hall(tmp_path, RECORD, THURSDAY))
    assert data["format"] == "setwright-review/1"
    (week,) = data["weeks"]
    assert (week["week"], week["sessions"], week["not_on_record"]) == (1, 2, [])
    isla, tam, wren = week["athletes"]
    assert [one["athlete"] for one in (isla, tam, wren)] == ["athlete 1", "athlete 2", "athlete 3"]
    assert [(one["came"], one["sessions"]) for one in (isla, tam, wren)] == [(2, 2), (1, 2), (0, 2)]
    bench, pull_up = isla["lines"][:2]
    assert bench["sets"][0] == {
        "load": "40 kg", "amount": 8.0, "amount_unit": "reps", "left": {"low": 0.0, "high": 0.0},
    }  # fmt: skip
    assert (bench["state"], bench["effort_off"], bench["date"]) == ("sets", -2.0, "2027-11-16")
    assert (pull_up["state"], pull_up["sets"], pull_up["planned"]) == ("not done", [], "3 x 6")
    assert isla["achieved"]["parts"]["sternal"]["sets"] == {"low": 2.0, "high": 2.0}
    assert data["max_formulas"][0] == "Epley"


def test_whose_it_was_and_why_only_with_names(tmp_path: Path) -> None:
    """Names, reasons, remarks and a body mass: the last stands in the max of a bodyweight movement."""
    file = hall(tmp_path, RECORD, *(BENCH.format(day) for day in (17, 18)))
    bare, full = (run("review", file, "--format", "json", *more).output for more in ((), ("--with-names",)))
    for word in ("Isla", "Tam", "Wren", "pinched", "slept", "reason", "notes"):
        assert word not in bare
        assert word in full
    for text in (bare, full):
        assert not [word for word in ("clinic", "cried", "migraine", "thyroid", "Pellow") if word in text]
    assert {one["movement"]: one["points"][0]["estimated_max"] for one in json.loads(bare)["loads"]} == {
        "flat barbell bench press": {"low": 48.0, "high": 51.07},
        "pull-up": None,
    }
    pulls = next(one for one in json.loads(full)["loads"] if one["movement"] == "pull-up")
    assert pulls["points"][0]["estimated_max"]["low"] == round((61.5 * 0.96 + 2) * 1.125, 2)
    assert pulls["added_to_the_body"]


def test_at_least_has_no_upper_end(tmp_path: Path) -> None:
    file = hall(tmp_path, BENCH.format(17).replace(" at RPE 8", ""))
    bench = next(one for one in told(file)["loads"] if one["movement"] == "flat barbell bench press")
    assert bench["points"][0]["estimated_max"] == {"low": 48.0, "high": None}


def test_what_took_the_place_of_a_line_and_what_nobody_dated(tmp_path: Path) -> None:
    line = "    - seal row: 8\n      instead of: pull-up\n"
    record = f"{BENCH.format(17).partition('  Isla')[0]}  Wren:\n{line}"
    data = told(hall(tmp_path, record), "--for", "Wren")
    lines = data["weeks"][0]["athletes"][0]["lines"]
    assert [(one["movement"], one["instead_of"], one["state"]) for one in lines] == [
        ("flat barbell bench press", None, "not written"), ("seal row", "pull-up", "sets"),
    ]  # fmt: skip


def test_a_report_is_words(tmp_path: Path) -> None:
    result = run("review", hall(tmp_path), "--format", "json", "--report", "crew")
    assert (result.exit_code, "a report is words" in said(result)) == (2, True)
