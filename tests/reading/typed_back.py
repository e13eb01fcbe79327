"""A dose typed back: every word that it holds, in the order and the one spelling of the plan language."""

from collections.abc import Iterable

from setwright.reading.dose import (
    Amount,
    Dose,
    Drop,
    Effort,
    Load,
    Rest,
    SetGroup,
    SetWork,
    Sides,
    Span,
    Tempo,
)

SPECIALS = {"cluster": "cluster", "rest_pause": "rest-pause", "partials": "partials"}
PHASES = (("lower_s", "down"), ("bottom_s", "at the bottom"), ("lift_s", "up"), ("top_s", "at the top"))


def line(dose: Dose) -> str:
    """The line that reads as the dose."""
    first = [f"{dose.warm_up.count} warm-up sets"] if dose.warm_up and dose.warm_up.count else []
    return ", then ".join([*first, *map(_group, dose.groups)])


def _group(group: SetGroup) -> str:
    works, last = group.works, group.last
    said = [f"{_head(group)}{f' {_sides(group.sides)}' if group.sides else ''}"]
    if group.kind not in ("top_set", "test") or works[0].amount.span.high is None:
        said += (
            [f"at {', '.join(_alike(load(one.load) for one in works if one.load))}"] if works[0].load else []
        )
    said += [efforts([one.effort for one in works if one.effort])] if works[0].effort else []
    said += [rest(group.rest)] if group.rest else []
    for word, value in (("pause", group.pause_s), ("every", group.every_s), ("in", group.target_s)):
        said += [f"{word} {_span(value)} s"] if value is not None else []
    said += [f"cap {_amount(group.cap)}"] if group.cap else []
    said += [f"rate {_number(group.rate)}"] if group.rate is not None else []
    said += [f"split {int(group.split_s // 60)}:{group.split_s % 60:04.1f}"] if group.split_s else []
    said += [f"stop {group.stop}"] if group.stop else []
    said += list(map(_drop, works[0].drops))
    said += _last(last, works[-1]) if last else []
    said += tempo(group.tempo) if group.tempo else []  # a time behind a list of amounts would be one of them
    return ", ".join(said)


def _head(group: SetGroup) -> str:
    work, sets = group.works[0], _span(group.sets)
    if group.kind in ("top_set", "test"):
        reps = "max reps" if work.amount.span.high is None else f"{_span(work.amount.span)}RM"
        return f"{'test' if group.kind == 'test' else 'work up to'} {reps}"
    if group.kind == "total":
        return f"{_span(work.amount.span)} total"
    if group.kind == "ladder":
        step = abs(group.rungs[1] - group.rungs[0]) if len(group.rungs) > 1 else 1
        top = max(group.rungs, key=lambda rung: abs(rung - group.rungs[0]))
        back = f" to {group.rungs[-1]}" if top != group.rungs[-1] else ""
        return f"{sets} x ladder {group.rungs[0]} to {top}{back} by {step}"
    if group.kind in SPECIALS:
        return f"{sets} x {SPECIALS[group.kind]} {' + '.join(map(_span, work.parts))}"
    plain = work.amount.unit in ("reps", "s", "m") and work.amount.less_than_tested is None
    if group.kind == "list" and plain and not work.extra:
        return f"sets of {', '.join(_amount(one.amount) for one in group.works)}"
    extra = f" + {work.extra.reps} {work.extra.kind}" if work.extra else ""
    return f"{sets} sets of {_amount(work.amount)}{extra}"


def _amount(amount: Amount) -> str:
    if amount.less_than_tested is not None:
        return f"tested max minus {amount.less_than_tested}"
    unit = "" if amount.unit == "reps" else f" {amount.unit}"
    return f"{_span(amount.span)}{unit}{f' {amount.how}' if amount.how else ''}"


def _span(span: Span | float) -> str:
    if isinstance(span, float | int):
        return _number(span)
    if span.high is None:
        return f"{_number(span.low)}+" if span.low else "max"
    return _between(span.low, span.high)


def _between(low: float | None, high: float | None) -> str:
    ends = dict.fromkeys(_number(end) for end in (low, high) if end is not None)
    return "-".join(ends)


def _number(value: float) -> str:
    return f"{value:g}"


def _sides(sides: Sides) -> str:
    word = {"each": f"each {sides.word}", "in_all": "in all"}.get(sides.kind, sides.word)
    return word + " alternating" * sides.alternating + (f", {sides.order} first" if sides.order else "")


def load(one: Load) -> str:
    """A load without its lead word."""
    figure = _between(one.low, one.high)
    words = {
        "mass": f"{'2 x ' if one.hands else ''}{figure} {one.unit}",
        "percent": f"{figure}%{f' of {one.of}' if one.of else ''}",
        "bodyweight": f"bodyweight{_plus(one)}",
        "bar": f"bar{_plus(one)}{' a side' if one.plus else ''}",
        "last": f"{one.name}{_plus(one)}",
        "rm": f"{figure}RM",
        "speed": f"{figure} m/s",
        "setting": f"{one.name} {figure}",
        "band": f"{figure} {one.name} bands" if one.low and one.low > 1 else f"{one.name} band",
        "word": str(one.name),
    }
    stretch = f" to {_number(one.stretch_m)} m" if one.stretch_m else ""
    chain = f" + {_number(one.top_kg)} kg chain" if one.top_kg else ""
    return f"{'rising to ' if one.rising else ''}{words[one.kind]}{stretch}{chain}"


def _plus(one: Load) -> str:
    if one.plus is None:
        return ""
    ends = _between(abs(one.plus), None if one.plus_high is None else abs(one.plus_high))
    return f" {'+' if one.plus >= 0 else '-'} {ends}{'%' if one.unit == '%' else f' {one.unit}'}"


def efforts(all_sets: list[Effort]) -> str:
    """One effort, or one a set, with their scale in front."""
    return f"{all_sets[0].scale} {', '.join(_alike(_between(one.low, one.high) for one in all_sets))}"


def _alike(said: Iterable[str]) -> list[str]:
    """One for all where all are the same."""
    every = list(said)
    return every[:1] if len(set(every)) == 1 else every


def rest(one: Rest) -> str:
    """A rest with its lead word."""
    figure = _between(one.low, one.high)
    words = {
        "seconds": f"{figure} s",
        "metres": f"{figure} m",
        "times_work": f"{figure} times the work",
        "as_needed": "as needed",
        "partner": "when partner is done",
        "none": "none",
    }
    return f"rest {words[one.kind]}"


def tempo(one: Tempo) -> list[str]:
    """Four digits where all phases are written, else the phases."""
    phases = [getattr(one, name) for name, _ in PHASES]
    if None not in phases:
        return [f"tempo {'-'.join(phase if phase == 'X' else _number(phase) for phase in phases)}"]
    said = []
    for phase, (_, where) in zip(phases, PHASES, strict=True):
        if phase is not None:
            time = "fast" if phase == "X" else f"{_number(phase)} s"
            said.append(f"{time} {where}" if where in ("down", "up") else f"pause {time} {where}")
    return said + ([f"pause {_number(one.held_s)} s {one.held_at}"] if one.held_s is not None else [])


def _drop(drop: Drop) -> str:
    how = f"to {load(drop.to)}" if drop.to else f"{_number(drop.by_percent or 0)}%"
    return f"drop {how} for {_amount(drop.amount)}"


def _last(last: SetWork, base: SetWork) -> list[str]:
    own = [_amount(last.amount)] if last.amount != base.amount else []
    own += [f"at {load(last.load)}"] if last.load and last.load != base.load else []
    own += [efforts([last.effort])] if last.effort and last.effort != base.effort else []
    own += list(map(_drop, last.drops)) if last.drops != base.drops else []
    own = own or _same_again(last)
    return [f"last set {own[0]}", *own[1:]]


def _same_again(last: SetWork) -> list[str]:
    """A last set that was typed and is like the others: a word that changes none of it."""
    if last.effort:
        return [efforts([last.effort])]
    if last.load:
        return [f"at {load(last.load)}"]
    return list(map(_drop, last.drops)) or [_amount(last.amount)]
