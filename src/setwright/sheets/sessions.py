"""Session sheets from a checked plan: one a session and athlete, in the order they are printed."""

from collections.abc import Iterator
from dataclasses import replace

from setwright.library.table import Library, library
from setwright.model import theirs
from setwright.model.dates import session_date
from setwright.model.people import Athlete
from setwright.model.plan import Session, Week
from setwright.reading.dose import Dose
from setwright.reading.short import dose_short
from setwright.sheets import words
from setwright.sheets.blocks import Copy, Writer, blocks, copy_for
from setwright.sheets.cutting import short_of_time
from setwright.sheets.key import key
from setwright.sheets.people import full_names, who_trains
from setwright.sheets.phrases import say
from setwright.sheets.view import SessionSheet


def session_sheets(week: Week, mark: str, table: Library | None = None) -> tuple[SessionSheet, ...]:
    """Every sheet of a plan: sessions in the order of the plan, athletes in the order of the squad.

    ``mark`` goes in the footer: version and print date. ``table``: the library of the plan, the shipped one
    when None. Whoever is out gets no sheet, nor does somebody for whom a session holds nothing.
    """
    writer = Writer(week, table or library())
    return tuple(sheet for session in week.sessions for sheet in _of_session(session, writer, mark))


def session_day(week: Week, session: Session) -> str | None:
    """The date of a session in words, or else its day; None when neither is written."""
    date = session_date(week, session)
    return words.long_date(date) if date else session.day


def session_title(week: Week, session: Session) -> str:
    """What stands largest after the name: the session's name, else its day, else the plan's name and week."""
    return session.name or session.day or week.title


def day_title(session: Session, week: Week) -> str:
    """What a session is called before the whole room: its day or else its date, and its name."""
    day = session.day or session_day(week, session)
    return ": ".join(part for part in (day, session.name) if part) or say("page.session")


def room_title(session: Session, week: Week) -> str:
    """The same for paper that hangs alone: where neither is written, the plan's name and week."""
    told = day_title(session, week)
    return week.title if told == say("page.session") else told


def _of_session(session: Session, writer: Writer, mark: str) -> Iterator[SessionSheet]:
    """A sheet for everyone in one session; those for whom it is the same share one draft."""
    named = theirs.named((*session.warm_up, *session.work))
    drafts: dict[tuple[frozenset[str] | None, Athlete | None], SessionSheet | None] = {}
    athletes = who_trains(writer.week)
    names = full_names([athlete.name for athlete in athletes if athlete]) or (None,)
    for athlete, name in zip(athletes, names, strict=True):
        copy = copy_for(athlete, session, writer)
        own = copy.athlete and copy.athlete & named
        if (own, copy.lifter) not in drafts:
            drafts[own, copy.lifter] = _draft(replace(copy, athlete=own), mark)
        draft = drafts[own, copy.lifter]
        if draft is not None:
            yield _handed_to(athlete, name, draft) if athlete else draft


def _handed_to(athlete: Athlete, name: str | None, draft: SessionSheet) -> SessionSheet:
    """A draft with a name, and with how far that person takes part on the last line of its head."""
    *when, last = draft.when or ("",)
    status = words.joined((last or None, words.status(athlete.participation)))
    return replace(draft, athlete=name, when=(*when, status))


def _draft(copy: Copy, mark: str) -> SessionSheet | None:
    """The sheet of a session without a name; None when it holds nothing for these people."""
    session, athlete, writer = copy.session, copy.athlete, copy.writer
    week = writer.week
    work = blocks(copy)
    if session.work and not work:
        return None
    return SessionSheet(
        athlete=None,
        day=session.day,
        title=session_title(week, session),
        when=tuple(_when(week, session)),
        footer=words.footer(week, mark, session.day),
        warm_up=warm_up_words(session, athlete, writer),
        blocks=work,
        after=tuple(after_words(session)),
        rules=tuple(_rules(session, athlete, week)),
        key=key(work),
    )


def _when(week: Week, session: Session) -> Iterator[str]:
    """Up to three lines: day and time; place and minutes; the plan."""
    start = f", {session.start}" if session.start else ""
    day = session_day(week, session)
    date = "" if day == session_title(week, session) else day or ""
    if date or start:
        yield f"{date}{start}".removeprefix(", ")
    minutes = say("session.minutes", count=words.number(session.minutes)) if session.minutes else None
    place = [part for part in (session.where, minutes) if part]
    if place:
        yield ", ".join(place)
    if session_title(week, session) != week.title:
        yield week.title
    if session.days_to_match is not None:
        yield words.days_to_match(session.days_to_match)


def warm_up_words(session: Session, athlete: frozenset[str] | None, writer: Writer) -> tuple[str, str] | None:
    """The warm-up of a session: its bold start and its lines; None when there is none."""
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


def after_words(session: Session) -> Iterator[tuple[str, str]]:
    """What comes below the work of the session: cool-down and note."""
    if session.cool_down:
        yield say("session.cool_down"), ", ".join(session.cool_down)
    if session.note:
        yield say("session.note"), session.note


def _rules(session: Session, athlete: frozenset[str] | None, week: Week) -> Iterator[tuple[str, str]]:
    """The box at the foot: what to leave out, what to do when called away, next time, safety."""
    cut = short_of_time(session, athlete)
    if cut:
        yield say("session.short_of_time"), cut
    interrupted = session.if_interrupted or week.if_interrupted
    if interrupted:
        yield say("session.interrupted"), words.sentence(interrupted)
    if week.next:
        rule = say("session.next_time_but", rule=week.next.text)
        yield say("session.next_time"), words.sentence(rule)
    yield words.safety()
