"""Steps of a training max: written into the squad of the plan that comes, or into a new squad file beside."""

import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Final, NamedTuple

from setwright.library.percents import maxes_of
from setwright.library.table import Library
from setwright.loads.bodyweight import by_bodyweight
from setwright.loads.maxes import MaxFound, max_of
from setwright.model.people import Athlete, Max
from setwright.model.plan import Week
from setwright.model.room import kilograms
from setwright.places import Place
from setwright.reading.words import number
from setwright.records.changes import Change
from setwright.records.next_load import ABOVE_MAX

_TYPED: Final = re.compile(
    r"(?:training\s+max|\btm)\s+(?:of\s+)?\d+(?:[.,]\d+)?\s*(?:%|kg|lb)", re.IGNORECASE
)
_COPY: Final = re.compile(r"-\d+$")


class NewMax(NamedTuple):
    """A training max after its step. ``typed``: as it is to be written; empty where it stays.

    ``place``: of its entry in the squad; None where there is none to step from.
    """

    who: str
    movement: str
    said: str
    place: Place | None = None
    typed: str = ""


class Put(NamedTuple):
    """The text of a squad with new training maxes in it, and those that could not be written."""

    text: str
    left: tuple[NewMax, ...]


def new_maxes(changes: tuple[Change, ...], week: Week, table: Library) -> Iterator[NewMax]:
    """The training max of everybody whose rule adds to it, once a movement, by the squad of ``week``.

    Who missed or cut a line of the movement takes no step. It ends at the tested max, unless that is allowed.
    """
    lines: dict[tuple[str | None, str | None], list[Change]] = {}
    for change in changes:
        lines.setdefault((change.who, change.item.key), []).append(change)
    squad = {one.name: one for one in week.squad.athletes} if week.squad else {}
    for (who, _), some in lines.items():
        step = next((one for one in some if one.decision.to_max is not None), None)
        if step is not None:
            short = next((one.done.short for one in some if one.done.short), "")
            athlete = squad.get(who or "")
            yield (
                NewMax(who or "", step.item.name, f"the same again ({short})", step.item.place)
                if short
                else _stepped(step, athlete, week, table)
            )


def stepped_before(trained: Week, comes: Week) -> Iterator[NewMax]:
    """The training maxes that the squad of the week that was trained has otherwise than that of the next."""
    typed = {(who, best.key): said for who, best, said in _written(trained)}
    for who, best, said in _written(comes):
        before = typed.get((who, best.key), said)
        if before != said:
            yield NewMax(who, best.movement, f"{before} as in the week before", best.place, before)


def _written(week: Week) -> Iterator[tuple[str, Max, str]]:
    for athlete in week.squad.athletes if week.squad else ():
        for best in athlete.maxes:
            if match := _TYPED.search(best.text):
                yield athlete.name, best, match[0]


def _stepped(change: Change, athlete: Athlete | None, week: Week, table: Library) -> NewMax:
    who, name, reason = change.who or "all", change.item.name, change.decision.reason
    movement, add = table.movement(change.item.key or ""), change.decision.to_max
    entry = (
        next((one for one in maxes_of(athlete, movement["key"]) if one.training), None) if athlete else None
    )
    best = max_of(athlete, movement, "training max", week.starts) if athlete and entry else None
    if athlete is None or entry is None or add is None or not isinstance(best, MaxFound):
        return NewMax(who, name, f"{reason}, and none is on file")
    if by_bodyweight(movement):
        return NewMax(who, name, f"{reason}, and the body is part of it")
    a_unit = kilograms(1.0, best.unit)
    was = best.kg.low / a_unit
    new, note = was + kilograms(add.amount, "lb" if add.unit == "lb" else "kg") / a_unit, ""
    tested = max_of(athlete, movement, "tested max", week.starts)
    if isinstance(tested, MaxFound) and not _may_exceed(change, week):
        most = max(tested.kg.high / a_unit, was)
        note = f"; it ends at the {tested.kind} of {tested.said}" if new > most else ""
        new = min(new, most)
    typed = f"training max {number(round(new, 2))} {best.unit}"
    said = f"{typed}, was {number(round(was, 2))} {best.unit} ({reason}{note})"
    return NewMax(who, name, said, entry.place, typed if new != was else "")


def _may_exceed(change: Change, week: Week) -> bool:
    return any(one.rule == ABOVE_MAX for one in (*week.allow, *change.session.allow, *change.item.allow))


def put(text: str, maxes: tuple[NewMax, ...], read: Callable[[str], Week | None]) -> Put:
    """The text of a squad with the training maxes behind the movements that they are of.

    ``read`` gives the week with the squad of a text; a training max counts only when it is read there.
    """
    left: list[NewMax] = []
    for one in maxes:
        new = _with(text, one)
        week = read(new) if new else None
        if week is not None and _typed_of(week, one) == one.typed:
            text = new
        else:
            left.append(one)
    return Put(text, tuple(left))


def next_file(folder: Path, name: str) -> str:
    """The first name for a new squad file that nobody has: "squad-2.yaml" behind "squad.yaml"."""
    path = Path(name)
    stem, count = _COPY.sub("", path.stem), 2
    while (folder / path.with_name(f"{stem}-{count}{path.suffix}")).exists():
        count += 1
    return str(path.with_name(f"{stem}-{count}{path.suffix}"))


def _with(text: str, one: NewMax) -> str:
    """The text with a training max in the row of its movement; empty where none is typed there."""
    rows = text.splitlines()
    assert one.place is not None
    at, start = one.place.line - 1, one.place.column - 1
    match = _TYPED.search(rows[at], start)
    if match is None:
        return ""
    rows[at] = f"{rows[at][: match.start()]}{one.typed}{rows[at][match.end() :]}"
    return "\n".join(rows) + "\n"


def _typed_of(week: Week, one: NewMax) -> str:
    """How the training max of an entry is typed in the squad of a week."""
    maxes = (best for athlete in (week.squad.athletes if week.squad else ()) for best in athlete.maxes)
    match = next((_TYPED.search(best.text) for best in maxes if best.place == one.place), None)
    return match[0] if match else ""
