"""The handbook table read the other way: the percent of a max that so many repetitions go with."""

from itertools import pairwise

from setwright.reading.hardness import HANDBOOK_REPS_PERCENT


def percent_for(reps: float) -> float | None:
    """The percent of the max with which ``reps`` can be done at most, None where the table ends.

    Between its rows the table is read along straight lines. Source: NSCA training load chart (mirror).

    >>> percent_for(5), percent_for(13.5), percent_for(16)
    (87.0, 67.5, None)
    """
    for (few, heavy), (many, light) in pairwise(HANDBOOK_REPS_PERCENT.items()):
        if few <= reps <= many:
            return heavy - (heavy - light) * (reps - few) / (many - few)
    return None
