"""Rule load-not-loadable: a load that the bars, plates, dumbbells and pins of this gym do not make."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from setwright.coverage import Work
from setwright.findings import Level, Seen
from setwright.rules.loading import carried, listed
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


def find(case: Case) -> Iterator[Fault]:
    """For each line one fault about the loads that can be come near to, one about those out of reach."""
    for work, loads in carried(case):
        near = [one for one in loads if _is_off(one)]
        if near:
            yield _near(work, near)
        for fault, more, most in (("too heavy", "more", "most"), ("too light", "less", "least")):
            out = [one for one in loads if one.loadable.fault == fault]
            if out:
                change = f"write at {most} {_last(out[0])}, or list in the gym file what else there is"
                change = _stamped(out[0]) + change
                yield _out_of_reach(work, out, f"{more} than anything here", change)


def _near(work: Work, loads: "list[Carried]") -> Fault:
    rounding = loads[0].loadable.rounding
    return Fault(
        place=work.item.place,
        where=work.session.title,
        message=f"{work.name} at {listed(loads)}: what is here makes no such load",
        why=RULE.why,
        cure=Cure("; ".join(map(_instead, loads))),
        seen=(*_notes(loads), *(() if rounding == "nearest" else (Seen(f"the squad rounds {rounding}"),))),
        day=work.day,
    )


def _out_of_reach(work: Work, loads: "list[Carried]", what: str, change: str) -> Fault:
    """An error, but for a band: it can always be stretched a little more or less."""
    return Fault(
        place=work.item.place,
        where=work.session.title,
        message=f"{work.name} at {listed(loads)}: {what}",
        why="the gym file lists nothing that makes it",
        cure=Cure(change),
        seen=_notes(loads),
        day=work.day,
        level=None if loads[0].loadable.by.kind == "band" else Level.error,
    )


def _notes(loads: "list[Carried]") -> tuple[Seen, ...]:
    return tuple(Seen(f"{one.asked.words}: {one.loadable.note}") for one in loads if one.loadable.note)


def _is_off(one: "Carried") -> bool:
    put = one.loadable.put
    return put is not None and not one.in_range and abs(one.loadable.off_percent(put)) >= WORTH_A_WORD.value


def _instead(one: "Carried") -> str:
    """The load to write by the rounding, then the one on the other side."""
    found, unit = one.loadable, one.asked.unit
    first, *others = sorted(filter(None, (found.below, found.above)), key=lambda put: put != found.put)
    tie = " (of two equally far the lighter)" if found.tie and found.rounding == "nearest" else ""
    other = "".join(f", or {found.words(put, unit)}" for put in others)
    return f"for {one.asked.words} write {found.words(first, unit)}{tie}{other}"


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
    options=(WORTH_A_WORD,),
)
