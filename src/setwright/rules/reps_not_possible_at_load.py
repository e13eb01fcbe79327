"""Rule reps-not-possible-at-load: more repetitions than the handbook table has at that share of the max."""

from collections.abc import Iterator

from setwright.loads.maxes import WHOLE
from setwright.loads.ranges import one
from setwright.rules.lifts import names
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
      - barbell back squat: 3 x 5 at 95%
"""
GOOD = BAD.replace("95%", "85%")

FEW = Option("repetitions that count as few", 5, "repetitions", CHOICE)
OVER_FEW = Option("points over the table at few repetitions", 4, "points of percent", CHOICE)
OVER_MANY = Option("points over the table at more repetitions", 8, "points of percent", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault a movement for percents, one for kilograms. What is above the max is told elsewhere."""
    for found in together((sets for sets in judged(case) if _is_too_much(sets)), _over):
        worst, work = found.worst, found.every[0].share.lift.work
        athletes = [sets.share.athlete for sets in found.every if sets.share.athlete]
        of = f"the max of {names(athletes)}" if athletes else "the tested max"
        yield Fault(
            place=work.item.place,
            where=work.session.title,
            message=f"{found.movements}: {worst.said} at {worst.share.percent.low:.3g} % of {of}: possible?",
            why=f"the handbook table has {worst.heaviest:g} % for as many; lifters and lifts differ, so this "
            "is a question",
            cure=Cure(_change(worst, case)),
            seen=found.seen,
            day=work.day,
        )


def _over(sets: Judged) -> float:
    return sets.share.percent.low - sets.heaviest


def _is_too_much(sets: Judged) -> bool:
    points = OVER_FEW.value if sets.reps.low <= FEW.value else OVER_MANY.value
    return _over(sets) > points and sets.share.percent.low <= WHOLE


def _change(worst: Judged, case: Case) -> str:
    """The percent that the table has, or the max that was meant; for kilograms, those or a new max."""
    athlete, best = worst.share.athlete, worst.share.best
    if athlete is None or best is None:
        meant = (
            "" if case.coverage.week.percent_of else "; if a training max is meant, write `of training max`"
        )
        return f"write {worst.heaviest:g}%, or fewer repetitions{meant}"
    most = best._replace(kg=best.kg.times(one(worst.heaviest / WHOLE))).said
    return f"write up to {most}, or fewer repetitions, or bring the max of {athlete.name} up to date"


RULE = Rule(
    id="reps-not-possible-at-load",
    looks_at="item",
    summary="a line asks for more repetitions than the handbook table has at that share of the tested max",
    why="at a share of the max only so many repetitions can be done; more of them are a slip, or a training "
    "max was meant",
    change="lighten the load, take repetitions off, or say which max is meant",
    source=TABLE,
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("nsca_load", "zourdos2016"),
    options=(FEW, OVER_FEW, OVER_MANY),
)
