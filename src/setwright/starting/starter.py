"""The files of a new folder: an example of a week, of a squad and of a gym, each key explained."""

import os
from importlib.resources import files
from pathlib import Path
from typing import Final

PLAN: Final = "week-1.yaml"
SQUAD: Final = "squad.yaml"
GYM: Final = "gym.yaml"
NOT_SHARED: Final = ".gitignore"
"""Keeps the squad and the records out of a shared history (git, and what reads its files)."""

WHO_MAY_READ: Final = (
    "squad.yaml and what is recorded hold names, body masses and limits: give them only to those who coach"
    " these people; the sheets and the plan are for everybody."
)


def starter_files() -> dict[str, str]:
    """The text of each file by its name; a check of the plan has nothing to say."""
    return {name: _text(name.removeprefix(".")) for name in (PLAN, SQUAD, GYM, NOT_SHARED)}


def _text(name: str) -> str:
    return files("setwright").joinpath("data", "starter", name).read_text(encoding="utf-8")


def taken(folder: Path, names: dict[str, str]) -> list[str]:
    """The files that are there already, which nothing is written over."""
    return sorted(name for name in names if os.path.lexists(folder / name))
