"""Rule below-the-empty-bar: a barbell load that is lighter than the lightest bar."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from setwright.coverage import Work
from setwright.rules.loading import carried, listed
from setwright.rules.rule import Case, Cure, Fault, Rule

if TYPE_CHECKING:
    from setwright.loads.typed import Carried

BAD = """\
plan: Light bench
unit: lb
dose order: sets x reps
gym:
  bars:
    45 lb: 2
  plates per rack:
    5 lb: 2 pairs
  dumbbells:
    10-50 lb by 5: 1 pair
sessions:
  - day: Monday
    work:
      - barbell back squat: 3 x 8 at 39 lb
"""
GOOD = BAD.replace("barbell back squat: 3 x 8 at 39 lb", "goblet squat: 3 x 8 at 40 lb")


def find(case: Case) -> Iterator[Fault]:
    """One fault a line, with every load of it that is too light for the bar."""
    for work, loads in carried(case):
        light = [one for one in loads if one.loadable.fault == "below the bar"]
        if light:
            yield _fault(case, work, light)


def _fault(case: Case, work: Work, light: "list[Carried]") -> Fault:
    asked, found = min(light, key=lambda one: one.asked.low)
    bar = found.above
    assert bar is not None
    far = found.far(bar, asked.unit)
    return Fault(
        place=work.item.place,
        where=work.session.title,
        message=f"{work.name} at {listed(light)} is less than {bar.words}",
        why=f"the bar alone is {far} than {asked.words}, and nothing can be taken off it",
        cure=Cure(_instead(case, work, asked.words)),
        day=work.day,
    )


def _instead(case: Case, work: Work, least: str) -> str:
    """An easier movement that this gym has, and the bar that would do."""
    bar = f"take a bar of at most {least} and list it under `bars:` in the gym file"
    other = "write a lighter movement that needs no bar"
    at_hand = {movement["key"]: movement["name"] for movement in case.means.movements}
    easier = [at_hand[key] for key in work.movement["easier"] if key in at_hand]
    return f"do {easier[0]} instead, or {bar}" if easier else f"{other}, or {bar}"


RULE = Rule(
    id="below-the-empty-bar",
    looks_at="item",
    summary="a barbell movement asks for less than the lightest bar of the gym weighs",
    why="nothing can be taken off a bar: the lifter gets more than was meant, or trains something else",
    change="take an easier movement or dumbbells, or a lighter bar",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
)
