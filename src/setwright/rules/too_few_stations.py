"""Rule too-few-stations: everybody's sets at a place take longer than the session."""

from collections.abc import Iterator

from setwright.coverage import SessionCover, Work
from setwright.findings import Seen
from setwright.model.plan import Group
from setwright.model.room import Gym
from setwright.places import Place
from setwright.rules.queues import CHANGE_S, people_at, takes, turn_s, weights
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: A class at two benches
unit: kg
dose order: sets x reps
level: beginner
people: 24
gym:
  benches: 2
  dumbbells:
    4-20 kg by 2: 8 pairs
sessions:
  - day: Monday
    minutes: 45
    work:
      - flat dumbbell bench press: 4 x 10 at 3 RIR, rest 60 s
      - one-arm dumbbell row: 4 x 10 each arm at 3 RIR, rest 60 s
"""
GOOD = BAD.replace("people: 24", "people: 6")

FULL = Option("share of the session in which a place may be in use", 100, "%", CHOICE)

Wanted = dict[str, tuple[int, float, list[Work]]]


def find(case: Case) -> Iterator[Fault]:
    """One fault a session and kind of place; one a circuit that moves by the clock and kind of thing.

    Sessions without minutes are judged by their circuits only.
    """
    gym = case.coverage.week.gym
    if gym is None:
        return
    for session in case.coverage.sessions:
        yield from _at_once(case, gym, session)
        minutes = session.session.minutes
        if minutes is None:
            continue
        for kind, (there, seconds, works) in _wanted(case, gym, session).items():
            needed = seconds / 60 / there
            if needed > minutes * FULL.value / 100:
                yield _fault(case, session, f"{kind} ({there} there)", needed, works)


def _at_once(case: Case, gym: Gym, session: SessionCover) -> Iterator[Fault]:
    """Circuits by the clock whose stations want more of one thing at a time than there is.

    Any two stations of a circle are in use at some time once more than half of them are.
    """
    circuits: dict[Place, list[Work]] = {}
    for work in session.works:
        if work.group is not None and work.group.each_s:
            circuits.setdefault(work.group.place, []).append(work)
    for circuit in circuits.values():
        if max(people_at(case.coverage.week, work) for work in circuit) <= len(circuit) / 2:
            continue
        wanted: dict[str, tuple[int, int, list[Work]]] = {}
        for work in circuit:
            for kind, number, there in (*takes(gym, work), *weights(gym, work)):
                _, before, works = wanted.get(kind, (there, 0, []))
                wanted[kind] = there, before + number, [*works, work]
        for kind, (there, number, works) in wanted.items():
            if number > there:
                yield _fault_of_circuit(f"{number} {kind}", there, works)


def _fault_of_circuit(what: str, there: int, works: list[Work]) -> Fault:
    names = " and ".join(work.name for work in works)
    return Fault(
        place=works[0].item.place,
        where=works[0].session.title,
        message=f"{works[0].session.title}'s circuit needs {what} at once, {there} there: {names}",
        why="everybody moves on together, so both stations are in use at the same time",
        cure=Cure(
            f"give {works[-1].name} another load or another movement, or do the two in different rounds"
        ),
        seen=tuple(Seen(work.name, work.line) for work in works),
        day=works[0].day,
    )


def _wanted(case: Case, gym: Gym, session: SessionCover) -> Wanted:
    """By kind of place: how many there are, the seconds that everybody needs there, and the lines."""
    wanted: Wanted = {}
    for work in session.works:
        if work.group is not None and _by_the_clock(work.group):
            continue
        seconds = people_at(case.coverage.week, work) * work.sets.low * turn_s(work)
        for kind, number, there in takes(gym, work):
            _, before, works = wanted.get(kind, (there, 0.0, []))
            wanted[kind] = there, before + number * seconds, [*works, work]
    return wanted


def _by_the_clock(group: Group) -> bool:
    return bool(group.each_s or group.time_s or group.every_s)


def _fault(case: Case, session: SessionCover, places: str, needed: float, works: list[Work]) -> Fault:
    people = max(people_at(case.coverage.week, work) for work in works)
    return Fault(
        place=works[0].item.place,
        where=session.session.title,
        message=f"{session.session.title}: everybody's sets take about {needed:.0f} minutes at the {places}, "
        f"{session.session.minutes:g} are written",
        why=f"{people} people one after the other, the places never empty: it does not fit in any order",
        cure=Cure(
            "give part of the group another movement that trains the same, do fewer sets there, or take two "
            "days"
        ),
        seen=tuple(
            Seen(f"{work.name}: {work.sets.low:g} sets, about {turn_s(work):.0f} s a turn", work.line)
            for work in works
        ),
        day=works[0].day,
    )


RULE = Rule(
    id="too-few-stations",
    looks_at="session",
    summary="everybody's sets at one kind of place take longer than the session, however they are dealt out; "
    "or a circuit by the clock needs more of one thing at once than there is",
    why="a plain count: people times sets times the time of a turn, over the places that the gym file "
    "counts; who waits for whom is not looked at, so a plan that passes may still jam",
    change="another movement for part of the group, fewer sets there, or a second day",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(FULL, Option("change of lifters at a place", CHANGE_S, "s", CHOICE)),
)
