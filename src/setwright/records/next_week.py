"""Next week's plan: the rule of every line applied to what each athlete did, and written into the text."""

from collections.abc import Iterator
from functools import partial
from typing import Final, NamedTuple

from setwright.files import read_beside
from setwright.findings import Level
from setwright.model.next import Add
from setwright.model.people import Athlete
from setwright.model.plan import Item, Session, Week
from setwright.own.plan import read_plan
from setwright.places import Place
from setwright.reading.done_typed import load_typed
from setwright.reading.dose import Load
from setwright.reading.words import plural
from setwright.records.fitting import Fitted, Line
from setwright.records.form import training
from setwright.records.keeping import Plan
from setwright.records.next_head import week_number, with_next_head
from setwright.records.next_load import Lifter, NextLoad, next_load
from setwright.records.outcome import Outcome, outcome
from setwright.records.planned import Planned, loads_of, planned
from setwright.records.progress import Decision, decide
from setwright.records.rewriting import Wanted, rewritten
from setwright.records.week_done import WeekDone

TYPED: Final = ("mass", "bodyweight")
"""Kinds of load that are a number to put on; a percent, a band or a word is worked out otherwise."""


class Change(NamedTuple):
    """What becomes of one line for one athlete (``who`` None: for everybody), and why.

    ``written``: the loads that the plan has for them.
    """

    session: Session
    who: str | None
    at: Planned
    done: Outcome
    decision: Decision
    load: NextLoad
    written: tuple[Load, ...]

    @property
    def item(self) -> Item:
        """The line as this athlete does it."""
        return self.at.line

    @property
    def new(self) -> Load | None:
        """The load to write; None where what is written stays."""
        load, written = self.load.load, self.written
        asked = written and (len(written) > 1 or written[0].kind not in TYPED)
        return None if load is None or written == (load,) or (asked and self.decision.repeats) else load

    @property
    def more(self) -> Add | None:
        """Repetitions or sets that are added."""
        add = self.decision.add
        return add if add is not None and add.unit in ("reps", "sets") else None


class NextWeek(NamedTuple):
    """The text of next week's plan, every line with its reason, and what is left to the coach.

    ``missed``: sessions that no record is of.
    """

    text: str
    changes: tuple[Change, ...]
    by_hand: tuple[str, ...]
    missed: tuple[str, ...]


def changes_of(done: WeekDone, plan: Plan) -> tuple[Change, ...]:
    """What the rules make of every line of the week, in the order of the plan; of two records the later."""
    last: dict[int, Fitted] = {id(fit.session): fit for fit in done.records}
    week = done.week
    found: list[Change] = []
    for session in week.sessions:
        fit = last.get(id(session))
        for athlete in training(week):
            lines = _lines(week, session, athlete, fit)
            found += (_change(line, session, athlete, done, plan) for line in lines)
    return tuple(found)


def _lines(week: Week, session: Session, athlete: Athlete | None, fit: Fitted | None) -> tuple[Line, ...]:
    """The planned lines of an athlete with what was done; without a squad, of the record's only list."""
    every = fit.athletes if fit else ()
    theirs = [one for one in every if one.athlete is athlete and (athlete or len(every) == 1)]
    if theirs:
        return tuple(line for line in theirs[0].lines if line.planned is not None)
    return tuple(Line(at, None) for at in planned(week, session, athlete))


def _change(line: Line, session: Session, athlete: Athlete | None, done: WeekDone, plan: Plan) -> Change:
    at = line.planned
    assert at is not None
    week = done.week
    came = outcome(line, week, athlete)
    rule = at.line.next or (at.group.next if at.group else None) or week.next
    trained = week.number if week.of > 1 else week_number(week.name)
    decision = decide(rule.rule if rule else None, came, at, trained)
    if done.restart and not decision.repeats:
        decision = Decision(done.restart)
    allow = (*week.allow, *session.allow, *at.line.allow, *(at.group.allow if at.group else ()))
    who = Lifter(week, at.line, athlete, plan.table, frozenset(one.rule for one in allow))
    load = next_load(came.load, decision, who)
    written = loads_of(at, week, athlete)
    return Change(session, athlete.name if athlete else None, at, came, decision, load, written)


def next_week(done: WeekDone, plan: Plan, text: str) -> NextWeek:
    """Next week's plan from the text of this one, which is of one week."""
    changes = changes_of(done, plan)
    by_place: dict[Place, list[Change]] = {}
    for change in changes:
        by_place.setdefault(change.item.place, []).append(change)
    by_hand = [told for change in changes for told in _by_hand(change)]
    wanted: list[Wanted] = []
    for same in by_place.values():
        more, why = _more(same)
        by_hand += why
        if more is not None or any(one.new is not None for one in same):
            wanted.append(Wanted(same[0].item, _loads(same), more))
    new = rewritten(text, done.week, wanted, partial(_read, plan))
    by_hand += (f"{_where(one.item)}: {_asked(one)}" for one in new.left)
    head = with_next_head(str(plan.file), new.text, plan.file.name)
    return NextWeek(head, changes, tuple(dict.fromkeys(by_hand)), done.missed)


def _where(item: Item) -> str:
    return f"{item.name}, line {item.place.line}"


def _by_hand(change: Change) -> Iterator[str]:
    """What the rule asks for and no line of the plan can say."""
    who = f"{change.who}, " if change.who else ""
    if change.decision.by_hand:
        yield f"{who}{_where(change.item)}: {change.decision.reason}"
    elif change.load.load is None and not change.decision.repeats and change.more is None:
        yield f"{who}{_where(change.item)}: {change.decision.reason}, but {change.load.note}"


def _more(same: list[Change]) -> tuple[Add | None, list[str]]:
    """Repetitions or sets for everybody in a line; where some stay behind, what is left to the coach."""
    adds = {one.more for one in same if one.more is not None}
    behind = [one.who or "everybody" for one in same if one.more is None]
    if len(adds) == 1 and not behind:
        return adds.pop(), []
    if not adds:
        return None, []
    told = f"{', '.join(behind)} would stay behind" if behind else "one step each"
    change = "change the line, and write theirs under `instead:`"
    return None, [f"{_where(same[0].item)}: not for all alike, {told}; {change}"]


def _loads(same: list[Change]) -> dict[str | None, Load]:
    """The loads to write: only those that change where each has their own, else everybody's."""
    if same[0].item.loads:
        return {one.who: one.new for one in same if one.new is not None}
    known = {one.who: one.new or (one.written[0] if len(one.written) == 1 else None) for one in same}
    return {who: load for who, load in known.items() if load is not None}


def _asked(one: Wanted) -> str:
    """A change that could not be written into the text, in words."""
    if one.more is not None:
        return f"add {plural(one.more.amount, one.more.unit.removesuffix('s'))}"
    return ", ".join(f"{who or 'load'}: {load_typed(load)}" for who, load in one.loads.items())


def _read(plan: Plan, text: str) -> Week | None:
    """The week of a text, None where something in it can't be read."""
    read, _ = read_plan(str(plan.file), text, partial(read_beside, plan.file))
    faulty = any(finding.level is Level.error for finding in read.findings)
    return None if faulty or not read.weeks else read.weeks[0]
