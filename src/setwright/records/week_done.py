"""The kept records of a plan's week, held against it: what was done of each line, by whom."""

from pathlib import Path
from typing import NamedTuple

from setwright.files import CannotRun, read_text
from setwright.library.names import fold
from setwright.model.plan import Session, Week
from setwright.model.reader.record import read_record
from setwright.model.record import Record
from setwright.reading.gathering import Gathering
from setwright.records.fitting import Fitted, fitted
from setwright.records.keeping import Plan
from setwright.records.store import latest


class WeekDone(NamedTuple):
    """The records of one week of a plan, by date; ``unread``: files that could not be used, with why."""

    week: Week
    records: tuple[Fitted, ...]
    unread: tuple[str, ...]

    @property
    def missed_sessions(self) -> tuple[Session, ...]:
        """The sessions of the week that no record is of."""
        recorded = {id(fit.session) for fit in self.records}
        return tuple(session for session in self.week.sessions if id(session) not in recorded)

    @property
    def missed(self) -> tuple[str, ...]:
        """What they are called."""
        return tuple(session.title for session in self.missed_sessions)

    @property
    def restart(self) -> str:
        """Why the week starts again, by the plan's rule for a missed day; empty when it does not."""
        again = self.records and self.missed and self.week.missed_day == "restart the week"
        return f"{', '.join(self.missed)} was missed, so the week starts again" if again else ""


def week_done(plan: Plan, week: Week) -> WeekDone:
    """The last writing of every kept record of a week; records of other plans and weeks are passed over."""
    found: list[Fitted] = []
    unread: list[str] = []
    for file in (plan.folder / kept.name for kept in latest(plan.folder)):
        try:
            record = _record(file, week)
        except CannotRun as stop:
            unread.append(str(stop))
            continue
        if record is None:
            unread.append(f"{file}: nothing of this record can be read")
        elif _is_of(record, week):
            fit = fitted(record, [week], plan.table, Gathering())
            if fit is None:
                unread.append(f"{file}: it names no session of {week.title}")
            else:
                found.append(fit)
    return WeekDone(week, tuple(sorted(found, key=lambda fit: str(fit.record.date))), tuple(unread))


def _record(file: Path, week: Week) -> Record | None:
    return read_record(str(file), read_text(file), week.unit).record


def _is_of(record: Record, week: Week) -> bool:
    return fold(record.plan) == fold(week.name) and (week.of == 1 or record.week == week.number)
