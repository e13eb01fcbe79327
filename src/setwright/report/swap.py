"""The smallest set of changes as a coach reads it: what is open, what to type, what it gives and costs."""

from collections import Counter
from collections.abc import Iterator
from typing import Final

from setwright.findings import Level
from setwright.report.terminal import matrix_text
from setwright.report.wrapping import plain, wrapped
from setwright.swapping.changes import Change, lines
from setwright.swapping.proposal import Proposal
from setwright.swapping.search import MOST_CHANGES, MOST_TRIED
from setwright.swapping.state import Key, lost

INSIDE: Final = "Inside the written limits, not cleared by them."
SHOW: Final = "Show this to whoever set the limits before it is used."

_SAYS: Final = {
    "pair": "{session}: straight after {line}, without rest, {movement}",
    "add": "{session}: {movement}, at the end",
    "replace": "{session}: {movement} in the place of {line}",
}


def swap_text(proposal: Proposal) -> str:
    """The whole screen of ``swap``, with a line end. The file itself is not touched."""
    return "\n\n".join("\n".join(block) for block in _blocks(proposal) if block) + "\n"


def _blocks(proposal: Proposal) -> Iterator[list[str]]:
    before, found = proposal.before, proposal.found
    week = found.before.week
    if not found.before.gaps:
        yield [wrapped(f"{week.name}: no gap is open; there is nothing to change")]
        return
    number = found.before.gaps.total()
    head = [wrapped(f"{week.name}: {number} open gap{'' if number == 1 else 's'}")]
    head += [wrapped(one.fault.message, "  - ", "    ") for one in found.before.found]
    if proposal.limited:
        head.append(INSIDE)
    yield head
    if found.best is None:
        yield [wrapped(_nothing(proposal))]
        return
    yield _what(proposal, found.best.changes)
    yield list(_paste(proposal))
    if proposal.after is not None:
        yield ["Before", matrix_text(before)]
        yield ["After", matrix_text(proposal.after)]
    yield list(_cost(proposal))
    if proposal.limited:
        yield [SHOW]


def _nothing(proposal: Proposal) -> str:
    return (
        f"Nothing up to {MOST_CHANGES} changes closes one, with this gym, inside everyone's limits and in the "
        f"minutes written ({_tried(proposal)})."
    )


def _tried(proposal: Proposal) -> str:
    found = proposal.found
    stopped = "" if found.exhausted else f", and stopped there: {MOST_TRIED} is the most"
    return f"tried {found.tried} sets of changes, up to {MOST_CHANGES} together{stopped}"


def _what(proposal: Proposal, changes: tuple[Change, ...]) -> list[str]:
    week = proposal.found.before.week
    at = {spot: item for spot, item, _ in lines(week)}
    number = len(changes)
    told = [f"{number} change{'' if number == 1 else 's'}"]
    for change in changes:
        old = at.get(change.spot)
        says = _SAYS[change.kind].format(
            session=week.sessions[change.spot.session].title,
            movement=change.movement["name"],
            line=f"{old.name} (line {old.place.line})" if old and change.kind != "add" else "",
        )
        told.append(wrapped(says, "  ", "    "))
    return told


def _paste(proposal: Proposal) -> Iterator[str]:
    if proposal.edits is None:
        yield wrapped(
            "The lines to type can't be shown: the text is not cut by lines there. Write them yourself."
        )
        return
    for edit in proposal.edits:
        where = (
            f"after line {edit.first - 1} type"
            if edit.last < edit.first
            else f"in the place of line{'' if edit.first == edit.last else 's'} {_span(edit.first, edit.last)} type"
        )
        yield f"{plain(proposal.before.file)}, {where}"
        yield from (f"  | {plain(line)}" for line in edit.new)


def _span(first: int, last: int) -> str:
    return f"{first}" if first == last else f"{first} to {last}"


def _cost(proposal: Proposal) -> Iterator[str]:
    found = proposal.found
    assert found.best is not None
    before, after = found.before, found.best.state
    for session, then, now in zip(before.week.sessions, before.minutes, after.minutes, strict=True):
        if round(now) != round(then):
            room = f" of {session.minutes:g}" if session.minutes is not None else ""
            yield wrapped(f"{session.title}: {round(then)} min before, {round(now)}{room} after")
    gone = lost(before.coverage, after.coverage)
    yield wrapped(f"Lost: {'; '.join(gone) if gone else 'nothing'}.")
    yield wrapped(f"Stays open: {_left(proposal)}.")
    yield wrapped(f"{_tried(proposal).capitalize()}.")


def _left(proposal: Proposal) -> str:
    """The gaps that stay open, as the check of the changed plan says them where there is one."""
    if proposal.after is not None:
        left = [finding.message for finding in proposal.after.findings if finding.level >= Level.gap]
        return "; ".join(left) or "nothing"
    return ", ".join(_rules(proposal.found.left)) or "nothing"


def _rules(gaps: Counter[Key]) -> list[str]:
    return [key.rule for key in gaps.elements()]
