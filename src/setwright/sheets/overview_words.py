"""The sentences of the week overview."""

from setwright.coverage import Sets
from setwright.sheets.phrases import say, series
from setwright.sheets.words import decimals, number


def minutes(used: float, limit: float | None) -> str:
    """Minutes a session takes, of those it has."""
    if limit:
        return say("overview.minutes_of", used=f"{used:.0f}", limit=number(limit))
    return say("overview.minutes", used=f"{used:.0f}")


def counts(pull: str, push: str, unscored: int) -> str:
    """The line under the matrix."""
    name = {0: "overview.counts", 1: "overview.counts_one_unscored"}.get(unscored, "overview.counts_unscored")
    return decimals(say(name, pull=pull, push=push, unscored=unscored))


def without_matrix(chest: Sets, told: str) -> str:
    """What stands in the place of the matrix; ``told``: the line that would stand under it."""
    name = "overview.little_chest" if chest.high else "overview.not_trained"
    return decimals(say(name, chest=chest, counts=told))


def remarks_title(gaps: int, accepted: int) -> str:
    """The heading over the gaps: "One gap, one accepted", "No gaps"."""
    count = _how_many(gaps).capitalize()
    told = say("overview.one_gap", count=count) if gaps == 1 else say("overview.gaps", count=count)
    return say("overview.and_accepted", gaps=told, count=_how_many(accepted)) if accepted else told


def _how_many(count: int) -> str:
    """A count in words, as far as there are any."""
    told = series("overview.how_many")
    return told[count] if count < len(told) else str(count)
