"""What holds on the day: called away and back, odd numbers, who comes late."""

import math
from collections.abc import Iterator

from setwright.coverage.cut import KEEP, leaves
from setwright.floor.groups import AT_A_STATION, Group
from setwright.floor.room import Floor, letter
from setwright.floor.timing import rest_given
from setwright.floor.today import Today
from setwright.reading.words import MINUTE_S
from setwright.report.phrases import joined
from setwright.report.wrapping import wrapped


def on_the_day(today: Today) -> Iterator[str]:
    """Lines of at most 80 columns."""
    floor = today.floor
    told = [f"Called away: {_rule(today)}.{_to_spare(floor)}"]
    if len(floor.groups[-1]) < len(floor.groups[0]):
        told.append(_odd(floor.groups))
    told.append(_late(floor))
    yield from (wrapped(one, "  ", "    ") for one in told)


def _rule(today: Today) -> str:
    unwritten = "no rule is written; `if interrupted:` in the plan says it"
    return today.floor.session.if_interrupted or today.week.if_interrupted or unwritten


def _to_spare(floor: Floor) -> str:
    """How long everybody may be away before something has to be left out, and what that is."""
    if floor.available_s is None:
        return ""
    spare = math.floor((floor.available_s - floor.finish_s) / MINUTE_S)
    going = [block for block in floor.blocks if block.entry.priority > KEEP]
    first = min(going, key=lambda block: leaves(block.entry.priority, block.number), default=None)
    goes = f"leave out {first.number} {first.name} first" if first else "do fewer sets of what is left"
    if spare < 1:
        return f" No minute is to spare for it: {goes}."
    return f" After more than {spare} min away {goes}."


def _odd(groups: tuple[Group, ...]) -> str:
    least, most = len(groups[-1]), len(groups[0])
    small = [letter(at) for at, group in enumerate(groups) if len(group) == least]
    which = f"group {small[0]} has" if len(small) == 1 else f"groups {joined(small, 'and')} have"
    return (
        f"Odd numbers: {which} {least}, the others {most}; a turn comes round sooner there, the rest stays."
    )


def _late(floor: Floor) -> str:
    """Whom they join: the smallest group, and what that costs where it is full."""
    last = len(floor.groups) - 1
    joins = f"Who comes late joins group {letter(last)} at its next block, after a warm-up alone"
    full = (floor.gym.people_per_rack if floor.gym else None) or AT_A_STATION
    if len(floor.groups[last]) < full:
        return f"{joins}."
    turns = [stay for stay in floor.of_group(last) if stay.rest_s is not None]
    longer = [rest_given(stay.block, stay.sharing + 1) - (stay.rest_s or 0.0) for stay in turns]
    most = round(max(longer, default=0.0))
    return f"{joins}; with one more {f'each rests up to {most} s longer' if most else 'the rest stays'}."
