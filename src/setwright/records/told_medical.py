"""The report for the medical person: who has a limit or a list, and whether it was kept; nobody else."""

from collections.abc import Iterator, Mapping
from typing import Final

from setwright.records.limits_kept import Against, LimitKept, limits_kept
from setwright.records.review import LookBack, Review, Reviewed
from setwright.records.told_shapes import Section, came
from setwright.rules.limit_broken import limit_words
from setwright.rules.limits import Answer

NOBODY: Final = "No limit and no list of what to avoid is written for anybody on record."
SAYS: Final[Mapping[Answer, str]] = {
    "broken": "",
    "at the limit": "just reached",
    "not known": "not known",
    "ended": "after its last day",
}
"""What is said of a line that stands against a limit."""


def sections(_: LookBack, review: Review) -> tuple[Section, ...]:
    """Every athlete with a limit or a list, each of them with what was done against it."""
    told = []
    for one in review.athletes:
        every = limits_kept(review.done.records, one.athlete, review.plan.table) if one.athlete else ()
        if every:
            lines = (line for kept in every for line in limit_lines(kept))
            told.append(Section(one.name, (_part(one), *lines)))
    return tuple(told) or (Section("Limits", (NOBODY,)),)


def _part(one: Reviewed) -> str:
    """How far an athlete takes part, and how often they came."""
    part = f"; takes part: {one.athlete.participation}" if one.athlete else ""
    return f"Came to {came(one)}{part}."


def limit_lines(kept: LimitKept) -> Iterator[str]:
    """A limit or a name on a list, whether it was kept, and each line that stands against it."""
    what = f"{_what(kept)}{_by(kept)}"
    if kept.verdict == "nothing done":
        yield f"{what}: nothing was done that is on record."
    elif kept.verdict == "kept":
        lines = {1: "the one line", 2: "both lines"}.get(kept.done, f"all {kept.done} lines")
        yield f"{what}: kept in {lines} done."
    else:
        order = sorted(kept.lines, key=lambda one: one.answer != "broken")
        yield f"{what}: {kept.verdict}: {'; '.join(map(_line, order))}."


def _what(kept: LimitKept) -> str:
    if kept.avoided or kept.limit is None:
        return f"To avoid, {kept.avoided}"
    words = limit_words(kept.limit)
    return f"{words[:1].upper()}{words[1:]}"


def _by(kept: LimitKept) -> str:
    """Who set it, and until when; empty for the athlete's own list."""
    if kept.limit is None:
        return ""
    until = "until cleared" if kept.limit.until == "cleared" else f"until {kept.limit.until}"
    return f" ({', '.join(filter(None, (kept.limit.set_by and f'set by {kept.limit.set_by}', until)))})"


def _line(one: Against) -> str:
    said = " ".join(filter(None, (one.movement, one.said)))
    known = SAYS[one.answer]
    return f"{f'{one.on} ' if one.on else ''}{said}{f', {known}' if known else ''}"
