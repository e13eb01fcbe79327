"""Rule stale-max: a percent of a max that is weeks old when the plan starts."""

from collections.abc import Iterator
from math import ceil

from setwright.findings import Seen
from setwright.loads.asked_for import Kilograms
from setwright.loads.maxes import MaxFound
from setwright.model.people import Athlete
from setwright.rules.lifts import asked_of_everybody, lines_of, names
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Squat by percent
unit: kg
dose order: sets x reps
starts: 2027-10-04
squad:
  athletes:
    - name: Ann
      maxes:
        barbell back squat: 60 kg tested 2027-07-05
sessions:
  - day: Monday
    work:
      - barbell back squat: 4 x 6 at 72.5%
"""
GOOD = BAD.replace("2027-07-05", "2027-08-30")

OLDEST = Option("oldest max a percent is taken of", 8, "weeks", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault for all maxes that some line takes a percent of and that are old when the plan starts."""
    starts = case.coverage.week.starts
    if starts is None:
        return
    stale: dict[MaxFound, list[Athlete]] = {}
    used = []
    for one in asked_of_everybody(case):
        best = one.asked.of if isinstance(one.asked, Kilograms) else None
        if best and best.weeks_old(starts) > OLDEST.value:
            stale.setdefault(best, []).append(one.athlete)
            used.append(one.lift)
    if not stale:
        return
    oldest = min(stale, key=lambda best: best.on)
    who = names(athlete for athletes in stale.values() for athlete in athletes)
    yield Fault(
        place=used[0].work.item.place,
        where=case.week_word,
        message=f"percents are taken of maxes up to {ceil(oldest.weeks_old(starts))} weeks old, of {who}",
        why=f"after more than {OLDEST.value:g} weeks, on {starts}, the same percent is lighter or heavier "
        "than it was meant",
        cure=Cure(
            "test again, or put a set of these days in the squad file: "
            f"`{oldest.movement}: from 50 kg x 5 on {starts}`"
        ),
        seen=(*(_told(best, athletes) for best, athletes in stale.items()), *lines_of(used)),
    )


def _told(best: MaxFound, athletes: list[Athlete]) -> Seen:
    return Seen(f"{best.movement} {best.how} ({names(athletes)})")


RULE = Rule(
    id="stale-max",
    looks_at="week",
    summary="a percent is taken of a max that is more than eight weeks old when the plan starts",
    why="a max moves with training and with rest; on an old sheet everybody gets last season's loads",
    change="test again, or estimate the max from a set of these days",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(OLDEST,),
)
