"""Rule session-over-time: the sets, rests and changes of a session take longer than its minutes."""

from collections.abc import Iterator

from setwright.coverage import SessionCover
from setwright.coverage.clock import REP_S, REST_S, SETUP_S, SWAP_S, WARM_UP_SET_S, entry_seconds
from setwright.coverage.cut import leaves
from setwright.findings import Seen
from setwright.model.plan import Group, Item
from setwright.rules.queues import rooms
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Too much for the hour
unit: kg
dose order: sets x reps
level: beginner
sessions:
  - day: Monday
    minutes: 25
    work:
      - push-up: 4 x 10 at 2 RIR, rest 2:00
      - bench pull: 4 x 10 at 2 RIR, rest 2:00
      - goblet squat: 4 x 10 at 3 RIR, rest 2:00
      - front plank: 3 x 30 s hold, rest 60 s
        priority: 3
"""
GOOD = BAD.replace("minutes: 25", "minutes: 35")

OVER = Option("minutes over those written", 10, "% of them", f"{CHOICE}: set and change times are estimates")
PRACTICE = "common practice, no source"

Entry = Item | Group


def find(case: Case) -> Iterator[Fault]:
    """One fault for each session with minutes written that its clock is clearly over."""
    for day, session in enumerate(case.coverage.sessions):
        written = session.session.minutes
        took = _minutes(case, session)
        whole = (session.session.warm_up_minutes or 0) + sum(minutes for _, minutes in took)
        if written is None or whole <= written * (1 + OVER.value / 100):
            continue
        yield Fault(
            place=session.session.place,
            where=session.session.title,
            message=f"{session.session.title} takes about {whole:.0f} minutes, {written:g} are written",
            why="what does not fit is dropped on the day, and nobody has chosen what",
            cure=_shorter(whole, took, written),
            seen=tuple(_seen(session, took)),
            day=day,
        )


def _minutes(case: Case, session: SessionCover) -> list[tuple[Entry, float]]:
    """Every line or group with its minutes, setting up too: of one person, in a gym of the busiest group."""
    work = session.session.work
    alone = {n: SETUP_S + entry_seconds(entry, session.counts) for n, entry in enumerate(work, 1)}
    shared = next((room.busiest for cover, room in rooms(case) if cover is session), {})
    took = {n: max(seconds, shared.get(n, 0.0)) for n, seconds in alone.items()}
    return [(entry, took[n] / 60) for n, entry in enumerate(work, 1)]


def _shorter(whole: float, took: list[tuple[Entry, float]], written: float) -> Cure:
    """Leave out from the lines that are dropped first, as many as it takes, but never the whole session."""
    left, out = whole, []
    by_rank = sorted(enumerate(took), key=lambda one: leaves(one[1][0].priority, one[0]))
    for _, (entry, minutes) in by_rank[:-1]:
        if left <= written:
            break
        left -= minutes
        out.append(f"{_name(entry)} ({minutes:.0f} min)")
    change = f"leave out {', '.join(out)}" if out else "shorten the rests"
    return Cure(f"{change}, pair lines as a superset, or write `minutes: {whole:.0f}`")


def _seen(session: SessionCover, took: list[tuple[Entry, float]]) -> Iterator[Seen]:
    if session.session.warm_up_minutes:
        yield Seen(f"warm-up {session.session.warm_up_minutes:g} min")
    yield from (Seen(f"{_name(entry)} {minutes:.0f} min", entry.place.line) for entry, minutes in took)


def _name(entry: Entry) -> str:
    return entry.name if isinstance(entry, Item) else " with ".join(item.name for item in entry.items)


RULE = Rule(
    id="session-over-time",
    looks_at="session",
    summary="sets, rests, warm-up sets and changes of a session add up to clearly more than its minutes",
    why="the clock is one person's, or with people and a gym file that of the group with most to do, whose "
    "members take turns; nobody waits for another group. Pairing lines saves about a third: in six "
    "movements of four sets with two minutes of rest 36 % of the session, by one study",
    change="leave out what matters least, pair lines that don't tire each other, or write more minutes",
    source="common practice, no source, for the seconds; the saving of supersets: burke2024 (abstract)",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("burke2024",),
    options=(
        OVER,
        Option("a repetition without a tempo", REP_S, "s", PRACTICE),
        Option("rest that is not written", REST_S, "s", PRACTICE),
        Option("setting up a line or group", SETUP_S, "s", f"{PRACTICE}: 60 to 90 s"),
        Option("changing over inside a group", SWAP_S, "s", PRACTICE),
        Option("a warm-up set with its rest", WARM_UP_SET_S, "s", CHOICE),
    ),
)
