"""Plans written short, and what check finds in them."""

from collections.abc import Callable
from pathlib import Path

from setwright.checked import Checked, check_plan
from setwright.files import read_beside

HERE = Path(__file__).parent
EXAMPLES = HERE.parents[1] / "examples" / "skerrow-bay"

HEAD = "plan: A week\nunit: kg\ndose order: sets x reps\nsides: each\n"


def nothing_beside(_name: str) -> None:
    return None


def checked(text: str, beside: Callable[[str], str | None] = nothing_beside) -> Checked:
    return check_plan("week.yaml", text, beside)


def week(*days: str, top: str = "") -> str:
    """A plan of sessions; each is its day and then its lines, one a line: "Monday\\ndip: 3 x 8 at 2 RIR"."""
    sessions = []
    for day in days:
        name, *lines = day.splitlines()
        sessions.append(f"  - day: {name}\n    work:\n" + "".join(map(_item, lines)))
    return f"{HEAD}{top}sessions:\n{''.join(sessions)}"


def _item(line: str) -> str:
    return f"{line}\n" if line.startswith(" ") else f"      - {line}\n"


def rules_in(one: Checked) -> list[str]:
    return [finding.rule for finding in one.findings]


def of(one: Checked, rule: str) -> list[str]:
    return [finding.message for finding in one.findings if finding.rule == rule]


def example(name: str) -> Checked:
    return check_plan(name, (EXAMPLES / name).read_text(encoding="utf-8"), beside_the_example)


def beside_the_example(name: str) -> str | None:
    return read_beside(EXAMPLES / "week-good.yaml", name)


def without(text: str, *movements: str) -> str:
    """A plan without the lines of some movements, and the keys that stand under them."""
    kept, dropped_at = [], None
    for line in text.splitlines(keepends=True):
        indent = len(line) - len(line.lstrip())
        if dropped_at is not None and indent > dropped_at:
            continue
        dropped_at = None
        if any(line.lstrip().startswith(f"- {movement}:") for movement in movements):
            dropped_at = indent
        else:
            kept.append(line)
    return "".join(kept)
