"""Rule modified-but-nothing-changed: an athlete takes part with changes, and a session holds none."""

from collections.abc import Iterator

from setwright.findings import Seen
from setwright.model.people import Athlete
from setwright.model.plan import Session
from setwright.rules.aims import training
from setwright.rules.doing import Task, tasks
from setwright.rules.rule import Case, Cure, Fault, Rule

BAD = """\
plan: Nothing changed for her
unit: kg
dose order: sets x reps
squad:
  athletes:
    - name: Isla
      participation: modified
    - name: Rory
sessions:
  - day: Monday
    work:
      - push press: 3 x 5 at 3 RIR
      - pull-up: 3 x 6 at 3 RIR
"""
GOOD = BAD.replace("      - pull-up", "        not for: [Isla]\n      - pull-up")


def find(case: Case) -> Iterator[Fault]:
    """One fault an athlete without written limits, with every session that changes nothing for them."""
    week = case.coverage.week
    for athlete in training(week):
        if athlete.participation != "modified" or athlete.limits or athlete.avoid:
            continue
        done = list(tasks(week, athlete))
        in_order = (cover.session for cover in case.coverage.sessions)
        unchanged = [session for session in in_order if _as_everyone(session, done)]
        if unchanged:
            yield _fault(athlete, unchanged)


def _as_everyone(session: Session, done: list[Task]) -> bool:
    here = [task for task in done if task.session is session]
    return len(here) == len((*session.warm_up, *session.items())) and all(task.as_written for task in here)


def _fault(athlete: Athlete, sessions: list[Session]) -> Fault:
    first = sessions[0]
    return Fault(
        place=first.place,
        where=first.title,
        message=f"{athlete.name} takes part with changes, and {first.title} changes nothing for them",
        why="the sheet would ask for every line as it stands",
        cure=Cure(
            f"write `not for: [{athlete.name}]` under the lines that are out, or `instead:` with the "
            "movement that takes their place"
        ),
        seen=tuple(Seen(session.title, session.place.line) for session in sessions),
        to_others=f"{first.title} changes nothing for an athlete who takes part with changes",
        who=athlete.name,
    )


RULE = Rule(
    id="modified-but-nothing-changed",
    looks_at="session",
    summary="an athlete takes part with changes, no limit says which, and a session changes no line",
    why="whoever takes part with changes needs them on paper: people follow the sheet as it is written",
    change="write not for:, instead: or a load of their own under the lines that are not for them",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
)
