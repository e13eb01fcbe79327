"""A session that is like another one, and what differs in it."""

from setwright.findings import Finding
from setwright.model.lines import Group, Item
from setwright.model.own import Word
from setwright.reading.frozen import Frozen
from setwright.reading.habits import Member


class Swap(Frozen, defer_build=True):
    """A movement of the day that a session is like, and the one that is done in its place."""

    old: Word
    new: Word


class Reading(Frozen, defer_build=True):
    """A line as it is read in one place, and what is wrong with it there."""

    item: Item
    findings: tuple[Finding, ...] = ()


class Change(Frozen, defer_build=True):
    """A line with a new dose for a movement of the day that a session is like.

    What it says depends on where that movement stands, which is known once its name is looked up:
    ``readings`` has one of each kind.
    """

    name: Word
    readings: dict[Member, Reading]


class Reuse(Frozen, defer_build=True):
    """What makes a session out of another one. ``like`` is a day or the name of a session, as typed.

    ``along``: what came along with the work, in words; from ``library.reuse``.
    """

    like: Word
    leave_out: tuple[Word, ...] = ()
    swap: tuple[Swap, ...] = ()
    change: tuple[Change, ...] = ()
    add: tuple[Item | Group, ...] = ()
    along: tuple[str, ...] = ()
