"""Stations of a gym file looked up among those that the movements of a library ask for."""

from collections.abc import Iterator
from typing import Final

from setwright.findings import Finding
from setwright.library.names import fold
from setwright.library.table import Library
from setwright.model.room import Gym
from setwright.reading import gym_rules as rules
from setwright.reading.nearest import choice, nearest

NEAREST: Final = 3
"""Most stations that are proposed for one that is not known (choice)."""


def with_known_stations(gym: Gym, table: Library) -> tuple[Gym, tuple[Finding, ...]]:
    """The gym with the library's words for its stations, and a finding for each that no movement asks for."""
    known = {fold(word): word for word in _asked_for(table)}
    stations: dict[str, int] = {}
    findings = []
    for typed, number in gym.stations.items():
        word = known.get(fold(typed), typed)
        stations[word] = stations.get(word, 0) + number
        if fold(typed) not in known and typed in gym.places:
            near = [f"`{one}`" for one in nearest(typed, known.values(), NEAREST)]
            change = (
                f"write {choice(near)}"
                if near
                else "list it under `kit:` of a movement of your own, or take it out"
            )
            message = f'"{typed}" is no station that a movement asks for'
            findings.append(rules.UNKNOWN_STATION.at(gym.places[typed], message, change, "the gym"))
    return gym.model_copy(update={"stations": stations}), tuple(findings)


def _asked_for(table: Library) -> Iterator[str]:
    """The stations of every movement; of "A or B" each of the two as well."""
    for movement in table.movements().values():
        for need in movement["needs"]:
            yield from (need, *need.split(" or "))
