"""Cable stacks: the pins next to the load asked for, and what the handle then pulls."""

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

from setwright.loads.put import Around, Piece, Put, around, mass_words, pieces
from setwright.model.room import Cable, Gym, exactly


def pins_around(asked: Fraction, stacks: int, gym: Gym) -> Around:
    """The pins next to ``asked`` (kg, at the pin) that so many stacks of the gym have."""
    return around(asked, _puts(stacks, gym))


def _puts(stacks: int, gym: Gym) -> Iterator[Put]:
    """The pins that enough stacks have, each told with the first cable that has it."""
    there: Counter[Fraction] = Counter()
    told: dict[Fraction, str] = {}
    for cable in gym.cables:
        for piece in dict.fromkeys(piece for run in cable.stack for piece in pieces(run)):
            there[piece.kg] += cable.stacks
            told.setdefault(piece.kg, _words(piece, cable))
    for kg, words in told.items():
        if there[kg] >= stacks:
            yield Put(kg, f"{words} on each side" if stacks > 1 else words)


def _words(pin: Piece, cable: Cable) -> str:
    """The pin, and the pull at the handle where the pulley changes it: "pin 35 kg, 17.5 kg at the handle"."""
    if cable.pulley in (None, 1):
        return f"pin {pin.words}"
    handle = pin.kg / exactly(cable.pulley or 1)
    return f"pin {pin.words}, {mass_words(handle, pin.unit)} at the handle"
