"""Dumbbells and kettlebells: the loads in the hand next to the one asked for."""

from collections.abc import Iterator
from fractions import Fraction

from setwright.loads.put import Around, Piece, Put, Use, around, pieces
from setwright.model.room import Gym, Stock


def weights_around(asked: Fraction, stock: tuple[Stock, ...], hands: int, gym: Gym) -> Around:
    """The weights next to ``asked`` (kg in each hand) of which there are enough for ``hands``."""
    return around(asked, _puts(stock, hands, gym))


def lonely(asked: Fraction, stock: tuple[Stock, ...], hands: int) -> Piece | None:
    """The weight that was asked for, where there is one of it but none for the other hand."""
    few = (piece for one in stock if 0 < one.singles < hands for piece in pieces(one))
    return next((piece for piece in few if piece.kg == asked), None)


def _puts(stock: tuple[Stock, ...], hands: int, gym: Gym) -> Iterator[Put]:
    for one in stock:
        what = "dumbbells" if one in gym.dumbbells else "kettlebells"
        words = "in each hand" if hands > 1 else f"with one {what[:-1]}"
        if one.singles >= hands:
            for piece in pieces(one):
                yield Put(piece.kg, f"{piece.words} {words}", (Use(what, piece, hands),))
