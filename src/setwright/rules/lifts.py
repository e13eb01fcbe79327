"""Lines with a load as athletes are to do them: the kilograms asked of each, and their share of the max."""

from collections.abc import Callable, Iterable, Iterator
from typing import Final, NamedTuple, TypeVar

from setwright.findings import Seen
from setwright.loads.asked_for import Asked, Kilograms, load_asked_for
from setwright.loads.lines import Lift, Line, lifts_of, lines
from setwright.loads.maxes import WHOLE, MaxFound, max_of
from setwright.loads.ranges import Range
from setwright.model.people import Athlete
from setwright.reading.words import listed
from setwright.rules.rule import Case, typed

Some = TypeVar("Some")

OF_THE_MAX: Final = ("tested max", "estimated max", "today's max")


class Asking(NamedTuple):
    """What a lift asks of one athlete."""

    lift: Lift
    athlete: Athlete
    asked: Asked


class Share(NamedTuple):
    """A lift as a percent of the tested max, for one athlete or, by its own percent, for everybody."""

    lift: Lift
    percent: Range
    athlete: Athlete | None = None
    best: MaxFound | None = None


def works(case: Case) -> Iterator[Line]:
    """The lines of the week as they are done, in the order of the days."""
    week, table = case.coverage.week, case.means.table
    for day, cover in enumerate(case.coverage.sessions):
        yield from lines(cover.session, day, week, table)


def lifts(case: Case) -> Iterator[Lift]:
    """Every kind of set with a load that can be worked out, in the order it is done."""
    return (lift for work in works(case) for lift in lifts_of(work))


def asking(case: Case, lift: Lift) -> Iterator[Asking]:
    """What a lift asks of each athlete who does the line."""
    week, work = case.coverage.week, lift.work
    for athlete in work.athletes:
        asked = load_asked_for(lift.load, work.item, athlete, week, case.means.table)
        yield Asking(lift, athlete, asked)


def asked_of_everybody(case: Case) -> Iterator[Asking]:
    """What each lift of the week asks of each athlete."""
    return (one for lift in lifts(case) for one in asking(case, lift))


def shares(case: Case) -> Iterator[Share]:
    """The lifts as percents of the tested max, as far as they can be known.

    A percent of a max stands for itself; any other load in kilograms is compared with the max of each
    athlete: the low end of a range with the most that an estimated max may be, the high end with the least.
    """
    week = case.coverage.week
    for lift in lifts(case):
        load = lift.load
        if load.kind == "percent" and (load.of or week.max_kind) in OF_THE_MAX:
            yield Share(lift, Range(load.low or 0.0, load.high or 0.0))
        elif load.kind != "rm":
            for one in asking(case, lift):
                best = max_of(one.athlete, lift.work.movement, "tested max", week.starts)
                if isinstance(one.asked, Kilograms) and one.asked.lifted and isinstance(best, MaxFound):
                    low, high = one.asked.lifted
                    percent = Range(WHOLE * low / best.kg.high, WHOLE * high / best.kg.low)
                    yield Share(lift, percent, one.athlete, best)


def by_movement(found: Iterable[Some], share_of: Callable[[Some], Share]) -> list[list[Some]]:
    """What is one fault: shares of one movement, by a percent or by kilograms."""
    alike: dict[tuple[str, bool], list[Some]] = {}
    for one in found:
        share = share_of(one)
        alike.setdefault((share.lift.work.movement["key"], share.athlete is None), []).append(one)
    return list(alike.values())


def lines_of(found: Iterable[Lift]) -> tuple[Seen, ...]:
    """The lines of some lifts, each once, as they are typed."""
    works = {lift.work.item.place: lift.work for lift in found}
    return tuple(Seen(typed(work.item), work.line) for work in works.values())


def names(athletes: Iterable[Athlete]) -> str:
    """Athletes by name, each once: "Ann, Bo and Cy"."""
    return listed(list(dict.fromkeys(athlete.name for athlete in athletes)))
