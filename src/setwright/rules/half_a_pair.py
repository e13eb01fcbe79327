"""Rule half-a-pair: a superset with one move."""

from collections.abc import Iterator

from setwright.findings import Seen
from setwright.model.plan import Group
from setwright.rules.rule import Case, Cure, Fault, Option, Rule

BAD = """\
plan: Half a pair
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - superset:
          - goblet squat: 3 x 10 at 3 RIR
        rest: 2:00
"""
GOOD = BAD.replace("        rest", "          - bench pull: 3 x 10 at 3 RIR\n        rest")

PAIR = Option("moves of a superset", 2, "moves", "the plan language: two or more moves in turn")


def find(case: Case) -> Iterator[Fault]:
    """One fault a superset with fewer moves than a pair.

    None while the plan can't be read in full: the line that is missing may be the partner.
    """
    for day, cover in enumerate(() if case.waiting else case.coverage.sessions):
        for group in cover.session.work:
            if not isinstance(group, Group) or group.kind != "superset" or len(group.items) >= PAIR.value:
                continue
            alone = group.items[0].name if group.items else "nothing"
            yield Fault(
                place=group.place,
                where=cover.session.title,
                message=f"a superset of {cover.session.title} holds one move: {alone}",
                why=RULE.why,
                cure=Cure(f"add the move that goes with it, or write {alone} as a line of its own"),
                seen=tuple(Seen(item.name, item.place.line) for item in group.items),
                day=day,
            )


RULE = Rule(
    id="half-a-pair",
    looks_at="item",
    summary="a superset with fewer than two moves",
    why="a superset is two or more moves in turn; with one of them, its partner was lost or the rest is "
    "shorter than it looks",
    change="add the other move, or write the move as a line of its own",
    source="the plan language (docs/plan-language.md)",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(PAIR,),
)
