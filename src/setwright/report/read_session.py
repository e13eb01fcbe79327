"""One session said back, line by line, in plain words."""

from collections.abc import Iterator

from setwright.library.table import Library
from setwright.model.next import typed_next
from setwright.model.plan import Allowed, Group, Item, Session
from setwright.reading import words
from setwright.reading.dose import Rest
from setwright.reading.habits import Habits
from setwright.reading.say import say_dose, say_warm_up

DEFAULT_PRIORITY = 2
"""Priority of a line that names none (the plan language)."""


def session_head(session: Session) -> str:
    """Day, name, minutes and the other facts of a session on one line."""
    told = [
        session.day,
        session.date.isoformat() if session.date else None,
        session.name,
        f"{session.minutes:g} minutes" if session.minutes is not None else None,
        f"starts {session.start}" if session.start else None,
        f"at {session.where}" if session.where else None,
        f"after {session.after}" if session.after else None,
        f"{words.plural(session.days_to_match, 'day')} to the match"
        if session.days_to_match is not None
        else None,
        f"{session.people} people" if session.people else None,
        f"{session.staff} staff" if session.staff is not None else None,
    ]
    return ", ".join(one for one in told if one) or "The session"


def session_lines(session: Session, habits: Habits, table: Library) -> Iterator[str]:
    """Everything a session holds, one sentence a line; members of a group are indented.

    ``table``: the library of the plan.
    """
    if session.warm_up_minutes is not None:
        yield f"warm-up: {session.warm_up_minutes:g} minutes, never counted"
    for item in session.warm_up:
        yield f"warm-up, never counted: {_item(item, habits, table)}"
    for number, entry in enumerate(session.work, 1):
        if isinstance(entry, Group):
            yield f"{number}. {_group(entry, habits)}"
            for at, item in enumerate(entry.items):
                yield f"   {number}{_letter(at)} {_item(item, habits, table, entry)}"
        else:
            yield f"{number}. {_item(entry, habits, table)}"
    yield from (f"cool-down: {line}" for line in session.cool_down)
    yield from _remarks(session)
    if session.if_interrupted:
        yield f"if interrupted: {session.if_interrupted}"


def _letter(at: int) -> str:
    return chr(ord("a") + at) if at < 26 else f"-{at + 1}"  # noqa: PLR2004 - letters of the alphabet


def _item(item: Item, habits: Habits, table: Library, group: Group | None = None) -> str:
    name, typed = _name(item, table)
    told = [f"{name}: {_dose(item, habits, group)}"]
    if item.dose is None:
        told += [words.load(item.load, habits)] if item.load else []
        told += [words.rest(item.rest)] if item.rest else []
        told += [say_warm_up(item.warm_up, habits)] if item.warm_up else []
    else:
        told += item.dose.notes
    if item.next:
        told.append(f"next time: {typed_next(item.next.rule)}")
    told += _shared(item)
    if item.kit:
        told.append(f"kit: {', '.join(item.kit)}")
    return "; ".join([*told, *_remarks(item), *typed])


def _name(item: Item, table: Library) -> tuple[str, list[str]]:
    """The library's name, and what is to be said about the one that was typed."""
    if item.key is None:
        return item.name, []
    match = table.find(item.name)
    name = str(match.name)
    said = [] if item.name.casefold() == name.casefold() else [f'typed "{item.name}"']
    if match.stripped:
        said.append(
            f'"{" ".join(match.stripped)}" names no other movement: say it in the dose to have it count'
        )
    return name, said


def _dose(item: Item, habits: Habits, group: Group | None) -> str:
    if item.dose is None:
        return "as long as the circuit says" if group and group.each_s else "no dose that could be read"
    said = say_dose(item.dose, habits)
    in_rounds = group is not None and (group.rounds or group.time_s)
    return said.removeprefix("1 set of ") if in_rounds else said


def _group(group: Group, habits: Habits) -> str:
    told = []
    if group.rounds is not None:
        told.append(words.plural(group.rounds, "round"))
    if group.ladder:
        told.append(_ladder(group.ladder))
    if group.each_s is not None:
        told.append(f"{words.seconds(group.each_s)} each move")
    if group.time_s is not None:
        told.append(f"as many rounds as fit into {words.seconds(group.time_s)}")
    if group.every_s is not None:
        told.append(f"a round starts every {words.interval(group.every_s)}")
    if group.cap is not None:
        told.append(f"stopped at {words.amount(group.cap)}")
    if group.load is not None:
        told.append(f"all {words.load(group.load, habits)}")
    told.append(f"{_pause(group.rest)} after each round" if group.rest else "rest after a round not written")
    told.append(
        f"{_pause(group.between_moves)} between moves" if group.between_moves else "straight on between moves"
    )
    if group.next:
        told.append(f"next time: {typed_next(group.next.rule)}")
    return "; ".join([f"{group.kind}: {told[0]}", *told[1:], *_shared(group), *_remarks(group)])


def _ladder(rungs: tuple[int, ...]) -> str:
    top = max(rungs, key=lambda rung: abs(rung - rungs[0]))
    back = f" and back to {rungs[-1]}" if top != rungs[-1] else ""
    return f"a ladder of {rungs[0]} to {top}{back}"


def _pause(rest: Rest) -> str:
    return words.rest(rest).removesuffix(" between sets")


def _shared(entry: Item | Group) -> Iterator[str]:
    """What items and groups have in common."""
    if entry.priority != DEFAULT_PRIORITY:
        yield "first to keep" if entry.priority == 1 else "first to drop"
    if entry.for_:
        yield f"only for {', '.join(entry.for_)}"
    if entry.not_for:
        yield f"not for {', '.join(entry.not_for)}"
    if entry.stop:
        yield f"stop: {entry.stop}"


def _remarks(entry: Item | Group | Session) -> Iterator[str]:
    yield from map(allowed, entry.allow)
    if entry.note:
        yield f"note: {entry.note}"
    if entry.private_note:
        yield f"private note, never printed: {entry.private_note}"


def allowed(one: Allowed) -> str:
    """A rule that is silenced, with the reason."""
    return f"allowed: {one.rule}, because {one.reason}"
