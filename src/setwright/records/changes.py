"""What becomes of every line of a week for every athlete: the rule, or the block's own step, and the load."""

from collections.abc import Iterable
from itertools import islice
from typing import NamedTuple

from setwright.model.next import Add, EveryWeeks, NextRule
from setwright.model.plan import Item, Session
from setwright.reading.words import number
from setwright.records.before import WeekOfPlan, back_from, first_load
from setwright.records.coming import Coming
from setwright.records.gains import Gain, gained
from setwright.records.keeping import Plan
from setwright.records.line_keys import LineKey, lines_of
from setwright.records.lines_done import LineOfWeek, lines_done
from setwright.records.next_load import WHOLE, Lifter, NextLoad, in_kg, next_load
from setwright.records.outcome import Outcome, outcome
from setwright.records.own_step import figure_of, own_load, own_sets
from setwright.records.planned import Planned, loads_of
from setwright.records.progress import Decision, decide
from setwright.records.week_done import WeekDone, week_done


class Change(NamedTuple):
    """What becomes of one line for one athlete (``who`` None: for everybody), and why.

    ``written``: whether the plan has a load for them. ``gain``: the sets and repetitions that they have over
    those of the week that comes.
    """

    session: Session
    who: str | None
    key: LineKey
    at: Planned
    done: Outcome
    decision: Decision
    load: NextLoad
    written: bool
    gain: Gain

    def told_of(self, when: str) -> "Change":
        """The same with ``when`` it was done in front of its reason."""
        return self._replace(decision=self.decision._replace(reason=f"{when}: {self.decision.reason}"))

    @property
    def item(self) -> Item:
        """The line as this athlete does it."""
        return self.at.line

    @property
    def more(self) -> Add | None:
        """Repetitions or sets that are added."""
        add = self.decision.add
        return add if add is not None and add.unit in ("reps", "sets") else None


class Going(NamedTuple):
    """From where a week goes on to where. ``restart``: why nothing advances; empty when it may."""

    done: WeekDone
    plan: Plan
    coming: Coming
    restart: str = ""

    @property
    def waiting(self) -> tuple[Session, ...]:
        """The sessions that were missed and come first now."""
        takes_up = self.done.week.missed_day == "resume" and self.done.records
        return self.done.missed_sessions if takes_up else ()

    @property
    def here(self) -> WeekOfPlan:
        """The week that was trained."""
        return WeekOfPlan(self.plan, self.done.week.number)


def changes_of(going: Going) -> tuple[Change, ...]:
    """What the rules make of every line of the week that was trained, in the order of the plan."""
    trained = {id(session) for session in going.done.week.sessions}
    return tuple(_change(one, going) for one in lines_done(going.done) if id(one.told.session) in trained)


def changes_from_before(going: Going, known: Iterable[Change]) -> tuple[Change, ...]:
    """What becomes of lines of the week that comes that the week which was trained has not.

    The last full week that has them decides.
    """
    block = going.coming.block
    missing = {told.key for told in lines_of(going.coming.week)} - {change.key for change in known}
    found: list[Change] = []
    for here in islice(back_from(going.here), 1, None) if block and missing else ():
        week = here.week
        if not missing or week.lighter:
            continue
        number = week.block.week if week.block else week.number
        coming = going.coming._replace(block=block and block._replace(was=number))
        then = going._replace(done=week_done(here.plan, week), plan=here.plan, coming=coming)
        some = [change for change in changes_of(then) if change.key in missing]
        missing -= {change.key for change in some}
        found += (change.told_of(f"last in week {number}") for change in some)
    return tuple(found)


def _change(one: LineOfWeek, going: Going) -> Change:
    told, week = one.told, going.done.week
    at = told.planned
    rule = _rule(at, going)
    came = _came(one, rule, going)
    typed, gain = _decided(rule, came, told.key, at, going)
    allow = (*week.allow, *told.session.allow, *at.line.allow, *(at.group.allow if at.group else ()))
    who = Lifter(week, at.line, told.athlete, going.plan.table, frozenset(one.rule for one in allow))
    decision = _of_first_week(typed, told.key, who, going)
    load = next_load(came.load, decision, who)
    written = bool(loads_of(at, week, told.athlete))
    more = gain.plus(decision.add)
    return Change(told.session, told.key.who, told.key, at, came, decision, load, written, more)


def _rule(at: Planned, going: Going) -> NextRule | None:
    """The nearest rule; of what is done instead of a line that of the line, unless it has one of its own."""
    typed = at.line.next or at.base.next or (at.group.next if at.group else None) or going.done.week.next
    return typed.rule if typed else None


def _came(one: LineOfWeek, rule: NextRule | None, going: Going) -> Outcome:
    """What was done of a line. After a lighter week all goes on from the load that it was lighter than."""
    told, week = one.told, going.done.week
    came = outcome(one.line, week, told.athlete)
    full = going.coming.trained.get(told.key)
    if week.lighter is None or full is None:
        return came
    loads = loads_of(full.planned, week, told.athlete)
    load = loads[0] if len(loads) == 1 else None
    if isinstance(rule, EveryWeeks) and rule.weeks > 1:
        return came._replace(load=load)
    return Outcome(load=load, short="a lighter week")


def _decided(
    rule: NextRule | None, came: Outcome, key: LineKey, at: Planned, going: Going
) -> tuple[Decision, Gain]:
    """What becomes of a line, and what its athlete has over the block already."""
    by_rule = decide(rule, came, at, going.coming.number)
    decision = Decision(came.short or going.restart) if going.restart else by_rule
    if going.coming.block is None:
        return decision, Gain()
    week, then = going.done.week, going.coming.block.then
    was, comes = (going.coming.block.weeks[at - 1].get(key) for at in (going.coming.block.was, then))
    if comes is None:
        return Decision(f"not in week {then}", stands=True), Gain()
    if was is None:
        return decision, Gain()
    before, after = (loads_of(one.planned, week, one.athlete) for one in (was, comes))
    sets = own_sets(was.planned, comes.planned, then)
    adds_sets = decision.add is not None and decision.add.unit in ("reps", "sets")
    if sets and (adds_sets or (decision.repeats and came.load is None)):
        decision = sets
    full = going.coming.trained.get(key)
    gain = gained(full.planned, was.planned) if full and not sets else None
    own = own_load(before, after, came, then)
    if own and decision.to_max:
        own = own._replace(reason=f"{own.reason}; {decision.reason}", to_max=decision.to_max)
    return own or decision, gain or Gain()


def _of_first_week(decision: Decision, key: LineKey, who: Lifter, going: Going) -> Decision:
    """The decision with a share of the first week's load worked out."""
    add = decision.add
    if add is None or add.of != "first week":
        return decision
    first = in_kg(first_load(key, going.here), who)
    figure = figure_of(first) if first and first.unit in ("kg", "lb") else None
    if first is None or figure is None:
        return Decision(f"{decision.reason}, and the first week's load is not known", by_hand=True)
    unit = "lb" if first.unit == "lb" else "kg"
    step = round(figure * add.amount / WHOLE, 3)
    reason = f"{decision.reason} {number(abs(add.amount))}% of the first week's {number(figure)} {unit}"
    return decision._replace(reason=reason, add=Add(amount=step, unit=unit))


def by_line(changes: tuple[Change, ...]) -> dict[LineKey, Change]:
    """The change of each line; of a session taken in turn twice the last time that it was done."""
    found: dict[LineKey, Change] = {}
    for one in changes:
        if one.key not in found or not one.done.short:
            found[one.key] = one
    return found
