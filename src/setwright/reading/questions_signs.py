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
HYPHEN_DROP = HYPHEN_LIST.variant(
    "{typed}: lighter at once after each number, but by how much?",
    'Write "{drops}", with the percent you take off; with rest between them "sets of {commas}"',
)
HYPHEN_LADDER = HYPHEN_LIST.variant(
    "{typed}: a ladder, or sets one after the other?",
    'Write "{sets}ladder {ladder}" for a ladder, "sets of {commas}" set by set',
)
BLANK_LIST = HYPHEN_LIST.variant("{typed}: sets one after the other?", 'Write "sets of {commas}"')
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
SLASH_THEN = SLASH.variant(
    "{typed}: one after the other, or two groups?",
    'One after the other: "{first}, then {second}". Two groups: two lines with `for:`',
)
SLASH_REST = SLASH.variant("{typed}: work and rest?", 'Write "{sets}{first}, rest {second}"')
SLASH_LOADS = SLASH.variant(
    "{typed}: two loads for two groups?",
    'Write two lines with `for:`, "{dose}at {first} {unit}" and "{dose}at {second} {unit}"',
)
SLASH_STYLE = SLASH.variant(
    "{typed}: a way to do the repetitions, or loads for two groups?",
    'A way to do them is a remark: "{dose}", and `note: {typed}` underneath.'
    " Two groups: two lines with `for:`",
)
SLASH_LIST = SLASH.variant(
    "{typed}: set by set, or week by week?",
    'Set by set: "at {commas}{unit}". By week: `load: [{by_week}]`',
)
SLASH_REPS = SLASH.variant("{typed}: repetitions at a load?", 'Write "{write}"')
SLASH_RM = SLASH.variant(
    "{typed}: a share of the {reps}RM load, from a table that the plan does not hold?",
    'Write an effort, "3 x {reps} at RPE 8", and how it goes on under `next:`',
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
    'Short breaks: "{sets}rest-pause {pluses}". Few and heavy: "{sets}cluster {pluses}".'
    ' Halves: "{sets}partials {pluses}". Several moves, one bar: `complex:`',
)
BARE_PLUS_TWO = BARE_PLUS.variant(
    "{typed}: what is the plus?",
    'Helped: "{helped} + {last} assisted". Short breaks: "{sets}rest-pause {pluses}".'
    ' Few and heavy: "{sets}cluster {pluses}". Several moves, one bar: `complex:`',
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
LETTER_METRES = LETTERS.variant(
    "{typed}: metres of work, and then rest for metres or for seconds?",
    'Write "{sets} x {metres} m, rest {rest} m" or "{sets} x {metres} m, rest {rest} s"',
)
LEFT_RIGHT = LETTERS.variant("{typed}: a letter for a side?", 'Write "{write}"')
RATIO = question(
    "ratio",
    "two numbers with a colon that are no clock time",
    "work to rest and rest to work are both in use",
    "6 x 40 s, rest 3:1",
    "6 x 40 s, rest 3 times the work",
    "{typed}: work to rest, or rest to work?",
    'Write "{second}" if the work stands first, "{first}" if the rest does',
)
RATIO_EVEN = RATIO.variant("{typed}: as much rest as work?", 'Write "rest equal to the work"')
EVERY_MINUTE = question(
    "every-minute-code",
    "letters for sets that start every minute",
    "the letters say how long or how often, and not always the repetitions",
    "EMOM 10: 5",
    "10 x 5 every 1:00",
    "{typed}: how many sets of how many, one every how long?",
    'Write "{sets} x {reps} every {clock}" ({sets} sets of {reps}, one every {clock})',
)
EVERY_MINUTE_NAME = EVERY_MINUTE.variant(
    "{typed}: which movement, how many sets of how many?",
    "Write the movement first, for example `- push-up: {sets} x {reps} every {clock}`",
)
ODD_EVEN = EVERY_MINUTE.variant(
    "{typed}: two moves, one a minute in turn?", "Write the moves under `circuit:`, with `each: 1:00`"
)
DATE = question(
    "date-for-reps",
    "a date where repetitions stand",
    "spreadsheets turn 8-10 into the tenth of August",
    "10-Aug",
    "3 x 8-10",
    "{typed}: did a spreadsheet turn {range} into a date?",
    'Type it again, with the sets: "3 x {range}"',
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
TOGETHER_ARROW = TOGETHER.variant(
    "{typed}: one move after the other?", "Put the moves under `superset:`, one line each"
)
ROUNDS = TOGETHER.variant(
    "{typed}: rounds of several moves?",
    "Put the moves under `circuit:`, one line each, with `rounds: {rounds}`",
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
WEEKS_PERCENT = WEEKS.variant(
    "{typed}: a percent of last week's load, or of the first week's?",
    "Write `next: add {percent}% of last week's load every week`,"
    " or `add {percent}% of the first week's load every week`",
)
WEEKS_IF = WEEKS.variant(
    "{typed}: a rule for next time?", "Write a list under `next:`: `- {least} or more: add {step}`"
)
WEEKS_EFFORT = WEEKS.variant(
    "{typed}: a rule for next time?", "Write `next: {percent}% for each half point of effort`"
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
BRACKETS_PLUS = BRACKETS.variant(
    "{typed}: one set with breaks, or several moves with one bar?",
    'Short breaks: "{write}". Several moves, one bar: `complex:`',
)
BRACKETS_NUMBER = BRACKETS.variant(
    "{typed}: {reps} of what?",
    'Write "{reps} steps", "1 x {reps} each leg" or "1 x {reps}"; the movement stands in front of the colon',
)
MORE_THAN = BRACKETS.variant(
    "{typed}: {reps} or more, or more than {reps}?",
    'Write "{reps}+" for {reps} or more, "{next}+" for more than {reps}',
)
FEWER_THAN = BRACKETS.variant(
    "{typed}: how few at least, and is {reps} the most or too many?",
    'Write a range: "{least}{reps}" where {reps} is the most, "{fewer}" where it is too many',
)
STARS = BRACKETS.variant(
    "{typed}: are the sets with a star the work?",
    'Write the work, "{work}", and the others underneath: `warm-up: {others}`',
)
BRACKETS_OUT = BRACKETS.variant(
    "{typed}: brackets and stars are not read",
    'Take {typed} out: a range is "4-5", what belongs to the dose stands behind a comma,'
    " remarks go under `note:`",
)
