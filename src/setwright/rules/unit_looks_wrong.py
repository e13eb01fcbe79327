"""Rule unit-looks-wrong: a max that fits the others only when it is read in the other unit."""

from collections.abc import Iterator
from itertools import permutations
from typing import Final, NamedTuple

from setwright.findings import Seen
from setwright.library.table import Library, Movement
from setwright.loads.asked_for import each_hand
from setwright.loads.bodyweight import by_bodyweight
from setwright.loads.maxes import MaxFound, max_of
from setwright.loads.means_of import BOTH
from setwright.model.people import Athlete, Max
from setwright.reading.loads import KG_PER_LB
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Squat and press
unit: lb
dose order: sets x reps
squad:
  athletes:
    - name: Ann
      maxes:
        flat barbell bench press: 95 lb tested 2027-08-30
        barbell back squat: 135 lb tested 2027-08-30
    - name: Bo
      maxes:
        flat barbell bench press: 185 lb tested 2027-08-30
        barbell back squat: 275 lb tested 2027-08-30
    - name: Cy
      maxes:
        flat barbell bench press: 92 lb tested 2027-08-30
        barbell back squat: 275 lb tested 2027-08-30
sessions:
  - day: Monday
    work:
      - barbell back squat: 4 x 6 at 72.5%
"""
GOOD = BAD.replace("press: 92 lb", "press: 92 kg")

OTHERS: Final = 2
"""Others of the squad with both lifts from whom a usual ratio is taken (choice, no source)."""
OFF = Option("times off the usual ratio from which a unit is asked about", 1.8, "1", CHOICE)
FITS = Option("times off the usual ratio up to which the other unit fits", 1.25, "1", CHOICE)


class _Lift(NamedTuple):
    """A max of an athlete on a bar or machine, and where it stands; ``kg`` of both hands together."""

    athlete: Athlete
    entry: Max
    movement: Movement
    best: MaxFound
    kg: float

    @property
    def in_the_other_unit(self) -> float:
        """Kilograms, when the number was meant in the other unit."""
        return self.kg / KG_PER_LB if self.best.unit == "lb" else self.kg * KG_PER_LB


class _Usual(NamedTuple):
    """The ratio of two lifts, and whose it is."""

    ratio: float
    whose: str


def find(case: Case) -> Iterator[Fault]:
    """One fault a max: the first of the athlete's other maxes that it does not fit is named."""
    squad = case.coverage.week.squad
    every = [_lifts(athlete, case.means.table) for athlete in (squad.athletes if squad else ())]
    for lifts in every:
        told = set()
        for one, beside in permutations(lifts, 2):
            usual = _usual(one, beside, every)
            if usual is None or _times_off(one.kg / beside.kg, usual) < OFF.value:
                continue
            fits = _times_off(one.in_the_other_unit / beside.kg, usual) <= FITS.value
            if fits and one.entry.place not in told:
                told.add(one.entry.place)
                yield _fault(one, beside, usual)


def _lifts(athlete: Athlete, table: Library) -> list[_Lift]:
    found = []
    for entry in athlete.maxes:
        movement = table.movement(entry.key) if entry.key else None
        if movement is None or by_bodyweight(movement):
            continue
        best = max_of(athlete, movement, "tested max")
        if isinstance(best, MaxFound):
            kg = (best.kg.low + best.kg.high) / 2 * (BOTH if each_hand(movement) else 1)
            found.append(_Lift(athlete, entry, movement, best, kg))
    return found


def _usual(one: _Lift, beside: _Lift, every: list[list[_Lift]]) -> _Usual | None:
    """The middle of the others' ratios, else the published one; None when neither is known."""
    ratios = []
    for lifts in every:
        kg = {lift.movement["key"]: lift.kg for lift in lifts if lift.athlete is not one.athlete}
        if {one.movement["key"], beside.movement["key"]} <= kg.keys():
            ratios.append(kg[one.movement["key"]] / kg[beside.movement["key"]])
    if len(ratios) >= OTHERS:
        return _Usual(sorted(ratios)[len(ratios) // 2], "of the others in the squad")
    (to, share), (other_to, other_share) = (_published(lift.movement) for lift in (one, beside))
    return _Usual(share / other_share, "published for trained lifters") if to == other_to else None


def _published(movement: Movement) -> tuple[str, float]:
    """The lift that a movement's published ratio is to, and the ratio; itself without one."""
    ratio = movement["load_ratio"]
    return (str(ratio["to"]), float(ratio["value"])) if ratio else (str(movement["key"]), 1.0)


def _times_off(ratio: float, usual: _Usual) -> float:
    return max(ratio / usual.ratio, usual.ratio / ratio)


def _fault(one: _Lift, beside: _Lift, usual: _Usual) -> Fault:
    other = "kg" if one.best.unit == "lb" else "lb"
    number = one.best.said.removesuffix(f" {one.best.unit}")
    return Fault(
        place=one.entry.place,
        where="the squad",
        message=f"{one.entry.movement} of {one.athlete.name}, {one.best.said}: typed in {other}?",
        why=f"it is {one.kg / beside.kg:.2f} of {beside.entry.movement}, and {usual.ratio:.2f} is usual "
        f"({usual.whose}); {number} {other} would be {one.in_the_other_unit / beside.kg:.2f}",
        cure=Cure(
            f"look it up; nothing is converted. When {other} was meant, write {other} behind the number"
        ),
        seen=tuple(Seen(f"{lift.entry.movement}: {lift.entry.text}") for lift in (one, beside)),
    )


RULE = Rule(
    id="unit-looks-wrong",
    looks_at="week",
    summary="a max does not fit the athlete's other maxes, and would in the other unit",
    why="a number typed in kilograms among pounds loads less than half of what was meant, the other way "
    "more than twice; the ratio to other lifts is the tell",
    change="look it up and write the unit that was meant",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(OFF, FITS),
)
