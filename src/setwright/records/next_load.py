"""The load of next week: what was lifted and a step, within what the gym has, the tested max and limits."""

from fractions import Fraction
from typing import Final, NamedTuple

from setwright.library.table import Library
from setwright.loads.asked_for import Kilograms, load_asked_for
from setwright.loads.bodyweight import lifted
from setwright.loads.loadable import loadable
from setwright.loads.maxes import MaxFound, max_of
from setwright.loads.means_of import means_of
from setwright.loads.put import figure
from setwright.model.people import Athlete
from setwright.model.plan import Item, Week
from setwright.model.room import exactly, kilograms
from setwright.reading.dose import Load
from setwright.records.own_step import figure_of
from setwright.records.progress import Decision

ABOVE_MAX: Final = "above-tested-max"
"""The rule whose allow lifts the cap."""
WHOLE: Final = 100
"""Percent in a whole."""
LOADED: Final = ("bar", "sleeve", "weight", "stack")
"""What a gym file says the steps of; of a band, a machine or a belt it does not."""

WORKED_OUT: Final = ("percent", "rm", "last")
"""Kinds of load that come to kilograms through a max of the athlete, or what they lifted last time."""


class NextLoad(NamedTuple):
    """A load for next week and what held it back or rounded it; ``load`` None: it can't be worked out."""

    load: Load | None
    note: str = ""


class Lifter(NamedTuple):
    """Who lifts what where, and the rules that are allowed there: all that a load is held to."""

    week: Week
    item: Item
    athlete: Athlete | None
    table: Library
    allowed: frozenset[str] = frozenset()


def next_load(base: Load | None, decision: Decision, who: Lifter) -> NextLoad:
    """The load of next week from what was lifted, and from what the rule says of it."""
    if decision.repeats or (decision.add and decision.add.unit in ("reps", "sets")):
        return NextLoad(base)
    if base is None:
        return NextLoad(None, "no load is written")
    base = in_kg(base, who)
    if base is None or base.unit not in ("kg", "lb"):
        return NextLoad(None, "the step is in kg or lb and the load is not")
    movement = who.table.movement(who.item.key or "")
    if movement["load_kind"] == "assisted" and base.kind == "mass":
        return NextLoad(None, "the load is help here: less of it is the step")
    was = exactly(figure_of(base) or 0.0)
    asked = was + _step(was, base, decision)
    value, note = _loadable(was, asked, base, who)
    return _capped(base, was, value, note, who)


def in_kg(load: Load | None, who: Lifter) -> Load | None:
    """The load as a mass, or bodyweight with more or less, a share of a max worked out; None of others."""
    if load is None or load.kind == "mass":
        return load
    if load.kind == "bodyweight":
        return load.model_copy(update={"unit": load.unit or who.week.unit or "kg"})
    asked = load_asked_for(load, who.item, who.athlete, who.week, who.table)
    if load.kind not in WORKED_OUT or not isinstance(asked, Kilograms):
        return None
    kg = round(asked.pick, 3)
    if asked.way == "added to the body":
        return Load(kind="bodyweight", plus=kg, plus_high=kg, unit="kg")
    return Load(kind="mass", low=kg, high=kg, unit="kg", hands=load.hands)


def _with(load: Load, value: Fraction) -> Load:
    number = round(float(value), 3)
    ends = ("plus", "plus_high") if load.kind == "bodyweight" else ("low", "high")
    return load.model_copy(update=dict.fromkeys(ends, number))


def _step(was: Fraction, base: Load, decision: Decision) -> Fraction:
    if decision.percent is not None:
        return was * exactly(decision.percent) / WHOLE
    add = decision.add
    assert add is not None
    if add.unit == "%":
        return was * exactly(add.amount) / WHOLE
    unit = "lb" if add.unit == "lb" else "kg"
    own = "lb" if base.unit == "lb" else "kg"
    return kilograms(exactly(add.amount), unit) / kilograms(Fraction(1), own)


def _loadable(was: Fraction, asked: Fraction, base: Load, who: Lifter) -> tuple[Fraction, str]:
    """What the gym can put on for it: by the squad's rounding, but always a step where there is one."""
    gym, unit = who.week.gym, "lb" if base.unit == "lb" else "kg"
    movement = who.table.movement(who.item.key or "")
    if gym is None or base.kind != "mass":
        return asked, ""
    by = means_of(movement, gym)
    if by.kind not in LOADED:
        return asked, ""
    a_unit = kilograms(Fraction(1), unit)
    found = loadable(by, gym, asked * a_unit, who.week.squad.rounding if who.week.squad else "nearest")
    put = found.put or found.below or found.above
    if put is None:
        return asked, "this gym has nothing to load it with"
    if found.put is not None and found.above is not None and asked > was and put.kg <= was * a_unit:
        put = found.above
    value = put.kg / a_unit
    if value == asked:
        return asked, ""
    return value, f"for {figure(asked)} {unit} this gym has {figure(value)} {unit}"


def _capped(base: Load, was: Fraction, value: Fraction, note: str, who: Lifter) -> NextLoad:
    """Never up beyond the tested max, unless that is allowed, nor beyond what a clinician set."""
    new = _with(base, value)
    if value <= was or who.athlete is None:
        return NextLoad(new, note)
    if not _within_limits(new, who):
        return NextLoad(_with(base, was), "held where it is")
    movement = who.table.movement(who.item.key or "")
    best = max_of(who.athlete, movement, "tested max", who.week.starts)
    kg = lifted(new, who.athlete, movement)
    above = (
        isinstance(best, MaxFound) and best.kind == "tested max" and kg is not None and kg.low > best.kg.high
    )
    if above and ABOVE_MAX not in who.allowed:
        assert isinstance(best, MaxFound)
        return NextLoad(
            _with(base, was), f"{figure(value)} {base.unit} would be above the tested max of {best.said}"
        )
    return NextLoad(new, note)


def _within_limits(load: Load, who: Lifter) -> bool:
    """Whether a load stays within what was set for the athlete; added to the body it counts alone."""
    assert who.athlete is not None
    kg = kilograms(exactly(figure_of(load) or 0.0), "lb" if load.unit == "lb" else "kg")
    limits = (limit for limit in who.athlete.limits if limit.load_at_most is not None)
    return all(
        kg <= kilograms(exactly(limit.load_at_most or 0.0), limit.unit or who.week.unit or "kg")
        for limit in limits
    )
