"""A dose in plain words, for reading back; ``short`` has it for paper."""

from setwright.reading import words
from setwright.reading.dose import Dose, Load, SetGroup, SetWork, WarmUp, WarmUpStep
from setwright.reading.habits import Habits

_PARTS = {"cluster": "cluster", "rest_pause": "rest-pause", "partials": "partial repetitions"}


def say_dose(dose: Dose, habits: Habits) -> str:
    """What the coach's line was read as, in one sentence without a full stop.

    "4 sets of 6 with 75 % of the tested max; 3 minutes between sets"
    """
    said = ", then ".join(_group(group, habits) for group in dose.groups)
    if dose.warm_up is None:
        return said
    warm_up = say_warm_up(dose.warm_up, habits)
    return f"{said}; {warm_up}" if said else warm_up


def say_warm_up(warm_up: WarmUp, habits: Habits) -> str:
    """The warm-up sets of a line: "2 warm-up sets first", "no warm-up sets, on purpose"."""
    if warm_up.count is not None:
        return f"{words.plural(warm_up.count, 'warm-up set')} first"
    if not warm_up.steps:
        return "no warm-up sets, on purpose"
    return "warm-up: " + ", ".join(_step(step, habits) for step in warm_up.steps)


def _step(step: WarmUpStep, habits: Habits) -> str:
    sets = f"{step.sets} sets of " if step.sets > 1 else ""
    load = f" {words.load(step.load, habits)}" if step.load else ""
    return f"{sets}{words.amount(step.amount)}{load}"


def _group(group: SetGroup, habits: Habits) -> str:
    head = f"{_head(group)}{_side(group)}{_loads(group, habits)}{_efforts(group)}"
    if group.sides is not None and group.sides.order:
        head += f", {group.sides.order} first"
    return "; ".join([head, *_how(group, habits)])


def _side(group: SetGroup) -> str:
    if group.sides is None:
        return ""
    return " " + words.sides(group.sides.model_copy(update={"order": None}))


def _head(group: SetGroup) -> str:
    work = group.works[0]
    count = group.sets.high or 0.0
    sets = f"{words.span(group.sets)} set{'' if count == 1 else 's'} of"
    if group.kind in ("top_set", "test"):
        return _tested(group, work)
    if group.kind == "total":
        return f"{words.span(work.amount.span)} repetitions in all, in as many sets as it takes"
    if group.kind == "ladder":
        return _ladder(group, work)
    if group.kind in _PARTS:
        return f"{sets} {' + '.join(words.span(part) for part in work.parts)} ({_PARTS[group.kind]})"
    if group.kind == "list":
        return f"{sets} {_set_by_set(group)}"
    alone = count == 1 and work.amount.unit != "reps"
    return f"{words.amount(work.amount) if alone else f'{sets} {words.amount(work.amount)}'}{_extra(work)}"


def _tested(group: SetGroup, work: SetWork) -> str:
    if work.amount.span.high is None:
        return "test of as many repetitions as possible"
    reps = words.number(work.amount.span.high)
    return f"test of the {reps}RM" if group.kind == "test" else f"work up to the {reps}RM"


def _ladder(group: SetGroup, work: SetWork) -> str:
    turn, step = words.turn_and_step(group.rungs)
    back = f" and back to {group.rungs[-1]}" if turn != group.rungs[-1] else ""
    by = f" by {step}" if step > 1 else ""
    count = group.sets.low
    ladders = "a ladder" if group.sets.high == 1 else f"{words.span(group.sets)} ladders"
    each = "" if count == group.sets.high == 1 else " each"
    return f"{ladders} from {group.rungs[0]} to {turn}{back}{by}, {words.span(work.amount.span)} in all{each}"


def _set_by_set(group: SetGroup) -> str:
    amounts = [words.amount(work.amount) for work in group.works]
    return amounts[0] if len(set(amounts)) == 1 else words.listed(amounts)


def _extra(work: SetWork) -> str:
    return f", then {work.extra.reps} {work.extra.kind}" if work.extra else ""


def _loads(group: SetGroup, habits: Habits) -> str:
    if group.kind in ("top_set", "test") and group.works[0].amount.span.high is not None:
        return ""
    loads = [words.load(work.load, habits) for work in group.works if work.load]
    return _joined(loads)


def _joined(said: list[str]) -> str:
    if not said:
        return ""
    if len(set(said)) == 1:
        return f" {said[0]}"
    return f" {words.merged(said)}"


def _efforts(group: SetGroup) -> str:
    efforts = [words.effort(work.effort) for work in group.works if work.effort]
    return "," * bool(efforts) + _joined(efforts)


def _how(group: SetGroup, habits: Habits) -> list[str]:
    """Everything said after the amount, one phrase each."""
    said = _drops(group.works[0], habits)
    if group.last is not None:
        said.append(_last(group.last, group.works[-1], habits))
    if group.pause_s is not None:
        said.append(f"{words.seconds(group.pause_s.low, group.pause_s.high)} between the parts")
    if group.every_s is not None:
        said.append(f"a set starts every {words.interval(group.every_s)}")
    if group.tempo is not None:
        said.append(words.tempo(group.tempo))
    if group.rest is not None:
        said.append(words.rest(group.rest))
    return said + _limits(group)


def _limits(group: SetGroup) -> list[str]:
    said = []
    if group.cap is not None:
        said.append(f"{words.amount(group.cap)} at most")
    if group.target_s is not None:
        said.append(f"in {words.seconds(group.target_s)}")
    if group.rate is not None:
        said.append(f"{words.number(group.rate)} strokes a minute")
    if group.split_s is not None:
        said.append(f"{words.seconds(group.split_s)} for 500 m")
    if group.stop is not None:
        said.append(f"stop {group.stop}")
    return said


def _drops(work: SetWork, habits: Habits) -> list[str]:
    return [
        f"at once {_lighter(drop.by_percent, drop.to, habits)}, {words.amount(drop.amount)}"
        for drop in work.drops
    ]


def _lighter(by_percent: float | None, to: Load | None, habits: Habits) -> str:
    return f"{words.number(by_percent or 0)} % less" if to is None else words.load(to, habits)


def _last(last: SetWork, base: SetWork, habits: Habits) -> str:
    """How the last set differs from the others."""
    said = []
    if last.amount != base.amount:
        said.append(words.amount(last.amount))
    if last.load is not None and last.load != base.load:
        said.append(words.load(last.load, habits))
    if last.effort is not None and last.effort != base.effort:
        said.append(words.effort(last.effort))
    if last.drops != base.drops:
        said += _drops(last, habits)
    return f"last set: {', '.join(said) or 'the same'}"
