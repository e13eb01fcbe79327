"""Proposals say what they cost, whether the session holds it, and what to leave out when it does not."""

import pytest

from tests.rules.plans import checked, week

LINES = """Monday
flat barbell bench press: 4 x 6 at 2 RIR, rest 2:00
bench pull: 4 x 8 at 2 RIR, rest 2:00
front plank: 3 x 40 s
        priority: {priority}"""


def change(minutes: int, priority: int) -> str:
    text = week(LINES.format(priority=priority), top="focus: [chest]\n")
    timed = text.replace("    work:", f"    minutes: {minutes}\n    work:")
    return next(f.change for f in checked(timed).findings if f.rule == "heavy-line-not-finished")


@pytest.mark.parametrize(
    ("minutes", "priority", "said"),
    [
        (60, 2, "Monday has 36 min left)"),
        (29, 3, "Monday has 5 min left: leave out front plank)"),
        (20, 3, "Monday has 0 min left: leave out front plank)"),
    ],
)
def test_the_session_holds_it_or_not(minutes: int, priority: int, said: str) -> None:
    assert change(minutes, priority).endswith(said)


def test_nothing_is_left_out_when_everything_comes_first() -> None:
    first = " at 2 RIR\n        priority: 1"
    lines = f"Monday\nflat barbell bench press: 6 x 6{first}\nbench pull: 4 x 8{first}"
    text = week(lines, top="focus: [chest]\n").replace("    work:", "    minutes: 10\n    work:")
    assert all(
        f.change.endswith("Monday has 0 min left)") for f in checked(text).findings if "about" in f.change
    )


def proposed(rule: str, *lines: str) -> str:
    found = checked(week("\n".join(["Monday", *lines]), top="focus: [chest]\n")).findings
    return next(f.change for f in found if f.rule == rule)


def test_of_equal_lifts_the_one_that_works_the_part_clearly_harder_is_proposed() -> None:
    """On the sternal part machine chest press 59, flat barbell press 41; the wide grip's 46 is a tie."""
    change = proposed("crossing-work-only", "level cable crossover: 4 x 12 at 1 RIR")
    assert "machine chest press" in change
