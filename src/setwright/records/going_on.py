"""From a week of a plan to the one that comes: which one, by what was missed, and what decides in it."""

from setwright.files import CannotRun
from setwright.model.plan import Week
from setwright.model.reader.keys import fold
from setwright.records.changes import Going
from setwright.records.coming import After, coming
from setwright.records.keeping import Plan
from setwright.records.next_head import turns_of
from setwright.records.week_done import WeekDone, week_done


def going_on(plan: Plan, text: str, number: int, *, missed: bool = False) -> Going:
    """How a plan goes on after week ``number``; ``missed``: nothing of it was trained.

    A missed day goes by the plan's rule, a missed week too: ``skip`` goes on to the next one, and otherwise
    the same week comes again.

    Raises: CannotRun when nothing is known of the week, or the plan's block can't be read.
    """
    week = plan.weeks[number - 1]
    done = week_done(plan, week)
    if missed and done.records:
        raise CannotRun(f"records of {week.title} are kept in {plan.folder}, so it was not missed")
    if not missed and not done.records and not _no_training(week):
        raise CannotRun(
            f"no record of {week.title} is kept in {plan.folder}, so nothing is known of what was done",
            f"`setwright record {plan.file}` writes a form; if the week was missed, say so with --missed",
        )
    again = week.missed_day != "skip" if missed else bool(done.restart)
    decides = done if missed else _decides(plan, done)
    waits = _waits(plan, text, done) if done.records else None
    comes = coming(After(plan, text, number, decides.week.number, again, waits))
    return Going(decides, plan, comes, "the week was missed" if missed else done.restart)


def _no_training(week: Week) -> bool:
    return week.lighter is not None and week.lighter.no_training


def _decides(plan: Plan, done: WeekDone) -> WeekDone:
    """The week of a block of which what was done decides: of lighter ones the last before them."""
    if done.week.lighter is None or done.week.of == 1:
        return done
    full = next((one for one in reversed(plan.weeks[: done.week.number]) if one.lighter is None), None)
    before = week_done(plan, full) if full else done
    return before if before.records else done


def _waits(plan: Plan, text: str, done: WeekDone) -> str | None:
    """The first missed session that is taken in turn, where missed ones are taken up."""
    if done.week.missed_day != "resume":
        return None
    _, turn = turns_of(str(plan.file), text)
    taken = {fold(name) for name in turn}
    names = (session.name or "" for session in done.missed_sessions)
    return next((name for name in names if fold(name) in taken), None)
