"""Rule same-part-hard-next-day: the same part gets direct hard sets on two days that follow each other."""

from collections.abc import Iterable, Iterator, Mapping
from itertools import pairwise

from setwright.coverage import SessionCover, Sets, Work
from setwright.coverage.muscles import MAIN_GROUPS, WHOLE, shares
from setwright.model.plan import DAYS, Session
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule, counted, seen

BAD = """\
plan: Legs on Monday and Tuesday
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - back squat: 4 x 8 at 3 RIR
  - day: Tuesday
    work:
      - leg press: 4 x 10 at 3 RIR
"""
GOOD = BAD.replace("Tuesday", "Wednesday")

LEAST = Option("direct hard sets of a part on each of the two days", 4, "sets", CHOICE)
LEAST_FOR_SPORT = Option("direct hard sets of a part on each of the two days, sport", 8, "sets", CHOICE)

Day = tuple[str, int]


def find(case: Case) -> Iterator[Fault]:
    """One fault for each day that trains hard again what the day before trained hard."""
    least = LEAST_FOR_SPORT.value if case.coverage.week.aim == "sport" else LEAST.value
    days: dict[Day, list[SessionCover]] = {}
    for session in case.coverage.sessions:
        if day := _day(session.session):
            days.setdefault(day, []).append(session)
    for before, after in pairwise(sorted(days)):
        if after == (before[0], before[1] + 1):
            yield from _again(days[before], days[after], least)


def _again(before: list[SessionCover], after: list[SessionCover], least: float) -> Iterator[Fault]:
    was, now = _direct(_works(before)), _direct(_works(after))
    both = {
        part: (was[part], now[part]) for part in was if _hard(was, part, least) and _hard(now, part, least)
    }
    if not both:
        return
    first, then = before[0].session, after[0].session
    parts = ", ".join(f"{part} {one} and {other} sets" for part, (one, other) in both.items())
    yield Fault(
        place=then.work_place,
        where=then.title,
        message=f"{then.title} trains hard again what {first.title} trained the day before: {parts}",
        why="the second day's sets are done with what the first has left over",
        cure=Cure(f"put a day between {first.title} and {then.title}, or do the part on one of the two"),
        seen=seen(tuple(w for w in _works([*before, *after]) if both.keys() & set(_parts(w))), counted),
        day=after[0].works[0].day,
    )


def _day(session: Session) -> Day | None:
    if session.date:
        return "date", session.date.toordinal()
    return ("day", DAYS.index(session.day)) if session.day else None


def _works(sessions: Iterable[SessionCover]) -> tuple[Work, ...]:
    return tuple(work for session in sessions for work in session.works)


def _direct(works: Iterable[Work]) -> Mapping[str, Sets]:
    sums: dict[str, Sets] = {}
    for work in works:
        for part in _parts(work):
            sums[part] = sums.get(part, Sets()) + work.hard
    return sums


def _parts(work: Work) -> tuple[str, ...]:
    """What a line trains directly: the parts of the chest whose line it serves, else main muscle groups."""
    if work.serves:
        return tuple(f"{part} part of the chest" for part in work.serves)
    share = shares(work)
    return tuple(group for group in MAIN_GROUPS if share.get(group) == WHOLE)


def _hard(sums: Mapping[str, Sets], part: str, least: float) -> bool:
    return part in sums and sums[part].low >= least


RULE = Rule(
    id="same-part-hard-next-day",
    looks_at="week",
    summary="a part of the chest, the back, the thighs or the glutes gets direct hard sets on two following "
    "days",
    why="a day between hard days is the habit of the trade. Studies compare how many days a week, not "
    "whether they follow each other, and disagree: more days grew more in one review, not always at equal "
    "sets (schoen2016f), and made near no difference to size in a larger one (pelland2024)",
    change="put a day between, or do the part on one of the two",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("schoen2016f", "pelland2024"),
    options=(LEAST, LEAST_FOR_SPORT),
)
