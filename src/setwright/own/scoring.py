"""Figures of movements with an arm path of one's own: the engine, asked once for all of them."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final

import numpy as np

from setwright.engine.frames import dot
from setwright.engine.movement import scored_fields
from setwright.engine.partners import paired, partners
from setwright.engine.paths import ArmPaths, arm_paths
from setwright.library.rows import Loading, Path, Row, load_rows
from setwright.library.table import Library
from setwright.model.own import OwnMovement
from setwright.own.body import Size
from setwright.own.changes import changed, pulley_at
from setwright.own.entry import Entry, key_of
from setwright.own.fault import Unfit
from setwright.own.postures import path_of
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering

OUT_OF_REACH_M: Final = 0.005
"""How far beyond the arm's length a hand may be asked for (choice: half a centimetre is a rounded number)."""

HELPED: Final = (
    "The load pulls the hand the way it goes, so it helps: the pulley is on the wrong side, behind the hand, "
    "or the postures are not in the order of the lift."
)
_NOT_HELD: Final = "the model finds no muscle forces that hold one of the postures typed"
_MEND: Final = "mend the posture, grip or pulley, or keep it: it then counts for its muscles only"


def scored(
    paths: Sequence[tuple[OwnMovement, str | None]],
    entries: Mapping[str, Entry],
    shipped: Library,
    size: Size,
    found: Gathering,
) -> Iterator[tuple[OwnMovement, Entry | None]]:
    """Each movement with its whole entry, None after a finding for one whose changes do not fit.

    ``paths``: movements with the key of the one they are like. A movement that can't be trusted keeps its
    figures, serves nothing, and says why.
    """
    rows = {row.key: row for row in load_rows()}
    fit: list[tuple[OwnMovement, Row]] = []
    for own, base in paths:
        entry = entries[key_of(own)]
        try:
            path = _typed(own, entry["pattern"], size) if base is None else _changed(rows[base], own, size)
        except Unfit as fault:
            found.say(rules.OWN_CHANGE, fault.place, fault.message, fault.change)
            yield own, None
        else:
            fit.append((own, _row(base or key_of(own), entry, path)))
    if not fit:
        return
    arms = arm_paths([row.path for _, row in fit if row.path is not None])
    try:
        fields = scored_fields([row for _, row in fit])
    except ArithmeticError:
        for own, _ in fit:
            found.say(rules.OWN_NOT_SCORED, own.place, f"{own.name} is not scored: {_NOT_HELD}", _MEND)
            yield own, None
        return
    done = [_entry(entries[key_of(own)], fields[n], _why_not(arms, n)) for n, (own, _) in enumerate(fit)]
    everything = {**shipped.movements(), **{entry["key"]: entry for entry in done}}
    for (own, _), entry in zip(fit, done, strict=True):
        if entry["refused"]:
            message = f"{own.name} is not scored: {_plain(entry['refused'])}"
            found.say(rules.OWN_NOT_SCORED, own.place, message, _MEND)
        yield own, {**entry, **_partners(entry, everything)}


def _row(key: str, entry: Entry, path: Path) -> Row:
    """What the engine asks of a row: what it is, how heavy by equipment, and its path."""
    loading = Loading.model_validate({"class": entry["class"], "why": entry["class_why"]})
    asked: dict[str, Any] = {"key": key, "pattern": entry["pattern"], "loading": loading, "path": path}
    return Row.model_construct(**asked)


def _entry(typed: Entry, fields: Entry, why_not: str | None) -> dict[str, Any]:
    entry = {**typed, **fields, "scored": True}
    return entry if why_not is None else unscored(entry, why_not)


def _plain(sentence: str) -> str:
    """A sentence of the engine as the end of another one."""
    return (sentence[:1].lower() + sentence[1:]).removesuffix(".").removesuffix(": reported, not scored")


def _typed(own: OwnMovement, pattern: str, size: Size) -> Path:
    path = path_of(own, pattern, size)
    return path if own.pulley is None else pulley_at(path, own, size)


def _changed(row: Row, own: OwnMovement, size: Size) -> Path:
    if row.path is None:
        key = own.changes[0]
        message = f"{own.name}: a {row.name} is counted, not scored, so there is no arm path to change"
        raise Unfit(own.places[key], message, f"take `{key}:` out, or write a `path:` of your own")
    return changed(row, own, size)


def _why_not(arms: ArmPaths, n: int) -> str | None:
    """Why one of the paths can't be done or resists nothing."""
    beyond = float(arms.stretch[n].max())
    if beyond > OUT_OF_REACH_M:
        return f"The hand is out of reach: the arm is {100 * beyond:.0f} cm too short for it."
    steps = np.diff(arms.hand[n], axis=0)
    load = (arms.load[n, 1:] + arms.load[n, :-1]) / 2
    if float(dot(steps, load).sum()) > 0:
        return HELPED
    return None


def unscored(entry: Entry, why: str) -> dict[str, Any]:
    """The entry with its figures, none of them to be trusted, serving and loading nothing."""
    parts = {part: {**one, "serves": False, "dose": 0} for part, one in entry["parts"].items()}
    told = {**entry, "parts": parts, "serves": [], "crossing": False, "refused": why}
    return _distrusted(told, why)


def _distrusted(figures: Entry, why: str) -> dict[str, Any]:
    """The figures with every mark of trust, wherever it stands, taken away."""
    marks = {"trust": "not usable", "trust_why": why} if "trust" in figures else {}
    inner = {name: _distrusted(value, why) for name, value in figures.items() if isinstance(value, Mapping)}
    return {**figures, **inner, **marks}


def _partners(entry: Entry, everything: Mapping[str, Entry]) -> dict[str, Any]:
    """The movements that it finishes or is finished by, and itself as a partner of those."""
    pairs = [] if entry["refused"] else paired(entry, everything)
    itself = {"key": entry["key"], "name": entry["name"]}
    return {
        "partners": partners(entry, pairs),
        "partner_of": {one["key"]: {**one, **itself} for one in pairs},
    }
