"""The loads of a week as a coach reads them: a table for the sets of each line, a row an athlete."""

from collections.abc import Iterable, Iterator
from typing import Final

from setwright.checked import Checked
from setwright.findings import Level
from setwright.loads.at_once import Crowd
from setwright.model.plan import Week
from setwright.reading.habits import Habits
from setwright.reading.words import listed, plural
from setwright.report import loads_said as said
from setwright.report.loads_view import DayLoads, LineLoads, Table
from setwright.report.wrapping import plain, wrapped

INDENT: Final = 4
GAP: Final = 2
"""Columns before a row and between its columns (choice)."""

Cells = tuple[str, str, str, str]

FOR_THE_COACH: Final = (
    "For the coach's own screen: names and loads stand here. Limits do not, but they hold: `setwright check`."
)
ROUNDED: Final = {
    "nearest": "to the nearest load there is",
    "down": "down to a load there is",
    "up": "up to a load there is",
}
PICKED: Final = {"low": "the low end", "middle": "the middle", "high": "the high end"}


def loads_text(checked: Checked, week: Week, days: Iterable[DayLoads]) -> str:
    """The whole screen of ``loads``, with a line end."""
    habits = Habits(unit=week.unit, dose_order=week.dose_order, percent_of=week.percent_of, sides=week.sides)
    blocks = [_head(checked, week)]
    for day in days:
        blocks.append(wrapped(day.session.title))
        blocks += ["\n".join(_line(one, week, habits)) for one in day.lines] or ["  no line for them here"]
    return "\n\n".join(blocks) + "\n"


def _head(checked: Checked, week: Week) -> str:
    squad = week.squad
    rounding, pick = (squad.rounding, squad.pick_in_a_range) if squad else ("nearest", "low")
    rounded = f"Rounded {ROUNDED[rounding]}" if week.gym else "Not rounded: the plan names no gym"
    told = [f"{week.title}: loads", FOR_THE_COACH, f"{rounded}; of a range {PICKED[pick]} is taken."]
    errors = sum(finding.level is Level.error for finding in checked.findings)
    if errors:
        told.append(f"`setwright check {checked.file}` finds {plural(errors, 'error')} in this plan.")
    return "\n".join(map(wrapped, told))


def _line(one: LineLoads, week: Week, habits: Habits) -> Iterator[str]:
    line = one.line
    dose = f": {line.item.dose.text}" if line.item.dose else ""
    yield wrapped(
        f"{line.name}{dose} (line {line.line}{f', for {one.whose}' if one.whose else ''})", rest="  "
    )
    if not one.tables:
        yield "  no load is written"
    alone = len(one.tables) == 1
    for table in one.tables:
        context = said.Table(table.sets, line.movement, _one_bar(table))
        sets = said.sets_said(table.sets, habits) if not alone or table.sets.what == "warm-up" else ""
        head = "; ".join(filter(None, (sets, f"on the {context.bar}" if context.bar else "")))
        if head:
            yield wrapped(head, "  ", "    ")
        rows = _rows([(plain(row.who), *said.told(row.wanted, row.put, context)) for row in table.rows])
        yield from rows or ["    as written: the plan names no squad to work it out for"]
    yield from (wrapped(note, "  ", "    ") for note in _notes(one, week))


def _one_bar(table: Table) -> str:
    """The bar of all rows that are lifted with one; empty where there are several, or none."""
    bars = {bar for row in table.rows if row.put and (bar := said.bar_said(row.put))}
    return bars.pop() if len(bars) == 1 else ""


def _rows(told: list[Cells]) -> list[str]:
    """A table of who, load, how and what was asked; the last two in one column where that is shorter."""
    together = [(who, load, "; ".join(filter(None, (how, asked))), "") for who, load, how, asked in told]
    return min(_in_columns(told), _in_columns(together), key=lambda rows: "".join(rows).count("\n"))


def _in_columns(told: list[Cells]) -> list[str]:
    rows = []
    who, load, how = (max((len(row[at]) for row in told), default=0) for at in range(3))
    for name, total, way, asked in told:
        first = f"{'':{INDENT}}{name:{who}}{'':{GAP}}{total:>{load}}{'':{GAP}}"
        if asked:
            first += f"{way:{how}}{'':{GAP if how else 0}}"
        rows.append(wrapped(asked or way, first, " " * len(first)) if asked or way else first.rstrip())
    return rows


def _notes(one: LineLoads, week: Week) -> Iterator[str]:
    """What to do about loads that can't be put on, that nobody knows, or that are not there at once."""
    if one.too_light:
        easier = f"do {one.easier} instead (`instead:`), or " if one.easier else ""
        yield f"Less than the bar: {easier}list a lighter bar in the gym file."
    missing = one.without_max
    if missing:
        unit = week.unit or "kg"
        yield (
            "Without a max: test one, or put a set that it is estimated from in the squad file: "
            f"`{missing.movement}: from 30 {unit} x 8 on {week.starts or 'year-month-day'}`."
        )
    yield from dict.fromkeys(
        f"{row.wanted.carried.words}: {row.wanted.carried.loadable.note}."
        for row in one.rows
        if row.wanted.carried and row.wanted.carried.loadable.note
    )
    if one.crowd:
        yield _crowd(one.crowd)


def _crowd(crowd: Crowd) -> str:
    who = listed([athlete.name for athlete in crowd.lifters])
    short = listed([one.words for one in crowd.short])
    return f"Not all there at once for {who}: {short}. Let them lift in turn, or at other times."
