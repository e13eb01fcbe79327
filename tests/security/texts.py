"""Plans for these tests."""

from pathlib import Path

from setwright.checked import Checked, check_file

PLAN = "plan: A\nwork:\n"
"""A plan whose lines are still to come."""


def checked(text: str) -> Checked:
    """The plan in ``text``, with nothing beside it."""
    return check_file("week.yaml", text, lambda _: None)


def plan_file(folder: Path, text: str) -> Path:
    """A plan in a file of a folder."""
    path = folder / "week.yaml"
    path.write_text(text, encoding="utf-8", errors="surrogatepass")
    return path
