"""The form of a session: every athlete's lines as planned, and nothing written behind them."""

from typing import Final

from setwright.model.dates import session_date
from setwright.model.people import Athlete
from setwright.model.plan import Session, Week
from setwright.records.paper import Row, Sheet
from setwright.records.planned import in_short, planned

EVERYBODY: Final = "Everybody"
"""Under this name a form is filled in where the plan has no squad."""

HEAD: Final = (
    "Type what was done behind each colon; leave what nobody wrote down empty. Behind # stands the plan.",
    "  60 kg x 8, 8, 6 at RPE 8      the load first, then the repetitions of each set",
    "  8, 8, 7    40, 35 s           without a load; a set of 0 was tried",
    "  60 kg x 8, then 55 kg x 8     another load",
    "  done                          as the plan says",
    "  not done, ran out of time     with or without a reason",
    "Something else, in line with the others:",
    "  - machine row: 30 kg x 10, 10",
    "    instead of: bench pull",
    "A remark on somebody is a line too: - note: slept badly",
)
"""How the form is filled in, once at its top."""


def form_of(week: Week, session: Session) -> Sheet:
    """The form of one session of a week: whoever is out is left out, and so is who has no line in it."""
    date = session_date(week, session)
    top = {"record": week.name}
    top |= {"week": str(week.number)} if week.of > 1 else {}
    top |= {"session": called(week, session), "date": date.isoformat() if date else ""}
    top |= {"unit": week.unit} if week.unit else {}
    athletes = ((athlete.name if athlete else EVERYBODY, athlete) for athlete in training(week))
    rows = tuple((name, _rows(week, session, athlete)) for name, athlete in athletes)
    return Sheet(top, tuple(one for one in rows if one[1]))


def called(week: Week, session: Session) -> str:
    """The word for a session: its day, or its name where that day has several."""
    several = sum(one.title == session.title for one in week.sessions) > 1
    return (session.name if several else None) or session.title


def training(week: Week) -> tuple[Athlete | None, ...]:
    """The athletes who train; None alone, for everybody, where the plan has no squad."""
    squad = week.squad.athletes if week.squad else ()
    return tuple(one for one in squad if one.participation != "out") if squad else (None,)


def _rows(week: Week, session: Session, athlete: Athlete | None) -> tuple[Row, ...]:
    lines = planned(week, session, athlete)
    return tuple(Row(one.line.name, planned=in_short(one, week, athlete)) for one in lines)
