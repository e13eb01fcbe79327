"""A record held against its plan: whose line is which, and what does not fit."""

import datetime as dt
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from setwright.library.names import fold
from setwright.library.table import Library
from setwright.model.dates import session_date
from setwright.model.people import Athlete
from setwright.model.plan import DAYS, Session, Week
from setwright.model.record import AthleteDone, LineDone, Record
from setwright.reading import kept_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nearest import choice, nearest
from setwright.records.form import called as word_of
from setwright.records.planned import Planned, planned


class Line(NamedTuple):
    """A line of the plan and what was done of it, or something done that is not planned.

    ``planned`` None: the plan does not name it. ``done`` None: nobody wrote the line down.
    """

    planned: Planned | None
    done: LineDone | None

    @property
    def is_written(self) -> bool:
        """Whether somebody wrote down what became of it, be it that it was not done."""
        return bool(self.done and self.done.done and self.done.done.kind != "not written")

    @property
    def is_done(self) -> bool:
        """Whether something of it was done."""
        return bool(self.done and self.done.done and self.done.done.kind in ("done", "sets"))

    @property
    def name(self) -> str:
        """The movement, as the record names it, else as the plan does."""
        if self.done is not None:
            return self.done.name
        assert self.planned is not None
        return self.planned.line.name


class Athletes(NamedTuple):
    """One athlete's lines, in the order of the plan, what is not planned at the end."""

    name: str
    athlete: Athlete | None
    lines: tuple[Line, ...]

    def is_called(self, name: str) -> bool:
        """Whether this is their name."""
        return self.name.strip().casefold() == name.strip().casefold()


class Fitted(NamedTuple):
    """A record with the session of the plan that it is of."""

    record: Record
    week: Week
    session: Session
    athletes: tuple[Athletes, ...]

    @property
    def is_written(self) -> bool:
        """Whether anything at all is written down in it, be it a remark."""
        remarks = any(one.notes or one.private_notes for one in self.record.athletes) or self.record.note
        return bool(remarks) or any(line.is_written for one in self.athletes for line in one.lines)


def fitted(record: Record, weeks: Sequence[Week], table: Library, found: Gathering) -> Fitted | None:
    """The record joined to its plan, and a finding for what does not fit; None when no session is meant.

    ``weeks``: the plan, week by week, its names looked up in ``table``.
    """
    at = _session(record, weeks, found)
    if at is None:
        return None
    week, session = at
    _check_date(record, week, session, found)
    lines = []
    for one in record.athletes:
        athlete, known = _athlete(one, week, found)
        if known:
            with found.of(one.name):
                lines.append(
                    Athletes(one.name, athlete, _lines(one, planned(week, session, athlete), table, found))
                )
                _check_units(one, found)
    return Fitted(record, week, session, tuple(lines))


def _session(record: Record, weeks: Sequence[Week], found: Gathering) -> tuple[Week, Session] | None:
    """The session that a record names; a plan of one week has only one whatever the record calls it."""
    week = weeks[0]
    if len(weeks) > 1:
        chosen = next((one for one in weeks if one.number == record.week), None)
        if chosen is None:
            written = f"week {record.week}" if record.week else "no week"
            change = f"write a week from `week: 1` to `week: {len(weeks)}`"
            message = f"the record says {written}, and the plan has {len(weeks)}"
            found.say(rules.NO_SESSION, record.place, message, change)
            return None
        week = chosen
    sessions = (*week.sessions, *week.held_back)
    called = [one for one in sessions if record.session and one.is_called(record.session)]
    if len(called) == 1 or (len(sessions) == 1 and record.session is None):
        return week, (called or list(sessions))[0]
    names = [word_of(week, one) for one in sessions]
    asks = f'"{record.session}" is no session of it' if record.session else "the record does not say which"
    asks = f'"{record.session}" names {len(called)} of its sessions' if called else asks
    change = (
        f"write `session:` and {choice(names)} behind it" if names else "take another week: this one has none"
    )
    found.say(rules.NO_SESSION, record.place, f"{week.title}: {asks}", change)
    return None


def _check_date(record: Record, week: Week, session: Session, found: Gathering) -> None:
    expected = session_date(week, session)
    if record.date is None:
        example = expected or dt.date(2027, 11, 15)
        message = "the record does not say when the session was done"
        found.say(rules.NO_DATE, record.place, message, f"write it behind `date:`, like `date: {example}`")
    elif expected is not None and record.date != expected:
        message = (
            f"{record.date} is a {DAYS[record.date.weekday()]}; in the plan the session is on {expected}"
        )
        found.say(
            rules.OTHER_DAY,
            record.place,
            message,
            f"leave it if the session was moved, else write `date: {expected}`",
        )
    elif expected is None and session.day and DAYS[record.date.weekday()] != session.day:
        message = f"{record.date} is a {DAYS[record.date.weekday()]}, and the session is {session.day}'s"
        found.say(
            rules.OTHER_DAY, record.place, message, "leave it if the session was moved, else mend the date"
        )


def _athlete(one: AthleteDone, week: Week, found: Gathering) -> tuple[Athlete | None, bool]:
    """The athlete of the squad, and whether the name's lines count: any name's where there is no squad."""
    squad = {known.name.casefold(): known for known in week.squad.athletes} if week.squad else {}
    athlete = squad.get(one.name.strip().casefold())
    if athlete is not None or not squad:
        return athlete, True
    names = [known.name for known in squad.values()]
    near = nearest(one.name, names)
    change = f"write `{near[0]}:`, or add {one.name} to the squad" if near else f"write {choice(names)}"
    found.say(rules.NOBODY, one.place, f"{one.name} is no athlete of the squad", change)
    return None, False


def _lines(
    one: AthleteDone, lines: tuple[Planned, ...], table: Library, found: Gathering
) -> tuple[Line, ...]:
    """Each planned line with what was done of it; the second line of a movement takes its second mention."""
    left = list(lines)
    taken: list[tuple[Planned, LineDone]] = []
    others: list[LineDone] = []
    for done in one.lines:
        at = _meant(done.instead_of or done.name, left, table)
        if at is not None:
            left.remove(at)
            taken.append((at, done))
        else:
            others.append(done)
        _check_line(done, at, lines, found)
    by_place = {id(at): done for at, done in taken}
    return (*(Line(at, by_place.get(id(at))) for at in lines), *(Line(None, done) for done in others))


def _meant(name: str, lines: Sequence[Planned], table: Library) -> Planned | None:
    """The first line that a name means: as it stands there, else the same movement under another name."""
    folded, key = fold(name), table.find(name).key
    alike = [one for one in lines if folded in (fold(one.line.name), fold(one.base.name))]
    alike += [one for one in lines if key is not None and key in (one.line.key, one.base.key)]
    return alike[0] if alike else None


def _check_line(done: LineDone, at: Planned | None, lines: Sequence[Planned], found: Gathering) -> None:
    names = list(dict.fromkeys(one.line.name for one in lines))
    near = nearest(done.instead_of or done.name, names)
    write = f"`{near[0]}`" if near else choice(names) if names else ""
    if at is None and done.instead_of:
        message = f"{done.name} instead of {done.instead_of}: no line of the plan that is left is called so"
        change = f"write `instead of:` and {write} behind it" if write else "take `instead of` out"
        found.say(rules.INSTEAD_OF, done.place, message, change)
    elif at is None:
        message = f"{done.name} is not planned here; it is kept beside the plan"
        change = f"leave it, or write {write} if that is what was done" if write else "leave it"
        found.say(rules.NOT_PLANNED, done.place, message, change)
    if done.done and done.done.kind == "done" and (at is None or done.instead_of):
        message = f"{done.name}: done, and the plan says nothing of it"
        found.say(rules.DONE_WHAT, done.place, message, "write the sets that were done, `60 kg x 8, 8, 6`")


def _check_units(one: AthleteDone, found: Gathering) -> None:
    """Masses typed without a unit where nobody says which one is meant."""
    for done in _with_bare_masses(one):
        message = f"{done.name}: a load without its unit"
        change = "write `unit: kg` or `unit: lb` at the top of the record, or the unit behind the load"
        found.say(rules.NO_UNIT, done.place, message, change)


def _with_bare_masses(one: AthleteDone) -> Iterator[LineDone]:
    for done in one.lines:
        loads = (one_set.load for one_set in done.done.sets) if done.done else ()
        if any(load is not None and load.kind == "mass" and load.unit is None for load in loads):
            yield done
