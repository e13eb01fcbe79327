"""What one athlete does instead of the lines that break a limit of theirs or stand on their list."""

import re
from collections.abc import Iterator
from typing import Final, NamedTuple

from setwright.checked import Checked
from setwright.coverage import Movement
from setwright.model.people import Athlete, Limit
from setwright.model.plan import Item, Session, Week
from setwright.places import Place
from setwright.reading.nearest import nearest
from setwright.rules.avoided_move import listed
from setwright.rules.limit_broken import limit_words, met
from setwright.rules.limits import avoids, hold, sounds_like, unit_of
from setwright.rules.means import Means, means
from setwright.swapping.changes import dosable, dose_of, lines
from setwright.swapping.likeness import like, loses_the_line, lost
from setwright.swapping.paste import Edit, block_at, repeating
from setwright.swapping.proposal import NotToSwap, readable, signed

_PLAIN_NAME: Final = re.compile(r"\w[\w .'-]*")
_HAS_INSTEAD: Final = re.compile(r"\s*instead\s*:")


class Instead(NamedTuple):
    """A line that an athlete can't do as written, and what they do instead.

    ``why``: the limits it breaks and the names on the list, in words. ``movement`` None: nothing at hand is
    of its line or kind or, where something is ``typed``, the line itself with a load inside the limit.
    ``lost``: what the line does and the movement does not, in words. ``typed``: what stands under the line
    then. ``edit``: the same in its place, None where the text can't be cut by lines. ``ask``: the limits that
    the movement is just at, with whoever set them.
    """

    session: Session
    item: Item
    why: tuple[str, ...]
    movement: Movement | None
    lost: tuple[str, ...]
    typed: tuple[str, ...]
    edit: Edit | None
    ask: tuple[str, ...] = ()


class ForOne(NamedTuple):
    """``lines`` in the order of the plan; ``ask``: lines that only whoever set the limit can answer for."""

    before: Checked
    athlete: Athlete
    lines: tuple[Instead, ...]
    ask: tuple[str, ...]


class _Against(NamedTuple):
    """A line against which something stands; ``sure`` False where that has to be asked."""

    session: Session
    item: Item
    why: str
    sure: bool
    limit: Limit | None = None


def propose_for(checked: Checked, name: str, number: int = 1) -> ForOne:
    """For each line of an athlete that breaks a limit or is on their list, the nearest movement inside it.

    Lines are those that the athlete does in week ``number``; what they do instead of a line is held against
    the limits in its place. Nothing beyond a limit of the athlete is proposed, nothing that sounds like what
    they avoid, and nothing that the session holds already.

    Raises: NotToSwap where a line could not be read, the squad has no such athlete, the athlete is out, or
    a limit of theirs does not say who set it.
    """
    checked = checked.only(number) if checked.weeks else checked
    week, table = readable(checked)
    athlete = _named(week, name)
    signed(athlete)
    at_hand = means(week, table)
    against = sorted(
        (*_limits(week, at_hand, athlete), *_list(week, at_hand, athlete)),
        key=lambda one: (week.sessions.index(one.session), one.item.place),
    )
    whys: dict[Place, list[_Against]] = {}
    for one in against:
        if one.sure:
            whys.setdefault(one.item.place, []).append(one)
    asked = {f"{one.item.name} (line {one.item.place.line})" for one in against if one.item.place not in whys}
    taken: dict[Place, set[str | None]] = {}
    found = []
    for some in whys.values():
        session = some[0].session
        if all(one.limit and one.limit.load_at_most is not None for one in some):
            found.append(_with_less(checked, week, athlete, some))
            continue
        held = taken.setdefault(session.place, {item.key for item in session.items()})
        new = _nearest(at_hand, athlete, some[0].item, held)
        held.add(new["key"] if new else None)
        found.append(_instead(checked, at_hand, athlete, some, new))
    return ForOne(checked, athlete, tuple(found), tuple(sorted(asked)))


def _named(week: Week, name: str) -> Athlete:
    athletes = {one.name: one for one in (week.squad.athletes if week.squad else ())}
    if name not in athletes:
        near = nearest(name, athletes)
        meant = f"; did you mean {near[0]}?" if near else ""
        raise NotToSwap(f"the plan's squad has no athlete {name}{meant}")
    if athletes[name].participation == "out":
        raise NotToSwap(f"{name} is out (`participation: out`): nothing is proposed")
    return athletes[name]


def _limits(week: Week, at_hand: Means, athlete: Athlete) -> Iterator[_Against]:
    for one in met(week, at_hand.table, athlete):
        task = one.task
        yield _Against(
            task.session, task.item, limit_words(one.limit), one.held.answer == "broken", one.limit
        )


def _list(week: Week, at_hand: Means, athlete: Athlete) -> Iterator[_Against]:
    for one in listed(week, at_hand.table, athlete):
        task = one.task
        sure = one.how == "is" and task.item.key is not None
        yield _Against(task.session, task.item, f'on the list, "{one.avoided}"', sure)


def _nearest(at_hand: Means, athlete: Athlete, item: Item, taken: set[str | None]) -> Movement | None:
    """The movement most like a line that the athlete may do, that can be dosed, and that is not taken yet.

    One that is just at a limit comes after those inside, unless it alone keeps the line of pull.
    """
    assert item.key is not None
    old = at_hand.table.movement(item.key)
    inside = {new["key"] for new in at_hand.within((athlete,))}
    free = (
        new
        for new in at_hand.within((athlete,), touching=True)
        if new["key"] not in taken
        and dosable(new)
        and not any(sounds_like(name, str(new["name"])) for name in avoids(athlete))
    )
    return min(
        like(old, free, at_hand),
        key=lambda new: (loses_the_line(old, new), new["key"] not in inside),
        default=None,
    )


def _instead(
    checked: Checked, at_hand: Means, athlete: Athlete, against: list[_Against], new: Movement | None
) -> Instead:
    session, item = against[0].session, against[0].item
    why = tuple(dict.fromkeys(one.why for one in against))
    if new is None or item.key is None:
        return Instead(session, item, why, None, (), (), None)
    new_lines = tuple(_lines(athlete, item, new, at_hand))
    return Instead(
        session=session,
        item=item,
        why=why,
        movement=new,
        lost=lost(at_hand.table.movement(item.key), new, at_hand),
        typed=new_lines,
        edit=_edit(checked, at_hand.week, session, item, new_lines),
        ask=tuple(
            f"{limit_words(limit)} ({limit.set_by})"
            for limit in athlete.limits
            if hold(limit, new).answer != "inside"
        ),
    )


def _with_less(checked: Checked, week: Week, athlete: Athlete, against: list[_Against]) -> Instead:
    """The same line with the most that the limits on the load leave."""
    session, item = against[0].session, against[0].item
    limits = [one.limit for one in against if one.limit]
    least = min(limits, key=lambda limit: (limit.unit == "%", limit.load_at_most or 0.0))
    new_lines = ("load:", f"  {_who(athlete)}: {_most(least, week)}")
    by_itself = len(limits) == 1 and not item.loads and item.load is None
    return Instead(
        session=session,
        item=item,
        why=tuple(dict.fromkeys(one.why for one in against)),
        movement=None,
        lost=(),
        typed=new_lines,
        edit=_edit(checked, week, session, item, new_lines) if by_itself else None,
    )


def _most(limit: Limit, week: Week) -> str:
    """The limit as a load of the line: of several that are written the least is taken, kilograms first."""
    unit = unit_of(limit, week)
    return f"{limit.load_at_most:g}{'% of tested max' if unit == '%' else f' {unit}'}"


def _who(athlete: Athlete) -> str:
    return athlete.name if _PLAIN_NAME.fullmatch(athlete.name) else f'"{athlete.name}"'


def _edit(
    checked: Checked, week: Week, session: Session, item: Item, new_lines: tuple[str, ...]
) -> Edit | None:
    block = block_at(item.place.line, checked.sources[checked.file])
    if block is None or not _own_place(week, session, item) or any(map(_HAS_INSTEAD.match, block.body)):
        return None
    return block.below(*(f"{block.indent}  {line}" for line in new_lines))


def _own_place(week: Week, session: Session, item: Item) -> bool:
    """Whether a line is one of the session's own, and neither another day's nor done instead of one."""
    written = any(one is item for one in (*session.warm_up, *session.items()))
    return written and session.reuse is None and not any(repeating(week, session))


def _lines(athlete: Athlete, item: Item, new: Movement, at_hand: Means) -> Iterator[str]:
    """``instead:`` and what stands under it: the movement alone where it can take the line's dose."""
    who = _who(athlete)
    yield "instead:"
    if _takes_the_dose(at_hand.table.movement(str(item.key)), new, item):
        yield f"  {who}: {new['name']}"
        return
    rounds = any(group and group.rounds for _, one, group in lines(at_hand.week) if one is item)
    yield f"  {who}:"
    yield f"    - {new['name']}: {dose_of(new, at_hand.load_class(new), item.dose, one_round=rounds)}"


def _takes_the_dose(old: Movement, new: Movement, item: Item) -> bool:
    """Whether a movement can take a line's dose as written: no load in it, the same sides and class."""
    return (
        item.dose is not None
        and item.load is None
        and not any(work.load for group in item.dose.groups for work in group.works)
        and (old["sides"], old["class"], old["counting"]) == (new["sides"], new["class"], new["counting"])
    )
