"""Rule unknown-rule-in-allow: an `allow` that names no rule."""

from collections.abc import Iterable
from difflib import get_close_matches
from typing import Final

from setwright.findings import Finding, Level
from setwright.model.plan import Allowed
from setwright.rules.rule import Rule

BAD = """\
plan: Pushes, pulls on another day
unit: kg
dose order: sets x reps
level: beginner
sessions:
  - day: Monday
    work:
      - push-up: 4 x 10 at 2 RIR
      - goblet squat: 4 x 10 at 3 RIR
allow:
  push-without-pul: pull day is Wednesday
"""
GOOD = BAD.split("allow:", maxsplit=1)[0]

LIKE_ENOUGH: Final = 0.4
"""Least likeness (0 to 1, difflib ratio) of a rule that is proposed (choice)."""


def nearest(word: str, known: Iterable[str]) -> str:
    """The id most like a word, or an empty text."""
    return next(iter(get_close_matches(word, list(known), n=1, cutoff=LIKE_ENOUGH)), "")


def finding(allowed: Allowed, known: Iterable[str]) -> Finding:
    """The finding about an ``allow`` whose rule is not known."""
    near = nearest(allowed.rule, known)
    change = (
        f'write "{near}: {allowed.reason}"'
        if near
        else "`setwright explain` lists every rule; write one of them"
    )
    return Finding(
        RULE.id,
        Level.gap,
        allowed.place,
        "allow",
        f"allow: there is no rule {allowed.rule}",
        RULE.why,
        change,
        RULE.source,
    )


RULE = Rule(
    id="unknown-rule-in-allow",
    looks_at="week",
    summary="an allow names something that is no rule",
    why="it silences nothing, whatever was meant",
    change="write the rule's id as it stands under the finding",
    source="the plan language (docs/plan-language.md)",
    bad=BAD,
    good=GOOD,
    find=lambda _case: iter(()),
)
