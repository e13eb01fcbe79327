"""Rule above-tested-max: a load that is more than an athlete has ever lifted."""

from collections.abc import Iterator

from setwright.findings import Level
from setwright.loads.maxes import WHOLE
from setwright.reading.habits import PERCENT_AT_MOST
from setwright.rules.lifts import Share, by_movement, lines_of, names, shares
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Heavy Monday
unit: kg
dose order: sets x reps
squad:
  athletes:
    - name: Ann
      maxes:
        barbell back squat: 60 kg tested 2027-09-06
sessions:
  - day: Monday
    work:
      - barbell back squat: 3 x 1 at 62.5 kg
"""
GOOD = BAD.replace("62.5 kg", "55 kg")

CANT_BE_LIFTED = Option("percent of the tested max from which it is an error", PERCENT_AT_MOST, "%", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault a movement for loads in kilograms, one for percents; the low end of a range is judged."""
    above = (share for share in shares(case) if share.percent.low > WHOLE)
    for over in by_movement(above, lambda share: share):
        worst = max(over, key=lambda share: share.percent.low)
        work = over[0].lift.work
        percent = round(worst.percent.low)
        whose = (
            f"the tested max of {names(one.athlete for one in over if one.athlete)}"
            if worst.best
            else "the max"
        )
        yield Fault(
            place=work.item.place,
            where=work.session.title,
            message=f"{work.name} asks for {percent} % of {whose}",
            why="it is more than was ever lifted once"
            + (", and over what a good day gives" if percent > CANT_BE_LIFTED.value else ""),
            cure=Cure(_change(worst)),
            seen=lines_of(one.lift for one in over),
            day=work.day,
            to_others=f"{work.name} asks for more than an athlete's max" if worst.athlete else "",
            level=Level.error if worst.percent.low > CANT_BE_LIFTED.value else None,
        )


def _change(worst: Share) -> str:
    if worst.best is None or worst.athlete is None:
        return "write a percent up to 100, or `test 1RM` when a new max is meant"
    who = worst.athlete.name
    return (
        f"write a load below {worst.best.said} in a line of its own with `for: [{who}]`, or bring the max of "
        f"{who} up to date in the squad file"
    )


RULE = Rule(
    id="above-tested-max",
    looks_at="item",
    summary="a line asks an athlete for more than the tested max",
    why="more than was ever lifted is a test, whatever the line calls it; far more can't be lifted at all",
    change="lighten the load, give the athlete a line of its own, or bring the max up to date",
    source="the plan language (docs/plan-language.md)",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(CANT_BE_LIFTED,),
)
