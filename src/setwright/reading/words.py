"""Numbers, loads, efforts and times of a dose in plain words."""

from collections.abc import Sequence
from itertools import takewhile

from setwright.reading.dose import Amount, Effort, Load, Rest, Sides, Span, Tempo
from setwright.reading.habits import Habits

MINUTE_S = 60
HANDS = 2
_SECONDS_UP_TO = 90
FROM_KM = 1000
"""Metres from which a distance is told in kilometres (choice)."""
_ONE = {
    "steps": "step",
    "contacts": "contact",
    "strokes": "stroke",
    "breaths": "breath",
    "throws": "throw",
    "jumps": "jump",
}
_TIMES_WORK = {1: "just", 0.5: "half"}
_PHASES = (("lower_s", "down"), ("bottom_s", "at the bottom"), ("lift_s", "up"), ("top_s", "at the top"))


def number(value: float) -> str:
    """A number without needless decimals: "60", "62.5"."""
    return f"{round(value, 3):g}" if value < 1e6 else f"{value:.0f}"  # noqa: PLR2004 - g turns to powers of ten there


def span(value: Span, join: str = " to ") -> str:
    """A number, a range, or an open number: "8", "8 to 10", "5 or more"."""
    if value.high is None:
        return f"{number(value.low)} or more"
    return between(value.low, value.high, join)


def between(low: float, high: float | None, join: str = " to ") -> str:
    """One number, or two where they differ."""
    return number(low) if high is None or low == high else f"{number(low)}{join}{number(high)}"


def plural(count: float, word: str) -> str:
    """A number with its noun: "1 set", "3 sets"."""
    return f"{number(count)} {word}{'' if count == 1 else 's'}"


def listed(words: Sequence[str]) -> str:
    """Words in a row, at least one: "12, 10 and 8"."""
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"


def merged(phrases: list[str]) -> str:
    """Phrases of several sets as one, what they share said once.

    >>> merged(["with 60 kg", "with 65 kg", "with 70 kg"])
    'with 60, 65 and 70 kg'
    """
    rows = [phrase.split() for phrase in phrases]
    start = _shared(rows)
    end = min(_shared([row[::-1] for row in rows]), min(map(len, rows)) - start - 1)
    middles = [" ".join(row[start : len(row) - end]) for row in rows]
    return " ".join([*rows[0][:start], listed(middles), *rows[0][len(rows[0]) - end :]])


def _shared(rows: list[list[str]]) -> int:
    """How many words all rows start with, at least one word of each left over."""
    columns = zip(*(row[:-1] for row in rows), strict=False)
    return sum(1 for _ in takewhile(lambda column: len(set(column)) == 1, columns))


def seconds(low: float, high: float | None = None) -> str:
    """A time in words: "30 seconds", "1 minute 30 seconds", "60 to 90 seconds"."""
    if high is not None and high != low:
        whole = low % MINUTE_S == 0 and high % MINUTE_S == 0
        return (
            f"{between(low / MINUTE_S, high / MINUTE_S)} minutes"
            if whole
            else f"{between(low, high)} seconds"
        )
    minutes, rest = divmod(low, MINUTE_S) if low > _SECONDS_UP_TO or low == MINUTE_S else (0, low)
    words = [plural(minutes, "minute")] if minutes else []
    return " ".join([*words, plural(rest, "second")] if rest or not words else words)


def interval(value: float) -> str:
    """How often: "minute", "90 seconds"."""
    return "minute" if value == MINUTE_S else seconds(value)


def metres(low: float, high: float | None = None) -> str:
    """A distance: "40 m", "2 km"."""
    far = low >= FROM_KM and (high is None or high == low)
    return f"{number(low / FROM_KM)} km" if far else f"{between(low, high)} m"


def amount(value: Amount) -> str:
    """What one set holds: "6", "8 to 10", "30 seconds", "as many as possible"."""
    low, high = value.span.low, value.span.high
    if value.less_than_tested is not None:
        return f"{value.less_than_tested} fewer than the tested number"
    if value.unit == "s" and high is None:
        return "as long as the circuit says"
    if value.unit == "s":
        how = {"hold": " held", "fast": ", as many fast repetitions as fit"}.get(value.how or "", "")
        return seconds(low, high) + how
    if value.unit == "m":
        return metres(low, high)
    if value.unit == "rung":
        return "the rung's number" if low == 1 else f"{number(low)} times the rung's number"
    if high is None:
        return f"{number(low)} or more, as many as possible" if low else "as many as possible"
    return span(value.span) + ("" if value.unit == "reps" else f" {_things(value)}")


def _things(value: Amount) -> str:
    return _ONE.get(value.unit, value.unit) if value.span.low == value.span.high == 1 else value.unit


def load(value: Load, habits: Habits) -> str:
    """What is lifted, with its preposition: "with 75 % of the tested max", "at pin 7"."""
    words = _load(value, habits)
    if value.top_kg is not None:
        words += f" and {number(value.top_kg)} kg of chain at the top"
    return f"rising to {words.removeprefix('with ')} in the last set" if value.rising else words


def _load(value: Load, habits: Habits) -> str:
    figure = between(value.low or 0.0, value.high)
    match value.kind:
        case "mass":
            return f"with {figure} {value.unit}{' in each hand' if value.hands == HANDS else ''}"
        case "percent":
            return f"with {figure} % of {_of(value.of or habits.max_kind)}"
        case "bodyweight":
            return f"with bodyweight{_plus(value)}"
        case "rm":
            return f"with the load for {figure} at most ({figure}RM)"
        case "bar":
            return "with the empty bar" if value.plus is None else f"with the bar{_plus(value)} a side"
        case "band":
            return _band(value)
        case "setting":
            return f"at {value.name} {figure}"
        case "speed":
            return f"at {figure} m/s"
        case "last":
            return f"with {value.name}'s load{_plus(value)}"
        case _:
            own = value.name == "own choice"
            return (
                "with a load of the athlete's own choice" if own else f"with a {value.name} load, no number"
            )


def _of(name: str) -> str:
    return f"the {name}" if (name.endswith("max") and "'" not in name) or name == "top set" else name


def _plus(value: Load) -> str:
    if value.plus is None:
        return ""
    low, high = sorted((abs(value.plus), abs(value.plus if value.plus_high is None else value.plus_high)))
    return f" {'+' if value.plus >= 0 else '-'} {between(low, high)} {value.unit}"


def _band(value: Load) -> str:
    count = value.low or 1
    name = value.name or ""
    what = (
        f"with {number(count)} {name} bands"
        if count > 1
        else f"with {name}"
        if "band" in name
        else f"with {name} band"
    )
    return what + (f" stretched to {number(value.stretch_m)} m" if value.stretch_m else "")


def effort(value: Effort) -> str:
    """How hard: "2 repetitions left", "RPE 8", "to failure"."""
    figure = between(value.low, value.high)
    if value.scale != "RIR":
        return f"at {value.scale} {figure}"
    if value.low == value.high == 0:
        return "to failure"
    return f"{figure} repetition{'' if value.low == value.high == 1 else 's'} left"


def sides(value: Sides) -> str:
    """On which sides: "on each arm", "left", "in all, both sides together"."""
    turn = ", alternating" if value.alternating else ""
    first = f", {value.order} first" if value.order else ""
    if value.kind == "each":
        return f"{'each' if value.word == 'way' else 'on each'} {value.word}{turn}{first}"
    if value.kind == "in_all":
        return f"in all, both sides together{turn}"
    return f"on the {value.word}{'' if 'side' in value.word else ' side'}{first}"


def rest(value: Rest) -> str:
    """The pause after a set: "3 minutes", "as long as the work", "as needed"."""
    low = value.low or 0.0
    match value.kind:
        case "seconds":
            return f"{seconds(low, value.high)} between sets"
        case "metres":
            return f"{metres(low, value.high)} easy between sets"
        case "times_work":
            return f"rest {_TIMES_WORK.get(low, f'{number(low)} times')} as long as the work"
        case "as_needed":
            return "rest as needed"
        case "partner":
            return "rest until the partner is done"
        case _:
            return "no rest between sets"


def turn_and_step(rungs: tuple[int, ...]) -> tuple[int, int]:
    """The rung at which a ladder turns back or ends, and by how much each rung differs from the last."""
    turn = max(rungs, key=lambda rung: abs(rung - rungs[0]))
    return turn, abs(rungs[1] - rungs[0]) if len(rungs) > 1 else 1


def tempo(value: Tempo) -> str:
    """The phases of a repetition: "3 seconds down, 1 at the bottom, fast up"."""
    words = []
    for name, way in _PHASES:
        time = getattr(value, name)
        if isinstance(time, str):
            words.append(f"as fast as possible {way}")
        elif time is not None:
            words.append(
                f"no pause {way}" if not time and way.startswith("at") else f"{number(time)} s {way}"
            )
    if value.held_s is not None:
        words.append(f"{number(value.held_s)} s {value.held_at}")
    return ", ".join(words)
