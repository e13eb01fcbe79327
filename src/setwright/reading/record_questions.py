"""Questions about what was done, and what a record line asks where a plan's line asks something else."""

from collections.abc import Mapping
from typing import Final

from setwright.reading import guess_fills as fills
from setwright.reading import guess_lists as lists
from setwright.reading import questions_amount as amounts
from setwright.reading import questions_how as how
from setwright.reading.asked import Tongue
from setwright.reading.faults import TextRule
from setwright.reading.guess import Guess
from setwright.reading.question import Question, question

UNKNOWN = question(
    "record-not-read",
    "a word that a record line does not know",
    "a word that is not read is never dropped: it may change the loads of next week",
    "60 kg x 8, 8, grindy",
    "60 kg x 8, 8",
    "{typed} is no word of a record line",
    'Write the load first, then each set: "60 kg x 8, 8, 6 at RPE 8"; or "done", or "not done, reason".'
    " Remarks are a line of their own, `- note: ...`",
)
TOO_LONG = UNKNOWN.variant(
    "a record line of more than {most} characters can't be a record line",
    "Put remarks on a line of their own, `- note: ...`",
)
COMMA = UNKNOWN.variant(amounts.COMMA.message, amounts.COMMA.change)
NUMBER = UNKNOWN.variant(
    "{typed}: a set, or a load?",
    'Write ", {typed}" for a set, or an x between the load and the sets: "60 kg x 8"',
)
BLANKS = UNKNOWN.variant("{typed}: sets one after the other?", 'Write "{load} x {commas}"')
REASON = UNKNOWN.variant("{typed}: the reason?", 'Write a comma before the reason: "not done, {typed}"')
AFTER_DONE = UNKNOWN.variant(
    "{typed}: a remark, or what was done?",
    '"done" stands alone; write `- note: {typed}` for a remark, or the sets: "60 kg x 8, 8, 6"',
)
VALUE = UNKNOWN.variant(
    "{typed}: {what} is missing", 'Write the load first and the effort last: "pin 7 x 8, 8 at RPE 8"'
)
SETS_FIRST = question(
    "record-sets-first",
    "a record line that may be typed like a plan's",
    "a record says the load first, then each set: 3 x 8 is 3 sets of 8 in a plan and 3 kg for 8 in a record",
    "3 x 8",
    "8, 8, 8",
    "{typed}: {sets} sets of {amount}, or {sets} {unit} for {amount}?",
    'Write each set, "{write}", or the load with its unit, "{sets} {unit} x {amount}"',
)
SETS_OF = SETS_FIRST.variant(
    "{typed}: was each of the {sets} sets done in full?", 'Write each set: "{write}"'
)
LOAD_BEHIND = question(
    "record-load-behind",
    "a load behind the sets of a record line",
    "a record says the load first; behind the sets it may belong to the last one or to all",
    "8, 8, 8 at 60 kg",
    "60 kg x 8, 8, 8",
    "{typed}: for all sets, or for the last one?",
    'Write the load first: "{load} x {sets}"; where the sets differ, "50 kg x 8, then {load} x 6"',
)
LOAD_ON_PART = question(
    "record-load-on-one-part",
    "a record line in which some sets have a load and others have none",
    "nobody knows whether the others were done with the same load, or without any",
    "60 kg x 8, 8, then 6",
    "60 kg x 8, 8, then 55 kg x 6",
    "{typed}: with which load?",
    'Write the load before these sets too, for example "{load} x {typed}", or "bodyweight x {typed}"',
)
NOT_LIFTED = question(
    "record-load-not-lifted",
    "a load that says what was planned, not what was lifted",
    "next week is worked out from what was lifted; a percent, a range or an RM is not that yet",
    "75% x 8, 8",
    "60 kg x 8, 8",
    "{typed}: how much was lifted?",
    'Write the load on the bar, for example "60 kg x 8"',
)
HOW_MANY = question(
    "record-amount-open",
    "a range or an open number where what was done should stand",
    "what was done is one number a set",
    "60 kg x 8-10",
    "60 kg x 9",
    "{typed}: how many were done?",
    'Write the number that was done, for example "8"; set by set "8, 10"',
)
REPS_MISSING = question(
    "record-sets-missing",
    "a load without the sets that were done with it",
    "a load alone does not say how often it was lifted",
    "60 kg",
    "60 kg x 8, 8, 6",
    "{typed}: how many repetitions were done?",
    'Write each set behind the load: "{load} x 8, 8, 6"; as planned it is "done"',
)
PART = question(
    "record-part-of-a-repetition",
    "a repetition that was done in part",
    "repetitions are whole numbers; a part may be left out or kept as a partial one",
    "60 kg x 8, 5.3",
    "60 kg x 8, 5",
    "{typed}: {low} full repetitions, or {low} and a part of the next one?",
    'Write "{low}" for the full ones, or "{low} + 1 partials" to keep the part',
)
EFFORTS = question(
    "record-efforts-differ",
    "a list of efforts that has not one for each set",
    "nobody knows which set was how hard",
    "60 kg x 8, 8, 6 at RPE 7, 8",
    "60 kg x 8, 8, 6 at RPE 7, 8, 9",
    "{typed}: {count} efforts for {sets} sets",
    "Write one effort for all sets, or one for each",
)
EFFORT_OR_LOAD = EFFORTS.variant(
    "{typed}: RPE {number}, or {number} {unit}?",
    'Write "RPE {number}" behind the sets, or the load first: "{number} {unit} x 8"',
)
SIDE = question(
    "record-side-missing",
    "a record line in which some sets have a side and others have none",
    "left and right are kept apart",
    "12, 10 left, 10",
    "12, 10 left, 10 right",
    "{typed}: which side?",
    'Write the side behind these sets too, for example "{typed} right" or "{typed} each side"',
)
LISTED = question(
    "record-numbers-joined",
    "numbers that are joined by slashes or hyphens",
    "8/8 is two sets here and left and right there, and a hyphen is a range",
    "60 kg x 8-8-6",
    "60 kg x 8, 8, 6",
    "{typed}: one set after the other, or left and right?",
    'Write the sets with commas, "{commas}", or the sides in words, "{first} left, {second} right"',
)
TICK = question(
    "record-tick",
    "a tick, a ring, a dash or a letter instead of what was done",
    "one coach's tick is done as written, another's is came and trained; a dash is missed or not written",
    "✓",
    "done",
    "{typed}: done as the plan says, or with other numbers?",
    'Write "done", or what was done: "60 kg x 8, 8, 6"',
)
RING = TICK.variant(
    "{typed}: done, missed, or 0 repetitions?", 'Write "done" or "not done"; a set that failed is "60 kg x 0"'
)
DASH = TICK.variant(
    "{typed}: not done, or not written down?", 'Write "not done", or leave the place behind the colon empty'
)
CUT_SHORT = TICK.variant(
    "{typed}: not done at all, or cut short?",
    'Write "not done, reason", or the sets that were done: "60 kg x 8, 3"',
)
BEST = TICK.variant(
    "{typed}: a best lift of how much?",
    'Write the load and the repetitions, "62.5 kg x 5"; the new max belongs in the squad, under `maxes:`',
)

QUESTIONS: Final[tuple[Question, ...]] = tuple(q for q in vars().values() if isinstance(q, Question))
RULES: Final[tuple[TextRule, ...]] = tuple({one.rule.id: one.rule for one in QUESTIONS}.values())
"""The rules of a record line, each once. ``bad`` and ``good`` are record lines."""

_GUESSES: Final = (
    Guess(r"^\s*(?:[✓✔☑✅√xy]|yes|ok|okay|all|full|ticked?|completed?|as written|as planned)\s*$", TICK),
    Guess(r"^\s*[o○◯⭕●]\s*$", RING),
    Guess(r"^\s*(?:[-.~_/?]+|n/?a)\s*$", DASH),
    Guess(
        r"\b(?:d\.?n\.?[fs]|failed|missed|skipped|injured|incomplete|stopped|absent|cancelled|no)\b",
        CUT_SHORT,
    ),
    Guess(r"\b(?:p\.?[rb]|best|record)\b", BEST),
    Guess(
        r"(?P<load>\d[\d.,]*\s*(?:kg|lb)?)(?:\s*x\s*|(?<=[gb])\s+)(?P<once>\d+(?:\s+\d+)+)\s*$",
        BLANKS,
        fills.set_by_set,
    ),
    Guess(r"\d+(?:\s*[-/]\s*\d+)+", LISTED, lists.listed),
)

_INSTEAD: Final[Mapping[Question, Question]] = {
    **dict.fromkeys((amounts.UNKNOWN, amounts.OUT_OF_PLACE, how.CLOCK_ALONE, how.UNIT_MIXED), UNKNOWN),
    **dict.fromkeys((amounts.RANGE_FALLS, amounts.MAX_MINUS, amounts.ROUNDS_OR_REPS), HOW_MANY),
    amounts.TOO_LONG: TOO_LONG,
    amounts.COMMA: COMMA,
    amounts.NOT_WHOLE: PART,
    how.NUMBER_ALONE: NUMBER,
    how.RPE_OR_LOAD: EFFORT_OR_LOAD,
    how.RISING: NOT_LIFTED,
    how.VALUE_MISSING: VALUE,
}

RECORD: Final = Tongue(_GUESSES, _INSTEAD)
"""How a record line asks."""
