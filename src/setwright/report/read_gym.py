"""The gym said back: what there is, in which unit, how a cable's pin and a band's pull are understood."""

from collections.abc import Iterable, Iterator
from typing import Final

from setwright.loads.bands import SPREAD_WORDS
from setwright.model.room import Band, Cable, Gym, Heights, Stock

STACKED: Final = 1
"""Kilograms of the stack to one at the handle of a plain pulley."""


def gym_lines(gym: Gym) -> Iterator[str]:
    """Everything the gym file lists, one sentence a line; what it does not list is said too."""
    for word, value in (
        ("racks", gym.racks),
        ("people per rack", gym.people_per_rack),
        ("benches", gym.benches),
    ):
        yield f"{word}: {'not written' if value is None else value}"
    yield f"bars: {_listed(map(_stock, gym.bars))}"
    where = "on each rack" if gym.plates_per_rack else "in the room, for all racks together"
    yield f"plates {where}: {_listed(map(_stock, gym.plates))}" if gym.plates else "plates: none"
    yield from _mixed(gym)
    yield f"dumbbells: {_listed(map(_stock, gym.dumbbells))}"
    yield f"kettlebells: {_listed(map(_stock, gym.kettlebells))}"
    yield f"cables: {_listed(map(_cable, gym.cables), '; ')}"
    yield f"bands: {_listed(map(_band, gym.bands), '; ')}"
    if any(band.pulls for band in gym.bands):
        yield f"of the bands: {SPREAD_WORDS}"
    yield f"stations: {_listed(f'{number} x {name}' for name, number in gym.stations.items())}"
    if gym.spotter:
        yield f"spotter: {gym.spotter}"
    if gym.note:
        yield f"note: {gym.note}"
    if gym.private_note:
        yield f"private note, never printed: {gym.private_note}"


def _listed(said: Iterable[str], between: str = ", ") -> str:
    return between.join(said) or "none"


def _mixed(gym: Gym) -> Iterator[str]:
    """Whether plates in kg and lb go on one bar, where the gym has both."""
    if len({plate.unit for plate in gym.plates}) > 1:
        yield f"plates in kg and lb on one bar: {'yes' if gym.mixed_plates else 'no'}"


def _stock(stock: Stock) -> str:
    pairs = (" pair" if stock.number == 1 else " pairs") if stock.pairs else ""
    name = f" {stock.name}" if stock.name else ""
    return f"{stock.number}{pairs} of {_run(stock)}{name}"


def _run(stock: Stock) -> str:
    run = f" to {stock.high:g}" if stock.high != stock.low else ""
    step = f" in steps of {stock.step:g}" if stock.step else ""
    return f"{stock.low:g}{run} {stock.unit}{step}"


def _cable(cable: Cable) -> str:
    told = [f"{cable.number} x {cable.name}"]
    told += ["two stacks by its name"] if cable.is_pair else []
    told += [_heights(cable.heights)] if cable.heights else []
    told.append(f"stack {_listed(map(_run, cable.stack))}" if cable.stack else "stack not written")
    if cable.pulley is None:
        told.append("pulley not written, so the pull at the handle is not known")
    elif cable.pulley == STACKED:
        told.append("the handle pulls what the pin says")
    else:
        told.append(f"the handle pulls the pin divided by {cable.pulley:g}")
    return ", ".join(told)


def _heights(heights: Heights) -> str:
    at = ["the floor" if height == 0 else f"{height:g} m" for height in heights.at_m]
    return f"pulley from {at[0]} to {at[-1]}" if heights.between else f"pulley at {', '.join(at)}"


def _band(band: Band) -> str:
    number = "" if band.number is None else f"{band.number} x "
    pulls = ", ".join(f"{round(pull.newton, 1):g} N at {pull.at_m:g} m" for pull in band.pulls)
    in_other_words = f" (typed {band.written})" if band.written and band.written != pulls else ""
    return f"{number}{band.name} {pulls or 'of unknown pull'}{in_other_words}"
