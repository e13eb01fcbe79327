"""A clinician's limit on the load held against the kilograms that a line asks of the athlete."""

from collections.abc import Iterator
from fractions import Fraction
from typing import Final, NamedTuple

from setwright.coverage import Movement
from setwright.library.table import Library
from setwright.loads.asked_for import Kilograms, load_asked_for
from setwright.loads.bodyweight import by_bodyweight, share
from setwright.loads.lines import Line, work_loads
from setwright.loads.maxes import WHOLE, MaxFound, max_of
from setwright.loads.means_of import BOTH
from setwright.loads.put import mass_words
from setwright.loads.typed import exact, loads_asked
from setwright.model.people import Limit
from setwright.model.plan import Week
from setwright.model.room import Gym, exactly, kilograms
from setwright.reading.dose import Load
from setwright.reading.measures import Unit
from setwright.rules.limits import Answer, Held, unit_of

WORST: Final[tuple[Answer, ...]] = ("broken", "at the limit", "not known", "inside")
"""Answers, the one that counts first."""


class Ceiling(NamedTuple):
    """The heaviest load that is allowed, and whether it is for one side alone."""

    kg: Fraction
    one_side: bool


def hold_load(limit: Limit, line: Line, week: Week, table: Library) -> Held:
    """The limit held against every load of a line as its one athlete does it, warm-up sets too.

    The worst answer counts. In each hand: broken by one, a question when only both together are more, unless
    the limit is for one side. With the body: broken by what is added, a question when only the body makes it
    more. A load that is left open, or comes to no kilograms, is not known.
    """
    most = _most_kg(limit, line, week)
    loads = tuple(_loads(line))
    if most is None:
        return Held("not known")
    if not loads:
        return Held("not known" if _open(line.movement) else "inside")
    ceiling = Ceiling(exact(most), limit.side is not None)
    held = [_held(load, ceiling, line, week, table) for load in loads]
    return min(held, key=lambda one: WORST.index(one.answer))


def _loads(line: Line) -> Iterator[Load]:
    yield from work_loads(line)
    warm_up = line.item.warm_up_sets
    yield from (step.load for step in (warm_up.steps if warm_up else ()) if step.load)
    if by_bodyweight(line.movement) and share(line.movement):
        yield Load(kind="bodyweight")


def _open(movement: Movement) -> bool:
    """Whether an athlete picks a load for a movement where none is written."""
    return movement["load_kind"] not in ("bodyweight", "time or distance")


def _most_kg(limit: Limit, line: Line, week: Week) -> float | None:
    """The limit in kg; a percent is of the tested max. None without that max, or without a unit."""
    at_most = limit.load_at_most or 0.0
    unit = unit_of(limit, week)
    if unit == "%":
        best = max_of(line.athletes[0], line.movement, "tested max", week.starts)
        return best.kg.low * at_most / WHOLE if isinstance(best, MaxFound) else None
    return None if unit is None else kilograms(at_most, unit)


def _held(load: Load, most: Ceiling, line: Line, week: Week, table: Library) -> Held:
    asked = load_asked_for(load, line.item, line.athletes[0], week, table)
    if not isinstance(asked, Kilograms):
        return Held("not known", asked=asked.why)
    written = max(exact(asked.kg.high), _put_on(load, line, week, table))
    heaviest, where = _at_the_hand(written, asked.unit, line.movement, week.gym)
    if heaviest > most.kg:
        return Held("broken", asked=mass_words(heaviest, asked.unit) + where)
    if asked.way == "added to the body":
        return _with_the_body(asked, most, line.movement)
    both = asked.way == "in each hand" or line.movement["load_write"] == "setting of each stack"
    if both and not most.one_side and BOTH * heaviest > most.kg:
        return Held("at the limit", asked=f"2 x {mass_words(heaviest, asked.unit)}{where}")
    return Held("inside")


def _at_the_hand(written: Fraction, unit: Unit, movement: Movement, gym: Gym | None) -> tuple[Fraction, str]:
    """What a load pulls at the hand, and in words where it was compared, when it is told at a cable's pin.

    Of several cables the one that pulls hardest counts. Where a pulley is not written, the pin is compared.
    """
    if "cable" not in movement["implement"]:
        return written, ""
    ratios = [cable.pulley for cable in gym.cables] if gym else []
    if None in ratios or not ratios:
        return written, " at the pin; the gym file does not say the pulley"
    ratio = exactly(min(ratio for ratio in ratios if ratio is not None))
    return written / ratio, "" if ratio == 1 else f" at the handle, pin {mass_words(written, unit)}"


def _put_on(load: Load, line: Line, week: Week, table: Library) -> Fraction:
    """What is put on for it here, which the rounding may make more; nothing where nobody knows."""
    (wanted,) = loads_asked(load, line, week, table)
    put = wanted.carried.put if wanted.carried else None
    return put.kg if put else exact(0.0)


def _with_the_body(asked: Kilograms, most: Ceiling, movement: Movement) -> Held:
    if share(movement) is None:
        return Held("inside")
    if asked.lifted is None:
        return Held("not known", asked="the body mass is not written")
    lifted = exact(asked.lifted.high)
    if lifted <= most.kg:
        return Held("inside")
    return Held("not known", asked=f"{mass_words(lifted, asked.unit, 1)} with the body")
