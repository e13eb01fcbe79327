"""Rule push-without-pull: pushes with no pull against them, or with far too few."""

from collections.abc import Iterator

from setwright.coverage import SessionCover
from setwright.coverage.shapes import PULLS, PUSHES
from setwright.findings import Level
from setwright.rules.cures import added, pull
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


def find(case: Case) -> Iterator[Fault]:
    """One fault: no pull at all, or more pushes than the ratio allows. More pulls than pushes is fine.

    A ratio under ``sets a week`` is the coach's own, and holds from the first push.
    """
    push, pulls = case.coverage.push, case.coverage.pull
    asked = pull_to_push(case.coverage.week)
    needed = push.low * (asked.low if asked else 1 / MOST.value)
    few = push.low < ENOUGH.value and asked is None
    if case.coverage.single_session or few or pulls.high >= needed:
        return
    session = max(case.coverage.sessions, key=_pushes)
    none = pulls.high == 0
    wish = f"; `pull to push` asks for {needed:g}" if asked else ""
    yield Fault(
        place=session.session.work_place,
        where=case.week_word,
        day=case.coverage.sessions.index(session),
        message=f"{push} hard pushes and "
        + ("no pull at all" if none else f"only {pulls} hard pulls")
        + f" in the week{wish}",
        why="what pushes the arm forward and in is trained, what pulls it back is not"
        if none
        else "what pulls the arm back gets too little beside what pushes",
        cure=added(case, pull(case), session),
        seen=seen(
            tuple(
                work
                for work in case.coverage.works
                if work.movement["pattern"] in PUSHES | PULLS and work.hard.high
            ),
            counted,
        ),
        level=None if none else Level.advice,
        about="the balance of pushes and pulls",
        source=f"the plan's own sets a week, line {asked.place.line}" if asked else None,
    )


def _pushes(session: SessionCover) -> float:
    return sum(work.hard.high for work in session.works if work.movement["pattern"] in PUSHES)


RULE = Rule(
    id="push-without-pull",
    looks_at="week",
    summary="at least six hard pushes in the week and no pull, or more than two pushes to a pull; or fewer "
    "pulls than the plan's own `pull to push` asks for",
    why="flies and raises are not pushes; more pull than push is fine and only told, in the line under the "
    "matrix",
    change="add a row or a pull-up, on the day that pushes most or on a day of its own",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(ENOUGH, MOST),
)
