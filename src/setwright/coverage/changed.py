"""What is different in a week from the week before: lines that came and went, then sets, then other doses."""

from collections.abc import Iterator, Mapping

from setwright.coverage.shapes import Coverage, Work
from setwright.reading.dose import Load

Line = tuple[str, str, int]
Lines = Mapping[Line, Work]


def changes(before: Coverage, now: Coverage) -> Iterator[str]:
    """Every change in words, the weightiest first."""
    were, are = _lines(before), _lines(now)
    gone = {line: work for line, work in were.items() if line not in are}
    come = {line: work for line, work in are.items() if line not in were}
    yield from _came_and_went(gone, come)
    both = [(were[line], work) for line, work in are.items() if line in were]
    other_sets = [(old, new) for old, new in both if old.sets != new.sets]
    for old, new in other_sets:
        yield f"{new.name} {new.sets} sets, before {old.sets}"
    for old, new in both:
        if (old, new) not in other_sets and _dose(old) != _dose(new):
            yield f"{new.name} {_dose(new)}, before {_dose(old)}"
    if named := [new.name for old, new in both if _by_name(old) != _by_name(new)]:
        yield f"other loads by name: {', '.join(dict.fromkeys(named))}"


def _lines(coverage: Coverage) -> Lines:
    """Every line by its session, its movement, and which one of that movement it is there."""
    lines: dict[Line, Work] = {}
    for work in coverage.works:
        session, key = work.session.title, work.movement["key"]
        number = sum(line[:2] == (session, key) for line in lines)
        lines[session, key, number] = work
    return lines


def _came_and_went(gone: Lines, come: Lines) -> Iterator[str]:
    """Lines that are new or no longer there; one that went from one day to another is told once."""
    left = dict(gone)
    for (session, key, _), work in come.items():
        moved = next((line for line in left if line[1] == key), None)
        if moved:
            del left[moved]
            yield f"{work.name} from {moved[0]} to {session}"
        else:
            yield f"+ {work.name} on {session}"
    yield from (f"- {work.name} on {session}" for (session, _, _), work in left.items())


def _dose(work: Work) -> str:
    """The dose line, with the load that stands underneath where it is a number."""
    typed = " ".join(work.item.dose.text.split()) if work.item.dose else ""
    load = work.item.load
    return f"{typed} at {load.low:g} {load.unit}" if load and load.unit and load.low is not None else typed


def _by_name(work: Work) -> set[tuple[str, tuple[Load, ...]]]:
    """The loads of athletes and groups, whatever their order."""
    return {(one.who, one.loads) for one in work.item.loads}
