"""Which movements can stand for another, the nearest first, and what is lost with each."""

from collections.abc import Iterable

from setwright.coverage import PARTS, Movement
from setwright.coverage.shapes import CLASSES
from setwright.rules.means import Means


def like(old: Movement, movements: Iterable[Movement], means: Means) -> list[Movement]:
    """The movements of another's pattern or with a line of pull in common, what loses least first.

    The line of pull counts most; a crossing move finishes a lift and does not replace it, so it comes after
    what does not cross; then lengths and load, then the pattern, then neighbours, then the heavier.
    """
    neighbours = (*old["easier"], *old["harder"])

    def rank(new: Movement) -> tuple[bool, bool, int, bool, bool, int]:
        return (
            loses_the_line(old, new),
            bool(new.get("crossing")) != bool(old.get("crossing")),
            len(lost(old, new, means)),
            new["pattern"] != old["pattern"],
            new["key"] not in neighbours,
            -CLASSES.index(means.load_class(new)),
        )

    near = [
        new
        for new in movements
        if new["key"] != old["key"]
        and (new["pattern"] == old["pattern"] or {*old.get("serves", ())} & {*new.get("serves", ())})
    ]
    return sorted(near, key=rank)


def loses_the_line(old: Movement, new: Movement) -> bool:
    """Whether a movement follows lines of the chest and another none of them."""
    return bool(old.get("serves")) and not {*old["serves"]} & {*new.get("serves", ())}


def lost(old: Movement, new: Movement, means: Means) -> tuple[str, ...]:
    """What a movement does that the one in its place does not, in words: lines, lengths, midline, load."""
    told = [f"the {part} line" for part in old.get("serves", ()) if part not in new.get("serves", ())]
    told += [
        f"{part} loaded {length}"
        for part in PARTS
        for length in ("long", "short")
        if _loaded(old, part, length) and not _loaded(new, part, length)
    ]
    if old.get("crossing") and not new.get("crossing"):
        told.append("the way past the midline")
    before, after = means.load_class(old), means.load_class(new)
    if CLASSES.index(after) < CLASSES.index(before):
        told.append(f"load ({before} to {after})")
    return tuple(told)


def _loaded(movement: Movement, part: str, length: str) -> bool:
    return bool(movement["scored"] and movement["parts"][part][f"loaded_{length}"] == "yes")
