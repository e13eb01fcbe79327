"""Changes of a week: a movement added to a session, paired with a line, or put in a line's place."""

from collections.abc import Iterator, Mapping
from functools import cache
from typing import Final, Literal, NamedTuple

from setwright.coverage import Movement
from setwright.model.plan import Group, Item, Session, Week
from setwright.places import Place
from setwright.reading.counting import count
from setwright.reading.dose import Dose, Rest
from setwright.reading.doseline import read_dose
from setwright.reading.habits import Habits
from setwright.rules.cures import SETS, reps_of

FIRST_COLUMN: Final = 10_000
"""Column from which lines are placed that no text holds yet (choice: beyond any line that is read)."""

IN_REPETITIONS: Final = frozenset({"each rep once", "per side"})
"""How the library counts what may be proposed: other counts leave open what a repetition is (choice)."""

Kind = Literal["pair", "add", "replace", "beside"]


class Spot(NamedTuple):
    """A line of a week: the index of its session, of its entry there, and of its member in a group."""

    session: int
    entry: int
    member: int | None = None


class Change(NamedTuple):
    """One change. ``spot``: the line paired or replaced; an added movement goes in before that entry.

    "beside" is "replace" with the line left where it is (``only_added``). ``load_class``: the movement's
    class in this gym, on which its dose depends.
    """

    kind: Kind
    spot: Spot
    movement: Movement
    load_class: str


def lines(week: Week) -> Iterator[tuple[Spot, Item, Group | None]]:
    """Every line of work of the week with its spot and the group it stands in."""
    for number, session in enumerate(week.sessions):
        for at, entry in enumerate(session.work):
            if isinstance(entry, Group):
                for member, item in enumerate(entry.items):
                    yield Spot(number, at, member), item, entry
            else:
                yield Spot(number, at), entry, None


def dose_text(change: Change, item: Item | None = None, group: Group | None = None) -> str:
    """The dose line proposed: the usual sets and repetitions of the class, or the sets of the line replaced.

    ``item`` and ``group`` stand at the change's spot; in a group with rounds a member says one round.
    """
    old = item.dose if item and change.kind != "pair" else None
    return dose_of(change.movement, change.load_class, old, one_round=_one_round(group))


def dosable(movement: Movement) -> bool:
    """Whether a dose in repetitions fits: nothing that is held, carried or counted by the step."""
    return movement["counting"] in IN_REPETITIONS


def dose_of(movement: Movement, load_class: str, old: Dose | None, *, one_round: bool = False) -> str:
    """A dose line for a movement of a class, with as many sets as ``old``; ``one_round``: of one round."""
    reps = reps_of(movement, load_class)
    return reps if one_round else f"{round(count(old).sets.low) if old else SETS} x {reps}"


def changed(week: Week, changes: tuple[Change, ...]) -> Week:
    """The week with all changes made; no two of them stand on one line."""
    sessions = list(week.sessions)
    for number, session in enumerate(week.sessions):
        here = [(at, change) for at, change in enumerate(changes) if change.spot.session == number]
        if here:
            sessions[number] = _session(session, number, dict(here))
    return week.model_copy(update={"sessions": tuple(sessions)})


def only_added(week: Week, changes: tuple[Change, ...]) -> Week:
    """The week with all changes made, and every line that one replaces done as well."""
    return changed(
        week, tuple(one._replace(kind="beside") if one.kind == "replace" else one for one in changes)
    )


def _session(session: Session, number: int, here: Mapping[int, Change]) -> Session:
    on = {change.spot: (at, change) for at, change in here.items() if change.kind != "add"}
    work: list[Item | Group] = []
    for at, entry in enumerate(session.work):
        work.extend(_added(session, here, at))
        if isinstance(entry, Group):
            members = (
                _with(item, entry, on.get(Spot(number, at, member)))
                for member, item in enumerate(entry.items)
            )
            work.append(entry.model_copy(update={"items": tuple(item for some in members for item in some)}))
        else:
            work.append(_entry(entry, on.get(Spot(number, at))))
    return session.model_copy(update={"work": (*work, *_added(session, here, len(session.work)))})


def _added(session: Session, here: Mapping[int, Change], entry: int) -> Iterator[Item]:
    for at, change in here.items():
        if change.kind == "add" and change.spot.entry == entry:
            yield _item(change, at, session.work_place)


def _with(item: Item, group: Group | None, told: tuple[int, Change] | None) -> tuple[Item, ...]:
    """What stands in the place of a line: the line, another one, or the line and the one paired with it."""
    if told is None:
        return (item,)
    new = _item(told[1], told[0], item.place, item, group)
    return (new,) if told[1].kind == "replace" else (item, new)


def _entry(item: Item, told: tuple[int, Change] | None) -> Item | Group:
    here = _with(item, None, told)
    if len(here) == 1:
        return here[0]
    return Group(kind="superset", place=item.place, items=(without_rest(item), here[1]), rest=rest_of(item))


def rest_of(item: Item) -> Rest | None:
    """The rest of a line with a dose, which becomes the rest of its group when the line is paired."""
    assert item.dose is not None
    return item.dose.groups[0].rest


def without_rest(item: Item) -> Item:
    """A line with a dose, without its rest."""
    assert item.dose is not None
    groups = tuple(group.model_copy(update={"rest": None}) for group in item.dose.groups)
    return item.model_copy(update={"rest": None, "dose": item.dose.model_copy(update={"groups": groups})})


def _item(change: Change, at: int, near: Place, item: Item | None = None, group: Group | None = None) -> Item:
    """The new line; a line replaced hands on who does it and how dispensable it is."""
    column = FIRST_COLUMN + at
    place = Place(near.file, near.line, column, near.line, column + 1)
    kept = {}
    if item is not None and change.kind == "replace":
        kept = {"priority": item.priority, "for_": item.for_, "not_for": item.not_for, "place": item.place}
    name = str(change.movement["name"])
    dose = _dose(dose_text(change, item, group), one_round=_one_round(group)).model_copy(
        update={"place": place}
    )
    return Item(**{"name": name, "place": place, "key": change.movement["key"], "dose": dose, **kept})


def _one_round(group: Group | None) -> bool:
    return group is not None and group.rounds is not None


@cache
def _dose(text: str, *, one_round: bool) -> Dose:
    habits = Habits(dose_order="sets x reps", member="rounds" if one_round else "alone")
    dose, _ = read_dose(text, Place("", 1, 1, 1, len(text) + 1), habits)
    assert dose is not None
    return dose
