"""Rule push-without-pull: pushes with no pull against them, or with far too few."""

from collections.abc import Iterator

from setwright.coverage import Movement, SessionCover, Sets, Work, total
from setwright.coverage.counts import on_the_clock
from setwright.coverage.shapes import FROM_OVERHEAD, PULLS, PUSHES
from setwright.findings import Level
from setwright.rules.cures import added, pull, pull_from_overhead
from setwright.rules.ranges import pull_to_push
from setwright.rules.rule import CHOICE, Case, Fault, Option, Rule, counted, seen

BAD = """\
plan: Pushes only
unit: kg
dose order: sets x reps
level: beginner
sessions:
  - day: Monday
    work:
      - push-up: 3 x 10 at 2 RIR
      - goblet squat: 4 x 10 at 3 RIR
  - day: Thursday
    work:
      - push-up: 3 x 10 at 2 RIR
      - goblet squat: 4 x 10 at 3 RIR
"""
GOOD = BAD + "      - bench pull: 4 x 10 at 2 RIR\n"

ENOUGH = Option("hard pushes a week", 6, "sets", CHOICE)
MOST = Option("pushes a pull", 2, "pushes for 1 pull", f"common practice, {CHOICE}")
MOST_ALONE = Option("pushes a pull in a plan of one session", 3, "pushes for 1 pull", CHOICE)

ELSEWHERE = "; where the pulls stand in another plan, write `allow:` and under it `push-without-pull: where`"


def find(case: Case) -> Iterator[Fault]:
    """One fault: no pull at all, or more pushes than the ratio allows. More pulls than pushes is fine.

    A ratio under ``sets a week`` is the coach's own, and holds from the first push of a week. It is advice
    for a plan of one session, and where nobody knows whether the pushes are hard.
    """
    alone = case.coverage.single_session
    push, pulls = (total(_sets(work) for work in _works(case, each)) for each in (PUSHES, PULLS))
    asked = None if alone else pull_to_push(case.coverage.week)
    most = MOST_ALONE.value if alone else MOST.value
    needed = push.low * (asked.low if asked else 1 / most)
    if (push.low < ENOUGH.value and asked is None) or pulls.high >= needed:
        return
    session = max(case.coverage.sessions, key=_pushes)
    sure = not alone and case.coverage.push.low >= ENOUGH.value
    cure = added(case, _missing(case), session)
    yield Fault(
        place=session.session.work_place,
        where=case.week_word,
        day=case.coverage.sessions.index(session),
        message=_message(case, push, pulls) + (f"; `pull to push` asks for {needed:g}" if asked else ""),
        why="what pulls the arm back gets too little beside what pushes"
        if pulls.high
        else "what pushes the arm forward and in is trained, what pulls it back is not",
        cure=cure._replace(text=cure.text + ELSEWHERE) if cure and alone else cure,
        seen=seen(tuple(_works(case, PUSHES | PULLS)), _counted),
        level=Level.advice if pulls.high or not sure else None,
        about="the balance of pushes and pulls",
        source=f"the plan's own sets a week, line {asked.place.line}" if asked else None,
    )


def _works(case: Case, patterns: frozenset[str]) -> Iterator[Work]:
    return (work for work in case.coverage.works if work.movement["pattern"] in patterns and work.hard.high)


def _sets(work: Work) -> Sets:
    """Its hard sets; against the clock its rounds, since how hard they are nobody knows of pulls either."""
    return work.sets if on_the_clock(work.group) else work.hard


def _counted(work: Work) -> str:
    return f"{work.name}, {work.sets} rounds" if on_the_clock(work.group) else counted(work)


def _message(case: Case, push: Sets, pulls: Sets) -> str:
    timed = any(on_the_clock(work.group) for work in _works(case, PUSHES | PULLS))
    pushing, pulling = ("sets of pushes", "of pulls") if timed else ("hard pushes", "hard pulls")
    few = f"only {pulls} {pulling}" if pulls.high else "no pull at all"
    return f"{push} {pushing} and {few} in {case.week_word}"


def _missing(case: Case) -> Movement | None:
    """A pull, from overhead where there are others and none of them is."""
    rows_only = any(_works(case, PULLS)) and not any(_works(case, FROM_OVERHEAD))
    return (pull_from_overhead(case) if rows_only else None) or pull(case)


def _pushes(session: SessionCover) -> float:
    return total(_sets(w) for w in session.works if w.movement["pattern"] in PUSHES and w.hard.high).high


RULE = Rule(
    id="push-without-pull",
    looks_at="week",
    summary="at least six hard pushes in the week and no pull, or more than two pushes to a pull; or fewer "
    "pulls than the plan's own `pull to push` asks for; in a plan of one session no pull, or more than three "
    "pushes to a pull, and that is advice",
    why="flies and raises are not pushes; stations on the clock count with their rounds, pushes and pulls "
    "alike; more pull than push is fine and only told, in the line under the matrix",
    change="add a row or a pull-up, on the day that pushes most or on a day of its own",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(ENOUGH, MOST, MOST_ALONE),
)
