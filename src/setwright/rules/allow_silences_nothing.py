"""Rule allow-silences-nothing: an `allow` that no finding answers."""

from setwright.findings import Finding, Level
from setwright.model.plan import Allowed
from setwright.rules.rule import Rule

BAD = """\
plan: Nothing to allow
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - goblet squat: 4 x 10 at 3 RIR
allow:
  push-without-pull: pull day is Wednesday
"""
GOOD = BAD.split("allow:", maxsplit=1)[0]


def finding(allowed: Allowed, *, always_wins: bool = False) -> Finding:
    """The finding about an ``allow`` that silences nothing; ``always_wins``: its rule can't be silenced."""
    return Finding(
        RULE.id,
        Level.advice,
        allowed.place,
        "allow",
        f"allow: {allowed.rule} can't be silenced"
        if always_wins
        else f"allow: {allowed.rule} silences nothing here",
        "a limit always wins; only whoever set it lifts it" if always_wins else RULE.why,
        f'take out the line "{allowed.rule}: {allowed.reason}"',
        RULE.source,
    )


RULE = Rule(
    id="allow-silences-nothing",
    looks_at="week",
    summary="an allow names a rule that finds nothing where the allow stands, or one that can't be silenced",
    why="the plan has changed, or the allow stands in the wrong place; left there, it hides the next fault",
    change="take the line out, or move it to the session or line it is meant for",
    source="the plan language (docs/plan-language.md)",
    bad=BAD,
    good=GOOD,
    find=lambda _case: iter(()),
)
