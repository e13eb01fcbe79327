"""The rule for next time applied to what was done: what is added for one athlete in one line, and why."""

from typing import Final, NamedTuple

from setwright.model.next import Add, ByEffort, ByRepetitions, Case, EveryWeeks, NextRule, Repeat, WhenReached
from setwright.reading.dose import SetWork
from setwright.reading.words import number
from setwright.records.outcome import Outcome, reserve_off
from setwright.records.planned import Planned

HALF_POINT: Final = 0.5
"""The step of the rule by effort, in points of RPE or repetitions in reserve (the plan language)."""


class Decision(NamedTuple):
    """What becomes of a line: ``add``, None for the same again; ``percent``: the load by so much.

    ``to_max``: what is added to the training max. ``held``: the load is to stay whatever the block writes;
    ``stands``: what the block writes stays. ``by_hand``: what the rule asks for and only the coach can do.
    """

    reason: str
    add: Add | None = None
    percent: float | None = None
    to_max: Add | None = None
    held: bool = False
    stands: bool = False
    by_hand: bool = False

    @property
    def repeats(self) -> bool:
        """Whether nothing is changed."""
        return self.add is None and self.percent is None


def decide(rule: NextRule | None, done: Outcome, at: Planned, week_number: int | None) -> Decision:
    """What the rule makes of what was done. ``week_number``: of the week that was trained, if it is known.

    What was missed or cut short does not advance, whatever the rule.
    """
    if done.short:
        return Decision(done.short)
    match rule:
        case WhenReached():
            return _when_reached(rule, done, at)
        case EveryWeeks():
            return _every_weeks(rule, week_number)
        case ByEffort():
            return _by_effort(rule, done, at)
        case ByRepetitions():
            return _by_repetitions(rule, done)
        case Repeat():
            return Decision("the plan says repeat")
        case _:
            return Decision("the plan has no rule for next time here")


def _when_reached(rule: WhenReached, done: Outcome, at: Planned) -> Decision:
    tops = [top for group in _groups(at) for top in group]
    if not tops or None in tops:
        return Decision("the plan names no top to reach")
    if not done.reps:
        same = all(work.amount.span.low == work.amount.span.high for work in at.works)
        reason = "done as planned" if same else "done as planned, and nobody wrote how many"
        return Decision(reason, rule.add if same else None)
    wanted = [top or 0 for top in tops] + [tops[-1] or 0] * (len(done.reps) - len(tops))
    pairs = list(zip(done.reps, wanted, strict=False))[: 1 if rule.sets == "first" else None]
    said = ", ".join(number(reps) for reps in done.reps)
    top = number(wanted[0]) if len(set(wanted)) == 1 else ", ".join(map(number, wanted))
    if all(reps >= most for reps, most in pairs):
        return Decision(
            f"{said}: {'every set' if rule.sets == 'every' else 'the first set'} reached {top}", rule.add
        )
    return Decision(f"{said}: {top} is not reached yet")


def _every_weeks(rule: EveryWeeks, week_number: int | None) -> Decision:
    often = "every week" if rule.weeks == 1 else f"every {rule.weeks} weeks"
    if rule.weeks > 1 and week_number is None:
        return Decision(f"{often}, and the plan's name has no number of its week", by_hand=True)
    if rule.weeks > 1 and week_number is not None and week_number % rule.weeks:
        return Decision(f"{often}, and this was week {week_number}")
    if rule.to == "training max":
        return Decision(
            f"{often} {number(rule.add.amount)} {rule.add.unit} to the training max", to_max=rule.add
        )
    return Decision(often, rule.add)


def _by_effort(rule: ByEffort, done: Outcome, at: Planned) -> Decision:
    off = reserve_off(at.effort, done.effort)
    if off is None:
        is_planned = at.effort is not None and at.effort.rir is not None
        return Decision("nobody wrote how hard it was" if is_planned else "no effort is planned")
    if not off:
        return Decision("as hard as planned")
    harder = f"{number(abs(off))} repetitions {'easier' if off > 0 else 'harder'} than planned"
    return Decision(harder, percent=off / HALF_POINT * rule.percent)


def _by_repetitions(rule: ByRepetitions, done: Outcome) -> Decision:
    if not done.reps:
        return Decision("done as planned, and nobody wrote how many")
    last = done.reps[-1]
    case = next((one for one in rule.cases if _fits(one, last)), None)
    then = case.then if case else rule.otherwise
    return Decision(f"{number(last)} in the last set", then if isinstance(then, Add) else None)


def _fits(case: Case, reps: float) -> bool:
    return case.low <= reps and (case.high is None or reps <= case.high)


def _groups(at: Planned) -> list[list[float | None]]:
    """The top of each set's range in repetitions; None for one that is open or counts something else."""
    return [_tops(group.works, int(group.sets.low)) for group in at.sets] * at.rounds


def _tops(works: tuple[SetWork, ...], sets: int) -> list[float | None]:
    amounts = [works[at % len(works)].amount for at in range(sets)]
    return [amount.span.high if amount.unit == "reps" else None for amount in amounts]
