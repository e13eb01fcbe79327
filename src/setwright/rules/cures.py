"""Changes that close a finding: a movement at hand, with its dose, its minutes and its place."""

from collections.abc import Callable, Container, Iterable, Iterator
from typing import Final

from setwright.coverage import Movement, Part, SessionCover, Work
from setwright.coverage.clock import added_minutes
from setwright.coverage.shapes import CLASSES, PULLS, PUSHES
from setwright.model.people import Athlete
from setwright.model.plan import Item
from setwright.rules.rule import Case, Cure, doses, hand_words, trusted_work

SETS: Final = 3
REPS: Final = {"heavy": 8, "moderate": 10, "light": 12}
RIR: Final = {"heavy": 2, "moderate": 2, "light": 1}
"""Dose of a proposed movement: sets, repetitions and repetitions in reserve by class (choice, no source)."""

CLEARLY: Final = 10.0
"""Points of work that tell two movements apart (choice: a tenth of the scale)."""

Rank = tuple[int, ...]

PULLS_TO_PROPOSE: Final = (
    "chest-supported-dumbbell-row", "close-grip-seated-cable-row", "bench-pull", "one-arm-dumbbell-row",
    "machine-row", "bent-over-barbell-row", "inverted-row", "pull-up", "suspension-strap-row", "band-row",
)  # fmt: skip
"""Pulls in the order they are proposed: little for the back to hold, easy to learn (choice, no source)."""

PULLS_FROM_OVERHEAD_TO_PROPOSE: Final = (
    "close-grip-pulldown", "wide-grip-pulldown", "neutral-grip-pull-up", "pull-up", "chin-up",
    "assisted-pull-up",
)  # fmt: skip
"""Pulls from overhead in the order they are proposed: a load for everybody first (choice, no source)."""


def following(case: Case, part: Part, *, heavy: bool = False) -> Movement | None:
    """The hardest movement at hand that serves a part's line and is no crossing move."""
    serving = (m for m in _loading(case, part) if part in m["serves"] and not m["crossing"])
    return _best(case, part, [m for m in serving if not heavy or case.means.is_heavy(m)])


def long_for(case: Case, part: Part) -> Movement | None:
    """The hardest movement at hand that serves a part's line and loads the part long."""
    serving = (m for m in _loading(case, part) if part in m["serves"])
    return _best(case, part, [m for m in serving if m["parts"][part]["loaded_long"] == "yes"])


def short_for(case: Case, part: Part) -> Movement | None:
    """A movement at hand that loads a part short: a crossing move first, then one of the part's line."""
    short = list(_loading_short(case, part))
    return _hardest(part, short, lambda m: (m["crossing"], part in m["serves"], m["sides"] == "both"))


def finishing(case: Case, press: Work) -> Movement | None:
    """The best-ranked crossing move at hand that finishes a press, else a move to the short end of its line.

    Without cable or band, machine fly and squeeze press load the part short without crossing.
    """
    at_hand = {m["key"]: m for m in case.means.movements}
    partners = (p["key"] for p in press.movement["partners"] if p["finishes"] and p["key"] in at_hand)
    done = {work.movement["key"] for work in case.coverage.works}
    short = (m for part in press.serves for m in _loading_short(case, part))
    toward = (m["key"] for m in short if _hands_meet(m) and m["key"] not in done)
    return next((at_hand[key] for key in (*partners, *toward)), None)


def pull(case: Case) -> Movement | None:
    """The first pull at hand."""
    return _first_at_hand(case, PULLS_TO_PROPOSE)


def pull_from_overhead(case: Case) -> Movement | None:
    """The first pull at hand that comes from overhead."""
    return _first_at_hand(case, PULLS_FROM_OVERHEAD_TO_PROPOSE)


def _first_at_hand(case: Case, keys: Iterable[str]) -> Movement | None:
    at_hand = {m["key"]: m for m in case.means.movements}
    return next((at_hand[key] for key in keys if key in at_hand), None)


def instead_for(case: Case, athlete: Athlete, item: Item, movement: Movement) -> str:
    """What an athlete does instead of a line, in the words to write; proposes nothing near anyone's limit."""
    best = at_hand_like(case, movement)
    if best is None:
        return f"write `not for: [{athlete.name}]` under {item.name}, or ask whoever set the limit"
    return (
        f"write under {item.name} `instead:` and below it `{athlete.name}: {best['name']}`, inside the "
        "written limit, not cleared by it: show it to whoever set the limit; or write "
        f"`not for: [{athlete.name}]`"
    )


def at_hand_like(case: Case, movement: Movement, besides: Container[str] = ()) -> Movement | None:
    """The movement at hand most like another: its line, else its pattern; then a neighbour.

    In the place of one that crosses the midline only another one does. ``besides``: keys of movements that
    are no answer, such as those that the session holds already.
    """
    lines = set(movement.get("serves", ()))
    near = (*movement["easier"], *movement["harder"])

    def rank(other: Movement) -> tuple[bool, bool, int]:
        heaviness = CLASSES.index(case.means.load_class(other))
        return lines.isdisjoint(other.get("serves", ())), other["key"] not in near, -heaviness

    alike = [
        other
        for other in case.means.movements
        if other["key"] != movement["key"]
        and other["key"] not in besides
        and (other.get("crossing", False) or not movement.get("crossing", False))
        and (other["pattern"] == movement["pattern"] or lines & set(other.get("serves", ())))
    ]
    return min(alike, key=rank, default=None)


def added(
    case: Case, movement: Movement | None, session: SessionCover, lead: str = "add", fact: str = ""
) -> Cure | None:
    """The cure that adds ``movement``: what, how much, what it costs, and whether the session holds it."""
    if movement is None:
        return None
    kind = case.means.load_class(movement)
    minutes = round(added_minutes(SETS, REPS[kind], sides=1 if movement["sides"] == "both" else 2))
    dose = f"{SETS} x {reps_of(movement, kind)}"
    facts = "; ".join(
        word for word in (fact, f"about {minutes} min", _room(session, minutes, movement)) if word
    )
    return Cure(f"{lead} {movement['name']}: {dose} ({facts})", movement)


def reps_of(movement: Movement, load_class: str) -> str:
    """The repetitions proposed for a movement of a class, with how many are left: "10 each side at 2 RIR"."""
    side = "" if movement["sides"] == "both" else " each side"
    return f"{REPS[load_class]}{side} at {RIR[load_class]} RIR"


def straight_after(case: Case, press: Work, movement: Movement | None, session: SessionCover) -> Cure | None:
    """The cure that pairs a press with the movement that finishes it."""
    if movement is None:
        return None
    fact = f"same line, {hand_words(movement)}" if movement["crossing"] else "to the short end, not across"
    return added(case, movement, session, f"straight after {press.name}, without rest,", fact)


def _room(session: SessionCover, minutes: int, movement: Movement) -> str:
    """Whether the session's written minutes hold the change, and what to leave out when they don't.

    Nothing is left out for a movement of its own kind, no pull for a pull.
    """
    if session.session.minutes is None:
        return ""
    left = round(session.session.minutes - session.minutes)
    room = f"{session.session.title} has {max(left, 0)} min left"
    if left >= minutes:
        return room
    kind = PULLS if movement["pattern"] in PULLS else {movement["pattern"]}
    others = (work.item for work in session.works if work.movement["pattern"] not in kind)
    dropped = max(others, key=_droppable, default=None)
    return f"{room}: leave out {dropped.name}" if dropped and dropped.priority > 1 else room


def _droppable(item: Item) -> tuple[int, int]:
    return item.priority, item.place.line


def _loading(case: Case, part: Part) -> Iterator[Movement]:
    return (m for m in case.means.movements if doses(part, m))


def _loading_short(case: Case, part: Part) -> Iterator[Movement]:
    return (m for m in _loading(case, part) if m["parts"][part]["loaded_short"] == "yes")


def _hands_meet(movement: Movement) -> bool:
    return movement["pattern"] not in PUSHES or movement["hands"] == "fixed together"


def _best(case: Case, part: Part, movements: list[Movement]) -> Movement | None:
    """The heaviest; of equals one whose own line is the part's; of equals one that loads it long."""

    def rank(movement: Movement) -> Rank:
        heaviness = CLASSES.index(case.means.load_class(movement))
        return heaviness, movement["line"] == part, movement["parts"][part]["loaded_long"] == "yes"

    return _hardest(part, movements, rank)


def _hardest(part: Part, movements: list[Movement], rank: Callable[[Movement], Rank]) -> Movement | None:
    """Of those that rank highest the first, unless a later one works the part clearly harder."""
    top = max(map(rank, movements), default=None)
    best: Movement | None = None
    for movement in movements:
        if rank(movement) != top:
            continue
        if best is None or trusted_work(part, movement) - trusted_work(part, best) >= CLEARLY:
            best = movement
    return best
