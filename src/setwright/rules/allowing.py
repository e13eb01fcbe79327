"""What `allow` silences: at the top the whole plan, in a session or under a line only there."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import partial
from typing import Final, NamedTuple

from setwright.coverage import Coverage
from setwright.findings import Finding
from setwright.model.plan import Allowed, Group, Item
from setwright.rules import EVERY_RULE, allow_silences_nothing, unknown_rule_in_allow
from setwright.rules.spoken import Spoken

_IDS: Final = frozenset(rule.id for rule in EVERY_RULE)

ALWAYS_WIN: Final = frozenset({"limit-broken", "avoided-move"})
"""Rules about a clinician's limits: nothing in a plan silences them."""


class Silenced(NamedTuple):
    """A finding that the coach allowed, with the reason written."""

    finding: Finding
    reason: str


class Allow(NamedTuple):
    """An ``allow`` of the plan, and whether a fault stands where it holds."""

    allowed: Allowed
    holds: Callable[[Spoken], bool]


def allows(coverage: Coverage) -> tuple[Allow, ...]:
    """Every ``allow`` of the plan."""
    return tuple(_allows(coverage))


def partition(
    spoken: Iterable[Spoken], allowed: Sequence[Allow]
) -> tuple[list[Spoken], list[Silenced], list[Allow]]:
    """The faults that stay, the ones silenced, and each ``allow`` that some fault answers.

    An ``allow`` for a rule that another one speaks for is answered, and silences nothing by itself.
    """
    kept: list[Spoken] = []
    silenced: list[Silenced] = []
    answered: list[Allow] = []
    for one in spoken:
        rules = {each.rule.id for each in one.everyone}
        here = [each for each in allowed if each.allowed.rule in rules - ALWAYS_WIN and each.holds(one)]
        answered += here
        own = [each.allowed.reason for each in here if each.allowed.rule == one.rule.id]
        if own:
            silenced.append(Silenced(one.finding(), own[0]))
        else:
            kept.append(one)
    return kept, silenced, answered


def about(idle: Iterable[Allowed], text_rules: Iterable[str], *, waiting: bool) -> Iterator[Finding]:
    """What is said of each ``allow`` that no fault answers; ``waiting``: rules have yet to speak."""
    known = _IDS | frozenset(text_rules)
    for allowed in dict.fromkeys(idle):
        if allowed.rule not in known:
            yield unknown_rule_in_allow.finding(allowed, sorted(known))
        elif allowed.rule in ALWAYS_WIN:
            yield allow_silences_nothing.finding(allowed, always_wins=True)
        elif not waiting:
            yield allow_silences_nothing.finding(allowed)


def _allows(coverage: Coverage) -> Iterator[Allow]:
    for allowed in coverage.week.allow:
        yield Allow(allowed, _anywhere)
    for day, cover in enumerate(coverage.sessions):
        for allowed in cover.session.allow:
            yield Allow(allowed, partial(_in_session, day))
        for entry in cover.session.work:
            yield from _entry_allows(entry)


def _entry_allows(entry: Item | Group) -> Iterator[Allow]:
    items = entry.items if isinstance(entry, Group) else ()
    lines = frozenset((place.file, place.line) for place in (entry.place, *(item.place for item in items)))
    for allowed in entry.allow:
        yield Allow(allowed, partial(_on_lines, lines))
    for item in items:
        yield from _entry_allows(item)


def _anywhere(_one: Spoken) -> bool:
    return True


def _in_session(day: int, one: Spoken) -> bool:
    return one.fault.day == day


def _on_lines(lines: frozenset[tuple[str, int]], one: Spoken) -> bool:
    return (one.fault.place.file, one.fault.place.line) in lines
