"""Rule load-not-loadable: a load that the bars, plates, dumbbells and pins of this gym do not make."""

from collections.abc import Iterator
from functools import partial
from typing import TYPE_CHECKING, Final, NamedTuple

from setwright.findings import Level, Seen
from setwright.loads.lines import Line
from setwright.loads.put import mass_words
from setwright.rules.lifts import names
from setwright.rules.loading import Theirs, alike, listed, theirs
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

if TYPE_CHECKING:
    from setwright.loads.typed import Carried

BAD = """\
plan: Odd loads
unit: kg
dose order: sets x reps
gym:
  bars:
    20 kg: 1
  plates per rack:
    20 kg: 1 pair
    5 kg: 1 pair
    1.25 kg: 1 pair
sessions:
  - day: Monday
    work:
      - barbell back squat: 3 x 8 at 61 kg
"""
GOOD = BAD.replace("61 kg", "60 kg")

WORTH_A_WORD = Option("difference from what was asked", 0.5, "% of it", CHOICE)
FELT = Option("difference of a load that is worked out and rounded", 2.5, "% of it", CHOICE)


class Reach(NamedTuple):
    """On which side of everything here a load lies, in words."""

    than: str
    end: str


OUT_OF_REACH: Final = {"too heavy": Reach("more", "most"), "too light": Reach("less", "least")}


def find(case: Case) -> Iterator[Fault]:
    """For each line one fault about the loads that can be come near to, one about those out of reach.

    Those worked out for athletes are one fault a movement: they are rounded anyway, so only a difference that
    is felt is told.
    """
    for line, loads in alike(case):
        near = [one for one in loads if _is_off(one, WORTH_A_WORD.value)]
        if near:
            yield _near(line, near)
        for fault, how in OUT_OF_REACH.items():
            out = [one for one in loads if _is_out(one, fault)]
            if out:
                yield _out_of_reach(line, out, how)
    for found in theirs(case, partial(_is_off, percent=FELT.value)):
        yield _theirs_near(found)
    for fault, how in OUT_OF_REACH.items():
        for found in theirs(case, partial(_is_out, fault=fault)):
            yield _theirs_out(found, how)


def _near(line: Line, loads: "list[Carried]") -> Fault:
    rounding = loads[0].loadable.rounding
    return Fault(
        place=line.item.place,
        where=line.session.title,
        message=f"{line.name} at {listed(loads)}: what is here makes no such load",
        why=RULE.why,
        cure=Cure("; ".join(map(_instead, loads))),
        seen=(*_notes(loads), *(() if rounding == "nearest" else (Seen(f"the squad rounds {rounding}"),))),
        day=line.day,
    )


def _out_of_reach(line: Line, loads: "list[Carried]", how: Reach) -> Fault:
    """An error, but for a band: it can always be stretched a little more or less."""
    change = f"write at {how.end} {_last(loads[0])}, or list in the gym file what else there is"
    return Fault(
        place=line.item.place,
        where=line.session.title,
        message=f"{line.name} at {listed(loads)}: {how.than} than anything here",
        why="the gym file lists nothing that makes it",
        cure=Cure(_stamped(loads[0]) + change),
        seen=_notes(loads),
        day=line.day,
        level=None if loads[0].loadable.by.kind == "band" else Level.error,
    )


def _theirs_near(found: Theirs) -> Fault:
    """Nothing has to be written: the loads are rounded on paper."""
    first = found.loads[0]
    rounding = first.loadable.rounding
    put = first.put
    assert put is not None
    theirs_alone = f"{names(first.athletes)}: {mass_words(put.kg, first.asked.unit)}"
    own = f"`load:` under the line and below it `{theirs_alone}`"
    return Fault(
        place=found.first.item.place,
        where=found.first.session.title,
        message=f"{found.name}: what is here does not make the loads of {found.who}",
        why=f"each is rounded ({rounding}) to what can be put on, and the difference is felt",
        cure=Cure(f"leave it to the rounding, write a load of their own ({own}), or list smaller plates"),
        seen=(*found.told(_rounded), *found.lines),
        day=found.first.day,
        to_others=f"{found.name}: what is here does not make the load of an athlete",
    )


def _theirs_out(found: Theirs, how: Reach) -> Fault:
    change = f"write under `load:`, by name, at {how.end} {_last(found.loads[0])}"
    return _out_of_reach(found.first, found.loads, how)._replace(
        message=f"{found.name}: {listed(found.loads)} for {found.who}, {how.than} than anything here",
        cure=Cure(f"{change}, or list in the gym file what else there is"),
        seen=(*found.told(lambda one: one.words), *found.lines),
        to_others=f"{found.name}: the load of an athlete is {how.than} than anything here",
    )


def _rounded(one: "Carried") -> str:
    assert one.put is not None
    return f"{one.words} asked, {one.loadable.words(one.put, one.asked.unit)}"


def _notes(loads: "list[Carried]") -> tuple[Seen, ...]:
    return tuple(Seen(f"{one.words}: {one.loadable.note}") for one in loads if one.loadable.note)


def _is_out(one: "Carried", fault: str) -> bool:
    return one.loadable.fault == fault and not one.in_range


def _is_off(one: "Carried", percent: float) -> bool:
    put = one.loadable.put
    return put is not None and not one.in_range and abs(one.loadable.off_percent(put)) >= percent


def _instead(one: "Carried") -> str:
    """The load to write by the rounding, then the one on the other side."""
    found, unit = one.loadable, one.asked.unit
    first, *others = sorted(filter(None, (found.below, found.above)), key=lambda put: put != found.put)
    tie = " (of two equally far the lighter)" if found.tie and found.rounding == "nearest" else ""
    other = "".join(f", or {found.words(put, unit)}" for put in others)
    return f"for {one.words} write {found.words(first, unit)}{tie}{other}"


def _stamped(one: "Carried") -> str:
    piece = one.stamped_alike
    return f"write `{piece.words}` if that is stamped on it, else " if piece else ""


def _last(one: "Carried") -> str:
    """The heaviest or the lightest load there is."""
    put = one.loadable.below or one.loadable.above
    assert put is not None
    return one.loadable.words(put, one.asked.unit)


RULE = Rule(
    id="load-not-loadable",
    looks_at="item",
    summary="a line asks for a load that the gym does not make, or makes only with a difference",
    why="who finds no such load rounds it by feel, and everybody another way",
    change="write the load that can be put on, or list in the gym file what is there and not yet written",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("uchida2016",),
    options=(WORTH_A_WORD, FELT),
)
