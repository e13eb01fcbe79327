"""Rule no-warm-up-for-heavy-lift: a barbell lift begins heavy and nothing leads up to it."""

from collections.abc import Iterator

from setwright.coverage import SessionCover, Work
from setwright.reading.dose import Load, SetWork
from setwright.reading.hardness import most_reps
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule, seen, typed

BAD = """\
plan: Straight to the work sets
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - barbell back squat: 5 x 5 at 80%, rest 3:00
"""
GOOD = f"{BAD}        warm-up: 8 at bar, 5 at 50%, 3 at 65%\n"

FROM_PERCENT = Option(
    "load from which a lift is heavy",
    80,
    "% of a max",
    f"{CHOICE}; 80 % is where the position stand puts work for strength: acsm2026 (second hand)",
)
FROM_RPE = Option(
    "effort from which a lift is heavy, with repetitions that the handbook table puts at that load or above",
    8,
    "RPE",
    CHOICE,
)


def find(case: Case) -> Iterator[Fault]:
    """One fault a session without any warm-up: its heavy lifts that say nothing of one, not even `none`."""
    for session in case.coverage.sessions:
        cold = tuple(work for work in _firsts(session) if _is_heavy(work) and not _says_of_a_warm_up(work))
        if not cold or session.session.warm_up or session.session.warm_up_minutes:
            continue
        names = ", ".join(work.name for work in cold)
        yield Fault(
            place=cold[0].item.place,
            where=session.session.title,
            message=f"{session.session.title}: no warm-up sets are written for {names}",
            why="people follow the sheet: what is not on it is not done, and the first set is the heavy one",
            cure=Cure(
                f"write under {cold[0].name} `warm-up: 8 at bar, 5 at 50%, 3 at 65%`, "
                "or `warm-up: none` when none is meant"
            ),
            seen=seen(cold, lambda work: typed(work.item)),
            day=cold[0].day,
        )


def _firsts(session: SessionCover) -> tuple[Work, ...]:
    """The first line of each movement: it leads up to the later ones."""
    first: dict[str, Work] = {}
    for work in session.works:
        first.setdefault(work.movement["key"], work)
    return tuple(first.values())


def _says_of_a_warm_up(work: Work) -> bool:
    return work.item.warm_up_sets is not None or "warm-up" in work.item.none


def _is_heavy(work: Work) -> bool:
    """Whether the first set of a barbell lift is heavy; sets that rise to a load lead up to it themselves."""
    if work.movement["implement"] != "barbell" or work.load_class != "heavy" or work.item.dose is None:
        return False
    group = work.item.dose.groups[0]
    first = group.works[0]
    load = first.load or work.item.load
    if group.kind in ("top_set", "test") or (load is not None and load.rising):
        return False
    return _by_percent(load) or _by_effort(first)


def _by_percent(load: Load | None) -> bool:
    share = load.low if load is not None and load.kind == "percent" else None
    return share is not None and share >= FROM_PERCENT.value


def _by_effort(first: SetWork) -> bool:
    reserve = first.effort.rir if first.effort else None
    most = first.amount.span.high
    if reserve is None or most is None or first.amount.unit != "reps":
        return False
    return reserve[1] <= 10 - FROM_RPE.value and most + reserve[1] <= most_reps(FROM_PERCENT.value)[0]


RULE = Rule(
    id="no-warm-up-for-heavy-lift",
    looks_at="session",
    summary="a barbell lift begins heavy, and neither its line nor its session has a warm-up",
    why="studies disagree on what it brings: two sets at 40 and 80 % of the training load went best before a "
    "bench press (ribeiro2020), while no kind of warm-up changed the repetitions to failure in another "
    "(ribeiro2014); that a heavy bar is not the first one of the day is common practice",
    change="write the warm-up sets under the line, a warm-up for the session, or `warm-up: none`",
    source="common practice; ribeiro2020 and ribeiro2014 (abstracts) disagree",
    bad=BAD,
    good=GOOD,
    find=find,
    folds=True,
    sources=("ribeiro2020", "ribeiro2014", "nsca_load", "acsm2026"),
    options=(FROM_PERCENT, FROM_RPE),
)
