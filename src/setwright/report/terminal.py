"""A check as people read it: the aim, the matrix, then the findings in the order of the plan."""

from collections.abc import Iterator, Mapping
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.findings import Finding, Level
from setwright.places import Source
from setwright.reading.weeks import say_weeks
from setwright.report.adds_up import aim, heads, in_force, matrix_text, note, sessions_and_minutes, sums
from setwright.report.wrapping import WIDTH, plain, wrapped

COLOURS: Final[Mapping[str, str]] = {"error": "31", "gap": "33", "advice": "36", "NEVER": "1"}
"""Colours of the words that stand out (ANSI); they add nothing to the words."""


def text(checked: Checked, *, colour: bool) -> str:
    """The whole screen of ``check``, with a line end; ``colour`` True only for a terminal."""
    blocks = [
        *_head(checked),
        *_since(checked),
        *(_finding(f, n, checked, colour=colour) for n, f in enumerate(checked.findings, 1)),
    ]
    if checked.findings or checked.alone is None:
        blocks.append(_counts(checked))
    return "\n\n".join(blocks) + "\n"


def _head(checked: Checked) -> Iterator[str]:
    if checked.alone is not None:
        from setwright.report.alone import what_was_read  # noqa: PLC0415 - a plan's check need not load it

        yield wrapped(f"{checked.file}: {what_was_read(checked.alone)}")
    elif not checked.weeks:
        yield f"{plain(checked.file)}: nothing of this plan could be read"
    elif len(checked.weeks) > 1:
        from setwright.report.block import block_head  # noqa: PLC0415 - only a block needs it

        yield from block_head(checked)
    else:
        (one,) = checked.weeks
        yield "\n".join(
            [wrapped(f"{one.week.title}: {', '.join(_title(one))}"), aim(one), *in_force(checked)]
        )
        yield matrix_text(one, checked.findings)
        yield "\n".join([*sums(one), *note([one])])


def _since(checked: Checked) -> Iterator[str]:
    if checked.before is not None:
        from setwright.report.changed import since  # noqa: PLC0415 - only a plan that follows one needs it

        yield since(checked, checked.before)


def _title(one: CheckedWeek) -> Iterator[str]:
    yield from sessions_and_minutes([one])
    if people := heads(one.week):
        yield people


def _finding(finding: Finding, number: int, checked: Checked, *, colour: bool) -> str:
    level = _paint(finding.level.name, colour=colour)
    head = wrapped(f"{finding.level.name} [{number}]: {finding.message}", rest="  ")
    parts = [
        head.replace(finding.level.name, level, 1),
        _quoted(finding, checked.sources.get(finding.place.file)),
        *([_said("weeks", _weeks(finding))] if finding.weeks else ()),
        _said("why", finding.why),
        *([_said("seen", "; ".join(_seen(finding)))] if finding.seen else ()),
        *(_said("also", other) for other in finding.also),
        _said("change", finding.change),
        _said("source", finding.source),
        _rule(finding.rule),
    ]
    return "\n".join(parts)


def _weeks(finding: Finding) -> str:
    return say_weeks(finding.weeks).split(maxsplit=1)[1]


def _seen(finding: Finding) -> Iterator[str]:
    for one in finding.seen:
        yield f"{one.text} (line {one.line})" if one.line else one.text


def _said(word: str, what: str) -> str:
    first = f"   = {word}: "
    return wrapped(what, first, " " * min(len(first), 10))


def _rule(rule: str) -> str:
    """The rule and how to ask about it, on one line or on two."""
    ask = f"(setwright explain {rule})"
    line = f"   = rule: {rule}   {ask}"
    return line if len(line) <= WIDTH else f"   = rule: {rule}\n          {ask}"


def _quoted(finding: Finding, source: Source | None) -> str:
    """The place of a finding, with its line and the span under it."""
    place = finding.place
    gutter = " " * len(str(place.line))
    where = f"{gutter}--> {plain(place.file)}:{place.line}:{place.column}"
    if source is None:
        return where
    line = plain(source.line(place.line))
    end = place.end_column if place.end_line == place.line else len(line) + 1
    line, start, length = _window(line, place.column - 1, max(end - place.column, 1), WIDTH - len(gutter) - 3)
    return f"{where}\n{gutter} |\n{place.line} | {line}\n{gutter} | {' ' * start}{'^' * length}"


def _window(line: str, start: int, length: int, room: int) -> tuple[str, int, int]:
    """The stretch of a line that fits and shows the span, with the span's start and length in it."""
    if len(line) <= room:
        return line, start, length
    left = max(0, min(start - 8, len(line) - room))
    return line[left : left + room], start - left, min(length, room - (start - left))


def _counts(checked: Checked) -> str:
    words = []
    for level, plural in ((Level.error, "errors"), (Level.gap, "gaps"), (Level.advice, "pieces of advice")):
        number = sum(f.level is level for f in checked.findings)
        if number:
            words.append(f"{number} {level.name if number == 1 else plural}")
    if checked.allowed:
        reasons = "; ".join(f"{one.finding.rule}: {one.reason}" for one in checked.allowed)
        words.append(f"{len(checked.allowed)} allowed ({reasons})")
    return wrapped(", ".join(words) or "No findings.")


def _paint(word: str, *, colour: bool) -> str:
    return f"\033[{COLOURS[word]}m{word}\033[0m" if colour else word
