"""Question 7: what could not be read, what was guessed, two names for one thing, colours, what is unused."""

from collections.abc import Iterator, Sequence
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import Sets
from setwright.findings import Finding, Level
from setwright.glance.lines import every_line
from setwright.glance.shapes import few, told
from setwright.model.plan import Week
from setwright.own.entry import key_of
from setwright.reading.bands import COLOURS
from setwright.reading.text_rules import TEXT_RULES
from setwright.reading.words import listed, plural

RULES: Final = frozenset({"name-in-a-public-title", "allow-silences-nothing", "unknown-rule-in-allow"})
"""The rules about what is written beside the work."""
MOST_LINES: Final = 4
"""Places named; more are counted (choice)."""
ONE_SET: Final = 1


def odd(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """Each kind of odd thing in one line; one line when there is none."""
    found = [
        *_unreadable(checked),
        *_guessed(one.week),
        *_taken(one),
        *_two_names(one),
        *_by_colour(one.week),
        *_unused(one.week),
        *told(checked.findings, RULES),
    ]
    yield from found or ["Nothing: all was read as typed, and nothing was taken for granted."]


def _unreadable(checked: Checked) -> Iterator[str]:
    typed = [finding for finding in checked.findings if finding.rule in TEXT_RULES]
    for errors, what in ((True, "can't be read as typed"), (False, "reads in an unusual way")):
        found = [finding for finding in typed if (finding.level is Level.error) is errors]
        if found:
            yield f"{plural(len(found), 'place')} in the text {what}: {_places(checked.file, found)}."


def _places(file: str, findings: Sequence[Finding]) -> str:
    lines = [
        f"line {one.place.line}" + ("" if one.place.file == file else f" of {one.place.file}")
        for one in findings
    ]
    return few(lines, MOST_LINES)


def _guessed(week: Week) -> Iterator[str]:
    notes = [
        f"line {item.place.line}, {note}"
        for item in every_line(week)
        for note in (item.dose.notes if item.dose else ())
    ]
    if notes:
        yield f"Read with a guess: {few(notes, MOST_LINES)}."


def _taken(one: CheckedWeek) -> Iterator[str]:
    """What the counts take for granted because nothing was written."""
    effort = one.coverage.effort_not_stated
    taken = [f"{effort} hard sets without an effort"] if effort != Sets() else []
    restless = sum(
        group is None and not counted.rest_known and counted.sets.low > ONE_SET
        for covered in one.coverage.sessions
        for item, group in covered.session.lines()
        if (counted := covered.counts.get(item.place))
    )
    taken += [f"rest of 2:00 in {plural(restless, 'line')}"] if restless else []
    if taken:
        yield f"Taken where nothing is written: {listed(taken)}."


def _two_names(one: CheckedWeek) -> Iterator[str]:
    names: dict[str, list[str]] = {}
    for item in every_line(one.week):
        if item.key and item.name.casefold() not in map(str.casefold, names.setdefault(item.key, [])):
            names[item.key].append(item.name)
    for typed in names.values():
        if len(typed) > 1:
            yield f"One movement, typed in {len(typed)} ways: {listed(typed)}."


def _by_colour(week: Week) -> Iterator[str]:
    """Things that are told apart by their colour, which a grey copy and some eyes don't show."""
    named = [
        f"{thing} (line {item.place.line})"
        for item in every_line(week)
        for thing in (item.name, *item.kit)
        if not any(letter.isdigit() for letter in thing) and not COLOURS.isdisjoint(thing.casefold().split())
    ]
    if named:
        yield f"Told apart by a colour alone: {few(named, MOST_LINES)}; a number or a word beside it helps."


def _unused(week: Week) -> Iterator[str]:
    used = {item.key for item in every_line(week)}
    unused = [own.name for own in week.own_movements if key_of(own) not in used]
    if unused:
        yield f"Movements of your own that no line uses: {few(unused)}."
