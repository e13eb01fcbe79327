"""Text rules about plans of several weeks: values by week, weeks that are named, lighter weeks, turns."""

from setwright.reading.faults import TextRule

WEEK_COUNT = TextRule(
    "list-not-one-a-week",
    "a list in brackets that has not exactly one entry a week",
    "a list goes week by week; with an entry too many or too few nobody knows which week gets which",
    "plan: A\nweeks: 2\nwork:\n  - bench pull: 3 x 8\n    load: [62,5 kg, 65 kg]",
    "plan: A\nweeks: 2\nwork:\n  - bench pull: 3 x 8\n    load: [62.5 kg, 65 kg]",
)
WEEK_EMPTY = TextRule(
    "week-not-written",
    "a week for which nothing is written",
    "an empty cell may mean the same again, not this week, or not any more",
    "plan: A\nweeks: 2\nwork:\n  - push-up:\n      week 1: 3 x 8\n      week 2:",
    "plan: A\nweeks: 2\nwork:\n  - push-up:\n      week 1: 3 x 8\n      week 2: same",
)
NO_SUCH_WEEK = TextRule(
    "no-such-week",
    "a week that the plan has not, or that comes later",
    "what is written for it would never be done",
    "plan: A\nweeks: 2\nwork:\n  - push-up: 3 x 8\n  - front plank: 3 x 30 s\n    only in: week 3",
    "plan: A\nweeks: 2\nwork:\n  - push-up: 3 x 8\n  - front plank: 3 x 30 s\n    only in: week 2",
)
WEEK_TWICE = TextRule(
    "week-named-twice",
    "a week for which two values are written",
    "nobody knows which of the two holds",
    "plan: A\nweeks: 3\nwork:\n  - push-up:\n      weeks 1-2: 3 x 8\n      weeks 2-3: 3 x 10",
    "plan: A\nweeks: 3\nwork:\n  - push-up:\n      weeks 1-2: 3 x 8\n      week 3: 3 x 10",
)
AFTER_STOP = TextRule(
    "value-after-stop",
    "a value in a week after stop",
    "stop means not any more; none means not this week",
    "plan: A\nweeks: 3\nwork:\n  - push-up: [3 x 8, stop, 3 x 10]",
    "plan: A\nweeks: 3\nwork:\n  - push-up: [3 x 8, none, 3 x 10]",
)
WEEKS_MIXED = TextRule(
    "weeks-and-other-keys",
    "week keys among keys of another kind",
    "a value goes by week or by name, not by both; and words of the movement stand in line with it",
    "plan: A\nweeks: 2\nwork:\n  - push-up:\n      weeks 1-2: 3 x 8\n      rest: 1:30",
    "plan: A\nweeks: 2\nwork:\n  - push-up:\n      weeks 1-2: 3 x 8\n    rest: 1:30",
)
ONE_DATE = TextRule(
    "one-date-for-several-weeks",
    "a date on a session of several weeks",
    "every week's sheet would carry the date of one",
    "plan: A\nweeks: 2\nsessions:\n  - date: 2027-02-01\n    work:\n      - push-up: 3 x 8",
    "plan: A\nweeks: 2\nstarts: 2027-02-01\nsessions:\n  - day: Monday\n    work:\n      - push-up: 3 x 8",
)
LIGHTER = TextRule(
    "lighter-week-unclear",
    "a lighter week that does not say what gets less",
    "half may be half the sets or half the load",
    "weeks: 2\nlighter weeks:\n  week 2: half",
    "weeks: 2\nlighter weeks:\n  week 2: half the sets",
)
TURNS = TextRule(
    "turns-unclear",
    "training days or a rotation that can't be dealt out",
    "sessions without a day are taken in turn, one a training day, through all weeks",
    "plan: A\nweeks: 2\nrotate: [Push]\nsessions:\n  - name: Push\n    work:\n      - push-up: 3 x 8",
    "plan: A\nweeks: 2\ntraining days: [Monday]\nrotate: [Push]\n"
    "sessions:\n  - name: Push\n    work:\n      - push-up: 3 x 8",
)
RULES = (
    WEEK_COUNT, WEEK_EMPTY, NO_SUCH_WEEK, WEEK_TWICE, AFTER_STOP, WEEKS_MIXED, ONE_DATE, LIGHTER, TURNS,
)  # fmt: skip
