"""Text rules about what to do next time."""

from setwright.reading.faults import TextRule

NOT_READ = TextRule(
    "next-not-read",
    "a rule for next time that is none of the plan language",
    "a rule that is not understood can't be applied to what was done",
    "next: go heavier",
    "next: add 2.5 kg every week",
)
PERCENT = TextRule(
    "next-percent-of-what",
    "a percent for next time without the load it is of",
    "of the first week's load the steps stay alike, of last week's load they grow",
    "next: add 2.5% every week",
    "next: add 2.5% of last week's load every week",
)
WHEN = TextRule(
    "next-without-when",
    "a step for next time that does not say when it is taken",
    "every week and once the top of the range is reached are two plans",
    "next: add 2.5 kg",
    "next: add 2.5 kg when every set reaches the top",
)
RULES = (NOT_READ, PERCENT, WHEN)
