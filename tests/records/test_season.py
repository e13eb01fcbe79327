"""Simulated seasons: twelve weeks of invented lifters through check, sheet, record, keep, review and next.

What they do is drawn by chance with a stated seed; nothing in it was measured, and no file is edited by hand.
"""

import random
import re
from functools import partial
from pathlib import Path

import pytest

from setwright.files import read_beside
from setwright.loads.maxes import MaxFound, max_of
from setwright.model.plan import Week
from setwright.own.plan import read_plan
from setwright.records.planned import loads_of, planned
from tests.commands import run
from tests.records.plans import LIBRARY

WEEKS = 12
SQUAD = """\
squad: The simulated crew
rounding: nearest
athletes:
  - name: Ann
    maxes:
      flat barbell bench press: 50 kg tested 2027-09-01, training max 90%
      barbell back squat: 60 kg tested 2027-09-01
  - name: Ben
    maxes:
      flat barbell bench press: 90 kg tested 2027-09-01, training max 90%
      barbell back squat: 110 kg tested 2027-09-01
    limits:
      - load at most: 100 kg
        until: cleared
        set by: an invented clinician
"""
GYM = """\
gym: The simulated hall
racks: 2
bars:
  20 kg: 2
plates per rack:
  20 kg: 2 pairs
  10 kg: 1 pair
  5 kg: 1 pair
  2.5 kg: 1 pair
  1.25 kg: 1 pair
stations:
  pull-up bar: 1
"""
TOP = """\
starts: 2027-09-06
unit: kg
dose order: sets x reps
percent of: tested max
squad: squad.yaml
gym: gym.yaml
next: add 2.5 kg when every set reaches the top
"""
SESSIONS = """\
sessions:
  - day: Monday
    name: Press day
    work:
      - flat barbell bench press: 3 x 6-8 at 2 RIR     # the one that counts
        load:
          Ann: 37.5 kg
          Ben: 70 kg
      - pull-up: 3 x 5-8
        next: add 1 rep every 3 weeks
  - day: Thursday
    name: Squat day
    work:
      - barbell back squat: 3 x 5 at 2 RIR
        load:
          Ann: 50 kg
          Ben: 90 kg
        next: add 5 kg when every set reaches the top
      - flat barbell bench press: 3 x 5 at 70% of training max
        next: add 2.5 kg to the training max every 3 weeks
"""
WEEK_BY_WEEK = (
    f"plan: Simulated season, week 1\n{TOP}lighter weeks:\n  every 4 weeks: half the sets\n{SESSIONS}"
)
BLOCK = f"plan: Simulated block\nweeks: 4\n{TOP}lighter weeks:\n  week 4: half the sets\n{SESSIONS}"


def filled_in(form: str, chance: random.Random) -> str:
    """A form as somebody may type it: most lines in full, some short, missed or left empty."""

    def typed(match: re.Match[str]) -> str:
        sort = chance.random()
        if sort < 0.05:
            return f"{match[1]}"
        if sort < 0.1:
            return f"{match[1]} not done, simulated"
        sets, *reps = (int(one) for one in re.findall(r"\d+", match[2].partition(",")[0]))
        done = [reps[-1] if sort < 0.8 else reps[-1] - chance.randint(0, 2) for _ in range(sets)]
        load = re.search(r"with ([\d.]+) kg", match[2])
        return f"{match[1]} {f'{load[1]} kg x ' if load else ''}{', '.join(map(str, done))}"

    return re.sub(r"(    - [^:]+:)  # plan: (.*)", typed, form)


def a_season(folder: Path, first: str, chance: random.Random, missed: int) -> list[Path]:
    """The plans of twelve weeks, each written by ``next``; ``missed``: the week that nobody trained."""
    for name, text in (("squad.yaml", SQUAD), ("gym.yaml", GYM), (first, "")):
        if text:
            (folder / name).write_text(text, encoding="utf-8")
    file = folder / first
    plans = []
    for number in range(1, WEEKS + 1):
        plans.append(file)
        only = ("--week", "1") if file.name == "block.yaml" else ()
        assert run("check", file, "--fail-on", "error").exit_code == 0
        sheets = run("sheet", file, *only, "--out", folder / f"sheets-{number}")
        assert sheets.exit_code == 0, sheets.output
        days = () if number == missed else ("Monday", "Thursday")
        for day in days:
            keep(file, day, only, chance)
        if days:
            assert run("review", file).exit_code == 0
        going_on = run("next", file, *only, *(() if days else ("--missed",)))
        assert going_on.exit_code == 0, going_on.output
        assert "To do by hand" not in going_on.output
        file = Path(going_on.output.split()[-1])
    return [*plans, file]


def keep(file: Path, day: str, only: tuple[str, ...], chance: random.Random) -> None:
    """One session through a form into a record."""
    form = file.parent / f"form-{file.stem}-{day}.yaml"
    assert run("record", file, "--day", day, *only, "--out", form).exit_code == 0
    form.write_text(filled_in(form.read_text(encoding="utf-8"), chance), encoding="utf-8")
    kept = run("keep", form)
    assert kept.exit_code == 0, kept.output


def week_of(file: Path) -> Week:
    """The first week of a plan in which everything can be read."""
    read, _ = read_plan(str(file), file.read_text(encoding="utf-8"), partial(read_beside, file))
    assert read.complete
    return read.weeks[0]


def lifted(week: Week) -> list[float]:
    """The loads in kilograms of a week, in order; none is above a tested max or a limit."""
    found = []
    assert week.squad is not None
    for athlete in week.squad.athletes:
        most = min((limit.load_at_most or 0.0 for limit in athlete.limits), default=1000.0)
        for session in week.sessions:
            for at in planned(week, session, athlete):
                best = max_of(athlete, LIBRARY.movement(at.line.key or ""), "tested max", week.starts)
                loads = [load.low or 0.0 for load in loads_of(at, week, athlete) if load.kind == "mass"]
                assert not isinstance(best, MaxFound) or all(load <= best.kg.high for load in loads)
                assert all(load <= most for load in loads)
                found += loads
    return found


@pytest.mark.parametrize(("first", "text"), [("week-1.yaml", WEEK_BY_WEEK), ("block.yaml", BLOCK)])
def test_twelve_weeks_without_a_hand_edit(first: str, text: str, tmp_path: Path) -> None:
    """Nobody comes in the sixth week, so it comes again, and all that follows is a week later."""
    (tmp_path / first).write_text(text, encoding="utf-8")
    plans = a_season(tmp_path, first, random.Random(12), missed=6)
    weeks = [week_of(file) for file in plans]
    assert [at for at, week in enumerate(weeks, 1) if week.lighter] == [4, 9, 13]
    assert [at for at, file in enumerate(plans, 1) if "again" in file.name] == [7]
    assert str(weeks[-1].starts) == "2027-11-29"
    every = [lifted(week) for week in weeks]
    assert all(end > start for start, end in zip(every[0], every[-1], strict=True)), (every[0], every[-1])
    trained = [training_maxes(week) for week in (weeks[0], weeks[-1])]
    assert all(end > start for start, end in zip(*trained, strict=True)), trained
    assert "3 x 6-8 at 2 RIR     # the one that counts\n" in plans[-1].read_text(encoding="utf-8")
    assert (tmp_path / first).read_text(encoding="utf-8") == text
    assert (tmp_path / "squad.yaml").read_text(encoding="utf-8") == SQUAD
    assert len(list((tmp_path / "record").iterdir())) == 2 * (WEEKS - 1)


def training_maxes(week: Week) -> list[float]:
    """The training maxes of the bench press, in kilograms, none above the tested one."""
    bench = LIBRARY.movement("flat-barbell-bench-press")
    found = []
    for athlete in week.squad.athletes if week.squad else ():
        best, most = (max_of(athlete, bench, kind) for kind in ("training max", "tested max"))
        assert isinstance(best, MaxFound)
        assert isinstance(most, MaxFound)
        assert best.kg.high <= most.kg.high
        found.append(best.kg.low)
    return found
