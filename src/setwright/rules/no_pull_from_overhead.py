"""Rule no-pull-from-overhead: a week of pulls, and none of them comes down from above the head."""

from collections.abc import Iterator

from setwright.coverage import SessionCover
from setwright.coverage.shapes import FROM_OVERHEAD, PULLS
from setwright.rules.cures import added, pull_from_overhead
from setwright.rules.rule import CHOICE, Case, Fault, Option, Rule, counted, seen

BAD = """\
plan: Rows only
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - push-up: 4 x 10 at 2 RIR
      - bench pull: 4 x 8 at 2 RIR
  - day: Thursday
    work:
      - chest-supported dumbbell row: 4 x 10 at 2 RIR
      - Romanian deadlift: 4 x 8 at 3 RIR
"""
GOOD = BAD.replace("chest-supported dumbbell row", "pull-up")

ENOUGH = Option("hard pulls a week", 8, "sets", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault, when the week pulls enough to be judged and nothing of it comes from overhead."""
    works = tuple(work for work in case.coverage.works if work.hard.high)
    pulls = tuple(work for work in works if work.movement["pattern"] in PULLS)
    above = any(work.movement["pattern"] in FROM_OVERHEAD for work in works)
    if case.coverage.single_session or above or case.coverage.pull.high < ENOUGH.value:
        return
    session = max(case.coverage.sessions, key=_pulls)
    yield Fault(
        place=session.session.work_place,
        where=case.week_word,
        day=case.coverage.sessions.index(session),
        message=f"{case.coverage.pull} hard pulls in the week and none from overhead",
        why="rows bring the arm back from the front; down from above the head the same muscles work from "
        "where they are longest",
        cure=added(case, pull_from_overhead(case), session),
        seen=seen(pulls, counted),
        closed_by=lambda movement: movement["pattern"] in FROM_OVERHEAD,
        about="pulls from overhead",
    )


def _pulls(session: SessionCover) -> float:
    return sum(work.hard.high for work in session.works if work.movement["pattern"] in PULLS)


RULE = Rule(
    id="no-pull-from-overhead",
    looks_at="week",
    summary="at least eight hard pulls in the week, all of them rows",
    why="a row and a pull from overhead bring the arm down and back from two directions, and one does not "
    "stand for the other",
    change="make one of the rows a pull-up or a pulldown, or add one",
    source="anatomy and common practice; no training study compares the two",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(ENOUGH,),
)
