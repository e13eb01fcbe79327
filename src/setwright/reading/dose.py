"""What a dose line becomes: sets of works, each with an amount, a load and an effort.

None means "not written". A ``Span`` with ``high`` None is open ("max", "5+"). Reps are whole
numbers; seconds, metres and kilograms are floats; pounds are kept as typed, with ``unit``.
"""

from typing import Final, Literal, get_args

from setwright.places import Place
from setwright.reading.frozen import Frozen

MaxKind = Literal["tested max", "training max", "estimated max", "today's max"]
MAX_KINDS: Final[tuple[MaxKind, ...]] = get_args(MaxKind)
BARE_PERCENT_OF: Final[MaxKind] = "tested max"
"""What a percent is taken of when neither the line nor the plan says it (the plan language)."""
GroupKind = Literal[
    "straight", "list", "cluster", "rest_pause", "partials", "ladder", "total", "top_set", "test"
]
LoadKind = Literal["mass", "percent", "bodyweight", "rm", "bar", "band", "setting", "speed", "word", "last"]
RestKind = Literal["seconds", "metres", "times_work", "as_needed", "partner", "none"]
SideKind = Literal["each", "left", "right", "weaker", "stronger", "in_all"]


class Span(Frozen):
    """A number, a range, or an open number: ``low`` to ``high``, ``high`` None when open."""

    low: float
    high: float | None


class Amount(Frozen):
    """How much one set holds. ``unit``: reps, s, m, rung, or a thing (steps, contacts, cal ...).

    "max" is reps from 0 up, open. A ladder, a cluster and a total hold the sum of their parts. A member of a
    circuit with ``each`` that says no amount is "s" from 0 up, open: it lasts as long as the circuit says.
    """

    unit: str
    span: Span
    how: Literal["hold", "fast"] | None = None
    less_than_tested: int | None = None


class Load(Frozen):
    """What is lifted, as written; ``of`` names a max kind, a movement, "top set" or "bodyweight".

    ``low`` to ``high``: mass, percent, repetition maximum, m/s, or the number of bands. ``plus`` (to
    ``plus_high``) is added to a bar (each side), bodyweight or last time; negative is taken off.
    ``lone_plus`` marks "at +10 kg", read as bodyweight + 10 kg, which only suits a bodyweight movement.
    """

    kind: LoadKind
    low: float | None = None
    high: float | None = None
    unit: Literal["kg", "lb", "%"] | None = None
    hands: Literal[1, 2] | None = None
    of: str | None = None
    plus: float | None = None
    plus_high: float | None = None
    top_kg: float | None = None
    rising: bool = False
    name: str | None = None
    stretch_m: float | None = None
    lone_plus: bool = False

    @property
    def of_movement(self) -> str | None:
        """The movement whose max a percent is taken of, as typed; None when it is of anything else."""
        return None if self.of in {None, *MAX_KINDS, "top set", "bodyweight"} else self.of


class Effort(Frozen):
    """How hard: RIR or RPE from 0 to 10, Borg from 6 to 20."""

    scale: Literal["RIR", "RPE", "Borg"]
    low: float
    high: float

    @property
    def rir(self) -> tuple[float, float] | None:
        """Reps in reserve, low and high; None where the scale says nothing about them (RPE below 5, Borg)."""
        if self.scale == "RIR":
            return self.low, self.high
        if self.scale == "RPE" and self.low >= 5:  # noqa: PLR2004 - the RIR-based scale starts at 5 (zourdos2016)
            return 10 - self.high, 10 - self.low
        return None


class Rest(Frozen):
    """The pause after a set or a round; ``low`` and ``high`` in seconds, metres, or times the work."""

    kind: RestKind
    low: float | None = None
    high: float | None = None


class Tempo(Frozen):
    """Seconds of lowering, bottom, lifting, top; "X" is as fast as possible; None is not written.

    ``held_s`` is a pause "at the chest" or "halfway", the bottom of some movements and the top of others.
    """

    lower_s: float | Literal["X"] | None = None
    bottom_s: float | Literal["X"] | None = None
    lift_s: float | Literal["X"] | None = None
    top_s: float | Literal["X"] | None = None
    held_s: float | None = None
    held_at: Literal["at the chest", "halfway"] | None = None


class Sides(Frozen):
    """Which sides work: each in turn, one named, or a number that counts both together (in_all)."""

    kind: SideKind
    word: str
    order: str | None = None
    alternating: bool = False
    ways: int = 2


class Extra(Frozen):
    """Repetitions after the set: assisted, lowering only, or partials."""

    reps: int
    kind: Literal["assisted", "lowering only", "partials"]


class Drop(Frozen):
    """A lighter part that follows a set at once: by a percent, or to a load."""

    by_percent: float | None = None
    to: Load | None = None
    amount: Amount


class SetWork(Frozen):
    """The work of one set."""

    amount: Amount
    parts: tuple[Span, ...] = ()
    extra: Extra | None = None
    drops: tuple[Drop, ...] = ()
    load: Load | None = None
    effort: Effort | None = None


class SetGroup(Frozen):
    """Sets of one kind. ``works`` holds one entry when all sets are alike, else one a set.

    ``last`` is the whole work of the last set where it differs. A total has sets from 1 up, open.
    """

    kind: GroupKind
    sets: Span
    works: tuple[SetWork, ...]
    last: SetWork | None = None
    rest: Rest | None = None
    pause_s: Span | None = None
    every_s: float | None = None
    tempo: Tempo | None = None
    sides: Sides | None = None
    cap: Amount | None = None
    target_s: float | None = None
    rate: float | None = None
    split_s: float | None = None
    stop: str | None = None
    rungs: tuple[int, ...] = ()

    @property
    def every_work(self) -> tuple[SetWork, ...]:
        """Each kind of set once, that of the last set too."""
        return (*self.works, self.last) if self.last else self.works


class WarmUpStep(Frozen):
    """Some warm-up sets: how many, of how much, at what."""

    sets: int
    amount: Amount
    load: Load | None = None


class WarmUp(Frozen):
    """Warm-up sets of a line; no steps and no count is "none on purpose"."""

    steps: tuple[WarmUpStep, ...] = ()
    count: int | None = None


class Dose(Frozen):
    """One dose line, read. ``text`` is what the coach typed; ``place`` is where."""

    groups: tuple[SetGroup, ...]
    warm_up: WarmUp | None = None
    text: str
    place: Place
    notes: tuple[str, ...] = ()
