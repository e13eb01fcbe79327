"""The kinds of sheet: one table, from which files are written and commands offer them."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, Final, Literal

from setwright.checked import Checked
from setwright.library.table import Library, library
from setwright.model.plan import Week
from setwright.sheets.board import boards
from setwright.sheets.floors import Floors
from setwright.sheets.home import home_sheets
from setwright.sheets.log import log_sheets
from setwright.sheets.overview import week_sheet
from setwright.sheets.phrases import say
from setwright.sheets.rack import rack_cards
from setwright.sheets.sessions import session_sheets
from setwright.sheets.station import station_cards
from setwright.sheets.summary import summary_sheet
from setwright.sheets.view import SummarySheet, WeekSheet

Kind = Literal["week", "session", "session-large", "rack", "board", "station", "log", "home", "summary"]
Paper = Literal["a4", "letter", "a3"]

SIZES: Final[Mapping[Paper, tuple[float, float]]] = {
    "a4": (210.0, 297.0),
    "letter": (215.9, 279.4),
    "a3": (297.0, 420.0),
}
"""Width and height of upright paper in mm (ISO 216; ANSI/ASME Y14.1)."""

OFFICE: Final[tuple[Paper, ...]] = ("a4", "letter")
"""What every office prints on."""


class NothingToPrint(ValueError):
    """Raised for a kind that a plan holds nothing for; the text says what it would take."""


class WrongPaper(ValueError):
    """Raised for a paper that a kind doesn't come on; the text names those it comes on."""


@dataclass(frozen=True, slots=True)
class SheetKind:
    """One kind of sheet. Its template is named after it.

    ``number`` sorts files in the order they are printed.
    ``readers``: "public" sheets hang or lie where others read them. ``pages`` gives what stands on them,
    from a checked plan, the mark in the footer and the timetables; ``nothing`` is said when it gives none.
    ``among_all``: it is printed without being asked for by name.
    """

    name: Kind
    number: int
    upright: bool
    readers: Literal["public", "coach"]
    pages: Callable[[Checked, str, Floors], tuple[Any, ...]]
    nothing: str
    papers: tuple[Paper, ...] = OFFICE
    among_all: bool = True

    @property
    def title(self) -> str:
        """What follows the plan's title in the window."""
        return say(f"title.{self.name}")


def _overview(checked: Checked, mark: str, floors: Floors) -> tuple[WeekSheet, ...]:
    one = checked.weeks[0]
    return (week_sheet(checked, one.week, one.coverage, mark, floors),)


def _summary(checked: Checked, mark: str, _: Floors) -> tuple[SummarySheet, ...]:
    return (summary_sheet(checked, mark),)


def _by_week(
    sheets: Callable[[Week, str, Library], tuple[Any, ...]],
) -> Callable[[Checked, str, Floors], tuple[Any, ...]]:
    """The pages of a kind that needs no more than the week and its library."""

    def pages(checked: Checked, mark: str, _: Floors) -> tuple[Any, ...]:
        return sheets(checked.weeks[0].week, mark, checked.table or library())

    return pages


def _by_floor(
    sheets: Callable[[Week, str, Library, Floors], tuple[Any, ...]],
) -> Callable[[Checked, str, Floors], tuple[Any, ...]]:
    """The pages of a kind that says who is where when."""

    def pages(checked: Checked, mark: str, floors: Floors) -> tuple[Any, ...]:
        return sheets(checked.weeks[0].week, mark, checked.table or library(), floors)

    return pages


_SESSIONS: Final = _by_week(session_sheets)

_TABLE: Final = (
    SheetKind(
        name="week",
        number=1,
        upright=False,
        readers="coach",
        pages=_overview,
        nothing="there is no session in it",
    ),
    SheetKind(
        name="session",
        number=2,
        upright=True,
        readers="public",
        pages=_SESSIONS,
        nothing="there is nothing to do in it for anyone who trains",
    ),
    SheetKind(
        name="session-large",
        number=2,
        upright=True,
        readers="public",
        pages=_SESSIONS,
        nothing="there is nothing to do in it for anyone who trains",
    ),
    SheetKind(
        name="rack",
        number=3,
        upright=False,
        readers="public",
        pages=_by_floor(rack_cards),
        nothing="nothing in it is lifted with a bar",
    ),
    SheetKind(
        name="board",
        number=4,
        upright=False,
        readers="public",
        pages=_by_floor(boards),
        nothing="every session in it is done at home",
        papers=(*OFFICE, "a3"),
    ),
    SheetKind(
        name="station",
        number=5,
        upright=True,
        readers="public",
        pages=_by_floor(station_cards),
        nothing="there is no circuit in it",
    ),
    SheetKind(
        name="log",
        number=6,
        upright=False,
        readers="public",
        pages=_by_week(log_sheets),
        nothing="there is nothing to do in the gym for anyone who trains",
    ),
    SheetKind(
        name="home",
        number=7,
        upright=True,
        readers="public",
        pages=_by_week(home_sheets),
        nothing="no session in it says `place: home`",
    ),
    SheetKind(
        name="summary",
        number=8,
        upright=True,
        readers="coach",
        pages=_summary,
        nothing="there is no session in it",
        among_all=False,
    ),
)

KINDS: Final[Mapping[Kind, SheetKind]] = {kind.name: kind for kind in _TABLE}
"""Every kind by its name, in the order they are printed."""


LARGE: Final[Mapping[Kind, Kind]] = {"session": "session-large"}
"""What is printed in place of a kind in large print."""


def asked(kind: str, paper: Paper, *, large: bool = False) -> tuple[tuple[Kind, Paper], ...]:
    """What to print, and on what, for the name of a kind, for "all" of them, or for the "coach".

    ``large``: in large print, what there is in it. Of all kinds, those that don't come on ``paper`` are
    printed on A4. The coach's folder gets the overview and the summary. Raises: WrongPaper.
    """
    left_out = frozenset(LARGE if large else LARGE.values())
    if kind in ("all", "coach"):
        every = [one for one in _TABLE if (one.readers == "coach" if kind == "coach" else one.among_all)]
        kinds = [one for one in every if one.name not in left_out]
        return tuple((one.name, paper if paper in one.papers else "a4") for one in kinds)
    one = next(one for one in _TABLE if one.name == kind)
    if paper not in one.papers:
        raise WrongPaper(f"a {kind} sheet comes on {' or '.join(one.papers)}, not on {paper}")
    return ((LARGE.get(one.name, one.name) if large else one.name, paper),)
