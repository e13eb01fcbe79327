"""The maxes of an athlete said back in plain words."""

from setwright.loads.estimates import TooManyReps, estimated_max
from setwright.model.people import Best, Max, TrainingMax
from setwright.reading.habits import Habits
from setwright.reading.words import load


def max_words(best: Max) -> str:
    """What is on file for a movement: "dip: 9 repetitions, tested on 2026-12-14"."""
    told = [_best(one) for one in best.bests]
    told += [_training(best.training)] if best.training else []
    told += ["none yet"] if best.none_yet else []
    return f"{best.movement}: {', '.join(told) or best.text}"


def _best(best: Best) -> str:
    lifted = "" if best.load is None else load(best.load, Habits()).removeprefix("with ")
    if best.how == "tested":
        return f"{lifted or _repetitions(best.reps or 0)}, tested on {best.on}"
    times = "once" if best.reps == 1 else f"{best.reps} times"
    return f"{lifted} lifted {times} on {best.on}{_estimate(best)}"


def _repetitions(number: int) -> str:
    return "1 repetition" if number == 1 else f"{number} repetitions"


def _estimate(best: Best) -> str:
    """The range of the estimated max, as far as it needs no body mass."""
    if best.load is None or best.load.low is None or best.reps is None:
        return ""
    try:
        low, high = (f"{round(end, 1):g}" for end in estimated_max(best.load.low, best.reps))
    except TooManyReps:
        return " (too often to estimate a max from)"
    return f" (max {low} to {high} {best.load.unit})" if low != high else ""


def _training(training: TrainingMax) -> str:
    if training.load is not None:
        return f"training max {load(training.load, Habits()).removeprefix('with ')}"
    return f"training max {training.percent:g} % of it"
