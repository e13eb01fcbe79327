"""Rule crossing-work-only: crossing flies and presses, and nothing to build on."""

from collections.abc import Iterator

from setwright.coverage import PARTS
from setwright.rules.cures import added, following
from setwright.rules.rule import ANATOMY, Case, Fault, Rule, counted, seen

BAD = """\
plan: Cables only
unit: kg
dose order: sets x reps
focus: [chest]
sessions:
  - day: Monday
    work:
      - level cable crossover: 4 x 12 at 1 RIR
      - low-to-high cable crossover: 3 x 12 at 1 RIR
  - day: Thursday
    work:
      - high-to-low cable crossover: 3 x 12 at 1 RIR
"""
GOOD = """\
plan: Presses, then cables
unit: kg
dose order: sets x reps
focus: [chest]
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 3 x 8 at 2 RIR
      - level cable crossover: 3 x 12 at 1 RIR
      - bench pull: 4 x 8 at 2 RIR
  - day: Thursday
    work:
      - incline 30 barbell bench press: 3 x 8 at 2 RIR
      - low-to-high cable crossover: 3 x 12 at 1 RIR
      - dip: 3 x 8 at 2 RIR
      - high-to-low cable crossover: 3 x 12 at 1 RIR
      - pull-up: 4 x 8 at 2 RIR
"""  # fmt: skip


def find(case: Case) -> Iterator[Fault]:
    """One fault when every direct chest set of the week is of a crossing move."""
    chest = [work for work in case.coverage.works if work.direct_chest and work.hard.high]
    if not chest or any(not work.crossing for work in chest):
        return
    first = chest[0]
    session = case.chest_session()
    yield Fault(
        place=first.item.place,
        where=case.week_word,
        message=f"the chest gets crossing work only in {case.week_word}, and nothing heavy",
        why=RULE.why,
        cure=added(case, following(case, "sternal", heavy=True), session, "put before it"),
        seen=seen(tuple(chest), counted),
        parts=frozenset(PARTS),
    )


RULE = Rule(
    id="crossing-work-only",
    looks_at="week",
    summary="every direct chest set of the week is of a crossing move, so nothing heavy is lifted",
    why="a crossing cable or band move can't be loaded like the lift it finishes, however active the muscle "
    "is: it completes the lift and doesn't replace it",
    change="put a heavy press of the same line before the crossing work",
    source=ANATOMY,
    bad=BAD,
    good=GOOD,
    find=find,
    covers=("no-heavy-lift-for-part", "no-work-at-long-length"),
    cells=("heaviest",),
)
