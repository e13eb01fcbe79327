"""Home sheets: a few moves to do alone, in plain words, with days to tick and whom to ask."""

from typing import Final

from setwright.model.plan import Session

HOME: Final = frozenset({"home", "at home"})
"""What is written under ``place:`` of a session that is done at home."""


def at_home(session: Session) -> bool:
    """Whether the plan says that the session is done at home."""
    return (session.where or "").strip().casefold() in HOME
