"""Reports on a week for the page tests: the example crew's, and those of a large squad of awkward names."""

import shutil
from collections.abc import Iterator
from functools import partial
from pathlib import Path

from setwright.checked import check_plan
from setwright.files import read_beside, read_text
from setwright.records.keeping import plan_of
from setwright.records.review import look_back
from setwright.records.told import FORMS, Edition, told
from setwright.records.week_done import week_done
from setwright.sheets.kinds import OFFICE, Paper
from setwright.sheets.told import told_html, told_name
from tests.pages.__main__ import PRINTED
from tests.pages.plans import EXAMPLES, LARGE_SQUAD

AWKWARD = "</style><b>Bold</b> & Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamter"
"""The name of the large squad's first athlete."""


def reports(folder: Path) -> Iterator[tuple[str, Paper, str]]:
    """The name of each file, its paper, and its HTML; plans and records are laid into ``folder``."""
    crew = Path(shutil.copytree(EXAMPLES, folder / "crew"))
    (crew / "record" / "2027-11-15-monday.1.yaml").write_text(
        read_text(EXAMPLES / "record-week-3-monday.yaml"), encoding="utf-8"
    )
    for plan, who in ((crew / "week-good.yaml", "Isla"), (_large(folder / "large"), "Invented Person 9")):
        for edition in FORMS:
            for athlete in (None, who):
                yield from _pages(plan, edition, athlete)


def _pages(file: Path, edition: Edition, athlete: str | None) -> Iterator[tuple[str, Paper, str]]:
    plan = plan_of(file)
    found = look_back([(plan, week_done(plan, plan.weeks[0]))]).only(athlete)
    (one,) = told(found, edition, athlete)
    checked = check_plan(str(file), read_text(file), partial(read_beside, file))
    for paper in OFFICE:
        yield told_name(checked, one, paper), paper, told_html(checked, one, paper, PRINTED)


def _large(folder: Path) -> Path:
    """A squad of thirty of whom everybody did something else than planned; the plan's file."""
    (folder / "record").mkdir(parents=True)
    plan = folder / "week.yaml"
    squad = LARGE_SQUAD.replace("- name: Invented Person 0\n", f'- name: "{AWKWARD}"\n')
    plan.write_text(squad, encoding="utf-8")
    names = (AWKWARD, *(f"Invented Person {number}" for number in range(1, 30)))
    lines = "".join(
        f'  "{name}":\n'
        "    - flat barbell bench press: 40 kg x 8, 8 at RPE 10, then 35 kg x 8\n"
        "    - standing barbell overhead press: not done, pager went in the middle of it all\n"
        "    - front plank: done\n    - note: called out, back for the last set and tired after it\n"
        for name in names
    )
    record = f"record: Six days\nsession: Monday\ndate: 2027-11-15\ndone:\n{lines}"
    (folder / "record" / "2027-11-15-monday.1.yaml").write_text(record, encoding="utf-8")
    return plan
