"""A group of sets while it is read: what has been said so far, and the group it becomes."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from setwright.reading import questions_amount as ask
from setwright.reading.cursor import Cursor, Unclear
from setwright.reading.dose import Amount, Drop, Effort, Extra, GroupKind, Load, SetGroup, SetWork, Span
from setwright.reading.lexer import Token
from setwright.reading.questions_how import EVERY_REST

ONE = Span(low=1, high=1)
SHARED = ("rest", "tempo", "sides")
"""What the last group of a chain lends to groups that have none."""
MOST_BARE_SETS = 12
"""More sets than this, written with a bare x, are asked (choice)."""
SWAP = (8, 6)
"""A first number from 8 up with a second up to 6 is asked, it may be reps x sets (choice)."""


@dataclass(slots=True)
class Last:
    """What the last set says of its own."""

    amount: Amount | None = None
    load: Load | None = None
    effort: Effort | None = None
    drops: tuple[Drop, ...] = ()


@dataclass(slots=True)
class Draft:
    """One group of sets as read so far.

    ``head``: the tokens of how much, from its first to its last. ``swapped`` marks a bare "8 x 3".
    ``how`` holds fields of ``SetGroup`` by name; ``where`` the tokens that said each thing.
    """

    head: tuple[Token, Token]
    kind: GroupKind = "straight"
    sets: Span = ONE
    amounts: list[Amount] = field(default_factory=list)
    parts: tuple[Span, ...] = ()
    rungs: tuple[int, ...] = ()
    extra: Extra | None = None
    bare: bool = False
    side_in_head: bool = False
    loads: tuple[Load, ...] = ()
    efforts: tuple[Effort, ...] = ()
    drops: tuple[Drop, ...] = ()
    last: Last | None = None
    warm_up: int | None = None
    how: dict[str, Any] = field(default_factory=dict)
    where: dict[str, tuple[Token, Token]] = field(default_factory=dict)

    def say(self, cursor: Cursor, kind: str, start: Token) -> None:
        """Note that ``kind`` is said by the tokens from ``start`` to the one taken last.

        Raises: Unclear when it is said already.
        """
        if kind in self.where:
            raise cursor.ask(ask.SAID_TWICE, start, kind=kind)
        self.where[kind] = (start, cursor.before)

    @property
    def is_work(self) -> bool:
        """Whether the group is work with a load of its own, not a test or a top set."""
        return self.kind not in ("top_set", "test") and self.warm_up is None

    @property
    def is_loaded(self) -> bool:
        """Whether the group says a load or an effort."""
        return "load" in self.where or "effort" in self.where

    def group(self) -> SetGroup:
        """The group; one work when all sets are alike, else one a set."""
        count = max(len(self.amounts), len(self.loads), len(self.efforts))
        works = tuple(self._work(number) for number in range(count))
        last = None if self.last is None else self._last(works[-1], self.last)
        kind = "list" if count > 1 and self.kind == "straight" else self.kind
        return SetGroup(kind=kind, sets=self.sets, works=works, last=last, rungs=self.rungs, **self.how)

    def _work(self, number: int) -> SetWork:
        return SetWork(
            amount=self.amounts[number % len(self.amounts)],
            parts=self.parts,
            extra=self.extra,
            drops=self.drops,
            load=self.loads[number % len(self.loads)] if self.loads else None,
            effort=self.efforts[number % len(self.efforts)] if self.efforts else None,
        )

    @staticmethod
    def _last(base: SetWork, last: Last) -> SetWork:
        own = {
            "amount": last.amount,
            "load": last.load,
            "effort": last.effort,
            "drops": last.drops,
            "parts": () if last.amount else base.parts,
            "extra": None if last.amount else base.extra,
        }
        said = {name: value for name, value in own.items() if value or name in ("parts", "extra")}
        return base.model_copy(update=said)


def checks(cursor: Cursor, draft: Draft) -> Iterator[Unclear]:
    """What can only be asked once the whole group is read."""
    if draft.warm_up is not None and not draft.amounts:
        for start, end in draft.where.values():
            yield cursor.ask(ask.WARM_UP_HOW, start, end)
        return
    first, last = draft.head
    every, rest = draft.where.get("every"), draft.where.get("rest")
    if every and rest:
        yield cursor.ask(EVERY_REST, rest[0], rest[1])
    if draft.bare and not every and _may_be_swapped(draft, cursor):
        reps = draft.amounts[0].span
        sets = number(draft.sets)
        question = ask.MANY_SETS if _too_many(draft) else ask.DOSE_ORDER
        yield cursor.ask(question, first, last, first=sets, second=number(reps))
    yield from uneven(cursor, draft)


def _may_be_swapped(draft: Draft, cursor: Cursor) -> bool:
    sets, reps = draft.sets, draft.amounts[0].span
    many, few = SWAP
    looks_swapped = sets.low >= many and (reps.high or 0) <= few
    return _too_many(draft) or (looks_swapped and cursor.habits.dose_order is None)


def _too_many(draft: Draft) -> bool:
    """Whether no house does so many sets, whatever its order of sets and repetitions."""
    return (draft.sets.high or 0) > MOST_BARE_SETS


def uneven(cursor: Cursor, draft: Draft) -> Iterator[Unclear]:
    """Lists of loads or efforts that have neither one entry nor one a set."""
    for kind, values in (("load", draft.loads), ("effort", draft.efforts)):
        fits = len(values) <= 1 or draft.sets == Span(low=len(values), high=len(values))
        if not fits:
            start, end = draft.where[kind]
            amounts = ", ".join([number(draft.amounts[0].span)] * len(values))
            write = f"sets of {amounts} {cursor.typed(start, end)}"
            sets = number(draft.sets)
            yield cursor.ask(ask.VALUE_COUNT, start, end, sets=sets, count=str(len(values)), write=write)


def number(span: Span) -> str:
    """A number, a range or an open number as typed: "8", "8-10", "5+", "max"."""
    if span.high is None:
        return f"{span.low:g}+" if span.low else "max"
    return f"{span.low:g}" if span.low == span.high else f"{span.low:g}-{span.high:g}"


def share(drafts: list[Draft]) -> None:
    """Lend rest, tempo and side of the last group to the groups before it that have none."""
    lender = drafts[-1]
    for name in SHARED:
        said_after_comma = name in lender.how and not (name == "sides" and lender.side_in_head)
        for draft in drafts[:-1]:
            if said_after_comma and name not in draft.how and "every" not in draft.where:
                draft.how[name] = lender.how[name]
