"""Rule no-work-across-the-midline: a session full of chest work in which no arm crosses the body."""

from collections.abc import Iterator

from setwright.coverage import Work
from setwright.rules.cures import finishing, straight_after
from setwright.rules.rule import CHOICE, NO_STUDY, Case, Fault, Option, Rule, counted, past, seen

BAD = """\
plan: Thursday presses only
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 4 x 6-8 at 2 RIR
      - level cable crossover: 3 x 12 at 1 RIR
      - low-to-high cable crossover: 2 x 12 at 1 RIR
      - high-to-low cable crossover: 2 x 12 at 1 RIR
      - bench pull: 4 x 8 at 2 RIR
  - day: Thursday
    work:
      - incline 30 barbell bench press: 4 x 6-8 at 2 RIR
      - dip: 3 x 8 at 2 RIR
      - pull-up: 4 x 8 at 2 RIR
"""
GOOD = BAD + """\
      - low-to-high cable crossover: 2 x 12 at 1 RIR
"""  # fmt: skip

ENOUGH = Option("hard chest sets of a session", 6, "sets", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault a session with enough hard chest sets and no crossing move."""
    for day, session in enumerate(case.coverage.sessions):
        if session.chest.low < ENOUGH.value or any(
            work.crossing and work.hard.high for work in session.works
        ):
            continue
        presses = tuple(
            work for work in session.works if work.direct_chest and "past_midline" in work.movement
        )
        title = session.session.title
        press = _press(case, presses)
        cure = straight_after(case, press, finishing(case, press), session)
        yield Fault(
            place=session.session.work_place,
            where=title,
            message=f"{title} has {session.chest} hard chest sets and nothing across the midline",
            why="in every press of the day the hands stop short of the midline, so the fibres are never "
            "loaded where they are shortest",
            cure=cure,
            seen=seen(presses, lambda work: f"{counted(work)}, {past(work)}"),
            parts=frozenset(press.serves),
            day=day,
        )


def _press(case: Case, presses: tuple[Work, ...]) -> Work:
    """The press to follow: a heavy one that nothing in the week finishes yet, else the first heavy one."""
    heavy = case.presses(presses) or presses
    return next((press for press in heavy if not case.finished(press)), heavy[0])


RULE = Rule(
    id="no-work-across-the-midline",
    looks_at="session",
    summary="a session has at least six hard chest sets and no move that crosses the midline under load",
    why="bars, handles, dip bars and the floor keep the hands apart, so presses stop short of the midline "
    "and the fibres are never loaded where they are shortest",
    change="add a crossing cable or band move of the line the session presses on",
    source=NO_STUDY,
    bad=BAD,
    good=GOOD,
    find=find,
    options=(ENOUGH,),
    covers=("no-work-at-short-length",),
    cells=("across",),
)
