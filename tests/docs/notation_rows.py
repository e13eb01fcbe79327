"""The table of notations as rows, and the plan that each of its cells stands for."""

import re
from pathlib import Path
from typing import NamedTuple

MOVE = "flat barbell bench press"
CODE = re.compile(r"`([^`]+)`")
RULES = re.compile(r"\(((?:`[a-z-]+`(?:, )?)+)\)$")
GROUPS = ("superset:", "circuit:", "complex:")
HABITS = ("unit", "dose order", "percent of", "sides")
RECORD = "a record line"
ALSO = {
    "two maxes": "squad:\n  athletes:\n    - name: Ann\n      maxes:\n"
    f"        {MOVE}: 55 kg tested 2026-12-14, training max 90%\n",
    "2 weeks": "weeks: 2",
    "3 weeks": "weeks: 3",
    "4 weeks": "weeks: 4",
    "a red band": "gym:\n  bands:\n    red: 60 N at 2 m\n",
}
"""Words of the column "where" that stand for more of a plan."""
TWO_SESSIONS = """sessions:
  - name: A
    work:
      - pull-up: 3 x 8
  - name: B
    work:
      - dip: 3 x 8
"""


class Row(NamedTuple):
    """One row: its number, every way it is typed, where, what is said, what to write (each in lines)."""

    number: int
    typed: tuple[tuple[str, ...], ...]
    where: tuple[str, ...]
    said: str
    write: tuple[tuple[str, ...], ...]

    @property
    def rules(self) -> list[str]:
        """The rules that ask, none when the row is read."""
        found = RULES.search(self.said)
        return CODE.findall(found[1]) if found else []

    @property
    def words(self) -> str:
        """What is read, or the question."""
        return RULES.sub("", self.said).removeprefix("asked: ").strip()


def rows(page: Path) -> list[Row]:
    """Every row of the page's tables that starts with a number."""
    found = []
    for line in page.read_text(encoding="utf-8").splitlines():
        cells = [cell.strip().replace("\\|", "|") for cell in re.split(r"(?<!\\)\|", line)[1:-1]]
        if cells and cells[0].isdigit():
            number, typed, where, said, write = cells
            found.append(Row(int(number), _texts(typed), _where(where), said, _texts(write)))
    return found


def _texts(cell: str) -> tuple[tuple[str, ...], ...]:
    """The texts of a cell; lines joined by <br> are one text."""
    return tuple(
        tuple(CODE.findall(part)) for part in re.split(r"(?<=`)(?:, | or )(?=`)", cell) if CODE.search(part)
    )


def _where(cell: str) -> tuple[str, ...]:
    return tuple(part.strip().strip("`") for part in cell.split(", ") if part)


def plan(typed: tuple[str, ...], where: tuple[str, ...]) -> str:
    """A whole plan with ``typed`` in it: a dose, a value of a key, a line of work, or keys of the top."""
    head = ["plan: A week", *(word for word in where if word.split(":")[0] in HABITS and ": " in word)]
    head += [ALSO[word].rstrip() for word in where if word in ALSO]
    if "sessions A and B" in where:
        return "\n".join([*head, *typed, TWO_SESSIONS])
    if "at the top" in where or typed[0] == "lighter weeks:":
        return "\n".join([*head, *typed, "work:", "  - pull-up: 3 x 8", ""])
    return "\n".join([*head, "work:", *_work(typed, where), ""])


def _work(typed: tuple[str, ...], where: tuple[str, ...]) -> list[str]:
    first, *more = typed
    keys = [word for word in where if word.endswith(":")]
    move = next(
        (word for word in keys if word not in ("load:", "rest:", "tempo:", "effort:", "warm-up:")), f"{MOVE}:"
    )
    key = next((word for word in keys if word != move), None)
    if first in GROUPS or first.startswith("- ") or "a line of work" in where:
        lines = [first if first.startswith("- ") else f"- {first}", *more]
        return [f"  {line}" if line.startswith("- ") else f"    {line}" for line in lines]
    if key is not None:
        return [f"  - {move} 3 x 8", f"    {key} {first}"]
    return [f"  - {move} {first}", *(f"    {line}" for line in more)]
