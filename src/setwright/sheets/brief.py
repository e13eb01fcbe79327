"""Movements' names for where there is little room."""

from setwright.rules.matrix import LEFT_OUT_FIRST


def brief(name: str, most: int) -> str:
    """A movement's name without the words it can do without, as far as it is longer than ``most`` letters.

    >>> brief("flat barbell bench press", 16), brief("dumbbell bench press", 3)
    ('flat bench press', 'press')
    """
    told = name.split()
    for word in LEFT_OUT_FIRST:
        if len(" ".join(told)) > most and len(told) > 1 and word in told:
            told.remove(word)
    return " ".join(told)
