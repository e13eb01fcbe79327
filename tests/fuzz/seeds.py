"""The texts that are garbled: examples, plans of rules, lines of text rules, records, squads and gyms."""

from functools import cache
from pathlib import Path
from typing import NamedTuple

from setwright.reading.text_rules import TEXT_RULES
from setwright.reading.vocabulary import VOCABULARY
from setwright.rules import EVERY_RULE
from tests.model.test_people_and_room import GYM, SQUAD
from tests.model.test_reader import FULL, REUSED
from tests.model.test_record import PAPER
from tests.reading.plans import whole_plan

ROOT = Path(__file__).parents[2]
EXAMPLES = ROOT / "examples"

NAMES = ("week.yaml", "squad.yaml", "gym.yaml")
"""Files of an input, in the order of its fields."""

TOP = "squad: squad.yaml\ngym: gym.yaml\n"
"""Lines that make a plan read the files beside it."""

TRAPS = (
    "\t", "\u00a0", "\u200b", "\ufeff", "\u2028", "\x85", "\x00", "\x07", "\x1b[2J", "\ud800", "\ue040",
    "\U0001f3cb", " #heavy", " #", ": ", ":", "- ", "-", "? ", "@", "%", "*", "*a ", "&a ", "!", "!!int ",
    "!<", ">", ">-\n", "|", "|2\n", "`", "'", '"', "\\", "{", "}", "[", "]", "[]", "{}", ", ", ",", "---\n",
    "...\n", "%YAML 1.2\n", "<<: *a", "~", "null", "No", "0310", "1:30", "010", "0x1F", "1e9", "10-Aug",
    "2027-02-30", "62,5", "12,10,8", "²", "½", "x" * 300, "[" * 45, "9" * 40, "0", "-1", "1.5.2",
    "[a, a]: b", "weeks: 3", "week 1:", "like: ", "schemes:\n",
)  # fmt: skip
"""What YAML loses, changes or refuses, what text has no business to hold, and values at the edge."""

WORDS = (
    *VOCABULARY, "x", "+", "/", "%", ",", ":", "1", "3", "8", "12", "60", "75", "2:00", "31X0", "each side",
    "work:", "sessions:", "- day: Monday", "superset:", "circuit:", "complex:", "rounds:", "each: 40 s",
    "time: 12:00", "ladder: 1 to 10", "rest:", "load:", "effort:", "warm-up:", "allow:", "note:",
    "aim: size", "focus: [chest]", "unit: kg", "squad:", "gym:", "movements:", "limits:", "until:",
    "avoid:", "no: [overhead]", "athletes:", "maxes:", "bands:", "bars:", "plates per rack:", "cables:",
    "muscles:", "path:", "dip", "push-up", "week 1:", "weeks 2-3:", "same", "as week 1", "none", "stop",
    "lighter weeks:", "training days:", "rotate: [A, B]", "only in: week 2", "like: Monday", "leave out:",
    "swap:", "change:", "add:", "instead:", "for:", "not for:", "stages:", "stage:", "enter when:",
    "signed off:", "next:", "last week:", "sets a week:", "record:", "done:", "not done", "instead of:",
)  # fmt: skip
"""Words of the language, of the dose line and of keys."""


class Input(NamedTuple):
    """A plan with the files beside it, as bytes."""

    plan: bytes
    squad: bytes
    gym: bytes


class Seeds(NamedTuple):
    """Texts to start from. ``slow``: plans that ask the engine, taken less often."""

    plans: tuple[str, ...]
    slow: tuple[str, ...]
    squads: tuple[str, ...]
    gyms: tuple[str, ...]


@cache
def seeds() -> Seeds:
    """Every text of the project that is a plan, a squad or a gym."""
    crew = EXAMPLES / "skerrow-bay"
    beside = [crew / "squad.yaml", crew / "gym.yaml"]
    weeks = {*crew.glob("*.yaml"), *(ROOT / "tests/weeks").glob("*.yaml")} - {*beside}
    plans = [PAPER, REUSED, *(path.read_text(encoding="utf-8") for path in sorted(weeks))]
    plans += [text for rule in EVERY_RULE for text in (rule.bad, rule.good)]
    lines = [whole_plan(text) for rule in TEXT_RULES.values() for text in (rule.bad, rule.good)]
    own = [text for text in (*plans, *lines) if "movements:" in text]
    return Seeds(
        plans=(FULL, *(text for text in (*plans, *lines) if text not in own)),
        slow=((EXAMPLES / "own-movements/week.yaml").read_text(encoding="utf-8"), *own),
        squads=(SQUAD, beside[0].read_text(encoding="utf-8")),
        gyms=(GYM, beside[1].read_text(encoding="utf-8")),
    )
