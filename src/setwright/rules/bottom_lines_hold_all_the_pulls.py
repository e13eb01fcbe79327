"""Rule bottom-lines-hold-all-the-pulls: whatever is cut short is cut short of its pulls."""

from collections.abc import Iterator

from setwright.coverage import SessionCover, Work
from setwright.coverage.shapes import PULLS, PUSHES
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule, counted, seen

BAD = """\
plan: Pulls last
unit: kg
dose order: sets x reps
level: beginner
sessions:
  - day: Monday
    work:
      - push-up: 4 x 10 at 2 RIR
      - goblet squat: 4 x 10 at 3 RIR
      - glute bridge: 4 x 12 at 3 RIR
      - bench pull: 4 x 10 at 2 RIR
      - front plank: 3 x 30 s hold
"""
GOOD = BAD.replace("4 x 10 at 2 RIR\n      - front", "4 x 10 at 2 RIR\n        priority: 1\n      - front")

LEAST = Option("lines of a session from which it speaks", 5, "lines", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault, when every session that pulls has its pulls in the half that is dropped first."""
    pulling = [session for session in case.coverage.sessions if _pulls(session.works)]
    at_risk = [_pulls(_dropped_first(session)) for session in pulling if _holds_them_low(session)]
    if not pulling or len(at_risk) < len(pulling):
        return
    pulls = tuple(work for works in at_risk for work in works)
    first = pulls[0]
    names = ", ".join(dict.fromkeys(work.name for work in pulls))
    yield Fault(
        place=first.item.place,
        where=first.session.title,
        message=f"every pull of {case.week_word} stands where a session is cut first: {names}",
        why="when time runs out the bottom lines go, and here the pushes stay and no pull does",
        cure=Cure(f"move {first.name} up behind the first push, or write `priority: 1` under it"),
        seen=seen(pulls, counted),
        day=first.day,
        about="pulls that are cut first",
    )


def _holds_them_low(session: SessionCover) -> bool:
    dropped = _dropped_first(session)
    kept = [work for work in session.works if work not in dropped]
    pushes = any(work.movement["pattern"] in PUSHES and work.hard.high for work in kept)
    return len(session.works) >= LEAST.value and pushes and not _pulls(tuple(kept))


def _dropped_first(session: SessionCover) -> tuple[Work, ...]:
    """The half of a session that goes first: by priority, then from the bottom; the middle line stays."""
    ranked = sorted(session.works, key=lambda work: (work.group or work.item).priority)
    return tuple(ranked[len(ranked) - len(ranked) // 2 :])


def _pulls(works: tuple[Work, ...]) -> tuple[Work, ...]:
    return tuple(work for work in works if work.movement["pattern"] in PULLS and work.hard.high)


RULE = Rule(
    id="bottom-lines-hold-all-the-pulls",
    looks_at="week",
    summary="in every session that pulls, the pulls stand in the half that goes when it is cut short",
    why="sessions are cut from the bottom, or by their priorities where those are written",
    change="a pull among the first lines, or `priority: 1` under one",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(LEAST,),
)
