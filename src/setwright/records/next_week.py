"""The plan of the week that comes: its own values, and in them what was done of the week before."""

from collections.abc import Iterator, Mapping
from functools import partial
from types import MappingProxyType
from typing import Final, NamedTuple

from setwright.files import read_beside
from setwright.findings import Level
from setwright.model.plan import Session, Week
from setwright.own.plan import read_plan
from setwright.places import Place
from setwright.reading.done_typed import load_typed
from setwright.reading.dose import Load
from setwright.reading.words import plural
from setwright.records.changes import Change, Going, by_line, changes_from_before, changes_of
from setwright.records.gains import Gain
from setwright.records.keeping import Plan
from setwright.records.line_keys import Told, lines_of
from setwright.records.next_head import squad_file, with_lighter, with_squad
from setwright.records.planned import loads_of
from setwright.records.rewriting import Wanted, rewritten
from setwright.records.taken_up import taken_up
from setwright.records.training_max import NewMax, new_maxes, next_file, put, stepped_before

TYPED: Final = ("mass", "bodyweight")
"""Kinds of load that are a number to put on; a percent, a band or a word is worked out otherwise."""


class NextWeek(NamedTuple):
    """The text of the plan of the week that comes, every line with its reason, and what is left to the coach.

    ``days``: the sessions and, for each, the one whose day it has now, where missed ones come first.
    ``maxes``: the steps of training maxes. ``squad``: the name and the text of a new squad file with them.
    """

    text: str
    changes: tuple[Change, ...]
    by_hand: tuple[str, ...]
    days: tuple[tuple[Session, Session], ...]
    maxes: tuple[NewMax, ...]
    squad: tuple[str, str] | None


def next_week(going: Going) -> NextWeek:
    """The plan of the week that comes, as text."""
    trained = changes_of(going)
    changes = (*trained, *changes_from_before(going, trained))
    week, file = going.coming.week, str(going.plan.file)
    new = rewritten(going.coming.text, week, wanted(changes, week), partial(_read, going.plan))
    by_hand = [told for change in changes for told in _by_hand(change)]
    by_hand += (f"{', '.join(filter(None, (one.item.name, one.session)))}: {_asked(one)}" for one in new.left)
    taken = taken_up(file, new.text, week, going.waiting)
    carried = _with_maxes_of_before(taken.text, going)
    stepped = _with_maxes(carried, changes, going.plan)
    by_hand += (f"{one.movement}, {one.who}: {one.said}" for one in stepped.left)
    lighter = going.coming.lighter
    text = with_lighter(file, stepped.text, lighter) if lighter else stepped.text
    return NextWeek(text, changes, tuple(dict.fromkeys(by_hand)), taken.days, stepped.maxes, stepped.squad)


class _Stepped(NamedTuple):
    """The plan with the steps of training maxes in its squad, or in a new squad file that it names."""

    text: str
    maxes: tuple[NewMax, ...]
    left: tuple[NewMax, ...]
    squad: tuple[str, str] | None


def _with_maxes_of_before(text: str, going: Going) -> str:
    """The plan with the training maxes of the week before in its squad, where that stands in it."""
    week = _read(going.plan, text)
    if week is None or squad_file(str(going.plan.file), text) is not None:
        return text
    return put(text, tuple(stepped_before(going.done.week, week)), partial(_read, going.plan)).text


def _with_maxes(text: str, changes: tuple[Change, ...], plan: Plan) -> _Stepped:
    week = _read(plan, text)
    maxes = tuple(new_maxes(changes, week, plan.table)) if week else ()
    steps = tuple(one for one in maxes if one.typed)
    left = tuple(one for one in maxes if one.place is None)
    name = squad_file(str(plan.file), text)
    written = read_beside(plan.file, name) if name else None
    if not steps:
        return _Stepped(text, maxes, left, None)
    if name is None or written is None:
        new = put(text, steps, partial(_read, plan))
        return _Stepped(new.text, maxes, (*left, *new.left), None)
    squad = put(written, steps, lambda typed: _read(plan, text, {name: typed}))
    other = next_file(plan.file.parent, name)
    return _Stepped(with_squad(str(plan.file), text, other), maxes, (*left, *squad.left), (other, squad.text))


def wanted(changes: tuple[Change, ...], week: Week) -> tuple[Wanted, ...]:
    """What each line of the week that comes is to say, where that is not what it says.

    Of a line that stands for two sessions the last time that it was done decides.
    """
    of_line = by_line(changes)
    found: dict[Place, Wanted] = {}
    for told in lines_of(week):
        change = of_line.get(told.key)
        line = told.planned.line
        one = found.setdefault(line.place, Wanted(line, told.session.day or told.session.name, {}, {}))
        if told.key.who in one.gains and (change is None or change.done.short):
            continue
        load = new_load(change, loads_of(told.planned, week, told.athlete)) if change else None
        loads = one.loads if load is None else {**one.loads, told.key.who: load}
        gains = {**one.gains, told.key.who: _gain(change, told)}
        found[line.place] = one._replace(loads=loads, gains=gains)
    return tuple(one for one in found.values() if one.loads or set(one.gains.values()) != {Gain()})


def new_load(change: Change, written: tuple[Load, ...]) -> Load | None:
    """The load to write for somebody; None where what is written stays."""
    load, decision = change.load.load, change.decision
    if load is None or decision.stands or written == (load,):
        return None
    asked = written and (len(written) > 1 or written[0].kind not in TYPED)
    return None if asked and decision.repeats and not decision.held else load


def _gain(change: Change | None, told: Told) -> Gain:
    dose = told.planned.line.dose
    return change.gain if change and dose and len(dose.groups) == 1 else Gain()


def _by_hand(change: Change) -> Iterator[str]:
    """What the rule asks for and no line of the plan can say."""
    day, who = (f", {word}" if word else "" for word in (change.session.day, change.who))
    where = f"{change.item.name}{day}{who}"
    if change.decision.by_hand:
        yield f"{where}: {change.decision.reason}"
    elif change.load.load is None and not change.decision.repeats and change.more is None:
        yield f"{where}: {change.decision.reason}, but {change.load.note}"


def _asked(one: Wanted) -> str:
    """A change that could not be written into the text, in words."""
    loads = [f"{who or 'load'}: {load_typed(load)}" for who, load in one.loads.items()]
    if len(set(one.gains.values())) == 1:
        return ", ".join([*loads, *filter(None, {_gained(gain) for gain in one.gains.values()})])
    return ", ".join([*loads, *(f"{who}: {_gained(gain)}" for who, gain in one.gains.items() if any(gain))])


def _gained(gain: Gain) -> str:
    counts = ((gain.sets, "set"), (gain.reps, "rep"))
    return " and ".join(f"add {plural(count, word)}" for count, word in counts if count)


def _read(plan: Plan, text: str, instead: Mapping[str, str] = MappingProxyType({})) -> Week | None:
    """The week of a text, None where something in it can't be read; ``instead``: texts of files by name."""
    read, _ = read_plan(str(plan.file), text, lambda name: instead.get(name) or read_beside(plan.file, name))
    faulty = any(finding.level is Level.error for finding in read.findings)
    return None if faulty or not read.weeks else read.weeks[0]
