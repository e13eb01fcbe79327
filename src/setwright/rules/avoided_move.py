"""Rule avoided-move: a line asks an athlete for a movement on their list of movements to avoid."""

from collections.abc import Iterator
from itertools import groupby
from typing import Final, NamedTuple

from setwright.findings import Level, Seen
from setwright.library.table import Library
from setwright.model.people import Athlete, Limit
from setwright.model.plan import Week
from setwright.rules.aims import training
from setwright.rules.cures import instead_for
from setwright.rules.doing import Task, tasks
from setwright.rules.limits import has_ended, sounds_like
from setwright.rules.rule import Case, Cure, Fault, Rule

BAD = """\
plan: A dip that is to be avoided
unit: kg
dose order: sets x reps
squad:
  athletes:
    - name: Isla
      avoid: [bar dips]
    - name: Rory
sessions:
  - day: Monday
    work:
      - dip: 2 x 8 at 2 RIR
      - bent-over barbell row: 2 x 8 at 2 RIR
"""
GOOD = BAD.replace("at 2 RIR\n      - bent", "at 2 RIR\n        not for: [Isla]\n      - bent")

_LEVELS: Final = {"is": Level.error}
"""Otherwise advice: a question for whoever wrote the list."""
_SAYS: Final = {
    "is": '{who} avoids "{avoided}", and {line} is on the list',
    "sounds like": '{who} avoids "{avoided}"; is {line} meant too?',
    "ended": '{who} avoids "{avoided}" until a day before {line}',
}
_WHY: Final = {
    "is": "what an athlete is to avoid always wins over the plan",
    "sounds like": "its name holds the same words, and a list is seldom complete",
    "ended": "a date on paper clears nobody: whoever set the limit does",
}


class Listed(NamedTuple):
    """A line of an athlete, the name on the list, and how the two belong together.

    ``limit``: under which the name stands; None on the athlete's own list.
    """

    avoided: str
    how: str
    task: Task
    limit: Limit | None = None


def find(case: Case) -> Iterator[Fault]:
    """One fault an athlete, movement on the list and kind of likeness, with every line."""
    for athlete in training(case.coverage.week):
        on_list = sorted(
            listed(case.coverage.week, case.means.table, athlete), key=lambda one: (one.avoided, one.how)
        )
        for _, lines in groupby(on_list, key=lambda one: (one.avoided, one.how)):
            yield _fault(case, athlete, tuple(lines))


def listed(week: Week, table: Library, athlete: Athlete) -> Iterator[Listed]:
    """Every line of an athlete that is on a list of theirs, or may be, once a name on it."""
    for task in tasks(week, athlete):
        for name in athlete.avoid:
            if how := _how(table, name, task):
                yield Listed(name, how, task)
        for limit in athlete.limits:
            for name in limit.avoid:
                if how := _how(table, name, task):
                    how = "ended" if has_ended(limit, week, task.session) else how
                    yield Listed(name, how, task, limit)


def _how(table: Library, avoided: str, task: Task) -> str:
    """How a line is on the list: "is" by any of its names, "sounds like" where its name holds the words."""
    item = task.item
    if item.key is not None and table.find(avoided).key == item.key:
        return "is"
    named = item.name if item.key is None else str(table.movement(item.key)["name"])
    return "sounds like" if sounds_like(avoided, named) else ""


def _fault(case: Case, athlete: Athlete, lines: tuple[Listed, ...]) -> Fault:
    first = min(lines, key=lambda one: one.task.item.place.line)
    item, key = first.task.item, first.task.item.key
    change = f"ask whoever wrote the list before {athlete.name} does it"
    if first.how == "is" and key is not None:
        change = instead_for(case, athlete, item, case.means.table.movement(key))
    return Fault(
        place=item.place,
        where=first.task.session.title,
        message=_SAYS[first.how].format(who=athlete.name, avoided=first.avoided, line=item.name),
        why=_WHY[first.how],
        cure=Cure(change),
        seen=tuple(
            Seen(f"{one.task.session.title}, {one.task.item.name}", one.task.item.place.line) for one in lines
        ),
        level=_LEVELS.get(first.how, Level.advice),
        to_others=f"a list of an athlete's stands against {item.name}",
        who=athlete.name,
    )


RULE = Rule(
    id="avoided-move",
    looks_at="item",
    summary="an athlete is given a movement that their list says to avoid, under whichever of its names",
    why="the list wins over the plan; a movement has several names, and re-used days carry it along",
    change="give the athlete another movement, or write not for: with the name",
    source="the squad file; common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
)
