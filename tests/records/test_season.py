"""A simulated season: twelve weeks of two invented lifters through record, keep, review and next, by seed."""

import random
import re
from pathlib import Path

from setwright.loads.maxes import MaxFound, max_of
from setwright.own.plan import read_plan
from setwright.records.planned import loads_of, planned
from tests.records.plans import LIBRARY, run

WEEKS = 12
PLAN = """\
plan: Simulated season, week 1
starts: 2027-09-06
unit: kg
dose order: sets x reps
squad:
  rounding: nearest
  athletes:
    - name: Ann
      maxes:
        flat barbell bench press: 50 kg tested 2027-09-01
        barbell back squat: 60 kg tested 2027-09-01
    - name: Ben
      maxes:
        flat barbell bench press: 90 kg tested 2027-09-01
        barbell back squat: 110 kg tested 2027-09-01
gym:
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
next: add 2.5 kg when every set reaches the top
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 3 x 6-8 at 2 RIR     # the one that counts
        load:
          Ann: 37.5 kg
          Ben: 70 kg
      - barbell back squat: 3 x 5 at 2 RIR
        load:
          Ann: 50 kg
          Ben: 90 kg
        next: add 5 kg when every set reaches the top
      - pull-up: 3 x 5-8
        next: repeat
"""


def filled_in(form: str, chance: random.Random) -> str:
    """A form as somebody may type it: most lines in full, some short, missed or left empty."""

    def typed(match: re.Match[str]) -> str:
        sort = chance.random()
        if sort < 0.1:
            return f"{match[1]}"
        if sort < 0.2:
            return f"{match[1]} not done, simulated"
        top = int(re.findall(r"\d+", match[2])[1 if "-" not in match[2].partition(",")[0] else 2])
        reps = [top if sort < 0.7 else top - chance.randint(0, 2) for _ in range(3 if sort < 0.9 else 2)]
        load = re.search(r"with ([\d.]+) kg", match[2])
        return f"{match[1]} {f'{load[1]} kg x ' if load else ''}{', '.join(map(str, reps))}"

    return re.sub(r"(    - [^:]+:)  # plan: (.*)", typed, form)


def test_twelve_weeks_without_a_hand_edit(tmp_path: Path) -> None:
    chance = random.Random(12)
    file = tmp_path / "week-1.yaml"
    file.write_text(PLAN, encoding="utf-8")
    for number in range(1, WEEKS + 1):
        assert run("check", file, "--fail-on", "error").exit_code == 0
        form = tmp_path / f"form-{number}.yaml"
        assert run("record", file, "--day", "Monday", "--out", form).exit_code == 0
        form.write_text(filled_in(form.read_text(encoding="utf-8"), chance), encoding="utf-8")
        kept = run("keep", form)
        assert kept.exit_code == 0, kept.output
        assert run("review", file).exit_code == 0
        going_on = run("next", file)
        assert going_on.exit_code == 0, going_on.output
        assert "To do by hand" not in going_on.output
        file = tmp_path / f"week-{number + 1}.yaml"
        _never_above_the_max(file)
    text = file.read_text(encoding="utf-8")
    assert text.startswith(
        f"plan: Simulated season, week {WEEKS + 1}\nfollows: week-{WEEKS}.yaml\nstarts: 2027-11-29\n"
    )
    assert "3 x 6-8 at 2 RIR     # the one that counts\n" in text
    lifted = [float(one) for one in re.findall(r"(?:Ann|Ben): ([\d.]+) kg\n", text)]
    assert all(end > start for end, start in zip(lifted, (37.5, 70, 50, 90), strict=True)), lifted
    assert len(list((tmp_path / "record").iterdir())) == WEEKS


def _never_above_the_max(file: Path) -> None:
    read, _ = read_plan(str(file), file.read_text(encoding="utf-8"), lambda _: None)
    assert read.complete
    week = read.weeks[0]
    assert week.squad is not None
    for athlete in week.squad.athletes:
        for at in planned(week, week.sessions[0], athlete):
            best = max_of(athlete, LIBRARY.movement(at.line.key or ""), "tested max", week.starts)
            loads = [load.low or 0.0 for load in loads_of(at, week, athlete)]
            assert not isinstance(best, MaxFound) or max(loads) <= best.kg.high
