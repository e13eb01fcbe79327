"""What is left out of a session today, and what is otherwise: the difference list."""

from collections.abc import Iterator

from setwright.floor.blocks import Block
from setwright.floor.cut import Cut
from setwright.floor.today import Change, Today
from setwright.report.phrases import joined
from setwright.report.wrapping import wrapped


def cut_lines(today: Today) -> Iterator[str]:
    """What has changed against the plan; nothing where nothing has."""
    told = list(_changes(today))
    if told:
        yield "Today, against the plan"
        yield from (wrapped(one, "  - ", "    ") for one in told)


def _changes(today: Today) -> Iterator[str]:
    yield from _conditions(today.change)
    if today.cut is not None:
        yield from _cut(today.cut, today.floor.blocks)


def _conditions(change: Change) -> Iterator[str]:
    if change.minutes is not None:
        yield f"{change.minutes:g} minutes"
    if change.without:
        yield f"without {joined(change.without, 'and')}"
    if change.absent:
        yield f"absent: {joined(change.absent, 'and')}"


def _cut(cut: Cut, kept: tuple[Block, ...]) -> Iterator[str]:
    if not cut.dropped:
        yield "nothing has to be left out"
        return
    yield f"left out: {joined([_named(block) for block in cut.dropped], 'and')}"
    yield f"kept: {joined([_named(block) for block in kept], 'and')}"
    if cut.lost:
        yield f"with that the only {joined(cut.lost, 'and the only')} goes{_better(cut)}"


def _better(cut: Cut) -> str:
    if cut.better:
        return (
            f"; better: do {joined([str(number) for number in cut.better], 'and')} and leave out the others"
        )
    if cut.exchange:
        change = cut.exchange
        return (
            f"; better: do {change.new.name} in {change.block.number}, in the place of {change.old.name}, "
            "and all else as it stands"
        )
    return "; no other choice of whole blocks fits"


def _named(block: Block) -> str:
    return f"{block.number} {block.name}"
