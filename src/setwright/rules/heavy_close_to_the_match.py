"""Rule heavy-close-to-the-match: many hard sets of heavy lifts, and the match is too near for them."""

from collections.abc import Iterator

from setwright.coverage import SessionCover, Work, total
from setwright.reading.words import plural
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule, counted, seen

BAD = """\
plan: Two days before the match
unit: kg
dose order: sets x reps
sessions:
  - day: Thursday
    warm-up: 8 min
    days to match: 2
    work:
      - back squat: 5 x 5 at 80%
      - bent-over barbell row: 3 x 8 at 2 RIR
"""
GOOD = BAD.replace("days to match: 2", "days to match: 3")

NEAR = Option(
    "days to the match at which heavy sets are asked about",
    2,
    "days",
    f"{CHOICE}; force is not all back 48 h after a heavy session: helland2020 (abstract)",
)
MANY = Option("hard sets of heavy lifts in such a session", 6, "sets", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault a session that is near its match and has many hard sets of heavy lifts."""
    for day, session in enumerate(case.coverage.sessions):
        days = session.session.days_to_match
        works = tuple(_heavy(case, session))
        sets = total(work.hard for work in works)
        if days is None or days > NEAR.value or sets.low < MANY.value:
            continue
        yield Fault(
            place=works[0].item.place,
            where=session.session.title,
            message=f"{session.session.title}: {sets} hard sets of heavy lifts {_away(days)}",
            why=RULE.why,
            cure=Cure(
                f"do them {NEAR.value + 1:g} days before the match or earlier, or do half of the sets; "
                "`days to match:` says how far the match is, also after it has moved"
            ),
            seen=seen(works, counted),
            day=day,
        )


def _heavy(case: Case, session: SessionCover) -> Iterator[Work]:
    return (work for work in session.works if work.hard.high and case.heavy(work))


def _away(days: int) -> str:
    return "on the day of the match" if days == 0 else f"{plural(days, 'day')} before the match"


RULE = Rule(
    id="heavy-close-to-the-match",
    looks_at="session",
    summary="at least six hard sets of heavy lifts in a session whose `days to match` is two or less",
    why="48 hours after sets of five repetition maxima force and power were not all back (helland2020), and "
    "after sets to failure jump and force were at their best again after 72 (ejss2021)",
    change="move the heavy sets further from the match, halve them, or correct `days to match`",
    source="helland2020 and ejss2021 (abstracts); where the line is drawn: choice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("helland2020", "ejss2021"),
    options=(NEAR, MANY),
)
