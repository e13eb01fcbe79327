"""What is proposed for a checked plan: the changes, the lines to type, and the plan checked with them."""

from collections import Counter
from collections.abc import Callable
from typing import Final, NamedTuple

from setwright.checked import Checked, CheckedWeek, check_plan
from setwright.coverage import SessionCover
from setwright.findings import Level
from setwright.library.table import Library
from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.rules.aims import training
from setwright.rules.means import means
from setwright.swapping.paste import Edit, edits, pasted
from setwright.swapping.search import A_MINUTE, MOST_CHANGES, Found, search
from setwright.swapping.state import NEVER_CLOSED, NOT_ASKED, Judge, State

AGAINST_ONE: Final = frozenset({"limit-broken", "avoided-move"})
"""Rules about what one athlete can't do as written."""


class NotToSwap(Exception):
    """Nothing can be proposed; the text is one sentence for the coach."""


class Proposal(NamedTuple):
    """``before``: the week proposed for, checked. ``edits``: the lines to type, ``after``: it with them.

    Both None where the text can't be cut by lines. ``limited``: somebody who trains has a limit.
    ``elsewhere``: what the lines open in other weeks of the plan, in words.
    """

    before: Checked
    found: Found
    edits: tuple[Edit, ...] | None
    after: Checked | None
    limited: bool
    elsewhere: tuple[str, ...] = ()


def propose(
    checked: Checked, beside: Callable[[str], str | None], number: int = 1, *, most: int = MOST_CHANGES
) -> Proposal:
    """The smallest set of changes for one week of a plan that could be read whole.

    Raises: NotToSwap where a line could not be read, nothing is trained in the week or less of it on
    purpose, or a limit does not say who set it.
    """
    one = checked.only(number) if checked.weeks else checked
    week, table = readable(one)
    if week.lighter is not None:
        raise NotToSwap(f"{week.title} is lighter on purpose: what it leaves out is no gap")
    limited = [athlete for athlete in training(week) if athlete.limits or athlete.avoid]
    for athlete in limited:
        signed(athlete)
    judge = Judge(means(week, table), table)
    found = search(week, judge, most=most)
    source = one.sources[one.file]
    made = edits(week, found.best.changes, source) if found.best else None
    after = check_plan(one.file, pasted(source.text, made), beside) if made else None
    if found.best is None or after is None or not _as_found(found.best.state, after, number, judge):
        return Proposal(one, found, None, None, bool(limited))
    opened = tuple(
        words
        for then, now in zip(checked.weeks, after.weeks, strict=True)
        if then.week.number != number and (words := _opened(then, now))
    )
    return Proposal(one, found, made, after.only(number), bool(limited), opened)


def open_week(checked: Checked, *, against_one: bool = False) -> int:
    """The number of the first week that leaves a gap open, or has a line that somebody can't do; else 1."""
    for one in checked.weeks:
        rules = {finding.rule for finding in one.verdict.findings if finding.level >= Level.gap}
        if rules & AGAINST_ONE if against_one else rules - NOT_ASKED - NEVER_CLOSED and not one.week.lighter:
            return one.week.number
    return 1


def readable(checked: Checked) -> tuple[Week, Library]:
    """The week of a plan and its library.

    Raises: NotToSwap where a line could not be read, or there is no training in the week.
    """
    if checked.week is None or checked.table is None or checked.waiting or not checked.complete:
        raise NotToSwap(
            "the plan has lines that can't be read; `setwright check` says which: mend them first"
        )
    if not checked.week.sessions:
        raise NotToSwap(f"{checked.week.title}: no session is in force, so there is nothing to change")
    return checked.week, checked.table


def signed(athlete: Athlete) -> None:
    """Nothing, where every limit of an athlete says who set it. Raises: NotToSwap."""
    if any(not limit.set_by for limit in athlete.limits):
        raise NotToSwap(
            f"a limit of {athlete.name} does not say who set it: write `set by:` under it; nothing is "
            "proposed under a limit that nobody can be asked about"
        )


def _as_found(state: State, after: Checked, number: int, judge: Judge) -> bool:
    """Whether the plan with the lines typed reads whole and leaves open just what the search says."""
    if not after.complete or len(after.weeks) < number:
        return False
    read = judge(after.weeks[number - 1].week)
    return (read.gaps, read.advice, read.minutes) == (state.gaps, state.advice, state.minutes)


def _opened(then: CheckedWeek, now: CheckedWeek) -> str:
    """What a week has now and had not: gaps, sessions that run over, movements that stand twice in a day."""
    told = [f"gap {rule}" for rule in (_gaps(now) - _gaps(then)).elements()]
    for before, after in zip(then.coverage.sessions, now.coverage.sessions, strict=True):
        title, room = after.session.title, after.session.minutes
        if room is not None and after.minutes > max(room + A_MINUTE, before.minutes):
            told.append(f"{title} takes {round(after.minutes)} of {room:g} min")
        twice = _twice(after) - _twice(before)
        told += [f"{title} has {name} twice" for name in sorted(twice)]
    return f"week {now.week.number}: {'; '.join(told)}" if told else ""


def _twice(session: SessionCover) -> set[str]:
    times = Counter(str(work.movement["name"]) for work in session.works)
    return {name for name, number in times.items() if number > 1}


def _gaps(week: CheckedWeek) -> Counter[str]:
    return Counter(one.rule for one in week.verdict.findings if one.level >= Level.gap)
