"""Questions about how much: sets, repetitions, sides, and what is said twice or not at all."""

from setwright.reading.question import question

DOSE_ORDER = question(
    "dose-order",
    "sets and repetitions may be swapped",
    "houses write sets x reps or reps x sets, and the product is the same, so no sum shows the mistake",
    "8 x 3",
    "8 sets of 3",
    "{typed}: {first} sets of {second}, or {second} sets of {first}?",
    'Write "{first} sets of {second}" or "{second} sets of {first}", or put `dose order: sets x reps`'
    " at the top",
)
MANY_SETS = DOSE_ORDER.variant(
    DOSE_ORDER.message, 'Write "{first} sets of {second}" or "{second} sets of {first}"'
)
SETS_MISSING = question(
    "sets-missing",
    "an amount without a number of sets",
    "one number alone may be sets, repetitions or steps",
    "10 each leg",
    "1 x 10 each leg",
    "{typed}: how many sets?",
    'Write "1 x {amount}" for one set, "3 x {amount}" for three',
)
SETS_OR_UNIT = SETS_MISSING.variant(
    "{typed}: how many sets, or how many of what?",
    'Write "1 x {amount}" for one set, "3 x {amount}" for three;'
    ' or the unit: "{number} steps{side}", "{number} m{side}", "{number} s{side}"',
)
SETS_LAST = SETS_MISSING.variant("{typed}: {sets} sets?", 'Write "{sets} x {amount}"')
REPS_MISSING = question(
    "reps-missing",
    "a number of sets without an amount",
    "sets need repetitions, seconds or metres",
    "3 x 60 kg",
    "3 x 8 at 60 kg",
    "{typed}: how many repetitions a set?",
    'Write the amount first: "{sets} x 8{load}"',
)
SETS_IN_ROUND = question(
    "sets-in-a-round",
    "a number of sets inside a group that says its rounds",
    "the group's rounds already say how often; sets inside them would multiply",
    "3 x 10",
    "10",
    "{typed}: the group already says how many rounds",
    'Write one round only: "{amount}"',
)
NOUGHT = question(
    "nothing-to-do",
    "a dose of 0 sets or 0 repetitions",
    "0 may be a slip of the finger or a line that is left out on purpose",
    "0 x 8",
    "3 x 8",
    "{typed}: nothing to do, or a slip?",
    'Write how many, "3 x 8", or take the line out; in values by week write "none"',
)
RANGE_FALLS = question(
    "range-falls",
    "a range that runs downwards",
    "a range has the smaller number first; falling numbers are usually meant set by set",
    "3 x 10-8",
    "3 x 8-10",
    "{typed}: a range from {low} to {high}, or set by set?",
    'Write "{low}-{high}" for a range, "sets of {high}, {low}" set by set',
)
NUMBER_SIZE = question(
    "number-out-of-range",
    "a number no session holds",
    "a missing blank or sign glues two numbers together",
    "3 x 10000000",
    "3 x 10",
    "{typed} is more than a dose line holds",
    "Type the number again; is a blank or a sign missing in {typed}?",
)
CLOCK_OVER = NUMBER_SIZE.variant(
    "{typed}: {clock}, or {seconds} seconds?", 'Write "{clock}", or "{seconds} s"'
)
THOUSANDS = NUMBER_SIZE.variant("{typed}: {joined}, or {value}?", 'Write "{joined}" or "{value}"')
NOT_WHOLE = question(
    "part-of-a-repetition",
    "a number of sets or repetitions with a decimal",
    "sets and repetitions are whole numbers; a decimal point is often a lost sign",
    "3 x 8.5",
    "3 x 8-9",
    "{typed}: sets and repetitions are whole numbers",
    'Write a whole number, or a range: "{low}-{high}"',
)
SET_COUNT = question(
    "set-count-differs",
    "the number of sets and the number of values differ",
    "a list has one value a set, or the plan can't be carried out as written",
    "3 x 12, 10",
    "sets of 12, 10",
    "{typed}: {sets} sets but {count} numbers",
    'Write "{write}", or one number',
)
VALUE_COUNT = SET_COUNT.variant(
    "{typed}: {sets} sets but {count} values",
    'Write {sets} values, one a set, or one for all; for {count} sets write "{write}"',
)
SETS_TWICE = SET_COUNT.variant(
    "{typed}: {sets} sets, and then {count} numbers set by set",
    'Write "{write}"; the list itself says how many sets there are',
)
LAST_LIST = SET_COUNT.variant(
    "{typed}: the last set has one {kind}, not a list",
    'Write one {kind}, or all sets out: "sets of 8, 8, 5 at 60, 60, 65 kg"',
)
MAX_MINUS = question(
    "max-minus",
    "a number taken off a maximum",
    "stopping short of today's limit and doing fewer than the tested number are two doses",
    "3 x max-2",
    "3 x max at 2 RIR",
    "{typed}: {less} short of failure today, or {less} fewer than the tested number?",
    'Write "max at {less} RIR" or "tested max minus {less}"',
)
RM_AMOUNT = question(
    "rm-as-amount",
    "a repetition maximum where repetitions stand",
    "10RM is a load; many read it as repetitions",
    "3 x 10RM",
    "3 x 10 at 10RM",
    "{typed}: {sets} sets of {reps} with the {reps}RM load, or sets of another number with it?",
    'Write "{sets} x {reps} at {reps}RM", or "{sets} x 3 at {reps}RM"',
)
RM_OR_SETS = RM_AMOUNT.variant(
    "{typed}: {sets} sets of {reps} with the {reps}RM load, or sets of {sets} with it?",
    'Write "{sets} x {reps} at {reps}RM" or "3 x {sets} at {reps}RM"',
)
RM_TEST = RM_AMOUNT.variant(
    "{typed}: work up to the {reps}RM, or repetitions at its load?",
    'Write "work up to {reps}RM" or "3 x {reps} at {reps}RM"',
)
SIDES_MISSING = question(
    "side-not-written",
    "no side word on a movement that works one side, or both in turn",
    "each side or in all is twice the work or half of it",
    "3 x 10",
    "3 x 10 each side",
    "{typed}: {number} each side, or {number} in all?",
    'Write "{sets} x {number} each side{rest}" or "{sets} x {number} in all{rest}",'
    " or put `sides: each` at the top",
)
STEPS = question(
    "steps-or-each-leg",
    "a bare number on a movement that is counted in steps",
    "10 steps are 5 on each leg",
    "3 x 10",
    "3 x 10 each leg",
    "{typed}: {number} steps, or {number} each leg?",
    'Write "{sets} x {number} steps{rest}" or "{sets} x {number} each leg{rest}"',
)
SIDE_PLACE = question(
    "side-in-wrong-place",
    "a side word where it can belong to two numbers",
    "after a load, a side may mean plates, a pair, or the repetitions",
    "3 x 10 at 20 kg each side",
    "3 x 10 each side at 20 kg",
    "{typed}: repetitions a side, or load a side?",
    'Put the side after the repetitions: "{write}". Plates: "bar + {load} a side"',
)
ALTERNATING = SIDE_PLACE.variant(
    "{typed}: that many on each side, or in all?",
    'Write "{amount} each side alternating" or "{amount} in all alternating"',
)
LADDER = question(
    "ladder-unclear",
    "a ladder or pyramid without its ends in words",
    "from 1 to 10 is 55 repetitions, up and down again is 100",
    "1-10 ladder",
    "ladder 1 to 10",
    "{typed}: up only ({up} in all), or up and down again ({both} in all)?",
    'Write "ladder {first} to {last}" or "ladder {first} to {last} to {first}"',
)
LADDER_DOTS = LADDER.variant(
    "{typed}: every number from {first} to {last}?", 'Write "ladder {first} to {last}"'
)
ROUNDS_OR_REPS = question(
    "rounds-or-reps",
    "AMRAP with a number",
    "the same letters mean rounds in a time and repetitions to the limit",
    "1 x AMRAP 12",
    "1 x max, cap 12",
    "{typed}: {number} minutes of rounds, or as many repetitions as possible, at most {number}?",
    'Rounds: a `circuit:` with `time: {number}:00`. Repetitions: "max, cap {number}"',
)
SECOND_DOSE = question(
    "second-dose",
    "two doses joined by a comma",
    "a comma goes on with the same sets; another kind of set is started by then",
    "3 x 8, 3 x 6",
    "3 x 8, then 3 x 6",
    "{typed} starts sets of another kind",
    'Write "then {typed}"',
)
UNKNOWN = question(
    "words-not-read",
    "a word the dose line does not know",
    "a word that is not read is never dropped: it may change what the athlete does",
    "3 x 8, grindy",
    "3 x 8",
    "{typed} is not a word of the dose line",
    "{near}. Remarks go under `note:`",
)
REMARK = UNKNOWN.variant(
    "{typed} is no part of a dose line", 'Write "{line}", and the words underneath: `note: {typed}`'
)
SETS_WORDS = UNKNOWN.variant("{typed}: {sets} sets of {reps}?", 'Write "{sets} sets of {reps}"')
ON_OFF = UNKNOWN.variant("{typed}: work and rest?", 'Write "{work} s, rest {off} s"')
IN_RESERVE = UNKNOWN.variant("{typed}: {number} repetitions left at the end?", 'Write "{number} RIR"')
TOO_LONG = UNKNOWN.variant(
    "a dose line of more than {most} characters can't be a dose line",
    "Put remarks under `note:` and the sets on lines of their own",
)
UNDERSCORE = UNKNOWN.variant(
    "{typed}: what does the underscore join?", 'Write "{whole}.{part}" for a part, "{whole}, {part}" for two'
)
DOTS = UNKNOWN.variant("{typed}: a range?", 'Write "{low}-{high}"')
DASH = UNKNOWN.variant("{typed}: a dash joins the ends of a range only", 'Write a comma: "{write}"')
QUOTES = UNKNOWN.variant("{typed}: quotes are not read here", 'Write "{inside}" without quotes')
SINGLE = UNKNOWN.variant("{typed}: one set of {reps}?", 'Write "{write}"')
RACE = UNKNOWN.variant(
    "{typed}: rounds done as fast as possible?",
    "Write the moves under `circuit:`, with `rounds: 5` and `cap: {minutes}:00`",
)
PARTNERS = UNKNOWN.variant("{typed}: each rests while the other works?", 'Write "rest when partner is done"')
WARM_UP_HOW = UNKNOWN.variant(
    "{typed}: warm-up sets in the line are only counted",
    "Write how they are done underneath: `warm-up: 8 at bar, 5 at 50%`",
)
OUT_OF_PLACE = UNKNOWN.variant("{typed} does not fit here", "{near}. Remarks go under `note:`")
COMMA = UNKNOWN.variant(
    "{typed}: nothing stands after the comma", "Take the comma out, or write what is missing after it"
)
NOTHING = UNKNOWN.variant("no dose is written", 'Write sets and repetitions: "3 x 8"')
PAIR_OR_SETS = SECOND_DOSE.variant(
    "{typed}: {number} in each hand, or 2 sets of {number}?",
    'Write "at 2 x {number} kg" for a pair, "then 2 x {number}" for two more sets',
)
SAID_TWICE = question(
    "said-twice",
    "the same thing said twice on one line",
    "which of the two the athlete follows is chance",
    "3 x 8 at 60 kg, 65 kg, rest 2:00, rest 90 s",
    "3 x 8 at 60 kg, rest 2:00",
    "{typed}: {kind} is already said in this line",
    "Keep one of the two, or start sets of another kind with then",
)
