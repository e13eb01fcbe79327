"""What one movement does, in words and numbers, from its entry in the compiled library."""

from collections.abc import Mapping, Sequence
from itertools import groupby
from typing import Any, Final

from setwright.library.table import MODEL_NOTE, Match
from setwright.report.as_json import as_json
from setwright.report.compare import compared
from setwright.report.phrases import (
    PARTS,
    beyond,
    joined,
    lever,
    load_word,
    loaded,
    partners,
    serves,
    stops,
)
from setwright.report.working import beside, figure, gives_out, hardest, trust
from setwright.report.wrapping import WIDTH, wrapped

FORMAT: Final = "setwright-move/1"
INDENT: Final = " " * 9
LISTED: Final = 4
"""How many partners are named; choice."""

TABLE_HEAD: Final = (
    "             work     along its line  length, %      loaded         counts",
    "             0-100    (lever)         start    end   long    short  a hard set",
)
STRIP_HEAD: Final = "shortest         1/3          2/3        longest"
STRIP_KEY: Final = ". not used   - moved, not loaded   = some   # much   | ends here"


def move_text(movements: Sequence[Mapping[str, Any]]) -> str:
    """One movement explained, or several side by side, in 80 columns of ASCII; ends with a line break.

    ``movements``: entries of the compiled library, at least one.
    """
    return explained(movements[0]) if len(movements) == 1 else compared(movements)


def move_json(movements: Sequence[Mapping[str, Any]]) -> str:
    """Movements as JSON in the form "setwright-move/1"; names that only are read stay out."""
    shown = [{key: value for key, value in one.items() if key != "read_only_aliases"} for one in movements]
    return as_json({"format": FORMAT, "movements": shown})


def list_text(movements: Sequence[Mapping[str, Any]]) -> str:
    """The names of movements by pattern, those that the engine scores marked."""
    lines = []
    for pattern, group in groupby(sorted(movements, key=_pattern), key=_pattern):
        names = [f"{'*' if one['scored'] else ' '} {one['name']}" for one in group]
        lines += [f"{pattern}:", *_two_columns(names), ""]
    return "\n".join([*lines, "* scored by the engine; the others are counted by their muscles.", ""])


def sized_for(name: str, factor: float) -> str:
    """One sentence that says for whom the lengths are; ends with a line break."""
    return wrapped(f"Levers and distances for {name}, whose arm is {factor:.2f} of the model's.") + "\n"


def not_found(name: str, match: Match) -> str:
    """One sentence for a name that is no movement: the question, or the nearest names."""
    if match.ask:
        return match.ask
    nearest = f"; the nearest are {joined(match.nearest, 'and')}" if match.nearest else ""
    return f'no movement is called "{name}"{nearest}. "setwright move" lists them all'


def explained(movement: Mapping[str, Any]) -> str:
    """One movement: a sentence, the parts, the strips, and what a coach needs beside them."""
    body = _scored(movement) if movement["scored"] else _counted(movement)
    return "\n".join([*body, ""])


def _scored(movement: Mapping[str, Any]) -> list[str]:
    return [
        wrapped(f"{movement['name']}: {in_words(movement)}"),
        *([wrapped(movement["refused"])] if movement["refused"] else []),
        "",
        *_table(movement["parts"]),
        "",
        *_strips(movement["parts"]),
        "",
        _labelled("Midline", _midline(movement["past_midline"])),
        _labelled("Line", _line(movement)),
        _labelled("Others", beside(movement)),
        _labelled("Limit", gives_out(movement)),
        _labelled("Share", _shares(movement["parts"])),
        _labelled("Resists", _resists(movement["resistance"])),
        _labelled("Arm", _arm(movement["extremes"])),
        *_for_the_floor(movement),
        "",
        *(_labelled("Trust" if not n else "", told) for n, told in enumerate(trust(movement))),
        wrapped(MODEL_NOTE),
    ]


def _counted(movement: Mapping[str, Any]) -> list[str]:
    return [
        wrapped(
            f"{movement['name']}: counted, not scored. It has no arm path; its sets count for its muscles."
        ),
        "",
        _labelled("Trains", joined(movement["prime"], "and")),
        *([_labelled("Assists", joined(movement["assist"], "and"))] if movement["assist"] else []),
        *_for_the_floor(movement),
    ]


def in_words(movement: Mapping[str, Any]) -> str:
    """The plain sentence: line, work, loaded long and short, midline, what finishes it."""
    line = movement["line"]
    follows = "follows no line of the chest" if line == "none" else f"follows the {line} line"
    hand = f"the hand {stops(movement['past_midline']['hand_cm'])}"
    return f"{follows}; {hardest(movement)}; {loaded(movement['parts'])}; {hand}{_finish(movement)}."


def _finish(movement: Mapping[str, Any]) -> str:
    best = partners(movement)[:1]
    if not best:
        return ""
    return f"; it finishes the {best[0]}" if movement["crossing"] else f"; the {best[0]} finishes it"


def _midline(past: Mapping[str, float]) -> str:
    return f"hand {beyond(past['hand_cm'], 'cm')}, upper arm {beyond(past['arm_deg'], 'deg')}."


def _line(movement: Mapping[str, Any]) -> str:
    tilt = "" if movement["tilt"] is None else f" (tilt {movement['tilt']:.2f})"
    sentences = [movement["line"] + tilt, serves(movement)]
    if found := partners(movement)[:LISTED]:
        sentences.append(f"{'finishes' if movement['crossing'] else 'finished by'} {joined(found, 'and')}")
    return "; ".join(sentences) + "."


def _shares(parts: Mapping[str, Any]) -> str:
    if not any(part["along_its_line"] for part in parts.values()):
        return "no part of the chest is loaded along its line."
    shares = joined([f"{part} {100 * parts[part]['share']:.0f} %" for part in PARTS], "and")
    return f"{shares} at equal activation."


def _resists(resistance: Mapping[str, float | None]) -> str:
    thirds = [f"{name} {100 * value:.0f} %" for name, value in resistance.items() if value is not None]
    return f"{', '.join(thirds)} of its peak (thirds of the sternal part's way)."


def _arm(extremes: Mapping[str, Any]) -> str:
    behind, up, out = extremes["arm_behind"]["max"], extremes["arm_up"]["max"], extremes["arm_turned_out"]
    back = f"at most {behind:.0f} deg behind the body" if behind > 0 else "never behind the body"
    turn = f", turned out to {out['max']:.0f} deg" if out and out["max"] > 0 else ""
    return f"{back}, raised to {up:.0f} deg{turn}."


def _table(parts: Mapping[str, Any]) -> list[str]:
    rows = []
    for part in PARTS:
        one = parts[part]
        start, end, dose = f"{one['length_start']:.0f}", f"{one['length_end']:.0f}", f"{one['dose']:g}"
        long, short = load_word(part, one, "long"), load_word(part, one, "short")
        along = f"{figure(one):<9}{lever(one):<16}"
        rows.append(f"{part:<13}{along}{start:>5}{end:>7}   {long:<8}{short:<7}{dose}")
    return [*TABLE_HEAD, *rows]


def _strips(parts: Mapping[str, Any]) -> list[str]:
    margin = " " * 13
    return [margin + STRIP_HEAD, *(f"{part:<13}{parts[part]['strip']}" for part in PARTS), margin + STRIP_KEY]


def _for_the_floor(movement: Mapping[str, Any]) -> list[str]:
    ratio = movement["load_ratio"]
    told = f"{movement['class']}: {movement['class_why']}."
    if ratio:
        told += f" {ratio['value']:g} times {ratio['to'].replace('-', ' ')} ({ratio['source']})."
    cautions = [
        wrapped(caution, "Watch:   " if not n else INDENT, INDENT)
        for n, caution in enumerate(movement["cautions"])
    ]
    return [_labelled("Load", told), *cautions]


def _labelled(label: str, text: str) -> str:
    return wrapped(text, f"{label}:".ljust(len(INDENT)) if label else INDENT, INDENT)


def _pattern(movement: Mapping[str, Any]) -> str:
    return str(movement["pattern"])


def _two_columns(names: Sequence[str]) -> list[str]:
    """Names down two columns, the first as wide as its longest name."""
    half = (len(names) + 1) // 2
    left, right = list(names[:half]), [*names[half:], ""]
    width = max(map(len, left)) + 2
    if width + max(map(len, right)) > WIDTH:
        return list(names)
    return [f"{one:<{width}}{other}".rstrip() for one, other in zip(left, right, strict=False)]
