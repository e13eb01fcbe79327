"""Questions about how: load, effort, rest, tempo and time."""

from setwright.reading.question import question

THIRD_NUMBER = question(
    "third-number",
    "a third number after sets and repetitions without a unit",
    "it may be kilograms, pounds or percent",
    "3x8x60",
    "3 x 8 at 60 kg",
    "{typed}: {number} what?",
    'Write "{sets} x {reps} at {number} kg" or "{sets} x {reps} at {number}%"',
)
PAIR = THIRD_NUMBER.variant(
    "{typed}: {number} of what in each hand?", 'Write "2 x {number} kg" or "2 x {number} lb"'
)
LOAD_FIRST = question(
    "load-first",
    "a line that starts with the load",
    "a plan says sets first; a record is typed load first",
    "60 kg x 5",
    "1 x 5 at 60 kg",
    "{typed}: the line starts with a load; a plan says sets first",
    'Write "{write}"',
)
BODY_FIRST = LOAD_FIRST.variant(LOAD_FIRST.message, 'Write "{dose} at {load}"')
RAMP_THEN_WORK = LOAD_FIRST.variant(
    "{typed}: warm-up sets and then the work?",
    'Write the work in the line, "{work}", and underneath `warm-up: {ramp}`',
)
STEPS_FIRST = LOAD_FIRST.variant("{typed}: the repetitions stand first here", 'Write "{ramp}"')
TIME_WORD = question(
    "time-without-word",
    "a time that nothing says the meaning of",
    "it may be the rest, or how long a set lasts",
    "4 x 8-12, 120 s",
    "4 x 8-12, rest 120 s",
    "{typed}: rest, or how long a set lasts?",
    'Write "rest {time}" or "{sets} x {time}"',
)
TIME_AFTER_AT = TIME_WORD.variant(
    "{typed}: the time a set should take, or how long it lasts?",
    'Write "in {time}" for a target, "rest {time}" for rest',
)
TIME_OR_PAIR = TIME_WORD.variant(
    "{typed}: seconds, or a pair of dumbbells of {number}?",
    'Write "at 2 x {number} {unit}" for the pair, "rest {number} s" for rest,'
    ' "{sets} x {number} s" for a set',
)
NUMBER_ALONE = TIME_WORD.variant(
    "{typed}: what is this number?",
    'Write "rest {typed} s", "at {typed} kg", "at {typed}%" or "{typed} reps"',
)
POINT = NUMBER_ALONE.variant("{typed}: {number} %?", 'Write "{number}%"')
CLOCK_ALONE = TIME_WORD.variant(
    "{typed}: rest, how long a set lasts, or work and rest?",
    'Write "rest {typed}" or "3 x {typed}"; seconds of work and of rest are "6 x 40 s, rest 20 s"',
)
RPE_OR_LOAD = question(
    "effort-or-load",
    "a bare number up to 10 after at",
    "a bare number up to 10 may be an effort or a load",
    "3 x 5 at 8",
    "3 x 5 at RPE 8",
    "{typed}: RPE {number}, or {number} {unit}?",
    'Write "RPE {number}" or "at {number} {unit}"',
)
LOAD_UNIT = question(
    "load-without-unit",
    "a load without a unit",
    "kg and lb differ by more than two times",
    "3 x 5 at 60",
    "3 x 5 at 60 kg",
    "{typed}: kg or lb?",
    'Write "{typed} kg" or "{typed} lb", or put `unit: kg` at the top',
)
PLUS_BASE = question(
    "plus-without-base",
    "a load that is added to nothing",
    "it may be more than last time, or a weight on a belt",
    "3 x 8, +5",
    "3 x 8 at last time + 5 kg",
    "{typed}: {number} more than what?",
    'Write "at last time + {number} {unit}", or on a dip or pull-up "at bodyweight + {number} {unit}"',
)
MINUS_BASE = PLUS_BASE.variant(
    "{typed}: {number} less than what?",
    'Write "at last time - {number} {unit}", or for help taken off "at bodyweight - {number} {unit}"',
)
PLATES = question(
    "plates-without-weight",
    "a load in plates",
    "plates weigh 20 kg here and 45 lb there, and the bar may be counted or not",
    "3 x 5 at 2 plates",
    "3 x 5 at bar + 40 kg a side",
    "{typed}: which plates?",
    'Write what hangs on each end: "bar + {load} a side"',
)
BAND = question(
    "band-not-in-gym",
    "a band the gym file does not know",
    "makers differ: a colour is no load",
    "3 x 15 with 2 red",
    "3 x 15 with 2 red bands",
    "{name}: makers differ, and the gym file has no such band",
    'Add it to the gym file with its measured pull: "{name}: 60 N at 2 m"{known}',
)
BAND_WORD = BAND.variant("{typed}: a band?", 'Write "{write}"')
BAND_NAME = BAND.variant("{typed}: which band?", 'Write its name from the gym file: "with {write}"')
NO_NUMBER = question(
    "load-without-number",
    "a word for a load that gives no number",
    "no number can be printed, and two athletes read it two ways",
    "3 x 8 at challenging",
    "3 x 8 at own choice",
    "{typed}: no number to print",
    'Write "own choice", or an effort: "2 RIR"',
)
RISING = question(
    "rising-without-target",
    "rising loads without the load of the last set",
    "only the last set's load can be printed or checked",
    "3 x 8 rising loads",
    "3 x 8 rising to 80 kg",
    "{typed}: rising to what?",
    'Write the load of the last set: "rising to 80 kg" or "rising to 80%"',
)
REST_UNIT = question(
    "rest-without-unit",
    "a rest that may be minutes or seconds",
    "a bare number may be minutes or seconds",
    "3 x 8, rest 2",
    "3 x 8, rest 2 min",
    "{typed}: {number} minutes or {number} seconds?",
    'Write "rest {number} min" or "rest {number} s"',
)
REST_POINT = REST_UNIT.variant(
    "{typed}: {minutes} min {seconds} s, or {number} minutes?",
    'Write "rest {minutes}:{seconds}" or "rest {number} min"',
)
REST_COLON = REST_UNIT.variant("{typed}: seconds?", 'Write "rest {number} s"')
REST_WHAT = REST_UNIT.variant(
    "{typed}: how long is the rest?", 'Write "rest 2:00", "rest 90 s", "rest as needed" or "rest none"'
)
TEMPO = question(
    "tempo-incomplete",
    "a tempo that has not four phases",
    "with two or three digits nobody knows which phase is missing",
    "3 x 8, tempo 301",
    "3 x 8, tempo 3-0-1-0",
    "{typed}: which phase is missing?",
    'Four: lower, bottom, lift, top, for example "tempo {write}"; or in words: "{first} s down"',
)
TEMPO_PAIR = TEMPO.variant(
    "{typed}: seconds down and up, or is a pause among them?",
    'Write "{down} s down, {up} s up", or all four, lower, bottom, lift, top: "tempo 3-0-1-0"',
)
TEMPO_WORD = TEMPO.variant("{typed}: a tempo?", 'Write "tempo {write}"')
PAUSE_PLACE = question(
    "pause-without-place",
    "a pause that may be in the lift or between parts of a set",
    "a pause at the bottom makes the lift harder, a pause between parts makes it easier",
    "3 x 8, pause 2 s",
    "3 x 8, pause 2 s at the bottom",
    "{typed}: where?",
    'Write "pause {time} at the bottom" (or at the top, at the chest, halfway); "cluster" if the bar'
    " is put down",
)
PAUSE_PARTS = PAUSE_PLACE.variant(
    "{typed}: how long is the pause?",
    'Write "pause 20 s" between parts, "pause 2 s at the bottom" in the lift',
)
LOAD_ON_PART = question(
    "load-on-one-part",
    "a load or an effort on one part of a chain only",
    "the other sets then have neither, and nobody knows whether they share it",
    "3 x 12, then 2 x 12 at 20 kg",
    "3 x 12 at 20 kg, then 2 x 12 at 20 kg",
    "{typed}: the {kind} stands only on {part}; the same for {other}?",
    'Write it on each: "{other}{value}", or once underneath, under `{kind}:`',
)
EFFORT_SCALE = question(
    "effort-off-scale",
    "an effort beyond its scale",
    "RPE and RIR end at 10; the 6-20 scale has its own name",
    "3 x 5 at RPE 12",
    "3 x 5 at Borg 12",
    "{typed}: {scale} ends at {limit}",
    'Write a number {range}; for the 6-20 scale write "Borg {borg}"',
)
EFFORT_WHAT = EFFORT_SCALE.variant("{typed}: {scale} how much?", 'Write "RPE 8" or "2 RIR"')
PERCENT_OF_NOTHING = question(
    "percent-off-nothing",
    "a percent taken off without a base",
    "it may be off the top set reached today or off the planned load",
    "work up to 5RM, -10% 2 x 5",
    "work up to 5RM, then 2 x 5 at 90% of top set",
    "{typed}: {percent} % off what?",
    'Of the top set reached today: "{dose}at {rest}% of top set". In a drop set: "drop {percent}% for max".'
    " Of the plan: a percent of its own",
)
PERCENT_OVER = question(
    "percent-over-max",
    "a percent far over a max",
    "over 105 % of a max even one repetition fails; a percent over 100 is otherwise said back",
    "3 x 5 at 150%",
    "3 x 5 at 75%",
    "{typed}: more than {most} % of a max can't be lifted",
    'Type the percent again; of another movement or set write it: "{typed} of top set"',
)
EVERY_REST = question(
    "rest-inside-every",
    "a rest beside every",
    "with every the rest is what is left of the time",
    "10 x 5 every 1:00, rest 30 s",
    "10 x 5 every 1:00",
    "{typed}: every already says when the next set starts; the rest is what is left",
    "Take {typed} out, or take every out and keep the rest",
)
VALUE_MISSING = question(
    "value-missing",
    "a word of the dose line without its value",
    "half a sentence is never guessed",
    "3 x 8 every",
    "3 x 8 every 2:00",
    "{typed}: {what} is missing",
    'Write for example "{write}"',
)
WRONG_KEY = VALUE_MISSING.variant(
    "{typed}: a {what}, under `{key}:`", "Write it under `{what}:`, or in the dose line"
)
UNIT_MIXED = question(
    "units-mixed",
    "a list in which some numbers have a unit and some have not",
    "the unit after the last number belongs to all; a unit in the middle leaves the rest open",
    "sets of 30 s, 20, 10 m",
    "sets of 30 s, 20 s, 10 s",
    "{typed}: which unit has each number?",
    'Write the unit after the last number only, for example "{write}", or after every number',
)
HOLD = question(
    "number-without-unit",
    "a number on a movement that is held or carried",
    "holds and carries are counted in seconds or metres, and a bare number may be repetitions too",
    "hold 30",
    "3 x 30 s hold",
    "{typed}: {number} what?",
    'Write "3 x {number} s hold" or "3 x {number} reps"',
)
NUMBER_UNIT = HOLD.variant(
    HOLD.message, 'Write "{sets} x {number} {unit}{rest}" or "{sets} x {number} reps{rest}"'
)
