"""Text rules about keys and their values. Raised by fields, by the model's reader and by library.resolve."""

from setwright.findings import Level
from setwright.reading.faults import TextRule

UNKNOWN_KEY = TextRule(
    "unknown-key",
    "a key that is no word of the plan language",
    "what stands under a key that nobody knows would be lost",
    "- dip: 3 x 8\n  rests: 2:00",
    "- dip: 3 x 8\n  rest: 2:00",
)
NOT_READ_YET = TextRule(
    "not-read-yet",
    "a part of the plan language that this version can't read",
    "reading on without it would train something else than what is written",
    "plan: A\nwork:\n  - dip: 3 x 8\n    rest:\n      Ann: 2:00",
    "plan: A\nwork:\n  - dip: 3 x 8\n    rest: 2:00",
)
MISSPELT_DAY = TextRule(
    "misspelt-day",
    "a day that is none",
    "the order of the days decides what follows what",
    "sessions:\n  - day: Mnday\n    work:\n      - dip: 3 x 8",
    "sessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8",
)
NO_SUCH_DATE = TextRule(
    "date-not-readable",
    "a date that doesn't exist or can be read in two ways",
    "day and month are swapped from country to country; year-month-day has one meaning",
    "starts: 18.10.2027",
    "starts: 2027-10-18",
)
NOT_A_CHOICE = TextRule(
    "not-one-of-the-words",
    "a value that is none of the words its key takes",
    "a word that is not known would be ignored",
    "aim: strenght",
    "aim: strength",
)
NOT_A_NUMBER = TextRule(
    "number-expected",
    "a value that should be a number, with or without its unit",
    "the number is worked with",
    "minutes: an hour",
    "minutes: 60",
)
WRONG_FORM = TextRule(
    "value-in-wrong-form",
    "a list, a text or keys where something else belongs",
    "each key takes one form; another one would be read only in part",
    "place: [hall, pool]",
    "place: hall",
)
OVER_LINES = TextRule(
    "value-over-two-lines",
    "a value that runs on into the next line",
    "only notes may run on; elsewhere a second line is usually a slip of the indentation",
    "- dip: 3 x 8\n    rest 2:00",
    "- dip: 3 x 8, rest 2:00",
)
NO_PLAN = TextRule(
    "not-a-plan",
    "a file that is not a plan",
    "a plan has a name under `plan:` and sessions",
    "gym: Hall",
    "plan: Week 3\nwork:\n  - dip: 3 x 8",
)
NO_WORK = TextRule(
    "work-missing",
    "a plan, a session or a group without work",
    "there is nothing to do in it",
    "sessions:\n  - day: Monday",
    "sessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8",
)
DOSE_MISSING = TextRule(
    "dose-missing",
    "a movement without a dose",
    "how much is to be done is not written",
    "- push-up",
    "- push-up: 3 x 12",
)
KEY_OUT_OF_LINE = TextRule(
    "key-among-movements",
    "a word of an item that stands as a line of the list",
    "words such as rest and note belong to the movement or group above and stand in line with it",
    "- dip: 3 x 8\n- rest: 2:00",
    "- dip: 3 x 8\n  rest: 2:00",
)
TWO_MOVEMENTS = TextRule(
    "two-movements-in-one-item",
    "a second movement without a hyphen of its own",
    "each movement starts a line of the list",
    "- dip: 3 x 8\n  pull-up: 3 x 8",
    "- dip: 3 x 8\n- pull-up: 3 x 8",
)
SAID_TWICE = TextRule(
    "said-in-line-and-below",
    "a value that stands in the line and again underneath",
    "nobody knows which of the two holds",
    "- dip: 3 x 8, rest 2:00\n  rest: 1:30",
    "- dip: 3 x 8, rest 2:00",
)
GROUP_CLOCK = TextRule(
    "group-words-disagree",
    "words of a group that contradict each other",
    "rounds, time and every each say how long a group lasts",
    "- circuit:\n    - push-up: 10\n  rounds: 3\n  time: 12:00",
    "- circuit:\n    - push-up: 10\n  time: 12:00",
)
REASON_MISSING = TextRule(
    "reason-missing",
    "an allow without a reason",
    "who reads the plan later needs to know why the rule does not hold here",
    "allow:\n  push-without-pull:",
    "allow:\n  push-without-pull: pull day is with the rowing coach",
)
LIMIT_END = TextRule(
    "limit-without-end",
    "a limit that does not say until when it holds",
    "a limit without an end is forgotten or kept for ever",
    "squad:\n  athletes:\n    - name: Ann\n      limits:\n        - arm up at most: 90 deg",
    "squad:\n  athletes:\n    - name: Ann\n      limits:\n"
    "        - arm up at most: 90 deg\n          until: cleared",
)
NAME_MISSING = TextRule(
    "name-missing",
    "an athlete, a cable or a plan without a name",
    "it can't be told apart from the others",
    "squad:\n  athletes:\n    - level: beginner",
    "squad:\n  athletes:\n    - name: Ann\n      level: beginner",
)
NAME_TWICE = TextRule(
    "name-twice",
    "two athletes of one name",
    "maxes, limits and loads are looked up by the name, and one would get the other's",
    "squad:\n  athletes:\n    - name: Ann\n    - name: Ann",
    "squad:\n  athletes:\n    - name: Ann K\n    - name: Ann M",
)
FILE_MISSING = TextRule(
    "file-not-found",
    "a file that the plan names and that can't be read",
    "without it the squad, the gym or the week before is not known",
    "squad: squadd.yaml",
    "squad: squad.yaml",
)
UNKNOWN_MOVEMENT = TextRule(
    "unknown-movement",
    "a movement that the library does not know",
    "a movement nobody knows can't be counted or judged",
    "- flat barbel bench pres: 3 x 8",
    "- flat barbell bench press: 3 x 8",
)
UNCLEAR_MOVEMENT = TextRule(
    "movement-unclear",
    "a word that names several movements",
    "they train different muscles",
    "- row: 3 x 8",
    "- machine row: 3 x 8",
)
OWN_UNFINISHED = TextRule(
    "own-movement-unfinished",
    "a movement of one's own that does not say enough, or says it twice",
    "a movement is counted by its muscles, or scored by the way of the arm and the pull of the load",
    "movements:\n  crate press:\n    loaded by: crate",
    "movements:\n  crate press:\n    like: push press\n    loaded by: crate",
)
OWN_NAME_TAKEN = TextRule(
    "own-movement-name-taken",
    "a movement of one's own with a name that is read as another movement",
    "one name for two movements: nobody knows which of them the plan means",
    "movements:\n  bench press:\n    like: push-up",
    "movements:\n  kitchen bench press:\n    like: push-up",
)
OWN_CHANGE = TextRule(
    "own-movement-change",
    "a change that the movement has no place for",
    "what can't be changed would be left out in silence",
    "movements:\n  steep dip:\n    like: dip\n    bench: 30 deg",
    "movements:\n  low press:\n    like: flat dumbbell bench press\n    bench: 15 deg",
)
OWN_NOT_SCORED = TextRule(
    "own-movement-not-scored",
    "a movement of one's own that no arm can follow, no load resists, or the model is not trusted with",
    "figures of such a movement would be wrong; it is counted by its muscles only",
    "movements:\n  wide press:\n    like: flat barbell bench press\n    grip: 150 cm",
    "movements:\n  wide press:\n    like: flat barbell bench press\n    grip: 80 cm",
    Level.gap,
)
UNKNOWN_ATHLETE = TextRule(
    "unknown-athlete",
    "a line, a load or a movement for somebody who is neither an athlete nor a group of the squad",
    "it would reach nobody, and whoever was meant would do the line of the others",
    "sessions:\n  - work:\n      - dip: 3 x 8\n        instead:\n          Pelle: push-up\n"
    "squad:\n  athletes:\n    - name: Pell",
    "sessions:\n  - work:\n      - dip: 3 x 8\n        instead:\n          Pell: push-up\n"
    "squad:\n  athletes:\n    - name: Pell",
)
NOT_FOR_THEM = TextRule(
    "line-not-for-them",
    "a load or a movement for somebody whom the line is not for",
    "what is written for them would never reach their sheet",
    "sessions:\n  - work:\n      - dip: 3 x 8\n        not for: [Pell]\n        load:\n          Pell: 5 kg\n"
    "squad:\n  athletes:\n    - name: Pell",
    "sessions:\n  - work:\n      - dip: 3 x 8\n        load:\n          Pell: 5 kg\n"
    "squad:\n  athletes:\n    - name: Pell",
)
SIGN_OFF = TextRule(
    "sign-off-incomplete",
    "a stage that is signed off without a name or without a date",
    "a stage opens by somebody's word; until it is known whose and when, it stays closed",
    "stages:\n  heavy:\n    signed off: yes",
    "stages:\n  heavy:\n    signed off: the team doctor, 2027-03-01",
)
LIKE_NO_DAY = TextRule(
    "like-names-no-day",
    "a day that is like another one, where that one is not there, is not clear, or leads back to itself",
    "without that day there is no work to copy",
    "sessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8\n  - day: Thursday\n    like: Tuesday",
    "sessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8\n  - day: Thursday\n    like: Monday",
)
NOT_IN_THAT_DAY = TextRule(
    "not-in-the-day-it-is-like",
    "something left out, swapped or changed that the day it is like does not have",
    "what was meant would go on as it was",
    "sessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8\n"
    "  - day: Thursday\n    like: Monday\n    swap:\n      pull-up: push-up",
    "sessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8\n"
    "  - day: Thursday\n    like: Monday\n    swap:\n      dip: push-up",
)
TWICE_IN_THAT_DAY = TextRule(
    "twice-in-the-day-it-is-like",
    "something left out, swapped or changed that the day it is like has twice",
    "nobody knows which of the two is meant",
    "sessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8\n      - push-up: 3 x 8\n      - dip: 1 x 20\n"
    "  - day: Thursday\n    like: Monday\n    leave out: [dip]",
    "sessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8\n      - push-up: 3 x 8\n      - dip: 1 x 20\n"
    "  - day: Thursday\n    work:\n      - dip: 3 x 8\n      - push-up: 3 x 8",
)
RULES = (
    UNKNOWN_KEY, NOT_READ_YET, MISSPELT_DAY, NO_SUCH_DATE, NOT_A_CHOICE, NOT_A_NUMBER, WRONG_FORM,
    OVER_LINES, NO_PLAN, NO_WORK, DOSE_MISSING, KEY_OUT_OF_LINE, TWO_MOVEMENTS, SAID_TWICE, GROUP_CLOCK,
    REASON_MISSING, LIMIT_END, NAME_MISSING, NAME_TWICE, FILE_MISSING, UNKNOWN_MOVEMENT, UNCLEAR_MOVEMENT,
    UNKNOWN_ATHLETE, NOT_FOR_THEM, SIGN_OFF, LIKE_NO_DAY, NOT_IN_THAT_DAY, TWICE_IN_THAT_DAY,
    OWN_UNFINISHED, OWN_NAME_TAKEN, OWN_CHANGE, OWN_NOT_SCORED,
)  # fmt: skip
