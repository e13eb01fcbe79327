"""What the files of a print are called: names that sort in the order they are printed, safe everywhere."""

import re
import unicodedata
from typing import Any, Final

from setwright.checked import Checked
from setwright.sheets.kinds import KINDS, Kind, Paper

PLAN_BYTES: Final = 90
DAY_BYTES: Final = 36
PERSON_BYTES: Final = 48
"""Most bytes of each part of a name (choice: in any script the whole stays well under the 255 of a file)."""


def stem(checked: Checked) -> str:
    """How the files of a plan begin: its name, and in a plan of several weeks the week.

    >>> slug("Autumn block: 1/2", 90)
    'autumn-block-1-2'
    """
    week = checked.week
    number = f"-week-{week.number:0{len(str(week.of))}}" if week and week.of > 1 else ""
    return f"{slug(week.name if week else '', PLAN_BYTES) or 'plan'}{number}"


def sheet_name(checked: Checked, kind: Kind, paper: Paper) -> str:
    """The file of all sheets of a kind: "autumn-block-week-03-2-session-a4.html"."""
    return f"{stem(checked)}-{KINDS[kind].number}-{kind}-{paper}.html"


def page_name(checked: Checked, kind: Kind, paper: Paper, sheet: Any, place: str) -> str:
    """The file of one sheet: "autumn-block-2-session-01-monday-isla-a4.html".

    ``place``: the sheet's number among those of its kind, so two people of one name have a file each.
    """
    day = getattr(sheet, "day", None) or getattr(sheet, "title", None) or ""
    called = (slug(day, DAY_BYTES), slug(getattr(sheet, "athlete", None) or "", PERSON_BYTES))
    parts = (stem(checked), str(KINDS[kind].number), kind, place, *called, paper)
    return "-".join(part for part in parts if part) + ".html"


def slug(text: str, most: int) -> str:
    """Text as part of a file name of at most so many bytes; empty when it holds no letter or digit.

    Letters of any script stay; everything else becomes a hyphen, so no name can lead to another folder.
    """
    plain = re.sub(r"[\W_]+", "-", unicodedata.normalize("NFC", text).lower()).strip("-")
    return plain.encode("utf-8", "ignore")[:most].decode("utf-8", "ignore").strip("-")
