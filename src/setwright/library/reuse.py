"""Days like another one put together: the other day's work with what is left out, swapped, changed, added."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from typing import Final, NamedTuple

from setwright.findings import Finding
from setwright.library.names import fold
from setwright.library.table import Library
from setwright.model.own import Word
from setwright.model.plan import Change, Group, Item, Reuse, Session
from setwright.places import Place
from setwright.reading import key_rules as rules
from setwright.reading.faults import TextRule
from setwright.reading.habits import Member
from setwright.reading.nearest import choice, nearest

MOST_NAMES: Final = 3
"""Names proposed for one that the day does not have (choice: what is read at a glance)."""

ALONG: Final = {
    "minutes": frozenset({"minutes"}),
    "warm-up": frozenset({"warm_up", "warm_up_minutes"}),
    "cool-down": frozenset({"cool_down"}),
    "if interrupted": frozenset({"if_interrupted"}),
    "stage": frozenset({"stage"}),
}
"""What comes along with a day's work, by its key: the fields, where the copy writes none of them."""

DOSE: Final = frozenset({"dose", "rest", "tempo", "sides", "load", "loads", "warm_up"})
"""Fields of a line that a new dose replaces, said or not."""

Work = tuple[Item | Group, ...]


def written_out(
    sessions: Sequence[Session], table: Library
) -> tuple[tuple[Session, ...], tuple[Finding, ...]]:
    """The sessions with the work of each day that is like another one filled in, and what is wrong with them.

    A copy is independent: nothing that is changed in it changes the other day. Names mean the line that
    was typed so, else the one line with that movement under another name.
    """
    copier = _Copier(sessions, table)
    done = tuple(copier.session(at) for at in range(len(sessions)))
    return done, tuple(copier.findings)


class _Spot(NamedTuple):
    """A line of the day, by the place it has there; ``item`` is what stands in it after the swaps."""

    place: Place
    item: Item
    member: Member


class _Copier:
    def __init__(self, sessions: Sequence[Session], table: Library) -> None:
        self.findings: list[Finding] = []
        self._sessions = sessions
        self._table = table
        self._done: dict[int, Session] = {}

    def session(self, at: int, trail: tuple[int, ...] = ()) -> Session:
        """The session at this place of the week; ``trail``: the sessions that wait for it."""
        if at not in self._done:
            session = self._sessions[at]
            base = self._base(session, session.reuse, (*trail, at)) if session.reuse else None
            self._done[at] = self._copy(session, session.reuse, base) if base and session.reuse else session
        return self._done[at]

    def _base(self, session: Session, reuse: Reuse, trail: tuple[int, ...]) -> Session | None:
        """The day that a session is like; None, after saying why, when there is no such day."""
        typed = reuse.like.text
        called = [at for at, one in enumerate(self._sessions) if one.is_called(typed)]
        others = [at for at in called if at != trail[-1]]
        if len(others) == 1 and others[0] not in trail:
            return self.session(others[0], trail)
        names = [one.name or one.title for one in self._sessions if one is not session]
        if len(others) > 1:
            message = f"{typed} is {len(others)} sessions of the plan"
            change = f"write the name of one: {_like(self._sessions[at].name for at in others)}"
        elif called:
            message = f"{session.title} is like {typed}, and that leads back to {session.title}"
            change = "write the work of one of these days out, under `work:`"
        else:
            message = f"{typed} is no session of the plan"
            change = f"write {_like(nearest(typed, names) or names)}" if names else "write the day out"
        self._say(rules.LIKE_NO_DAY, reuse.like, session, message, change)
        return None

    def _copy(self, session: Session, reuse: Reuse, base: Session) -> Session:
        if not base.work:
            return session
        taken = [
            word
            for word, fields in ALONG.items()
            if not fields & session.model_fields_set and fields & base.model_fields_set
        ]
        along = {
            field: getattr(base, field) for word in taken for field in ALONG[word] & base.model_fields_set
        }
        work = (*self._changed(session, reuse, base), *reuse.add)
        if not work:
            message = f"nothing of {base.title} is left"
            self._say(rules.NO_WORK, reuse.like, session, message, "take the session out, or add work to it")
        told = reuse.model_copy(update={"along": tuple(taken)})
        return session.model_copy(update={**along, "work": work, "reuse": told})

    def _changed(self, session: Session, reuse: Reuse, base: Session) -> Work:
        """The work of the base without what is left out, swapped and with its new doses."""
        left = list(_spots(base.work))
        becomes: dict[Place, Item | None] = {}
        for word in reuse.leave_out:
            if spot := self._taken(word, left, session, base):
                becomes[spot.place] = None
        swapped = []
        for swap in reuse.swap:
            if spot := self._taken(swap.old, left, session, base):
                swapped.append(spot._replace(item=in_place_of(spot.item, swap.new)))
                becomes[spot.place] = swapped[-1].item
        left += swapped
        for change in reuse.change:
            if spot := self._taken(change.name, left, session, base):
                becomes[spot.place] = self._redosed(spot, change)
        return _with(base.work, lambda item: becomes.get(item.place, item))

    def _taken(self, word: Word, left: list[_Spot], session: Session, base: Session) -> _Spot | None:
        """The line that a name means, taken out of those ``left``; None after saying what is wrong."""
        meant = [spot for spot in left if fold(spot.item.name) == fold(word.text)]
        meant = meant or [spot for spot in left if self._same(spot.item.name, word.text)]
        if len(meant) == 1:
            left.remove(meant[0])
            return meant[0]
        if meant:
            typed = choice(dict.fromkeys(spot.item.name for spot in meant))
            message = f"{base.title} has {word.text} {len(meant)} times, typed {typed}"
            change = f"write {session.title} out, with `work:` in place of `like:`"
            self._say(rules.TWICE_IN_THAT_DAY, word, session, message, change)
            return None
        gone = any(self._same(spot.item.name, word.text) for spot in _spots(base.work))
        message = f'"{word.text}" is not in {base.title}' + (
            " any more once the rest of this is done" if gone else ""
        )
        names = list(dict.fromkeys(spot.item.name for spot in left))
        near = nearest(word.text, names, MOST_NAMES)
        write = f"write {_like(near or names[:MOST_NAMES])}" if names else "take it out"
        change = f"keep one of the two places that name {word.text}" if gone else write
        self._say(rules.NOT_IN_THAT_DAY, word, session, message, change)
        return None

    def _same(self, one: str, other: str) -> bool:
        key = self._table.find(one).key
        return fold(one) == fold(other) or (key is not None and key == self._table.find(other).key)

    def _redosed(self, spot: _Spot, change: Change) -> Item:
        """The line with the words of its change; what they do not say stays, but for the dose."""
        item, findings = change.readings[spot.member].item, change.readings[spot.member].findings
        self.findings += findings
        written = DOSE | item.model_fields_set
        return spot.item.model_copy(update={field: getattr(item, field) for field in written})

    def _say(self, rule: TextRule, at: Word, session: Session, message: str, change: str) -> None:
        self.findings.append(replace(rule.at(at.place, message, change), where=session.title))


def in_place_of(item: Item, new: Word) -> Item:
    """The same line with another movement; everything else that it says stays."""
    return item.model_copy(update={"name": new.text, "place": new.place, "key": None})


def _like(names: Iterable[str | None]) -> str:
    return choice([f"`{name}`" for name in dict.fromkeys(names)])


def _spots(work: Work) -> Iterator[_Spot]:
    for entry in work:
        if isinstance(entry, Group):
            yield from (_Spot(item.place, item, entry.member) for item in entry.items)
        else:
            yield _Spot(entry.place, entry, "alone")


def _with(work: Work, make: Callable[[Item], Item | None]) -> Work:
    """The work with each item made anew; one made None goes, and so does a group that it leaves empty."""
    done: list[Item | Group] = []
    for entry in work:
        if isinstance(entry, Item):
            item = make(entry)
            done += [item] if item else []
        else:
            items = tuple(made for one in entry.items if (made := make(one)))
            done += [entry.model_copy(update={"items": items})] if items else []
    return tuple(done)
