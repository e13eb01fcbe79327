"""Question 3: each athlete with a limit, a list or a changed part, and what they do instead.

What a limit says stays out: who reads over the coach's shoulder learns a name and a movement, no reason.
"""

from collections.abc import Iterable, Iterator
from typing import Final

from setwright.checked import Checked
from setwright.findings import Finding, Level
from setwright.glance.lines import every_line
from setwright.glance.shapes import few
from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.model.theirs import lines_of, names_of
from setwright.reading.words import listed

NONE_YET: Final = "No swap yet"
ASK: Final = "To be asked about"
SWAPPED: Final = "Changed"
NOTHING: Final = "Nothing in the week stands against theirs"
OUT: Final = "Out"
MOST_MOVEMENTS: Final = 2
"""Movements named for an athlete; more are counted (choice). Athletes are never counted, always named."""


def hurt(checked: Checked, week: Week) -> Iterator[str]:
    """One line a state, each with everyone in it; nobody is left out for want of room."""
    squad = week.squad
    if squad is None:
        yield "No squad written, so nobody's limits are known."
        return
    every = [one for one in squad.athletes if one.limits or one.avoid or one.participation != "full"]
    if not every:
        yield f"No limit, list or changed part is written for the {len(squad.athletes)} of the squad."
        return
    states: dict[str, dict[str, list[str]]] = {}
    for athlete in every:
        for state, what in _states(checked.findings, week, athlete):
            states.setdefault(state, {}).setdefault(what, []).append(athlete.name)
    for state in _ORDER:
        if state in states:
            told = (listed(who) + (f" ({what})" if what else "") for what, who in states[state].items())
            yield f"{state}: {'; '.join(told)}."


_ORDER: Final = (NONE_YET, ASK, SWAPPED, NOTHING, OUT)


def _states(findings: Iterable[Finding], week: Week, athlete: Athlete) -> Iterator[tuple[str, str]]:
    if athlete.participation == "out":
        yield OUT, ""
        return
    against = [finding for finding in findings if finding.who == athlete.name]
    names = {line.place: line.name for line in every_line(week)}
    changed = list(_changes(week, athlete))
    for state, errors in ((NONE_YET, True), (ASK, False)):
        found = [one for one in against if (one.level is Level.error) is errors]
        if found:
            yield state, few([names.get(one.place, one.where) for one in found], MOST_MOVEMENTS)
    if changed:
        yield SWAPPED, few(changed, MOST_MOVEMENTS)
    elif not against:
        yield NOTHING, ""


def _changes(week: Week, athlete: Athlete) -> Iterator[str]:
    """What an athlete does in place of a line, and what is left out for them by name."""
    called = names_of(week, athlete)
    for session in week.sessions:
        warm_up = ((item, None) for item in session.warm_up)
        for item, group in (*warm_up, *session.lines()):
            lines = lines_of(item, called)
            if called & {*item.not_for, *(group.not_for if group else ())}:
                yield f"without {item.name}"
            elif lines != (item,):
                yield f"{listed([line.name for line in lines])} for {item.name}"
