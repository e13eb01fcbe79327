"""A plan said back: every line in plain words, and what holds where nothing was written."""

from collections.abc import Iterable, Iterator, Sequence

from setwright.findings import in_order
from setwright.library.table import Library, library
from setwright.model.next import typed_next
from setwright.model.people import Athlete, Limit, Squad
from setwright.model.plan import Week
from setwright.model.reader import BlockRead
from setwright.model.reader.alone import FileRead
from setwright.model.room import Gym
from setwright.reading.habits import Habits
from setwright.report.read_block import session_blocks
from setwright.report.read_count import Tally
from setwright.report.read_gym import gym_lines
from setwright.report.read_maxes import max_words
from setwright.report.read_own import own_lines
from setwright.report.read_paper import on_paper
from setwright.report.read_record import record_blocks
from setwright.report.read_session import allowed, session_head, session_lines
from setwright.report.stages import stage_lines, stage_of
from setwright.report.wrapping import plain, wrapped


def read_text(
    read: BlockRead, table: Library | None = None, week: int | None = None, *, count: bool = False
) -> str:
    """What was read, for the coach to compare with what was meant; ends with a line end.

    The top of the plan, its people, room and own movements, then session by session, then what could not be
    read. ``table``: the library of the plan; the shipped one when None. ``week``: only this one of a block.
    ``count``: under each line what it counts, and the sums of session and week.
    """
    weeks = tuple(one for one in read.weeks if week in (None, one.number))
    blocks = list(_weeks(weeks, table or library(), count=count)) if weeks else []
    blocks += _faults(read)
    return "\n\n".join(blocks) + "\n"


def alone_text(read: FileRead) -> str:
    """What was read in a squad, gym or record file, and what could not be read; ends with a line end."""
    blocks = []
    if isinstance(read.held, Squad):
        blocks.append(_squad(read.held))
    elif isinstance(read.held, Gym):
        blocks.append(_block(f"Gym: {read.held.name or 'no name'}", gym_lines(read.held)))
    elif read.held is not None:
        blocks += (_block(head, lines) for head, lines in record_blocks(read.held))
    blocks += _faults(read)
    return "\n\n".join(blocks) + "\n"


def _weeks(weeks: Sequence[Week], table: Library, *, count: bool) -> Iterator[str]:
    week = weeks[0]
    title = week.title if len(weeks) == 1 else week.name
    yield _block(f"{title}: what holds for the whole plan", [*_in_force(week), *_number_of_weeks(weeks)])
    if week.squad is not None:
        yield _squad(week.squad)
    if week.gym is not None:
        yield _block(f"Gym: {week.gym.name or 'no name'}", gym_lines(week.gym))
    if week.own_movements:
        yield _block("Movements of your own", own_lines(week.own_movements, table))
    habits = Habits(unit=week.unit, dose_order=week.dose_order, percent_of=week.percent_of, sides=week.sides)
    if count:
        yield from (block for week in weeks for block in _counted(week, habits, table, of=len(weeks)))
    elif len(weeks) > 1:
        yield from (_block(head, lines) for head, lines in session_blocks(weeks, habits, table))
    else:
        yield from _sessions(week, habits, table)


def _sessions(week: Week, habits: Habits, table: Library, tally: Tally | None = None) -> Iterator[str]:
    for session in sorted((*week.sessions, *week.held_back), key=lambda one: one.place):
        stage = stage_of(session, week)
        lines = session_lines(session, habits, table, None if session in week.held_back else tally)
        yield _block(session_head(session), [*([stage] if stage else ()), *lines])


def _counted(week: Week, habits: Habits, table: Library, *, of: int) -> Iterator[str]:
    """The sessions of a week with what their lines count, and the sums of the week."""
    tally = Tally(week, table)
    if of > 1:
        yield f"Week {week.number}"
    yield from _sessions(week, habits, table, tally)
    yield _block("The week, counted", tally.week())


def _number_of_weeks(weeks: Sequence[Week]) -> Iterator[str]:
    if len(weeks) > 1:
        yield f"weeks: {len(weeks)}"
    for week in weeks:
        if week.lighter:
            yield f"week {week.number}: {week.lighter.text}, applied to all that follows"
        elif not week.sessions:
            yield f"week {week.number}: no session"
    for every, how in weeks[0].lighter_every.items():
        yield f"every {every} weeks: {how.text}"


def _unwritten_aim(week: Week) -> str:
    return "what the focus says" if week.focus else "general"


def _in_force(week: Week) -> Iterator[str]:
    """What was written at the top, and the answers in force where nothing was."""
    yield f"aim: {week.aim}" if week.aim else f"aim: none written, so {_unwritten_aim(week)}"
    for name in ("sport", "level"):
        if getattr(week, name):
            yield f"{name}: {getattr(week, name)}"
    if week.focus:
        yield f"focus: {', '.join(week.focus)}"
    yield (
        f"loads without a unit: {week.unit}" if week.unit else "loads without a unit: none written, so asked"
    )
    yield f"dose order: {week.dose_order or 'none written, so sets x reps, and lines like 8 x 3 are asked'}"
    written = week.percent_of or f"none written, so {week.max_kind}"
    yield f"percent of: {written}, unless a line says otherwise"
    yield (
        f"sides: {week.sides}"
        if week.sides
        else "sides: none written, so one-sided moves without a word are asked"
    )
    yield from _of_these_weeks(week)
    yield (
        f"next time, where a line does not say: {typed_next(week.next.rule)}"
        if week.next
        else "next time: not written"
    )
    yield f"a missed day: {week.missed_day}"
    if week.if_interrupted:
        yield f"if interrupted: {week.if_interrupted}"
    yield from map(allowed, week.allow)
    yield from (
        f"{word}: {said}"
        for word, said in (("note", week.note), ("private note, never printed", week.private_note))
        if said
    )
    yield from stage_lines(week)
    if week.squad is None:
        yield "squad: none, so nobody's limits are known"
    if week.gym is None:
        yield "gym: none, so everything in the library counts as there"


def _of_these_weeks(week: Week) -> Iterator[str]:
    """When they are, how much was meant and was done before, who comes, and what they follow."""
    if week.starts:
        yield f"starts: {week.starts.isoformat()}"
    yield from (f"sets a week, {one.group}: {one.text}" for one in week.sets_a_week)
    yield from (f"last week, {one.name}: {one.text}" for one in week.last_week)
    for word, value in (
        ("people", week.people),
        ("ages", week.ages),
        ("staff", week.staff),
        ("follows", week.follows),
        ("block", week.block and f"{week.block.file}, of which this is week {week.block.week}"),
    ):
        if value is not None:
            yield f"{word}: {value}"


def _block(head: str, lines: Iterable[str]) -> str:
    return "\n".join([wrapped(head), *map(_line, lines)])


def _line(line: str) -> str:
    """A line under its head; what it starts further in, its second line does too."""
    further = " " * (len(line) - len(line.lstrip()))
    return wrapped(line.lstrip(), f"  {further}", f"      {further}")


def _squad(squad: Squad) -> str:
    lines = [*map(_athlete, squad.athletes), *_of_all(squad)]
    return _block(f"Squad: {squad.name or 'no name'}", lines)


def _of_all(squad: Squad) -> Iterator[str]:
    """What holds for everyone: groups, and how loads are rounded and picked."""
    yield from (f"group {name}: {', '.join(members)}" for name, members in squad.groups.items())
    yield f"loads are rounded: {squad.rounding}; of a range the {squad.pick_in_a_range} one is taken"
    yield from on_paper(squad.paper)
    if squad.note:
        yield f"note: {squad.note}"
    if squad.private_note:
        yield f"private note, never printed: {squad.private_note}"


def _athlete(athlete: Athlete) -> str:
    told: list[str | None] = [
        athlete.level,
        None if athlete.participation == "full" else athlete.participation,
    ]
    told += [max_words(best) for best in athlete.maxes]
    told += [_limit(limit) for limit in athlete.limits]
    told += [f"avoids {', '.join(athlete.avoid)}"] if athlete.avoid else []
    said = "; ".join(one for one in told if one)
    return f"{athlete.name}: {said}" if said else athlete.name


def _limit(limit: Limit) -> str:
    side = f"{limit.side} " if limit.side else ""
    if limit.angle is not None:
        what = f"{side}{limit.angle} at most {limit.at_most_deg:g} degrees"
    elif limit.load_at_most is not None:
        what = f"load at most {limit.load_at_most:g} {limit.unit or ''}".strip()
    else:
        what = ", ".join([*(f"no {word}" for word in limit.no), *(f"avoids {name}" for name in limit.avoid)])
    return f"{what} until {limit.until}"


def _faults(read: BlockRead | FileRead) -> Iterator[str]:
    if not read.findings:
        return
    lines = ["Also" if read.complete else "Could not be read as written"]
    for finding in in_order(read.findings):
        place = f"{plain(finding.place.file)}, line {finding.place.line}"
        lines.append(wrapped(f"{place}: {finding.message}", "  ", "      "))
        lines.append(wrapped(finding.change, "      ", "      "))
        lines += (wrapped(f"line {seen.line}: {seen.text}", "      ", "        ") for seen in finding.seen)
        lines.append(f"      rule: {finding.rule}   (setwright explain {finding.rule})")
    yield "\n".join(lines)
