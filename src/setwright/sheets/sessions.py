"""Session sheets from a checked plan: one a session and athlete, in the order they are printed."""

from collections.abc import Iterator
from dataclasses import replace

from setwright.library.table import Library, library
from setwright.model import theirs
from setwright.model.dates import session_date
from setwright.model.people import Athlete
from setwright.model.plan import Session, Week
from setwright.model.theirs import names_of
from setwright.reading.dose import Dose
from setwright.reading.say import dose_short
from setwright.sheets import words
from setwright.sheets.blocks import Copy, Writer, blocks
from setwright.sheets.cutting import short_of_time
from setwright.sheets.key import key
from setwright.sheets.view import SessionSheet


def session_sheets(week: Week, mark: str, table: Library | None = None) -> tuple[SessionSheet, ...]:
    """Every sheet of a plan: sessions in the order of the plan, athletes in the order of the squad.

    ``mark`` goes in the footer: version and print date. ``table``: the library of the plan, the
    shipped one when None. Whoever is out gets no sheet, nor does
    somebody for whom a session holds nothing.
    """
    writer = Writer(week, table or library())
    return tuple(sheet for session in week.sessions for sheet in _of_session(session, writer, mark))


def session_title(week: Week, session: Session) -> str:
    """What stands largest after the name: the session's name, else its day, else the plan's name and week."""
    return session.name or session.day or week.title


def _athletes(week: Week) -> tuple[Athlete | None, ...]:
    squad = week.squad.athletes if week.squad else ()
    training = tuple(athlete for athlete in squad if athlete.participation != "out")
    return training or (None,)


def _of_session(session: Session, writer: Writer, mark: str) -> Iterator[SessionSheet]:
    """A sheet for everyone in one session; those for whom it is the same share one draft."""
    named = theirs.named((*session.warm_up, *session.work))
    drafts: dict[tuple[frozenset[str] | None, Athlete | None], SessionSheet | None] = {}
    for athlete in _athletes(writer.week):
        known = _known_as(writer.week, athlete)
        own = known and known & named
        lifter = athlete if athlete and (athlete.maxes or athlete.body_mass) else None
        if (own, lifter) not in drafts:
            drafts[own, lifter] = _draft(Copy(session, own, writer, lifter), mark)
        draft = drafts[own, lifter]
        if draft is not None:
            yield _handed_to(athlete, draft) if athlete else draft


def _handed_to(athlete: Athlete, draft: SessionSheet) -> SessionSheet:
    """A draft with a name, and with how far that person takes part on the last line of its head."""
    *when, last = draft.when or ("",)
    status = words.joined((last or None, words.status(athlete.participation)))
    return replace(draft, athlete=athlete.name, when=(*when, status))


def _draft(copy: Copy, mark: str) -> SessionSheet | None:
    """The sheet of a session without a name; None when it holds nothing for these people."""
    session, athlete, writer = copy.session, copy.athlete, copy.writer
    week = writer.week
    work = blocks(copy)
    if session.work and not work:
        return None
    return SessionSheet(
        athlete=None,
        title=session_title(week, session),
        when=tuple(_when(week, session)),
        footer=words.footer(week, mark, session.day),
        warm_up=_warm_up(session, athlete, writer),
        blocks=work,
        after=tuple(_after(session)),
        rules=tuple(_rules(session, athlete, week)),
        key=key(work),
    )


def _known_as(week: Week, athlete: Athlete | None) -> frozenset[str] | None:
    """An athlete's name and the groups they are in; None for a sheet that is for everybody."""
    return None if athlete is None else names_of(week, athlete)


def _when(week: Week, session: Session) -> Iterator[str]:
    """Up to three lines: day and time; place and minutes; the plan."""
    day = session_date(week, session)
    start = f", {session.start}" if session.start else ""
    unnamed = session_title(week, session) == session.day
    date = words.long_date(day) if day else ("" if unnamed else session.day or "")
    if date or start:
        yield f"{date}{start}".removeprefix(", ")
    minutes = f"{words.number(session.minutes)} minutes" if session.minutes else None
    place = [part for part in (session.where, minutes) if part]
    if place:
        yield ", ".join(place)
    if session_title(week, session) != week.title:
        yield week.title
    if session.days_to_match is not None:
        yield words.days_to_match(session.days_to_match)


def _warm_up(session: Session, athlete: frozenset[str] | None, writer: Writer) -> tuple[str, str] | None:
    lines = [
        f"{writer.name(line)} {words.typeset(_dose(line.dose))}".strip()
        for item in session.warm_up
        if theirs.meant(item, athlete)
        for line in theirs.lines_of(item, athlete)
    ]
    if not lines and session.warm_up_minutes is None:
        return None
    lead = words.warm_up_lead(session.warm_up_minutes)
    return (f"{lead}:", ", ".join(lines)) if lines else (lead, "")


def _dose(dose: Dose | None) -> str:
    return dose_short(dose) if dose else ""


def _after(session: Session) -> Iterator[tuple[str, str]]:
    """What comes below the work of the session: cool-down and note."""
    if session.cool_down:
        yield words.COOL_DOWN, ", ".join(session.cool_down)
    if session.note:
        yield f"{words.NOTE}:", session.note


def _rules(session: Session, athlete: frozenset[str] | None, week: Week) -> Iterator[tuple[str, str]]:
    """The box at the foot: what to leave out, what to do when called away, next time, safety."""
    cut = short_of_time(session, athlete)
    if cut:
        yield words.SHORT_OF_TIME, cut
    interrupted = session.if_interrupted or week.if_interrupted
    if interrupted:
        yield words.INTERRUPTED, words.sentence(interrupted)
    if week.next:
        yield words.NEXT_TIME, words.sentence(f"{week.next.text}, unless a line says otherwise")
    yield words.SAFETY
