"""Text rules about what a gym file lists. Raised by the model's reader and by library.resolve."""

from setwright.findings import Level
from setwright.reading.faults import TextRule

WEIGHT_RUN = TextRule(
    "run-of-weights",
    "a run of weights without a step, or with one that does not lead from its first weight to its last",
    "which weights lie between the two is not known, and a load would be printed that nobody finds",
    "gym:\n  dumbbells:\n    4-31 kg by 2: 1 pair",
    "gym:\n  dumbbells:\n    4-32 kg by 2: 1 pair",
)
TWO_UNITS = TextRule(
    "two-units-in-one-weight",
    "kilograms and pounds in one weight",
    "45 lb is 20.4 kg and not 20 kg: what is stamped on the iron is what counts",
    "gym:\n  bars:\n    20 kg / 45 lb: 2",
    "gym:\n  bars:\n    20 kg: 2",
)
WEIGHT_TWICE = TextRule(
    "weight-listed-twice",
    "a weight that the gym file lists twice",
    "nobody knows whether the second one adds to the first or puts it right",
    "gym:\n  dumbbells:\n    4-32 kg by 2: 1 pair\n    20 kg: 2 pairs",
    "gym:\n  dumbbells:\n    4-18 kg by 2: 1 pair\n    20 kg: 3 pairs\n    22-32 kg by 2: 1 pair",
)
WEIGHT_UNLIKELY = TextRule(
    "weight-unlikely",
    "a bar, plate, dumbbell or kettlebell that is lighter or heavier than any that is made",
    "it is usually a slip of the decimal point, or pounds typed as kilograms",
    "gym:\n  plates per rack:\n    125 kg: 1 pair",
    "gym:\n  plates per rack:\n    1.25 kg: 1 pair",
)
BAND_PULL = TextRule(
    "band-pull-not-readable",
    "the pull of a band without its length, twice at one length, or weaker the longer it is stretched",
    "a band has no load of its own: how hard it pulls depends on how far it is stretched",
    "gym:\n  bands:\n    red: 60 N",
    "gym:\n  bands:\n    red: 60 N at 2 m",
)
UNKNOWN_STATION = TextRule(
    "unknown-station",
    "a station that no movement asks for",
    "what is listed under another name is taken as not there",
    "gym:\n  stations:\n    dipping bars: 1",
    "gym:\n  stations:\n    dip bars: 1",
    Level.advice,
)
RULES = (WEIGHT_RUN, TWO_UNITS, WEIGHT_TWICE, WEIGHT_UNLIKELY, BAND_PULL, UNKNOWN_STATION)
