"""Rule below-the-empty-bar: a barbell load that is lighter than the lightest bar."""

from collections.abc import Iterator
from typing import TYPE_CHECKING, Final

from setwright.loads.lines import Line
from setwright.rules.lifts import names
from setwright.rules.loading import Theirs, alike, listed, theirs
from setwright.rules.rule import Case, Cure, Fault, Rule

if TYPE_CHECKING:
    from setwright.loads.put import Put
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

WITHOUT_A_BAR: Final = "write a lighter movement that needs no bar"


def find(case: Case) -> Iterator[Fault]:
    """One fault a line with every load of it that is too light; one a movement for those worked out."""
    for line, loads in alike(case):
        light = [one for one in loads if _is_light(one)]
        if light:
            yield _fault(case, line, light)
    for found in theirs(case, _is_light):
        bar = _bar(found.loads[0])
        yield _fault(case, found.first, found.loads)._replace(
            message=f"{found.name}: {listed(found.loads)} for {found.who}, less than {bar.words}",
            cure=Cure(_change(case, found)),
            seen=(*found.told(lambda one: one.words), *found.lines),
            to_others=f"{found.name}: the load of an athlete is less than {bar.words}",
        )


def _is_light(one: "Carried") -> bool:
    return one.loadable.fault == "below the bar" and not one.in_range


def _bar(one: "Carried") -> "Put":
    """The lightest bar."""
    assert one.loadable.above is not None
    return one.loadable.above


def _fault(case: Case, line: Line, light: "list[Carried]") -> Fault:
    least = min(light, key=lambda one: one.loadable.asked)
    bar, unit = _bar(least), least.asked.unit
    return Fault(
        place=line.item.place,
        where=line.session.title,
        message=f"{line.name} at {listed(light)} is less than {bar.words}",
        why=f"the bar alone is {least.loadable.far(bar, unit)} than {least.words}, and nothing can be taken "
        "off it",
        cure=Cure(_instead(case, line, least.words)),
        day=line.day,
    )


def _instead(case: Case, line: Line, least: str) -> str:
    """An easier movement that this gym has, and the bar that would do."""
    easier = case.means.easier(line.movement)
    return f"{f'do {easier} instead' if easier else WITHOUT_A_BAR}, or {_lighter_bar(least)}"


def _change(case: Case, found: Theirs) -> str:
    """What those do for whom the bar is too heavy."""
    easier = case.means.easier(found.first.movement)
    least = min(found.loads, key=lambda one: one.loadable.asked)
    line = f"`- {easier}: 3 x 8 at 2 RIR`, or any dose without a percent"
    own = f"write `instead:` under the line, below it `{names(least.athletes)}:`, and below that {line}"
    return f"{own if easier else WITHOUT_A_BAR}; or {_lighter_bar(least.words)}"


def _lighter_bar(least: str) -> str:
    return f"take a bar of at most {least} and list it under `bars:` in the gym file"


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
