"""The week that comes, before anything of what was done is in it: its name, its dates, its own values."""

import datetime as dt
from collections.abc import Mapping
from pathlib import Path
from typing import NamedTuple

from setwright.files import CannotRun, read_beside
from setwright.model.plan import Lighter, Week
from setwright.model.reader.keys import fold
from setwright.records import names
from setwright.records.keeping import Plan, plan_in
from setwright.records.line_keys import LineKey, Told, lines_of
from setwright.records.next_head import Head, squad_file, turns_of, with_head
from setwright.records.one_week import one_week, without_lighter

Lines = Mapping[LineKey, Told]


class OfBlock(NamedTuple):
    """The lines of every week of a block; week ``was`` of it was trained, and week ``then`` comes."""

    weeks: tuple[Lines, ...]
    was: int
    then: int


class Coming(NamedTuple):
    """The week that comes: its text with the week in it, its file, and how much less is done in it.

    ``trained``: the lines of the week that was trained, none of them lighter. ``block``: what the block says
    of both weeks; None where there is none. ``number``: of the week that was trained, where it is known.
    """

    text: str
    week: Week
    stem: str
    lighter: Lighter | None
    trained: Lines
    block: OfBlock | None
    number: int | None


class _Block(NamedTuple):
    """A block with none of its weeks lighter, and the week of it that was trained."""

    file: Path
    text: str
    weeks: tuple[Week, ...]
    lighter: tuple[Lighter | None, ...]
    number: int


class After(NamedTuple):
    """After which week of a plan another one comes, or the same one ``again``.

    ``done``: the week of which what was done decides, where that is one before. ``waits``: the session whose
    turn it is, where sessions are taken in turn.
    """

    plan: Plan
    text: str
    number: int
    done: int
    again: bool = False
    waits: str | None = None


def coming(after: After) -> Coming:
    """The week that comes; after the last week of a block the first one again.

    Raises: CannotRun when the plan, or the block that it is a week of, can't be read.
    """
    plan, text = after.plan, after.text
    block = _block(plan, text, after.number)
    if block is not None:
        return _of_block(block, after)
    week = plan.weeks[0]
    bare = without_lighter(str(plan.file), text)
    name, stem = _names(week.name, plan.file.stem, again=after.again)
    head = Head(
        name,
        follows=plan.file.name,
        starts=_a_week_on(week),
        late=1,
        stages=1,
        rotate=_turns(after),
    )
    text_then = with_head(str(plan.file), bare, head)
    then = names.week_number(name)
    due = [how for often, how in week.lighter_every.items() if then and not then % often]
    trained = _lines(plan_in(plan.file, bare).weeks[0])
    return Coming(
        text=text_then,
        week=plan_in(plan.file, text_then).weeks[0],
        stem=stem,
        lighter=due[0] if due else None,
        trained=trained,
        block=None,
        number=names.week_number(week.name),
    )


def _names(name: str, stem: str, *, again: bool) -> tuple[str, str]:
    if again:
        return names.again(name), names.again(stem, "-")
    return names.next_name(name), names.next_stem(stem)


def _block(plan: Plan, text: str, number: int) -> _Block | None:
    """The block that was trained from, or that a plan of one week is a week of."""
    week = plan.weeks[number - 1]
    file, typed = plan.file, text
    if week.of == 1:
        if week.block is None:
            return None
        file, number = plan.file.parent / week.block.file, week.block.week
        found = read_beside(plan.file, week.block.file)
        if found is None:
            raise CannotRun(f"the block {week.block.file} can't be read beside {plan.file}")
        typed = found
    lighter = tuple(one.lighter for one in plan_in(file, typed).weeks)
    if number > len(lighter):
        raise CannotRun(f"{file} has no week {number}, of which {plan.file} says that it is one")
    bare = without_lighter(str(file), typed)
    return _Block(file, bare, plan_in(file, bare).weeks, lighter, number)


def _of_block(block: _Block, after: After) -> Coming:
    plan, text, again = after.plan, after.text, after.again
    of, was = len(block.weeks), block.number
    done = after.done if plan.weeks[0].of > 1 else was
    then = was if again else was % of + 1
    trained = plan.weeks[was - 1] if plan.weeks[0].of > 1 else plan.weeks[0]
    starts = _a_week_on(trained)
    planned = block.weeks[0].starts
    late = (0 if then > was else of) if not again else 1
    if starts and planned:
        late = (starts - planned).days // 7 - (then - 1)
    name, stem = _names_in_block(block, trained, plan.file, then, again=again)
    head = Head(
        name,
        follows=plan.file.name if trained.of == 1 else f"{plan.file.name}, week {was}",
        block=f"{block.file.name}, week {then}",
        starts=starts,
        late=late,
        stages=then - 1 + late,
        rotate=_turns(after),
        squad=squad_file(str(plan.file), text),
        signed=_signed(trained, block.weeks[0]),
    )
    base = with_head(str(block.file), one_week(str(block.file), block.text, block.weeks, then), head)
    said = OfBlock(tuple(map(_lines, block.weeks)), done, then)
    now = said.weeks[done - 1]
    if trained.of == 1:
        now = _lines(plan_in(plan.file, without_lighter(str(plan.file), text)).weeks[0])
    return Coming(base, plan_in(block.file, base).weeks[0], stem, block.lighter[then - 1], now, said, was)


def _names_in_block(block: _Block, trained: Week, file: Path, then: int, *, again: bool) -> tuple[str, str]:
    """The name and the file name of the week that comes."""
    direct = trained.of > 1
    name = names.in_block(trained.name, trained.number) if direct else trained.name
    numbered = names.week_number(block.weeks[0].name) is not None
    stem = f"{file.stem}-week-{names.week_number(name)}" if direct else file.stem
    if direct and numbered:
        stem = names.next_stem(file.stem, trained.number - 1)
    if again or then > block.number or numbered:
        return _names(name, stem, again=again)
    return names.next_block(name), names.next_block_stem(stem)


def _signed(trained: Week, block: Week) -> dict[str, str]:
    """The stages that were signed off in the week and not in the block, with who and when."""
    known = {stage.name for stage in block.stages if stage.signed_off}
    signed = ((stage.name, stage.signed_off) for stage in trained.stages if stage.name not in known)
    return {name: f"{by.who}, {by.on.isoformat()}" for name, by in signed if by}


def _a_week_on(week: Week) -> dt.date | None:
    """The day on which the week after starts."""
    return week.starts + dt.timedelta(weeks=week.number) if week.starts else None


def _turns(after: After) -> tuple[str, ...] | None:
    """The sessions taken in turn, from the one whose turn it is in the week that comes."""
    days, turn = turns_of(str(after.plan.file), after.text)
    if not turn:
        return None
    through = after.plan.weeks[: after.number - 1 if after.again else after.number]
    trained = sum(not (week.lighter and week.lighter.no_training) for week in through)
    first = trained * days % len(turn)
    if after.waits is not None:
        first = next((at for at, name in enumerate(turn) if fold(name) == fold(after.waits)), first)
    return turn[first:] + turn[:first]


def _lines(week: Week) -> Lines:
    return {one.key: one for one in lines_of(week)}
