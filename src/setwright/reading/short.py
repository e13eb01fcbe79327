"""A dose as short as paper wants it; loads, rest and tempo stand elsewhere on the sheet."""

from setwright.reading.dose import Amount, Dose, Drop, Effort, SetGroup, SetWork, Sides, Span
from setwright.reading.words import FROM_KM, MINUTE_S, between, number, turn_and_step


def dose_short(dose: Dose) -> str:
    """The dose in signs: "4 x 6", "3 x 8-10, 2 left", "3 x 30 s each side"; groups joined by "then"."""
    return ", then ".join(_group(group) for group in dose.groups)


def _group(group: SetGroup) -> str:
    efforts = list(dict.fromkeys(_effort(work.effort) for work in group.works if work.effort))
    effort = efforts[0] if len(efforts) == 1 else ", ".join(efforts)
    said = [
        f"{_head(group)}{side_short(group.sides)}",
        *([effort] if effort else []),
        *_drops(group.works[0].drops),
    ]
    if group.last is not None:
        said.append(_last(group.last, group.works[-1]))
    if group.pause_s is not None:
        said.append(f"pause {_span(group.pause_s)} s")
    if group.every_s is not None:
        said.append(f"every {_clock(group.every_s)}")
    if group.cap is not None:
        said.append(f"cap {amount_short(group.cap)}")
    if group.target_s is not None:
        said.append(f"in {_clock(group.target_s)}")
    if group.rate is not None:
        said.append(f"rate {number(group.rate)}")
    if group.split_s is not None:
        said.append(f"split {_clock(group.split_s)}")
    if group.stop is not None:
        said.append(f"stop {group.stop}")
    return ", ".join(said)


def _head(group: SetGroup) -> str:
    work = group.works[0]
    sets = between(group.sets.low, group.sets.high, "-")
    times = "" if group.sets.low == group.sets.high == 1 else f"{sets} x "
    most = work.amount.span.high
    match group.kind:
        case "total":
            return f"{amount_short(work.amount)} in all"
        case "top_set":
            return f"work up to {_span(work.amount.span)}RM"
        case "test":
            return "test max reps" if most is None else f"test {number(most)}RM"
        case "ladder":
            return times + _ladder(group.rungs)
        case "cluster" | "rest_pause" | "partials":
            parts = " + ".join(_span(part) for part in work.parts)
            return f"{times}{group.kind.replace('_', '-')} {parts}"
        case "list":
            return _set_by_set([amount_short(w.amount) for w in group.works], sets)
        case _:
            alone = not times and work.amount.unit not in ("reps", "rung")
            return (amount_short(work.amount) if alone else f"{sets} x {amount_short(work.amount)}") + _extra(
                work
            )


def _set_by_set(amounts: list[str], sets: str) -> str:
    return f"{sets} x {amounts[0]}" if len(set(amounts)) == 1 else ", ".join(amounts)


def _ladder(rungs: tuple[int, ...]) -> str:
    turn, step = turn_and_step(rungs)
    back = f" to {rungs[-1]}" if turn != rungs[-1] else ""
    return f"ladder {rungs[0]} to {turn}{back}" + (f" by {step}" if step > 1 else "")


def _extra(work: SetWork) -> str:
    return f" + {work.extra.reps} {work.extra.kind}" if work.extra else ""


def _span(span: Span) -> str:
    if span.high is None:
        return f"{number(span.low)}+" if span.low else "max"
    return between(span.low, span.high, "-")


def amount_short(amount: Amount) -> str:
    """What one set holds, in signs: "8-10", "30 s hold", "40 m"."""
    low, high = amount.span.low, amount.span.high
    if amount.less_than_tested is not None:
        return f"tested max minus {amount.less_than_tested}"
    if amount.unit == "reps":
        return _span(amount.span)
    if amount.unit == "rung":
        return "rung" if low == 1 else f"rung x {number(low)}"
    if amount.unit == "s":
        return f"{_time(low, high)} {amount.how or ''}".strip()
    if amount.unit == "m" and low == high and low >= FROM_KM:
        return f"{number(low / FROM_KM)} km"
    return f"{between(low, high, '-')} {amount.unit}"


def _time(low: float, high: float | None) -> str:
    if high is None:
        return "by the clock"
    if low != high:
        return f"{between(low, high, '-')} s"
    if low <= MINUTE_S:
        return f"{number(low)} s"
    return _clock(low) if low % MINUTE_S else f"{number(low / MINUTE_S)} min"


def _clock(seconds: float) -> str:
    """A time as it is typed: "45 s", "1:30"."""
    minutes, rest = divmod(seconds, MINUTE_S)
    if not minutes:
        return f"{number(seconds)} s"
    return f"{minutes:.0f}:{rest:02.0f}" if rest == round(rest) else f"{minutes:.0f}:{rest:04.1f}"


def side_short(sides: Sides | None) -> str:
    """A side behind an amount, with a blank before it: " each arm", " left"; empty without one."""
    if sides is None:
        return ""
    word = f"each {sides.word}" if sides.kind == "each" else sides.word
    turn = " alternating" if sides.alternating else ""
    first = f", {sides.order} first" if sides.order else ""
    return f" {word}{turn}{first}"


def _effort(effort: Effort) -> str:
    figure = between(effort.low, effort.high, "-")
    if effort.scale != "RIR":
        return f"{effort.scale} {figure}"
    return "to failure" if effort.low == effort.high == 0 else f"{figure} left"


def _drops(drops: tuple[Drop, ...]) -> list[str]:
    return [f"drop {_lighter(drop)} for {amount_short(drop.amount)}" for drop in drops]


def _lighter(drop: Drop) -> str:
    if drop.to is not None:
        return f"to {number(drop.to.low or 0)} {drop.to.unit}"
    return f"{number(drop.by_percent or 0)}%"


def _last(last: SetWork, base: SetWork) -> str:
    said = []
    if last.amount != base.amount:
        said.append(amount_short(last.amount))
    if last.effort is not None and last.effort != base.effort:
        said.append(_effort(last.effort))
    if last.drops != base.drops:
        said += _drops(last.drops)
    if not said and last.load is not None and last.load.low is not None:
        said.append(f"at {number(last.load.low)} {last.load.unit or ''}".strip())
    return f"last set {', '.join(said)}"
