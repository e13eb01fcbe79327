"""Rule effort-and-percent-disagree: a percent far too light for the effort written beside it."""

from collections.abc import Iterator

from setwright.rules.reserve import TABLE, Judged, judged, together
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Fives
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    warm-up: 8 min
    work:
      - barbell back squat: 3 x 5 at 60%, RPE 9
"""
GOOD = BAD.replace("60%, RPE 9", "80%, RPE 8")

UNDER = Option("points under the table", 8, "points of percent", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault a movement. A percent too heavy for its effort is told by reps-not-possible-at-load."""
    for found in together((sets for sets in judged(case) if _under(sets) > UNDER.value), _under):
        worst, work = found.worst, found.every[0].share.lift.work
        yield Fault(
            place=work.item.place,
            where=work.session.title,
            message=f"{found.movements}: {worst.said} and {worst.share.percent.high:.3g} % do not fit",
            why=f"the handbook table has {worst.lightest:g} % for that effort; who follows the percent stops "
            "far from it, who follows the effort puts far more on",
            cure=Cure(
                f"keep the one that is meant: the effort alone, or {worst.lightest:g}%, or the percent alone"
            ),
            seen=found.seen,
            day=work.day,
        )


def _under(sets: Judged) -> float:
    return 0.0 if sets.lightest is None else sets.lightest - sets.share.percent.high


RULE = Rule(
    id="effort-and-percent-disagree",
    looks_at="item",
    summary="a percent is far lighter than the effort beside it",
    why="two numbers say how hard a set is, and they differ by far more than lifters misjudge their reserve, "
    "which is about one repetition near failure",
    change="keep the effort or the percent, or make them agree",
    source=TABLE,
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("nsca_load", "zourdos2016", "halperin2022"),
    options=(UNDER,),
)
