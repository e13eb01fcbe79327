"""What was done in one session, as typed from paper: athlete by athlete, line by line."""

import datetime as dt
from typing import Literal

from setwright.places import Place
from setwright.reading.done import Done
from setwright.reading.frozen import Frozen


class LineDone(Frozen):
    """One movement and what was done of it. ``name`` as typed; the plan need not name it.

    ``done`` is None when the line could not be read; a line that nobody filled in is "not written".
    ``instead_of``: the movement of the plan that it took the place of.
    """

    name: str
    place: Place
    done: Done | None
    instead_of: str | None = None
    note: str | None = None
    private_note: str | None = None


class AthleteDone(Frozen):
    """One athlete's lines in the order of the record; no line at all is "not written"."""

    name: str
    place: Place
    lines: tuple[LineDone, ...] = ()
    notes: tuple[str, ...] = ()
    private_notes: tuple[str, ...] = ()


class Record(Frozen):
    """A record file. ``plan`` is the name of the plan; ``place`` is the ``record`` key.

    ``corrects``: the file name of the kept record whose place it takes. ``week`` counts from 1. A load
    without a unit is in ``unit``, else in the plan's.
    """

    plan: str
    place: Place
    week: int | None = None
    session: str | None = None
    date: dt.date | None = None
    unit: Literal["kg", "lb"] | None = None
    corrects: str | None = None
    athletes: tuple[AthleteDone, ...] = ()
    note: str | None = None
    private_note: str | None = None
