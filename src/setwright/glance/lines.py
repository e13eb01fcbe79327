"""Every line of a week."""

from collections.abc import Iterator

from setwright.model.plan import Item, Week


def every_line(week: Week) -> Iterator[Item]:
    """The lines of warm-ups and work, each followed by what somebody does instead of it."""
    for session in week.sessions:
        for item in (*session.warm_up, *session.items()):
            yield item
            yield from (line for instead in item.instead for line in instead.lines)
