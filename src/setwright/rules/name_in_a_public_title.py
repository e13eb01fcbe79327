"""Rule name-in-a-public-title: an athlete's name stands in a title that is printed for everyone."""

import re
from collections.abc import Iterator

from setwright.places import Place
from setwright.rules.rule import Case, Cure, Fault, Rule

BAD = """\
plan: Thursday lift (Isla, shoulder)
unit: kg
dose order: sets x reps
squad:
  athletes:
    - name: Isla
    - name: Rory
sessions:
  - day: Thursday
    work:
      - bent-over barbell row: 2 x 8 at 2 RIR
"""
GOOD = BAD.replace(" (Isla, shoulder)", "")


def find(case: Case) -> Iterator[Fault]:
    """One fault a title that holds the name of an athlete of the squad, unless the squad is one person."""
    week = case.coverage.week
    names = [athlete.name for athlete in week.squad.athletes] if week.squad else []
    if len(names) < 2:  # noqa: PLR2004 - a plan for one person may bear their name
        return
    titles: list[tuple[str | None, Place, str]] = [(week.name, week.place, "the plan")]
    titles += [(session.name, session.place, session.title) for session in week.sessions]
    for title, place, where in titles:
        told = [name for name in names if title and re.search(rf"(?<!\w){re.escape(name)}(?!\w)", title)]
        if told:
            yield Fault(
                place=place,
                where=where,
                message=f'the title "{title}" names {" and ".join(told)}',
                why="titles stand on every sheet and on the wall; what is one athlete's stays off them",
                cure=Cure(
                    "take the name out of the title; write what belongs to one athlete as a private note"
                ),
                to_others="a title names an athlete",
            )


RULE = Rule(
    id="name-in-a-public-title",
    looks_at="week",
    summary="the name of the plan or of a session names an athlete of the squad",
    why="titles are printed on paper that everybody reads; reasons and names do not belong there",
    change="give the session a name that says what is done, and keep the rest in a private note",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
)
