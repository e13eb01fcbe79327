"""Text rules about a record held against its plan. ``bad`` and ``good`` are records of the plan ``PLAN``."""

from typing import Final

from setwright.findings import Level
from setwright.reading.faults import TextRule

PLAN: Final = """\
plan: Week 3
starts: 2027-11-15
squad:
  athletes:
    - name: Ann
sessions:
  - day: Monday
    work:
      - dip: 3 x 8
"""
"""The plan that the records of these rules belong to."""

_HEAD: Final = "record: Week 3\nsession: Monday\ndate: 2027-11-15\n"
_GOOD: Final = f"{_HEAD}done:\n  Ann:\n    - dip: done"

NO_DATE = TextRule(
    "record-without-date",
    "a record that does not say when the session was done",
    "the date is part of the name under which it is kept",
    "record: Week 3\nsession: Monday\ndone:\n  Ann:\n    - dip: done",
    _GOOD,
)
NO_SESSION = TextRule(
    "record-of-no-session",
    "a record of a week or a session that the plan does not have",
    "what was done is held against what was planned",
    _GOOD.replace("session: Monday", "session: Tuesday"),
    _GOOD,
)
OTHER_DAY = TextRule(
    "record-on-another-day",
    "a date that is no day of this session in the plan",
    "a session may be moved; more often the date is a slip, and the record is kept under it",
    _GOOD.replace("2027-11-15", "2027-11-16"),
    _GOOD,
    Level.advice,
)
NOBODY = TextRule(
    "record-of-nobody",
    "an athlete in a record whom the squad does not know",
    "what was done would count for nobody",
    _GOOD.replace("Ann", "Anne"),
    _GOOD,
)
NOT_PLANNED = TextRule(
    "record-line-not-planned",
    "something done that the plan does not name for this athlete in this session",
    "it is kept as it is; a slip of the pen would part it from its plan",
    _GOOD.replace("dip: done", "pull-up: 8, 8"),
    _GOOD.replace("dip: done", "pull-up: 8, 8\n      instead of: dip"),
    Level.advice,
)
DONE_WHAT = TextRule(
    "record-done-without-plan",
    '"done" behind something that the plan does not name',
    "done means as the plan says, and it says nothing of it",
    _GOOD.replace("dip: done", "pull-up: done\n      instead of: dip"),
    _GOOD.replace("dip: done", "pull-up: 8, 8\n      instead of: dip"),
)
INSTEAD_OF = TextRule(
    "record-instead-of-nothing",
    "`instead of` and a movement that the plan does not name for this athlete",
    "nobody knows in whose place it was done",
    _GOOD.replace("dip: done", "pull-up: 8, 8\n      instead of: row"),
    _GOOD.replace("dip: done", "pull-up: 8, 8\n      instead of: dip"),
)
NO_UNIT = TextRule(
    "record-load-without-unit",
    "a load in kg or in lb, and neither the line nor the record nor the plan says which",
    "a number is one weight in kilograms and another in pounds",
    _GOOD.replace("dip: done", "dip: 60 x 8, 8"),
    _GOOD.replace("date: 2027-11-15", "date: 2027-11-15\nunit: kg").replace("dip: done", "dip: 60 x 8, 8"),
)
CORRECTS = TextRule(
    "record-corrects-nothing",
    "`corrects` and a file that is no kept record of this session and date",
    "a correction takes the place of one record",
    _GOOD.replace("done:", "corrects: monday.yaml\ndone:"),
    _GOOD,
)
RULES = (
    NO_DATE, NO_SESSION, OTHER_DAY, NOBODY, NOT_PLANNED, DONE_WHAT, INSTEAD_OF, NO_UNIT, CORRECTS,
)  # fmt: skip
