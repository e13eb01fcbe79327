"""Names of a plan looked up in the library, and what only the movement can answer about a dose."""

from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import replace
from typing import Any

from setwright.findings import Finding
from setwright.library.kit import with_known_stations
from setwright.library.names import fold
from setwright.library.percents import which_max
from setwright.library.reuse import in_place_of, written_out
from setwright.library.table import Library, library
from setwright.model.people import Athlete, Squad
from setwright.model.plan import Group, Instead, Item, Session, Week
from setwright.model.weekly import DoneBefore
from setwright.places import Place
from setwright.reading import fitting
from setwright.reading import key_rules as rules
from setwright.reading.dose import Dose, SetGroup, SetWork, Sides
from setwright.reading.habits import Habits
from setwright.reading.tied import tied


def resolve(
    week: Week, table: Library | None = None, unread: Collection[str] = ()
) -> tuple[Week, tuple[Finding, ...]]:
    """The week with the library's key in each item and max, and its own word for the sides in each open dose.

    Findings: names that are unknown or name several movements, in work, limits, maxes and last week; stations
    of the gym that no movement asks for; and questions about doses that depend on the movement (sides,
    seconds or repetitions, a plus without a base). A name in a session's warm-up that is unknown is left as
    typed, and so are those of ``unread``: movements of the coach's own about which something was said
    already. Days like another one are filled in first; what is wrong with a line that they repeat is said
    once.
    """
    table = table or library()
    copied, findings = written_out(week.sessions, table)
    resolver = _Resolver(week, table, frozenset(map(fold, unread)))
    sessions = tuple(resolver.session(session) for session in copied)
    squad = resolver.people()
    gym, of_the_gym = (None, ()) if week.gym is None else with_known_stations(week.gym, table)
    known = {"sessions": sessions, "squad": squad, "last_week": resolver.last_week(), "gym": gym}
    resolved = week.model_copy(update=known)
    return resolved, _once((*findings, *resolver.findings, *of_the_gym, *which_max(resolved, table)))


class _Resolver:
    def __init__(self, week: Week, table: Library, unread: frozenset[str]) -> None:
        self.findings: list[Finding] = []
        self._week = week
        self._table = table
        self._unread = unread
        self._habits = Habits(sides=week.sides, unit=week.unit)

    def session(self, session: Session) -> Session:
        work = tuple(self._entry(entry, session.title) for entry in session.work)
        return session.model_copy(update={"work": work, "warm_up": tuple(map(self._known, session.warm_up))})

    def people(self) -> Squad | None:
        """The squad with keys in its maxes. A limit on a movement nobody knows would protect nobody."""
        squad = self._week.squad
        return squad and squad.model_copy(update={"athletes": tuple(map(self._athlete, squad.athletes))})

    def _athlete(self, athlete: Athlete) -> Athlete:
        for name, place in _names_of(athlete):
            self._key(name, place, athlete.name)
        maxes = (
            best.model_copy(update={"key": self._key(best.movement, best.place, athlete.name)})
            for best in athlete.maxes
        )
        return athlete.model_copy(update={"maxes": tuple(maxes)})

    def last_week(self) -> tuple[DoneBefore, ...]:
        """What was done before the plan, with the library's keys."""
        return tuple(
            done.model_copy(update={"key": self._key(done.name, done.place, "last week")})
            for done in self._week.last_week
        )

    def _entry(self, entry: Item | Group, where: str) -> Item | Group:
        if isinstance(entry, Item):
            return self._item(entry, where)
        return entry.model_copy(update={"items": tuple(self._item(item, where) for item in entry.items)})

    def _known(self, item: Item) -> Item:
        """The item of a warm-up: a name the library lacks is no fault there."""
        instead = _with_lines(item, self._known)
        return item.model_copy(update={"key": self._table.find(item.name).key, "instead": instead})

    def _item(self, item: Item, where: str) -> Item:
        key = self._key(item.name, item.place, where)
        loads = (*item.line_loads, *(load for own in item.loads for load in own.loads))
        for name in dict.fromkeys(load.of_movement for load in loads if load.of_movement):
            self._key(name, item.place, where)
        item = item.model_copy(
            update={"key": key, "instead": _with_lines(item, lambda line: self._item(line, where))}
        )
        if key is None or item.dose is None:
            return item
        movement = self._table.movement(key)
        asked = fitting.questions(
            item.dose,
            self._habits,
            sides=_worked(movement["sides"], item.dose),
            counted_in=_counted_in(movement["counting"], item.dose),
            bodyweight=movement["load_kind"] in ("bodyweight", "assisted"),
        )
        self.findings += (replace(finding, where=where) for finding in asked)
        dose = item.dose if asked else self._with_sides(item.dose, movement["sides"])
        if movement["load_write"] == "each dumbbell":
            dose = _in_each_hand(dose)
        return item.model_copy(update={"dose": dose})

    def _key(self, name: str, place: Place, where: str) -> str | None:
        if fold(name) in self._unread:
            return None
        match = self._table.find(name)
        if match.ask:
            finding = rules.UNCLEAR_MOVEMENT.at(
                place, f'"{name}" names several movements', match.ask.rstrip("."), where
            )
            self.findings.append(finding)
        elif match.key is None and (knot := tied(name, place)):
            self.findings.append(replace(knot, where=where))
        elif match.key is None:
            write = " or ".join(f"`{near}`" for near in match.nearest)
            change = f"write {write}" if write else "write a name from the list that `setwright move` prints"
            message = f'"{name}" is no movement of the library'
            self.findings.append(rules.UNKNOWN_MOVEMENT.at(place, message, change, where))
        return match.key

    def _with_sides(self, dose: Dose, worked: str) -> Dose:
        """The dose with the plan's own ``sides`` where a one-sided movement has no word for them."""
        if self._week.sides is None or _worked(worked, dose) == "both":
            return dose
        kind: Any = "each" if self._week.sides == "each" else "in_all"
        sides = Sides(kind=kind, word="side" if kind == "each" else "in all")
        groups = tuple(_sided(group, sides) for group in dose.groups)
        return dose.model_copy(update={"groups": groups})


def _in_each_hand(dose: Dose) -> Dose:
    """The dose with every plain mass as the mass of one of two dumbbells."""
    groups = tuple(
        group.model_copy(
            update={
                "works": tuple(map(_both_hands, group.works)),
                "last": None if group.last is None else _both_hands(group.last),
            }
        )
        for group in dose.groups
    )
    return dose.model_copy(update={"groups": groups})


def _both_hands(work: SetWork) -> SetWork:
    if work.load is None or work.load.kind != "mass":
        return work
    return work.model_copy(update={"load": work.load.model_copy(update={"hands": 2})})


def _with_lines(item: Item, resolved: Callable[[Item], Item]) -> tuple[Instead, ...]:
    """What others do in place of a line, as lines with their keys; a movement alone has the line's dose."""
    return tuple(
        instead.model_copy(update={"lines": tuple(map(resolved, _lines(item, instead)))})
        for instead in item.instead
    )


def _lines(item: Item, instead: Instead) -> tuple[Item, ...]:
    if instead.movement is None:
        return instead.lines
    return (in_place_of(item.model_copy(update={"instead": ()}), instead.movement),)


def _once(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """The findings without those that say of a repeated line what was said of it before."""
    told: dict[tuple[str, Place, str], Finding] = {}
    for finding in findings:
        told.setdefault((finding.rule, finding.place, finding.message), finding)
    return tuple(told.values())


def _sided(group: SetGroup, sides: Sides) -> SetGroup:
    return group.model_copy(update={"sides": sides}) if group.sides is None else group


def _worked(sides: str, dose: Dose) -> fitting.Worked:
    """Which sides a movement works; an alternating one needs a word only where repetitions are counted."""
    if sides == "one":
        return "one"
    in_reps = any(work.amount.unit == "reps" for group in dose.groups for work in group.works)
    return "alternating" if sides == "alternating" and in_reps else "both"


def _counted_in(counting: str, dose: Dose) -> str:
    """The unit of the library's sentence about counting (reps, s, m, steps); the dose decides between two."""
    in_seconds = any(work.amount.unit == "s" for group in dose.groups for work in group.works)
    if counting.startswith("metres") and not in_seconds:
        return "m"
    if "rep" not in counting and ("second" in counting or "minute" in counting):
        return "s"
    return "steps" if counting.startswith(("each step", "steps", "say whether a rep is a step")) else "reps"


def _names_of(athlete: Athlete) -> Iterator[tuple[str, Place]]:
    yield from ((name, athlete.place) for name in athlete.avoid)
    yield from ((name, limit.place) for limit in athlete.limits for name in limit.avoid)
