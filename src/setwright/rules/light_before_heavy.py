"""Rule light-before-heavy: a light chest move stands before the heavy press of the same line."""

from collections.abc import Iterator

from setwright.coverage import Work
from setwright.coverage.shapes import CLASSES
from setwright.rules.rule import Case, Cure, Fault, Rule, counted, seen

BAD = """\
plan: Crossover first
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - level cable crossover: 2 x 12 at 1 RIR
      - flat barbell bench press: 3 x 8 at 2 RIR
      - bench pull: 4 x 8 at 2 RIR
"""
CROSSOVER = "      - level cable crossover: 2 x 12 at 1 RIR\n"
GOOD = BAD.replace(CROSSOVER, "").replace("      - bench pull", f"{CROSSOVER}      - bench pull")


def find(case: Case) -> Iterator[Fault]:
    """One fault a session and line: its first heavy press, with every lighter fly that comes before it."""
    for session in case.coverage.sessions:
        first: dict[str, Work] = {}
        for press in case.presses(session.works):
            first.setdefault(press.movement["line"], press)
        for press in first.values():
            before = session.works[: session.works.index(press)]
            light = tuple(work for work in before if _lighter_on_its_line(case, work, press))
            if light:
                yield _fault(press, light)


def _lighter_on_its_line(case: Case, work: Work, press: Work) -> bool:
    """Whether a fly or crossing move with hard sets is of a lighter class and of the line of a press."""
    lighter = _class(case, work) < _class(case, press)
    return bool(work.hard.high) and not work.press and lighter and bool(set(work.serves) & set(press.serves))


def _class(case: Case, work: Work) -> int:
    return CLASSES.index(case.means.load_class(work.movement))


def _fault(press: Work, light: tuple[Work, ...]) -> Fault:
    names = " and ".join(dict.fromkeys(work.name for work in light))
    return Fault(
        place=light[0].item.place,
        where=press.session.title,
        message=f"{press.session.title}: {names} before the heavy {press.name} of the same line",
        why="what is tired by the light work can't be loaded by the heavy one, and the heavy one is what "
        "the light one can't replace",
        cure=Cure(f"put {names} after {press.name}, straight after it without rest where it crosses"),
        seen=seen((*light, press), counted),
        day=press.day,
    )


RULE = Rule(
    id="light-before-heavy",
    looks_at="session",
    summary="a fly or crossing move with hard sets stands before the heavy press of the same line",
    why="what is done first is done freshest; a press done after a fly of its own line is done with less",
    change="the heavy press first, what finishes it after it",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    folds=True,
)
