"""Rule limit-broken: a line goes beyond a limit that a clinician set for an athlete."""

from collections.abc import Iterator
from itertools import groupby
from typing import Final, NamedTuple

from setwright.coverage import Movement
from setwright.findings import Level, Seen
from setwright.library.table import Library
from setwright.loads.lines import Line
from setwright.model.people import Athlete, Limit
from setwright.model.plan import Week
from setwright.rules.aims import training
from setwright.rules.cures import instead_for
from setwright.rules.doing import Task, tasks
from setwright.rules.limits import TOLERANCE_DEG, Held, has_ended, hold, touches
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: A limit on the shoulder
unit: kg
dose order: sets x reps
squad:
  athletes:
    - name: Isla
      limits:
        - arm behind at most: 0 deg
          until: cleared
          set by: the club's physiotherapist
    - name: Rory
sessions:
  - day: Monday
    work:
      - parallel-bar dip: 2 x 8 at 2 RIR
      - bent-over barbell row: 2 x 8 at 2 RIR
        not for: [Isla]
"""
GOOD = BAD.replace("at 2 RIR\n      - bent", "at 2 RIR\n        not for: [Isla]\n      - bent")

TOLERANCE = Option("about a limit", TOLERANCE_DEG, "degrees", CHOICE)
LEVELS: Final = {"broken": Level.error}
"""An answer that is missing here is advice: a question for whoever set the limit."""

_SAYS: Final = {
    "broken": "{who}: the written limit, {limit}, is broken by {line}",
    "at the limit": "{who}: the written limit, {limit}, is just reached by {line}",
    "not known": "{who}: the written limit, {limit}, may be broken by {line}",
    "ended": "{who}: the written limit, {limit}, ended before {line}",
}
_WHY: Final = {
    "broken": "a limit always wins over the plan",
    "at the limit": "the model's figures are for one body; {tolerance:g} deg either way is no answer",
    "not known": "the movement is counted, not scored, so its angles are not known",
    "ended": "a date on paper clears nobody: whoever set the limit does",
}
_WHY_LOAD: Final = _WHY | {
    "at the limit": "each hand holds less, both together more: which is meant, only whoever set it knows",
    "not known": "the plan leaves the load open, or the body itself is lifted",
}
_REACHES: Final = {
    "arm behind": "takes the arm {deg:.0f} deg behind the body",
    "arm up": "takes the arm {deg:.0f} deg up",
    "arm across": "takes the arm {deg:.0f} deg across the body",
    "arm turned out": "turns the arm {deg:.0f} deg out",
}


class Met(NamedTuple):
    """A line of an athlete, the limit it was held against, and what came of it."""

    athlete: Athlete
    limit: Limit
    task: Task
    movement: Movement
    held: Held


def find(case: Case) -> Iterator[Fault]:
    """One fault a limit and answer, with every line it touches."""
    for athlete in training(case.coverage.week):
        lines = sorted(
            met(case.coverage.week, case.means.table, athlete),
            key=lambda one: (one.limit.place.line, one.held.answer),
        )
        for _, some in groupby(lines, key=lambda one: (one.limit, one.held.answer)):
            yield _fault(case, tuple(some))


def met(week: Week, table: Library, athlete: Athlete) -> Iterator[Met]:
    """Every line of an athlete that is not well inside a limit of theirs, once a limit."""
    for task in tasks(week, athlete):
        if task.item.key is None:
            continue
        movement = table.movement(task.item.key)
        for limit in athlete.limits:
            held = _held(limit, task, athlete, week, table)
            if held.answer == "inside" or not touches(limit, task.item, movement, athlete):
                continue
            if has_ended(limit, week, task.session):
                held = Held("ended", held.reached_deg)
            yield Met(athlete, limit, task, movement, held)


def _held(limit: Limit, task: Task, athlete: Athlete, week: Week, table: Library) -> Held:
    movement = table.movement(str(task.item.key))
    if limit.load_at_most is None:
        return hold(limit, movement, tolerance_deg=TOLERANCE.value)
    from setwright.rules.load_limits import hold_load  # noqa: PLC0415 - only a limit on the load needs it

    line = Line(0, task.session, task.item, task.group, movement, (athlete,))
    return hold_load(limit, line, week, table)


def _fault(case: Case, lines: tuple[Met, ...]) -> Fault:
    first = min(lines, key=lambda one: one.task.item.place.line)
    athlete, limit, answer = first.athlete, first.limit, first.held.answer
    names = list(dict.fromkeys(one.task.item.name for one in lines))
    line = names[0] if len(names) == 1 else f"{names[0]} and {len(names) - 1} more"
    return Fault(
        place=first.task.item.place,
        where=first.task.session.title,
        message=_SAYS[answer].format(who=athlete.name, line=line, limit=limit_words(limit)),
        why=(_WHY if limit.load_at_most is None else _WHY_LOAD)[answer].format(tolerance=TOLERANCE.value),
        cure=Cure(_change(case, first, others=len(names) - 1)),
        seen=tuple(Seen(_seen(one), one.task.item.place.line) for one in lines),
        level=LEVELS.get(answer, Level.advice),
        to_others=f"a limit of an athlete stands against {line}",
        who=athlete.name,
    )


def limit_words(limit: Limit) -> str:
    """The limit as the coach wrote it: "arm behind at most 0 deg, left", "no overhead"."""
    if limit.load_at_most is not None:
        what = f"load at most {limit.load_at_most:g} {limit.unit or ''}".strip()
    elif limit.no:
        what = f"no {' or '.join(limit.no)}"
    else:
        what = f"{limit.angle} at most {limit.at_most_deg:g} deg"
    return f"{what}, {limit.side}" if limit.side else what


def _seen(one: Met) -> str:
    title, name, how_far = one.task.session.title, one.task.item.name, reached(one)
    between = ": " if how_far == one.held.asked else " "
    return f"{title}, {name}{between if how_far else ''}{how_far}"


def reached(one: Met) -> str:
    """How far a line goes: "takes the arm 34 deg behind the body", "42.5 kg"; empty where nobody knows."""
    deg, angle = one.held.reached_deg, one.limit.angle
    return one.held.asked if deg is None or angle is None else _REACHES[angle].format(deg=deg)


def _change(case: Case, one: Met, *, others: int) -> str:
    who = one.limit.set_by or "whoever set the limit"
    if one.held.answer != "broken":
        return f"ask {who} before {one.athlete.name} does {'any of them' if others else 'it'}"
    if one.limit.load_at_most is not None:
        own = f"`load:` under {one.task.item.name} and below it `{one.athlete.name}:` with a load inside it"
        return f"write {own}; and so for each line listed" if others else f"write {own}"
    change = instead_for(case, one.athlete, one.task.item, one.movement)
    return f"{change}; and so for each line listed" if others else change


RULE = Rule(
    id="limit-broken",
    looks_at="item",
    summary="a line takes an athlete beyond an angle or a load, or into work, that a clinician has limited",
    why="a limit always wins: it is obeyed, never argued with; only whoever set it lifts it",
    change="give the athlete a movement inside the limit, write not for:, or ask whoever set the limit",
    source="the written limit; angles from the arm path of one cadaver-sized model",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(TOLERANCE,),
)
