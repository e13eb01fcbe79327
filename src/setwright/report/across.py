"""A block across its weeks: hard sets and loads in columns of weeks, then what they come to."""

from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby
from typing import Final

from setwright.checked import Checked
from setwright.coverage import Sets
from setwright.coverage.trend import LiftByWeek, lifts_by_week, sets_by_week
from setwright.glance.maxes import max_sentences
from setwright.glance.weeks import cut_sentences, lighter_sentence, missed_sentence, planned_text
from setwright.library.table import library
from setwright.reading.weeks import say_weeks
from setwright.report.wrapping import WIDTH, wrapped
from setwright.rules.matrix import short_name

MOST_LIFTS: Final = 6
"""Loads shown week by week; more are counted (choice)."""
GAP: Final = 2
"""Blanks between two columns."""
_KINDS: Final = {"mass": "", "percent": ", of the {max}", "bodyweight": ", on the body"}

Rows = Mapping[str, tuple[str, ...]]


def across_the_weeks(checked: Checked) -> Iterator[str]:
    """The two tables, each in as many pieces as 80 columns ask for, and the sentences under them."""
    weeks, known = checked.weeks, checked.table or library()
    trained = [one.coverage for one in weeks if one.week.sessions]
    if len(trained) < 2:  # noqa: PLR2004 - one week is no trend
        return
    numbers = [week.week.number for week in trained]
    sets = {row.name: tuple(map(narrow, row.sets)) for row in sets_by_week(trained)}
    yield from table("hard sets, helpers half", sets, numbers)
    lifts = lifts_by_week(trained)
    best = trained[0].week.max_kind.removeprefix("tested ")
    written = dict(_loads(lift, best) for lift in lifts[:MOST_LIFTS])
    yield from table("heaviest load written", written, numbers)
    more = len(lifts) - MOST_LIFTS
    sentences = [
        *([f"{more} more lifts have a load."] if more > 0 else ()),
        lighter_sentence([one.coverage for one in weeks], checked.before, known),
        *max_sentences(weeks, known),
        *cut_sentences(trained),
        missed_sentence(trained),
    ]
    yield "\n".join(map(wrapped, sentences))


def table(head: str, rows: Rows, weeks: Sequence[int]) -> Iterator[str]:
    """Rows with a column a week; neighbouring weeks alike in every row share one. None without rows."""
    if not rows:
        return
    columns = list(zip(*rows.values(), strict=True))
    runs = [list(run) for _, run in groupby(range(len(weeks)), key=lambda at: columns[at])]
    names = [f"{head}, week", *rows]
    told = [(say_weeks(weeks[at] for at in run).split(maxsplit=1)[1], *columns[run[0]]) for run in runs]
    first = max(map(len, names)) + GAP
    for piece in _pieces(told, WIDTH - first):
        widths = [max(map(len, column)) + GAP for column in piece]
        lines = zip(names, *piece, strict=True)
        yield "\n".join(_line(line, [first, *widths]) for line in lines)


def _pieces(columns: Sequence[tuple[str, ...]], room: int) -> Iterator[list[tuple[str, ...]]]:
    """The columns in as few pieces as fit beside the names."""
    piece: list[tuple[str, ...]] = []
    used = 0
    for column in columns:
        width = max(map(len, column)) + GAP
        if piece and used + width > room + GAP:
            yield piece
            piece, used = [], 0
        piece.append(column)
        used += width
    yield piece


def _line(words: Sequence[str], widths: Sequence[int]) -> str:
    return "".join(word.ljust(width) for word, width in zip(words, widths, strict=True)).rstrip()


def narrow(sets: Sets) -> str:
    """A count of sets for a narrow column.

    >>> narrow(Sets(3, 4.5)), narrow(Sets(0, 0)), narrow(Sets(6, float("inf")))
    ('3-4.5', '-', '6+')
    """
    return str(sets).replace(" to ", "-").replace(" or more", "+") if sets.high else "-"


def _loads(lift: LiftByWeek, best: str) -> tuple[str, tuple[str, ...]]:
    """A row; ``best``: the max that its percents are of."""
    name = short_name(str(lift.movement["name"])) + _KINDS[lift.kind].format(max=best)
    return name, tuple(planned_text(planned) if planned else "-" for planned in lift.planned)
