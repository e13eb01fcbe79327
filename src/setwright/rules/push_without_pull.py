"""Rule push-without-pull: pushes with no pull against them, or with far too few."""

from collections.abc import Iterator

from setwright.coverage import SessionCover
from setwright.coverage.shapes import PULLS, PUSHES
from setwright.findings import Level
from setwright.rules.cures import added, pull
from setwright.rules.ranges import least_pull_to_push
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
MOST = Option("pushes a pull", 2, "1", f"common practice, {CHOICE}")


def find(case: Case) -> Iterator[Fault]:
    """One fault: no pull at all, or more pushes than the ratio allows. More pulls than pushes is fine."""
    push, pulls = case.coverage.push, case.coverage.pull
    asked = least_pull_to_push(case.coverage.week)
    most = 1 / asked if asked else MOST.value
    if case.coverage.single_session or push.low < ENOUGH.value or push.low <= most * pulls.high:
        return
    session = max(case.coverage.sessions, key=_pushes)
    none = pulls.high == 0
    yield Fault(
        place=session.session.work_place,
        where=case.week_word,
        message=f"{push} hard pushes and "
        + ("no pull at all" if none else f"only {pulls} hard pulls")
        + " in the week",
        why="what pushes the arm forward and in is trained, what pulls it back is not"
        if none
        else f"more than {most:g} to 1: what pulls the arm back gets too little beside what pushes",
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
    )


def _pushes(session: SessionCover) -> float:
    return sum(work.hard.high for work in session.works if work.movement["pattern"] in PUSHES)


RULE = Rule(
    id="push-without-pull",
    looks_at="week",
    summary="at least six hard pushes in the week and no pull, or more than two pushes to a pull",
    why="flies and raises are not pushes; more pull than push is fine and only told",
    change="add a row or a pull-up, on the day that pushes most or on a day of its own",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(ENOUGH, MOST),
)
