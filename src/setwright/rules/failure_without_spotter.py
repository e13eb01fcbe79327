"""Rule failure-without-spotter: sets to failure under a bar, and nobody there to take it."""

from collections.abc import Iterator

from setwright.coverage import SessionCover, Work
from setwright.findings import Level
from setwright.library.under_the_bar import is_under_the_bar
from setwright.model.plan import Item
from setwright.reading.dose import SetGroup
from setwright.rules.failing import every_kind, to_failure
from setwright.rules.queues import alone
from setwright.rules.rule import Case, Cure, Fault, Rule, seen, typed

BAD = """\
plan: Alone under the bar
unit: kg
dose order: sets x reps
gym:
  racks: 1
  benches: 1
  bars:
    20 kg: 1
  plates per rack:
    20 kg: 2 pairs
  spotter: none
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 3 x 8 at 60 kg, last set to failure
"""
GOOD = BAD.replace(", last set to failure", " at 2 RIR")


def find(case: Case) -> Iterator[Fault]:
    """One fault a session; a gap where the gym file says that nobody spots.

    Where it does not say, advice, and none about lines at which nobody is alone.
    """
    gym = case.coverage.week.gym
    if gym is None or gym.spotter == "yes":
        return
    nobody = gym.spotter == "none"
    for session in case.coverage.sessions:
        shared = () if nobody else _shared(case, session)
        works = tuple(work for work in session.works if _needs_somebody(work) and work.item not in shared)
        if not works:
            continue
        names = ", ".join(dict.fromkeys(work.name for work in works))
        yield Fault(
            place=works[0].item.place,
            where=session.session.title,
            message=f"{session.session.title}'s {names} to failure, and "
            + ("the gym file has no spotter" if nobody else "the gym file does not say who spots"),
            why="a bar over face, trunk or head that can't be lifted again needs somebody to take it, or "
            "safety bars set below the chest",
            cure=Cure(
                f"stop {works[0].name} short of failure (`at 2 RIR`), do it with dumbbells or on a machine, "
                "or write `spotter: yes` in the gym file when somebody spots"
            ),
            seen=seen(works, lambda work: typed(work.item)),
            day=works[0].day,
            level=Level.gap if nobody else None,
        )


def _shared(case: Case, session: SessionCover) -> tuple[Item, ...]:
    """The lines at which nobody is alone, so that another one of the group may spot."""
    room = case.means.room(session.session)
    blocks = room.blocks if room else ()
    return tuple(item for block in blocks if room and not alone(room, block) for item in block.items)


def _needs_somebody(work: Work) -> bool:
    if work.item.dose is None:
        return False
    groups = work.item.dose.groups
    under = is_under_the_bar(work.movement)
    return any(_assisted(group) or (under and to_failure(group)) for group in groups)


def _assisted(group: SetGroup) -> bool:
    return any(work.extra is not None and work.extra.kind == "assisted" for work in every_kind(group))


RULE = Rule(
    id="failure-without-spotter",
    looks_at="session",
    summary="sets to failure with a barbell over face, trunk or head, or helped repetitions, and no spotter: "
    "a gap where the gym file says that there is none, advice where it does not say",
    why="of nine deaths in weight training in one year in the United States two thirds were in the bench "
    "press or lying under a bar, most of them at home",
    change="stop short of failure, take what can be dropped, or have a spotter or safety bars",
    source="lombardi2003 (abstract); what is spotted: common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    folds=True,
    sources=("lombardi2003",),
)
