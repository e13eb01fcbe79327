"""The smallest set of changes as a coach reads it: what is open, what to type, what it gives and costs."""

from collections.abc import Iterable, Iterator
from typing import Final

from setwright.findings import Level
from setwright.report.adds_up import matrix_text
from setwright.report.wrapping import plain, wrapped
from setwright.swapping.changes import Change, dose_text, lines
from setwright.swapping.paste import Edit, repeating
from setwright.swapping.proposal import Proposal
from setwright.swapping.search import MOST_CHANGES, Found
from setwright.swapping.state import State, lost

INSIDE: Final = "Inside the written limit, not cleared by it."
SHOW: Final = "Show this to whoever set the limit before it is used."
BY_HAND: Final = "The lines can't be cut out of this file: write the change yourself."

_SAYS: Final = {
    "pair": "{session}: straight after {line}, without rest, {movement}",
    "add": "{session}: {movement}, {place}",
    "replace": "{session}: {movement} in the place of {line}",
}


def swap_text(proposal: Proposal) -> str:
    """The whole screen of ``swap``, with a line end. The file itself is not touched."""
    blocks = (*_blocks(proposal), _not_ours(proposal))
    return "\n\n".join("\n".join(block) for block in blocks if block) + "\n"


def typed(file: str, edits: Iterable[Edit]) -> Iterator[str]:
    """The lines to type behind a bar, each edit with its place in the file."""
    for edit in edits:
        if edit.last < edit.first:
            where = f"after line {edit.first - 1}"
        elif edit.last == edit.first:
            where = f"in the place of line {edit.first}"
        else:
            where = f"in the place of lines {edit.first} to {edit.last}"
        yield f"{plain(file)}, {where}, type"
        yield from (f"  | {plain(line)}" for line in edit.new)


def _blocks(proposal: Proposal) -> Iterator[list[str]]:
    found = proposal.found
    week, number = found.before.week, len(found.before.found)
    if not number:
        yield [wrapped(f"{week.title}: no gap is open that a movement closes; there is nothing to change")]
        return
    head = [wrapped(f"{week.title}: {number} open gap{'' if number == 1 else 's'}"), *_open(found.before)]
    yield [*head, INSIDE] if proposal.limited and found.best else head
    if found.best is None:
        yield [wrapped(_nothing(found))]
        return
    yield _what(proposal, found.best.changes)
    yield list(typed(proposal.before.file, proposal.edits) if proposal.edits else _by_hand(proposal))
    yield list(_cost(proposal, found.best.state))
    if proposal.after is not None:
        yield ["Before", matrix_text(proposal.before.weeks[0], proposal.before.findings)]
        yield ["After", matrix_text(proposal.after.weeks[0], proposal.after.findings)]
    if proposal.limited:
        yield [SHOW]


def _open(state: State) -> list[str]:
    return [wrapped(one.fault.message, "  - ", "    ") for one in state.found]


def _nothing(found: Found) -> str:
    within = "with this gym, inside everyone's limits and in the minutes written"
    if found.stopped_at is not None:
        return f"Nothing was found that closes one of them {within}. {_stopped(found)}"
    return f"No {MOST_CHANGES} changes {within} close one of them. {_tried(found)}."


def _tried(found: Found) -> str:
    return f"Tried {found.tried} set{'' if found.tried == 1 else 's'} of changes"


def _stopped(found: Found) -> str:
    return (
        f"{_tried(found)} and stopped there, with sets of {found.stopped_at} tried in part: one of them may "
        "close more."
    )


def _how_sure(found: Found, changes: tuple[Change, ...]) -> str:
    """What was tried, and what that says of smaller and of better sets."""
    if found.stopped_at is not None:
        return _stopped(found)
    told = [f"no set of fewer than {len(changes)} closes as much"] if len(changes) > 1 else []
    told += [f"none of up to {MOST_CHANGES} closes more"] if found.left else []
    return f"{_tried(found)}{': ' if told else ''}{', '.join(told)}."


def _what(proposal: Proposal, changes: tuple[Change, ...]) -> list[str]:
    week = proposal.found.before.week
    at = {spot: f"{item.name} (line {item.place.line})" for spot, item, _ in lines(week)}
    number = len(changes)
    told = [f"{number} change{'' if number == 1 else 's'}"]
    for change in sorted(changes, key=lambda one: one.spot[:2]):
        line = at.get(change.spot, "")
        says = _SAYS[change.kind].format(
            session=week.sessions[change.spot.session].title,
            movement=change.movement["name"],
            line=line,
            place=f"before {line}" if line else "at the end",
        )
        told.append(wrapped(says, "  - ", "    "))
    return told


def _by_hand(proposal: Proposal) -> Iterator[str]:
    """The dose lines for a text that can't be cut by lines, and what to mind where a day is used again."""
    found = proposal.found
    assert found.best is not None
    week, at = found.before.week, {spot: (item, group) for spot, item, group in lines(found.before.week)}
    yield BY_HAND
    for change in found.best.changes:
        item, group = at.get(change.spot, (None, None))
        yield f"  | - {change.movement['name']}: {dose_text(change, item, group)}"
    for number in sorted({change.spot.session for change in found.best.changes}):
        session = week.sessions[number]
        if session.reuse is not None:
            yield wrapped(
                f"{session.title} is like {session.reuse.like.text}: write the line under `add:` of "
                f"{session.title}, and what it replaces under `leave out:`"
            )
        for other in repeating(week, session):
            if other.reuse is not None:
                yield wrapped(
                    f"{other.title} shares lines with {session.title}: what is typed there changes both"
                )


def _cost(proposal: Proposal, after: State) -> Iterator[str]:
    before = proposal.found.before
    for session, then, now in zip(before.week.sessions, before.minutes, after.minutes, strict=True):
        if round(now) != round(then):
            room = f" of {session.minutes:g}" if session.minutes is not None else ""
            yield wrapped(f"{session.title}: {round(then)} min before, {round(now)}{room} after.")
    gone = lost(before.coverage, after.coverage)
    yield wrapped(f"Lost: {'; '.join(gone) if gone else 'nothing'}.")
    for edit in proposal.edits or ():
        if edit.gone:
            yield wrapped(f"Goes with line {edit.first}: {'; '.join(edit.gone)}")
    yield "Stays open:" if after.found else "Stays open: nothing."
    yield from _open(after)
    if proposal.elsewhere:
        yield wrapped(f"The lines stand in other weeks too, and there: {'; '.join(proposal.elsewhere)}.")
    if proposal.found.best:
        yield wrapped(_how_sure(proposal.found, proposal.found.best.changes))


def _not_ours(proposal: Proposal) -> list[str]:
    """Findings that no change for everybody settles, by rule; a limit is for ``--for``."""
    checked = proposal.before
    ours = {one.rule.id for one in proposal.found.before.found}
    rules = dict.fromkeys(f.rule for f in checked.findings if f.level >= Level.gap and f.rule not in ours)
    told = [wrapped(f"Not for a swap, see `setwright check`: {', '.join(rules)}.")] if rules else []
    if {"limit-broken", "avoided-move"} & set(rules):
        told.append(wrapped("For an athlete's own lines: setwright swap FILE --for NAME"))
    return told
