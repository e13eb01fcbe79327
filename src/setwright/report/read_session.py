"""One session said back, line by line, in plain words."""

from collections.abc import Callable, Iterator
from typing import Final, NamedTuple

from setwright.library.table import Library
from setwright.model.next import typed_next
from setwright.model.plan import Allowed, Group, Item, Reuse, Session
from setwright.places import Place
from setwright.reading import words
from setwright.reading.dose import Rest
from setwright.reading.habits import Habits
from setwright.reading.say import say_dose, say_warm_up
from setwright.report.phrases import joined
from setwright.report.read_count import Tally

DEFAULT_PRIORITY: Final = 2
"""Priority of a line that names none (the plan language)."""
WARM_UP: Final = "warm-up, never counted: "
"""Before each line of a warm-up."""


class Row(NamedTuple):
    """A line of a session: its place in the plan, its name, what is said of it, what others do instead."""

    place: Place
    name: str
    said: tuple[str, ...]
    members: tuple["Row", ...] = ()
    below: tuple[str, ...] = ()

    @property
    def text(self) -> str:
        """The line in one sentence."""
        return f"{self.name}: {'; '.join(self.said)}"


def session_head(session: Session, days: str | None = None) -> str:
    """Day, name, minutes and the other facts of a session on one line; ``days``: all days it is done on."""
    told = [
        days or session.day,
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


def session_lines(
    session: Session, habits: Habits, table: Library, tally: Tally | None = None
) -> Iterator[str]:
    """Everything a session holds, one sentence a line; members of a group are indented.

    ``table``: the library of the plan. ``tally``: what lines count, said under each of them.
    """
    yield from first_lines(session)
    yield from (f"{WARM_UP}{row.text}" for row in warm_up_rows(session, habits, table))
    rows = zip(session.work, work_rows(session, habits, table), strict=True)
    for number, (entry, row) in enumerate(rows, 1):
        yield f"{number}. {row.text}"
        yield from _counted(3, tally, Tally.group if isinstance(entry, Group) else Tally.item, entry)
        yield from (f"   {line}" for line in row.below)
        items = entry.items if isinstance(entry, Group) else ()
        for at, (item, member) in enumerate(zip(items, row.members, strict=True)):
            yield f"   {number}{letter(at)} {member.text}"
            yield from _counted(6, tally, Tally.item, item, entry)
            yield from (f"      {line}" for line in member.below)
    yield from _counted(0, tally, Tally.session, session)
    yield from last_lines(session)


def first_lines(session: Session) -> Iterator[str]:
    """What stands above the work: the day that it is like, a warm-up in minutes."""
    if session.reuse is not None:
        yield _like(session.reuse)
    if session.warm_up_minutes is not None:
        yield f"warm-up: {session.warm_up_minutes:g} minutes, never counted"


def warm_up_rows(session: Session, habits: Habits, table: Library) -> Iterator[Row]:
    """The lines of the warm-up."""
    yield from (_item(item, habits, table) for item in session.warm_up)


def work_rows(session: Session, habits: Habits, table: Library) -> Iterator[Row]:
    """The work: lines and groups, each with its members."""
    for entry in session.work:
        yield _group(entry, habits, table) if isinstance(entry, Group) else _item(entry, habits, table)


def last_lines(session: Session) -> Iterator[str]:
    """What stands below the work."""
    yield from (f"cool-down: {line}" for line in session.cool_down)
    yield from _remarks(session)
    if session.if_interrupted:
        yield f"if interrupted: {session.if_interrupted}"


def _counted(indent: int, tally: Tally | None, ask: Callable[..., str], *what: object) -> Iterator[str]:
    """What a line counts, marked and further in; nothing where counts are not wanted."""
    if tally is not None:
        yield f"{' ' * indent}= {ask(tally, *what)}"


def _like(reuse: Reuse) -> str:
    """Which day a session is like, what is different in it, and what came along."""
    told = [f"{word.text} left out" for word in reuse.leave_out]
    told += [f"{swap.new.text} in place of {swap.old.text}" for swap in reuse.swap]
    told += [f"a new dose of {change.name.text}" for change in reuse.change]
    told += [f"{_heading(entry)} added" for entry in reuse.add]
    along = f"; {joined(reuse.along, 'and')} from there" if reuse.along else ""
    return f"like {reuse.like.text}, a copy of its own: {', '.join(told) or 'nothing changed'}{along}"


def _heading(entry: Item | Group) -> str:
    if isinstance(entry, Item):
        return entry.name
    return f"a {entry.kind} of {joined([item.name for item in entry.items], 'and')}"


def letter(at: int) -> str:
    """The letter of a member of a group."""
    return chr(ord("a") + at) if at < 26 else f"-{at + 1}"  # noqa: PLR2004 - letters of the alphabet


def _item(item: Item, habits: Habits, table: Library, group: Group | None = None) -> Row:
    name, typed = _name(item, table)
    told = _dose(item, habits, group)
    if item.dose is None:
        told += [words.load(item.load, habits)] if item.load else []
        told += [words.rest(item.rest)] if item.rest else []
        told += [say_warm_up(item.warm_up, habits)] if item.warm_up else []
    else:
        told += item.dose.notes
    told += _loads(item, habits)
    told += _none(item)
    if item.next:
        told.append(f"next time: {typed_next(item.next.rule)}")
    told += _shared(item)
    if item.kit:
        told.append(f"kit: {', '.join(item.kit)}")
    below = tuple(_instead(item, habits, table, group))
    return Row(item.place, name, (*told, *_remarks(item), *typed), below=below)


def _instead(item: Item, habits: Habits, table: Library, group: Group | None = None) -> Iterator[str]:
    """What others do in place of a line; loads by athlete are said with the line itself."""
    for instead in item.instead:
        for line in instead.lines:
            said = line.model_copy(update={"loads": ()}) if instead.movement else line
            yield f"{instead.who} instead: {_item(said, habits, table, group).text}"


def _loads(item: Item, habits: Habits) -> Iterator[str]:
    for own in item.loads:
        told = ", ".join(words.load(load, habits) for load in own.loads)
        yield f"{own.who} {told or 'with no load, on purpose'}"


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


def _dose(item: Item, habits: Habits, group: Group | None) -> list[str]:
    """The dose, phrase by phrase; sets of several kinds stay one phrase."""
    if item.dose is None:
        return ["as long as the circuit says" if group and group.each_s else "no dose that could be read"]
    said = say_dose(item.dose, habits)
    in_rounds = group is not None and (group.rounds or group.time_s)
    said = said.removeprefix("1 set of ") if in_rounds else said
    return said.split("; ") if len(item.dose.groups) == 1 else [said]


def _none(entry: Item | Group) -> Iterator[str]:
    yield from (f"{word}: none this week, on purpose" for word in entry.none)


def _group(group: Group, habits: Habits, table: Library) -> Row:
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
    told += _none(group)
    if group.next:
        told.append(f"next time: {typed_next(group.next.rule)}")
    members = tuple(_item(item, habits, table, group) for item in group.items)
    return Row(group.place, group.kind, (*told, *_shared(group), *_remarks(group)), members)


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
