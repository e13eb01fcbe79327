"""Rule failure-while-on-call: sets to failure in a session from which people may be called away."""

from collections.abc import Iterator

from setwright.coverage import Work
from setwright.rules.failing import to_failure
from setwright.rules.rule import Case, Cure, Fault, Rule, seen, typed

BAD = """\
plan: A crew on duty
unit: kg
dose order: sets x reps
if interrupted: note the set, go on from there when back
sessions:
  - day: Monday
    work:
      - bent-over barbell row: 3 x 8 at 2 RIR
      - push-up: 2 x max to failure, rest 2:00
"""
GOOD = BAD.replace("max to failure", "max at 2 RIR")


def find(case: Case) -> Iterator[Fault]:
    """One fault a session with `if interrupted`, its own or the plan's, and a set to failure."""
    for day, session in enumerate(case.coverage.sessions):
        works = tuple(work for work in session.works if _fails(work))
        if not works or not (session.session.if_interrupted or case.coverage.week.if_interrupted):
            continue
        names = ", ".join(dict.fromkeys(work.name for work in works))
        yield Fault(
            place=works[0].item.place,
            where=session.session.title,
            message=f"{session.session.title} may be interrupted, and {names} goes to failure",
            why="whoever is called away right after a set to failure has least to work with when it counts",
            cure=Cure(
                f"stop {works[0].name} short of failure (`at 2 RIR`), keep such sets for days off duty, or "
                "have whoever answers for the crew sign them off and write that under `allow:`"
            ),
            seen=seen(works, lambda work: typed(work.item)),
            day=day,
        )


def _fails(work: Work) -> bool:
    return work.item.dose is not None and any(map(to_failure, work.item.dose.groups))


RULE = Rule(
    id="failure-while-on-call",
    looks_at="session",
    summary="a set to failure in a session with `if interrupted`: people may be called away from it",
    why="ten minutes after hard lifting seven firefighters took 430 s for the tasks of a fire, rested 297, "
    "and an hour after it 326, no clear difference any more (mason2023); twelve others took 9.6 % longer "
    "after an exercise session (dennison2012)",
    change="stop short of failure on duty, or keep such sets for days off",
    source="mason2023 and dennison2012 (abstracts)",
    bad=BAD,
    good=GOOD,
    find=find,
    folds=True,
    sources=("mason2023", "dennison2012"),
)
