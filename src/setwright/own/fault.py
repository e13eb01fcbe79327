"""What keeps a movement of one's own from being scored."""

from setwright.places import Place


class Unfit(ValueError):
    """A key that a movement has no place for: where it stands, what is wrong, what to type instead."""

    def __init__(self, place: Place, message: str, change: str) -> None:
        super().__init__(message)
        self.place = place
        self.message = message
        self.change = change
