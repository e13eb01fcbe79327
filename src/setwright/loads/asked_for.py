"""The kilograms that a load asks of an athlete, or why there are none."""

import datetime as dt
from typing import Final, Literal, NamedTuple

from setwright.library.table import Library, Movement
from setwright.loads.bodyweight import added, body_kg, by_bodyweight, lifted_body
from setwright.loads.handbook import percent_for
from setwright.loads.maxes import WHOLE, MaxFound, NoMax, max_of
from setwright.loads.means_of import BOTH, means_of
from setwright.loads.ranges import Range, one
from setwright.model.people import Athlete
from setwright.model.plan import Item, Week
from setwright.model.room import kilograms
from setwright.reading.dose import MAX_KINDS, Load, MaxKind
from setwright.reading.measures import Unit

Way = Literal["in all", "in each hand", "added to the body"]


class Kilograms(NamedTuple):
    """What a load asks for, before anything is rounded.

    ``kg``: in the way that ``way`` says; added to the body, it is below zero when help is taken off.
    ``pick``: the one number of it, by the squad's ``pick in a range``; low means least lifted. ``lifted``:
    with the share of the body that is lifted, None when it is not known. ``of``: the max it is a share of.
    ``unit``: in which the load, or the max behind it, was typed.
    """

    kg: Range
    pick: float
    way: Way
    lifted: Range | None
    unit: Unit
    of: MaxFound | None = None


class NoNumber(NamedTuple):
    """Why a load comes to no number of kilograms. ``max``: the max that it needs and that is not there."""

    why: str
    max: NoMax | None = None
    movement: str | None = None


Asked = Kilograms | NoNumber

_WHY: Final = {
    "band": "a band: its pull depends on the stretch",
    "setting": "a setting of a machine",
    "speed": "a speed: the load is found on the day",
    "word": "a load in words, no number",
}


class _Line(NamedTuple):
    """For whom a load is worked out, and where it stands."""

    movement: Movement
    athlete: Athlete
    week: Week
    table: Library
    day: dt.date | None


class _Part(NamedTuple):
    """Kilograms without their way and pick; ``lifted``: where it is known without the body mass."""

    kg: Range
    unit: Unit
    of: MaxFound | None = None
    lifted: Range | None = None


def load_asked_for(
    load: Load | None,
    item: Item,
    athlete: Athlete | None,
    week: Week,
    table: Library,
) -> Asked:
    """The kilograms that a load of a line asks of an athlete, or of everybody; or why there is no number.

    A mass; a percent of the max of its kind, of another movement or of body mass; bodyweight, or what was
    lifted last time (``Week.lifted``), with more or less; a repetition maximum by the handbook table. Nothing
    else is made up.
    Percents are of maxes on the day the plan starts. ``item``: resolved, with its ``key``, and with the
    athlete's own load in it (``model.theirs``). Raises: KeyError for a movement the library lacks.
    """
    if load is None:
        return NoNumber("no load is written")
    movement = table.movement(item.key or "")
    found: _Part | NoNumber
    if load.kind == "mass":
        found = _Part(added(load, movement), _unit(load))
    elif load.kind == "bar":
        found = _bar(load, movement, week)
    elif athlete is None:
        return NoNumber("it is each athlete's own")
    else:
        found = _part(load, _Line(movement, athlete, week, table, week.starts), item)
    if isinstance(found, NoNumber):
        return found
    body = lifted_body(athlete, movement)
    lifted = found.lifted or (body and body.plus(found.kg))
    return Kilograms(found.kg, _pick(found.kg, week), _way(load, movement), lifted, found.unit, found.of)


def _part(load: Load, line: _Line, item: Item) -> _Part | NoNumber:
    match load.kind:
        case "percent":
            return _percent(load, line)
        case "rm":
            return _repetition_maximum(load, line)
        case "bodyweight":
            return _bodyweight(load, line)
        case "last":
            return _last(load, line, item)
        case _:
            return NoNumber(_WHY[load.kind])


def _percent(load: Load, line: _Line) -> _Part | NoNumber:
    share = Range((load.low or 0.0) / WHOLE, (load.high or 0.0) / WHOLE)
    if load.of == "top set":
        return NoNumber("the top set is found on the day")
    if load.of == "bodyweight":
        mass = body_kg(line.athlete)
        return (
            NoNumber("the body mass is not written") if mass is None else _Part(share.times(one(mass)), "kg")
        )
    kind: MaxKind = next((kind for kind in MAX_KINDS if kind == load.of), line.week.max_kind)
    if kind == "today's max":
        return NoNumber("today's max is found on the day")
    if load.of_movement is None:
        return _share_of_max(share, line.movement, kind, line)
    key = line.table.find(load.of_movement).key
    if key is None:
        return NoNumber(f"{load.of_movement} is no movement of the library")
    other = line.table.movement(key)
    if each_hand(other) != each_hand(line.movement):
        return NoNumber(f"a share of {other['name']}: in each hand, or in all?")
    return _share_of_max(share, other, kind, line)


def _repetition_maximum(load: Load, line: _Line) -> _Part | NoNumber:
    most, least = load.low or 0.0, load.high or 0.0
    light, heavy = percent_for(least), percent_for(most)
    if light is None or heavy is None:
        return NoNumber(f"the handbook table ends before {least:g} repetitions")
    return _share_of_max(Range(light / WHOLE, heavy / WHOLE), line.movement, "tested max", line)


def _share_of_max(share: Range, of: Movement, kind: MaxKind, line: _Line) -> _Part | NoNumber:
    best = max_of(line.athlete, of, kind, line.day)
    if isinstance(best, NoMax):
        return NoNumber(f"{of['name']}: {best.why}", best, of["name"])
    body = lifted_body(line.athlete, line.movement)
    if body is None:
        return NoNumber("the body mass, or the published share of it in this movement, is not known")
    lifted = best.kg.times(share)
    ends = (lifted.low - body.low, lifted.high - body.high)
    return _Part(Range(min(ends), max(ends)), best.unit, best, lifted)


def _bodyweight(load: Load, line: _Line) -> _Part | NoNumber:
    if by_bodyweight(line.movement):
        return _Part(added(load, line.movement), _unit(load))
    mass = body_kg(line.athlete)
    if mass is None:
        return NoNumber("the body mass is not written")
    return _Part(one(mass).plus(added(load, line.movement)), _unit(load))


def _bar(load: Load, movement: Movement, week: Week) -> _Part | NoNumber:
    """The bar alone or with plates on each end; of bars of several weights the one listed first."""
    by = means_of(movement, week.gym) if week.gym else None
    if by is None or by.kind != "bar" or not by.stock:
        return NoNumber("the weight of the bar is not known")
    bar = by.stock[0]
    sides = [kilograms(end or 0.0, load.unit) * 2 for end in (load.plus, load.plus_high)]
    unit = _unit(load) if load.plus else bar.unit
    return _Part(one(kilograms(bar.low, bar.unit)).plus(Range(*sides)), unit)


def _last(load: Load, line: _Line, item: Item) -> _Part | NoNumber:
    whose = line.athlete.name, item.place
    every = (lifted.kg for lifted in line.week.lifted if (lifted.who, lifted.place) == whose)
    last_kg = next(every, None)
    if last_kg is None:
        return NoNumber(f"what was lifted {load.name or 'last time'} is not known")
    ends = (load.plus or 0.0, load.plus_high or 0.0)
    more = [last_kg * end / WHOLE if load.unit == "%" else kilograms(end, load.unit) for end in ends]
    return _Part(one(last_kg).plus(Range(min(more), max(more))), _unit(load))


def _way(load: Load, movement: Movement) -> Way:
    if by_bodyweight(movement):
        return "added to the body"
    return "in each hand" if load.hands == BOTH or each_hand(movement) else "in all"


def each_hand(movement: Movement) -> bool:
    """Whether the number of a load is that of one hand."""
    return str(movement["load_write"]).startswith("each")


def _pick(kg: Range, week: Week) -> float:
    match week.squad.pick_in_a_range if week.squad else "low":
        case "high":
            return kg.high
        case "middle":
            return (kg.low + kg.high) / 2
        case _:
            return kg.low


def _unit(load: Load) -> Unit:
    return "lb" if load.unit == "lb" else "kg"
