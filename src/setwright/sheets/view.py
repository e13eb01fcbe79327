"""What stands on a sheet, as plain frozen data: text that is ready to print, nothing else.

Nothing private gets in here: no limit, no reason, no body mass, no private note. The summary alone names
athletes who have a limit; it is the coach's.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Box:
    """A box to write one set in: the target in its corner, and whether a slash cuts off reps left."""

    target: str
    reserve: bool = False


@dataclass(frozen=True, slots=True)
class LoadWords:
    """What to lift: large, what goes below it, and the unit of a blank to fill in (None: no blank)."""

    large: str = ""
    small: str = ""
    blank: str | None = None


@dataclass(frozen=True, slots=True)
class Ramp:
    """A warm-up set of a line, as its own row; ``at``: its load, where its plates stand under ``load``."""

    text: str
    load: LoadWords
    box: Box
    at: str = ""


@dataclass(frozen=True, slots=True)
class Line:
    """One movement: its number in the session, name, dose, remarks, load, and its boxes."""

    number: str
    name: str
    dose: str
    remarks: tuple[str, ...]
    load: LoadWords
    boxes: tuple[Box, ...]
    ramps: tuple[Ramp, ...] = ()
    next_time: str | None = None


@dataclass(frozen=True, slots=True)
class Block:
    """Lines that are never parted: one movement, or a group with its heading and rules.

    ``rounds_box`` asks for one wide box for the rounds done, where rounds are not known beforehand.
    """

    lines: tuple[Line, ...]
    heading: str | None = None
    remarks: tuple[str, ...] = ()
    next_time: str | None = None
    rounds_box: bool = False


@dataclass(frozen=True, slots=True)
class SessionSheet:
    """One session for one athlete, or for whoever writes a name on it (``athlete`` None).

    ``day`` sorts and names it: the day of the week, where the plan says one.
    """

    athlete: str | None
    day: str | None
    title: str
    when: tuple[str, ...]
    footer: str
    warm_up: tuple[str, str] | None
    blocks: tuple[Block, ...]
    after: tuple[tuple[str, str], ...]
    rules: tuple[tuple[str, str], ...]
    key: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Entry:
    """One movement of a day in the week overview: its line of pull, and the group it is done in, if any."""

    name: str
    dose: str
    line: str | None
    group: int | None


@dataclass(frozen=True, slots=True)
class DayColumn:
    """One session of the week: title, minutes in words, the bar in percent of its width, and its moves.

    ``limit`` is where the tick stands (None: no minutes written), ``used`` how far the bar goes.
    ``continued``: it goes on with the session of the column before, whose title is not repeated.
    """

    title: str
    minutes: str
    used: float
    limit: float | None
    entries: tuple[Entry, ...]
    continued: bool = False


@dataclass(frozen=True, slots=True)
class Cell:
    """An answer of the matrix: its words, its tone (None: no swatch), and whether it is a gap."""

    text: str
    tone: str | None = None
    gap: bool = False


@dataclass(frozen=True, slots=True)
class PartRow:
    """One part of the chest in the matrix."""

    part: str
    sets: Cell
    follows: Cell
    long: Cell
    short: Cell
    across: Cell
    heaviest: Cell


@dataclass(frozen=True, slots=True)
class Remark:
    """A gap with its cure, or a finding the coach accepted with the reason."""

    title: str
    text: str


@dataclass(frozen=True, slots=True)
class Picture:
    """A movement to draw: its key in the library and the words below it."""

    key: str
    caption: str


@dataclass(frozen=True, slots=True)
class SummarySheet:
    """The half-minute summary, for the coach's folder; the only sheet that says who has a limit, never which.

    ``answers``: each question with its lines.
    """

    title: str
    aim: str
    footer: str
    note: str
    answers: tuple[tuple[str, tuple[str, ...]], ...]


@dataclass(frozen=True, slots=True)
class WeekSheet:
    """The week at a glance, for the coach."""

    title: str
    subtitle: str
    footer: str
    note: str | None
    days: tuple[tuple[DayColumn, ...], ...]
    matrix: tuple[PartRow, ...]
    counts: str
    remarks_title: str
    remarks: tuple[Remark, ...]
    pictures: tuple[Picture, ...]

    @property
    def columns(self) -> int:
        """Day columns of the widest row."""
        return max((len(row) for row in self.days), default=1)
