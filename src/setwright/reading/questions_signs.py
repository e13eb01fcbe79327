"""Questions about signs, letters and short forms that coaches use for several things."""

from setwright.reading.question import question

HYPHEN_LIST = question(
    "hyphen-list",
    "three or more numbers joined by hyphens",
    "a hyphen makes a range of two",
    "12-10-8",
    "sets of 12, 10, 8",
    "{typed}: sets one after the other, or one set with breaks?",
    'Write "sets of {commas}" set by set, or "cluster {pluses}" for one set with breaks',
)
SLASH = question(
    "slash-in-dose",
    "a slash in a dose",
    "a slash is used for reps set by set, values by week, work and rest, and two groups",
    "12/10/8",
    "sets of 12, 10, 8",
    "{typed}: set by set, by week, work and rest, or two groups?",
    'Set by set: "sets of {commas}". By week: a list under `load:`',
)
SLASH_TWO = SLASH.variant(
    "{typed}: work and rest, two sets, or two groups?",
    'Work and rest: "{first}, rest {second}". Set by set: "sets of {commas}".'
    " Two groups: two lines with `for:`",
)
SLASH_EFFORT = SLASH.variant(
    "{typed}: set by set, or week by week?",
    'Set by set: "at {commas} {scale}". By week: a list under `effort:`',
)
SLASH_WORDS = SLASH.variant(
    "{typed}: two groups, or days in turn?",
    "Two groups: two lines with `for:`. Days in turn: `training days:` and `rotate: [A, B]`."
    " Elsewhere write or",
)
BARE_PLUS = question(
    "bare-plus",
    "a plus sign without a word",
    "a plus joins rest-pause parts, clusters, half repetitions, helped ones, or several moves on one bar",
    "10+3+3",
    "rest-pause 10 + 3 + 3",
    "{typed}: what is the plus?",
    'Short breaks: "rest-pause {pluses}". Few and heavy: "cluster {pluses}". Halves: "partials {pluses}".'
    ' Helped: "{first} + {last} assisted". Several moves, one bar: `complex:`',
)
MAX_PLUS = BARE_PLUS.variant(
    "{typed}: {number} helped repetitions after the last one?", 'Write "1 x max + {number} assisted"'
)
EXTRA_ALONE = BARE_PLUS.variant(
    "{typed}: one set, or something done at every set?",
    'Write "1 x {typed}" for one set, "3 x {typed}" for three',
)
BOTH_SIDES = BARE_PLUS.variant(
    "{typed}: {number} on each side?", 'Write "{number} each side" or "{number} in all"'
)
WARM_UP_PLUS = BARE_PLUS.variant(
    "{typed}: warm-up sets and then the work?", 'Write "{warm} warm-up sets, then {work}"'
)
DOTTED = BARE_PLUS.variant(
    "{typed}: parts of a set with short breaks?", 'Write "{sets}cluster {pluses}, pause 20 s"'
)
CHAIN_PLUS = BARE_PLUS.variant("{typed}: how heavy is the chain?", 'Write "{first} + {last} kg chain"')
LETTERS = question(
    "letter-for-a-word",
    "R or L without a word",
    "R is rest, right, rate and repetitions",
    "3 x 8, r90",
    "3 x 8, rest 90 s",
    "{typed}: rest, right, rate or repetitions?",
    'Write "rest {number} s" for rest, "rate {number}" for strokes a minute',
)
LETTER_REST = LETTERS.variant(
    "{typed}: rest, a rowing rate, or repetitions?",
    'Write "rest {number} s" or "rest {number} m"; strokes a minute are "rate {number}"',
)
LEFT_RIGHT = LETTERS.variant("{typed}: a letter for a side?", 'Write "{write}"')
RATIO = question(
    "ratio",
    "two numbers with a colon that are no clock time",
    "work to rest and rest to work are both in use",
    "6 x 40 s, rest 3:1",
    "6 x 40 s, rest 3 times the work",
    "{typed}: work to rest, or rest to work?",
    'Write "rest {first} times the work" or "rest {second} times the work"; "rest equal to the work" for 1:1',
)
EVERY_MINUTE = question(
    "every-minute-code",
    "letters for sets that start every minute",
    "the letters say how long or how often, and not always the repetitions",
    "EMOM 10: 5",
    "10 x 5 every 1:00",
    "{typed}: how many sets of how many, one every how long?",
    'Write "{sets} x {reps} every {clock}" ({sets} sets of {reps}, one every {clock})',
)
DATE = question(
    "date-for-reps",
    "a date where repetitions stand",
    "spreadsheets turn 8-10 into the tenth of August",
    "10-Aug",
    "3 x 8-10",
    "{typed}: did a spreadsheet turn {range} into a date?",
    'Type "{range}" again, with the sets: "3 x {range}"',
)
NUMBER_WORDS = DATE.variant("{typed}: numbers in words are not read", 'Use digits: "{write}"')
TOGETHER = question(
    "moves-that-go-together",
    "letters or arrows that tie moves together",
    "what belongs together stands together in the plan; letters get lost when a line is moved",
    "A1 3 x 8",
    "3 x 8",
    "{typed}: moves that go together?",
    "Put the moves under `superset:`, one line each, without {typed}",
)
WEEKS = question(
    "change-over-weeks",
    "an arrow, a week number or a step a week inside a dose",
    "one line says one week; changes are values by week or a rule for next time",
    "3 x 8, +2.5/wk",
    "3 x 8",
    "{typed}: values week by week, or a rule for next time?",
    "By week: `week 1: {first}` underneath. As a rule: `next: add {step} every week`",
)
LIGHTER = WEEKS.variant(
    "{typed}: half the sets, or half the load?",
    "Write `lighter weeks:` at the top and `week 4: half the sets` under it",
)
BRACKETS = question(
    "brackets-in-dose",
    "brackets, braces or stars in a dose",
    "marks like these mean a range, a remark, a sub-set or a work set, each in another house",
    "5 x [4-5]",
    "5 x 4-5",
    "{typed}: brackets and stars are not read",
    'Write "{write}"; remarks go under `note:`',
)
BRACKETS_OUT = BRACKETS.variant(
    "{typed}: brackets and stars are not read",
    'Take {typed} out: a range is "4-5", what belongs to the dose stands behind a comma,'
    " remarks go under `note:`",
)
