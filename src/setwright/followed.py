"""The week that a plan follows, read and added up; what is wrong in its file is one line here."""

from collections.abc import Callable
from pathlib import PurePath
from typing import NamedTuple

from setwright.coverage import Coverage, cover
from setwright.files import CannotRun
from setwright.findings import Finding, Level
from setwright.model.plan import Week
from setwright.own.plan import read_plan
from setwright.reading.key_rules import FILE_MISSING
from setwright.reading.weeks import file_and_week
from setwright.reading.words import plural


class Followed(NamedTuple):
    """The week before, in the file that ``follows`` names."""

    file: str
    coverage: Coverage


class NotFollowed(NamedTuple):
    """Nothing to compare with, and what is said of it."""

    finding: Finding


def followed_by(week: Week, plan: str, beside: Callable[[str], str | None]) -> Followed | NotFollowed | None:
    """The week that ``week`` follows, or why there is none; None when it follows nothing.

    Of a file of several weeks it is the last one, unless one is named. ``plan`` is the name of the file that
    ``week`` stands in, ``beside`` gives the text of a file beside it.
    """
    name, place = week.follows, week.follows_place
    if name is None or place is None:
        return None

    def not_read(message: str, change: str) -> NotFollowed:
        return NotFollowed(FILE_MISSING.at(place, f"follows: {message}", change))

    file, number = file_and_week(name)
    path = PurePath(file)
    if PurePath(plan).name == file:
        return not_read(f"{name} is this plan itself", "name the plan file of the week before")
    named_here = file.isprintable() and not path.is_absolute()
    try:
        text = beside(file) if named_here else None
    except CannotRun as stop:
        return not_read(stop.what, stop.change or f"mend {file}, or take `follows` out")
    if text is None:
        change = "put the plan of the week before into this plan's folder and write its name as it is there"
        return not_read(f"{file!r} can't be read beside the plan", change)
    read, table = read_plan(file, text, lambda other: beside(str(path.parent / other)))
    errors = sum(finding.level is Level.error for finding in read.findings)
    if errors or not read.weeks:
        change = f"mend what `setwright check {file}` says, or take `follows` out"
        return not_read(f"{file} has {plural(errors, 'error')}, so nothing is compared with it", change)
    if number is not None and number > len(read.weeks):
        has = plural(len(read.weeks), "week")
        return not_read(f"{file} has {has}, so no week {number}", f"write a week from 1 to {len(read.weeks)}")
    return Followed(name, cover(read.weeks[(number or 0) - 1], table))
