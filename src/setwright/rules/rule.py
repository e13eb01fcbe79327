"""What every rule is made of: the rule with its documentation, the case it judges, the fault it finds."""

from collections.abc import Callable, Iterator
from typing import Final, Literal, NamedTuple

from setwright.coverage import Coverage, Movement, Part, PartCover, SessionCover, Sets, Work
from setwright.findings import Level, Seen
from setwright.model.plan import Item
from setwright.places import Place
from setwright.rules.aims import AimInForce
from setwright.rules.means import Means
from setwright.rules.past import Past

LooksAt = Literal["item", "session", "week", "block"]

ANATOMY: Final = "anatomy and common practice"
NO_STUDY: Final = f"{ANATOMY}; no training study compares the two"
CHOICE: Final = "choice, no source"
ONE: Final = Sets(1, 1)


class Option(NamedTuple):
    """A threshold of a rule, with its unit and whose number it is."""

    name: str
    value: float
    unit: str
    source: str


class Cure(NamedTuple):
    """A change the coach can carry out, and the movement it adds, if it adds one."""

    text: str
    movement: Movement | None = None


def nothing_closes(_movement: Movement) -> bool:
    """Said of a fault that no added movement closes by itself, wherever it is put."""
    return False


class Fault(NamedTuple):
    """What a rule found. ``cure`` None means: nothing in this gym, within these limits, closes it.

    ``parts``: the parts of the chest it speaks of; ``day``: the session in which an
    ``allow`` may stand. ``closed_by``: whether adding a movement anywhere in the week closes it.
    ``level`` and ``source`` only where they differ from those of the row and the rule. ``to_others``:
    what may be said of it where others read it, when it speaks of one athlete, ``who``. ``about``: what is at
    fault where it is one fault in every session and week: the rule's faults about the same are told as one.
    """

    place: Place
    where: str
    message: str
    why: str
    cure: Cure | None
    seen: tuple[Seen, ...] = ()
    parts: frozenset[Part] = frozenset()
    day: int | None = None
    closed_by: Callable[[Movement], bool] = nothing_closes
    level: Level | None = None
    source: str | None = None
    to_others: str = ""
    who: str = ""
    about: str = ""


class Case(NamedTuple):
    """What a rule judges: what the week adds up to, what it is for, and what there is to do it with.

    ``waiting``: part of the plan could not be read, so what it leaves out can't be judged yet. ``past``: the
    weeks before.
    """

    coverage: Coverage
    aim: AimInForce
    means: Means
    waiting: bool = False
    past: Past = Past()

    @property
    def week_word(self) -> str:
        """What a coach calls the whole plan."""
        return "the session" if self.coverage.single_session else "the week"

    def heavy(self, work: Work) -> bool:
        """Whether the work is of the hardest class that this gym gives."""
        return self.means.is_heavy(work.movement)

    def presses(self, works: tuple[Work, ...] | None = None) -> tuple[Work, ...]:
        """The heavy presses with hard sets, in the order they are done."""
        chosen = self.coverage.works if works is None else works
        return tuple(work for work in chosen if work.press and work.hard.high and self.heavy(work))

    def crossings(self) -> tuple[Work, ...]:
        """The crossing moves with hard sets, in the order they are done."""
        return tuple(work for work in self.coverage.works if work.crossing and work.hard.high)

    def finished(self, press: Work) -> bool:
        """Whether a crossing move of the week follows the press's line past the midline."""
        return any(finishes(work.movement, press.movement) for work in self.crossings())

    def chest_session(self) -> SessionCover:
        """The session that trains the chest most: where a missing chest move belongs."""
        return max(self.coverage.sessions, key=lambda session: session.chest.high)


class Rule(NamedTuple):
    """A rule and everything that is printed about it.

    ``find`` yields what it finds in a case; ``source`` stands in the finding, ``sources`` are keys of
    the bibliography; ``bad`` is a plan that sets it off, ``good`` the same plan mended. ``cells``: the
    columns of the matrix that its findings are tied to. ``folds``: what it finds in several places is one
    finding, with the others listed under it.
    """

    id: str
    looks_at: LooksAt
    summary: str
    why: str
    change: str
    source: str
    bad: str
    good: str
    find: Callable[[Case], Iterator[Fault]]
    sources: tuple[str, ...] = ()
    options: tuple[Option, ...] = ()
    folds: bool = False
    covers: tuple[str, ...] = ()
    cells: tuple[str, ...] = ()


def finishes(movement: Movement, press: Movement) -> bool:
    """Whether a crossing move follows the line of a press past the midline."""
    return any(one["finishes"] and one["key"] == movement["key"] for one in press.get("partners", ()))


def doses(part: Part, movement: Movement) -> bool:
    """Whether a movement loads a part along its line and counts for it."""
    return bool(movement["scored"] and movement["parts"][part]["dose"])


def trusted_work(part: Part, movement: Movement) -> float:
    """Work on a part, 0 to 100; 0 where the movement is not scored or the figure can't be trusted."""
    figures = movement["parts"][part] if movement["scored"] else None
    return float(figures["work"]) if figures and figures["trust"] == "solid" else 0.0


def serves(part: Part, movement: Movement) -> bool:
    """Whether a movement follows the line of a part."""
    return part in movement.get("serves", ())


def seen(works: tuple[Work, ...], say: Callable[[Work], str]) -> tuple[Seen, ...]:
    """Works as things that were looked at, one sentence and line each; a copied line says its day too."""
    return tuple(
        Seen(f"{say(work)}, {work.session.title}" if work.session.reuse else say(work), work.line)
        for work in works
    )


def counted(work: Work) -> str:
    """A work with its hard sets, for the list of what was counted."""
    return f"{work.name}, {work.hard} hard {'set' if work.hard == ONE else 'sets'}"


def typed(item: Item) -> str:
    """A line with its dose as typed."""
    return f"{item.name}: {item.dose.text}" if item.dose else item.name


def past(work: Work) -> str:
    """How far the hand of a scored movement comes, in words: "36 cm short", "18 cm past"."""
    return hand_words(work.movement)


def hand_words(movement: Movement) -> str:
    """How far the hand comes, in whole centimetres."""
    hand = round(movement["past_midline"]["hand_cm"])
    return f"{hand} cm past" if hand > 0 else f"{-hand} cm short"


def line_of(part: PartCover) -> str:
    """The line of pull of a part in words."""
    return f"the {part.part} line"
