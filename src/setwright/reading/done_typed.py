"""What was done as one record line that reads the same: how a record is said back and written."""

from itertools import groupby

from setwright.reading.done import Done, SetDone
from setwright.reading.dose import Amount, Effort, Load
from setwright.reading.short import amount_short, side_short
from setwright.reading.words import number


def typed_done(done: Done) -> str:
    """The record line of ``done``: "60 kg x 8, 8, 6 at RPE 8"; empty when nothing was written."""
    if done.kind == "not done":
        return f"not done, {done.reason}" if done.reason else "not done"
    if done.kind != "sets":
        return "done" if done.kind == "done" else ""
    parts = groupby(done.sets, key=lambda one: (one.load, one.effort, one.sides is None))
    return ", then ".join(_part(load, effort, list(sets)) for (load, effort, _), sets in parts)


def _part(load: Load | None, effort: Effort | None, sets: list[SetDone]) -> str:
    in_words = len({one.amount.unit for one in sets}) > 1
    amounts = ", ".join(_set(one, in_words=in_words) for one in sets)
    lifted = f"{load_typed(load)} x " if load else ""
    return f"{lifted}{amounts}{_effort(effort) if effort else ''}"


def _set(one: SetDone, *, in_words: bool) -> str:
    extra = f" + {one.extra.reps} {one.extra.kind}" if one.extra else ""
    return f"{_amount(one.amount, in_words=in_words)}{extra}{side_short(one.sides)}"


def _amount(amount: Amount, *, in_words: bool) -> str:
    return amount_short(amount) + (" reps" if in_words and amount.unit == "reps" else "")


def _effort(effort: Effort) -> str:
    figure = (
        number(effort.low) if effort.low == effort.high else f"{number(effort.low)}-{number(effort.high)}"
    )
    return f" at {figure} RIR" if effort.scale == "RIR" else f" at {effort.scale} {figure}"


def load_typed(load: Load) -> str:
    """A load as it is typed: "60 kg", "2 x 20 kg", "bodyweight + 10 kg", "75% of training max"."""
    figure = f"{number(load.low or 0)} {load.unit or ''}".strip()
    match load.kind:
        case "mass":
            chain = f" + {number(load.top_kg)} kg chain" if load.top_kg is not None else ""
            return f"{'2 x ' if load.hands else ''}{figure}{chain}"
        case "percent":
            high = "" if load.high == load.low else f"-{number(load.high or 0)}"
            return f"{number(load.low or 0)}{high}%{f' of {load.of}' if load.of else ''}"
        case "band":
            return _band(load)
        case "setting":
            return f"{load.name} {figure}"
        case "word":
            return load.name or ""
        case _:
            side = " a side" if load.kind == "bar" else ""
            return load.kind if load.plus is None else f"{load.kind}{_plus(load.plus)} {load.unit}{side}"


def _band(load: Load) -> str:
    name = load.name or ""
    stretch = f" to {number(load.stretch_m)} m" if load.stretch_m is not None else ""
    if load.low != 1:
        return f"{number(load.low or 0)} {name} bands{stretch}"
    return f"{name}{'' if name.startswith('band ') else ' band'}{stretch}"


def _plus(value: float) -> str:
    return f" {'+' if value >= 0 else '-'} {number(abs(value))}"
