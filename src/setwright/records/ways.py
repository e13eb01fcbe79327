"""Ways to write other loads, sets and repetitions into a line of a plan, the plainest first."""

import re
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Final, NamedTuple

from setwright.library.names import fold
from setwright.model.plan import AthleteLoad, Item
from setwright.reading.done_typed import load_typed
from setwright.reading.dose import Load
from setwright.reading.words import number
from setwright.records.gains import Gain
from setwright.records.own_step import figure_of

Who = str | None

_HEAD: Final = re.compile(
    r"(?P<sets>\d+)(?P<x>\s*[x×*]\s*)(?P<low>\d+)(?:(?P<to>\s*[-–]\s*)(?P<high>\d+))?", re.IGNORECASE
)
_VALUE: Final = re.compile(r"(?P<key>\s*[^:]+:\s*)(?P<value>[^#]*?)(?P<remark>\s+#\s.*)?$")
_NAMED: Final = re.compile(r"(?P<key>\s*-\s+[^:#]+:\s+)(?P<value>[^#]*?)(?P<remark>\s+#\s.*)?$")
_LEAD: Final = re.compile(r"(?:,\s*|\s+)(?:at|@|with)\s+[^,#]+?(?=\s+(?:at|@|with)\s|\s*(?:,|#|$))")
_BODY: Final = re.compile(r"\b(?:bodyweight|bw)\b", re.IGNORECASE)
_LOAD_KEY: Final = re.compile(r"\s*load\s*:\s*\S", re.IGNORECASE)
_NOT_COPIED: Final = re.compile(r"\s*(?:load|instead|for|not[ -]for)\s*:", re.IGNORECASE)


class Written(NamedTuple):
    """A line, the loads it has for everybody who does it, and what it is to say of them.

    ``groups``: the groups of the squad with their members.
    """

    item: Item
    now: Mapping[Who, tuple[Load, ...]]
    loads: Mapping[Who, Load]
    gains: Mapping[Who, Gain]
    groups: Mapping[str, tuple[str, ...]]


def ways(text: str, one: Written) -> Iterator[str]:
    """The text with the line changed, in every way that may be right."""
    typed = text.splitlines()
    shared = _shared(one.gains)
    apart = [who for who in one.now if who is not None and one.gains.get(who, Gain()) != shared]
    for rows, item in _forms(typed, one.item):
        line = one._replace(item=item)
        staying = line._replace(
            now={who: loads for who, loads in one.now.items() if who not in apart},
            loads={who: load for who, load in one.loads.items() if who not in apart},
        )
        for gained in _with_gain(rows, item, shared):
            for loaded in _with_loads(gained, staying):
                for split in _with_lines_of_their_own(loaded, rows, line, apart):
                    yield "\n".join(split) + "\n"


def _forms(rows: list[str], item: Item) -> Iterator[tuple[list[str], Item]]:
    """The rows with the line as it is, then with its dose written out where a scheme has it."""
    yield rows, item
    at, match = item.place.line - 1, _NAMED.match(rows[item.place.line - 1])
    if item.dose is not None and match is not None and fold(match["value"]) != fold(item.dose.text):
        typed = f"{match['key']}{item.dose.text}{match['remark'] or ''}"
        column = len(match["key"]) + 1
        place = replace(item.place, column=column, end_column=column + len(item.dose.text))
        dose = item.dose.model_copy(update={"place": place})
        yield _with_row(rows, at, typed), item.model_copy(update={"dose": dose})


def _shared(gains: Mapping[Who, Gain]) -> Gain:
    """What most have, of two equally many the least."""
    counted = Counter(gains.values())
    return min(counted, key=lambda gain: (-counted[gain], gain), default=Gain())


def _with_gain(rows: list[str], item: Item, gain: Gain) -> Iterator[list[str]]:
    if gain == Gain():
        yield rows
        return
    for at, start in _doses(item):
        if match := _HEAD.search(rows[at], start):
            sets, low = (int(match[part]) for part in ("sets", "low"))
            high = f"{match['to']}{max(int(match['high']) + gain.reps, 1)}" if match["high"] else ""
            head = f"{max(sets + gain.sets, 1)}{match['x']}{max(low + gain.reps, 1)}{high}"
            yield _with_row(rows, at, rows[at][: match.start()] + head + rows[at][match.end() :])


def _with_loads(rows: list[str], one: Written) -> Iterator[list[str]]:
    """The rows with the loads of all who stay in the line."""
    if not one.loads:
        yield rows
        return
    if one.item.loads:
        yield _by_name(rows, one.item.loads, _with_groups(one))
        return
    loads = {who: one.loads.get(who) or _only(now) for who, now in one.now.items()}
    known = {who: load for who, load in loads.items() if load is not None}
    common = set(known.values())
    if len(common) == 1:
        (load,) = common
        yield from _in_place(rows, one.item, load)
        yield _beneath(rows, one.item, [f"load: {load_typed(load)}"])
    names = [f"  {who}: {load_typed(load)}" for who, load in known.items() if who is not None]
    for bare in _without_load(rows, one.item):
        yield _beneath(bare, one.item, ["load:", *names])


def _only(loads: tuple[Load, ...]) -> Load | None:
    return loads[0] if len(loads) == 1 else None


def _with_lines_of_their_own(
    rows: list[str], before: list[str], one: Written, apart: list[str]
) -> Iterator[list[str]]:
    """The rows with a line under ``instead`` for each whose sets or repetitions are their own."""
    if not apart:
        yield rows
        return
    added: list[str] = []
    for who in apart:
        mine = next(_with_gain(before, one.item, one.gains.get(who, Gain())), None)
        bare = None if mine is None else next(_without_load(mine, one.item), None)
        if bare is None:
            return
        added += [f"{_quoted(who)}:", *_copied(bare, one, who)]
    at = next(
        (at for at, row in _below(rows, one.item) if re.match(r"\s*instead\s*:\s*(?:#.*)?$", row)), None
    )
    if at is None:
        yield _beneath(rows, one.item, ["instead:", *(f"  {line}" for line in added)])
    else:
        indent = rows[at][: len(rows[at]) - len(rows[at].lstrip())]
        yield [*rows[: at + 1], *(f"{indent}  {line}" for line in added), *rows[at + 1 :]]


def _quoted(who: str) -> str:
    return who if re.fullmatch(r"[^\W\d_][\w '-]*", who) else f'"{who}"'


def _copied(rows: list[str], one: Written, who: str) -> Iterator[str]:
    """A line with what stands under it as somebody's own, and their load."""
    head = rows[one.item.place.line - 1]
    depth = len(head) - len(head.lstrip())
    yield f"  {head[depth:]}"
    load = one.loads.get(who) or _only(one.now[who])
    if load is not None:
        yield f"    load: {load_typed(load)}"
    skipped: int | None = None
    for _, row in _below(rows, one.item):
        indent = len(row) - len(row.lstrip())
        if skipped is not None and (indent > skipped or not row.strip()):
            continue
        skipped = indent if _NOT_COPIED.match(row) else None
        if skipped is None:
            yield f"  {row[depth:]}"


def _in_place(rows: list[str], item: Item, load: Load) -> Iterator[list[str]]:
    """The number of the load that is written, changed where it stands."""
    old = next(iter(item.line_loads), None)
    if old is None or old.kind != load.kind:
        return
    value, new = figure_of(old), figure_of(load)
    if old.kind == "bodyweight" and old.plus is None:
        typed, write = _BODY, load_typed(load)
    elif value is not None and new is not None:
        decimal = number(value).replace(".", "[.,]")
        typed, write = re.compile(rf"(?<![\d.,:-]){decimal}(?![\d.,:%-]|\s*x)"), number(new)
    else:
        return
    for at, start in [*_doses(item), *_load_rows(rows, item)]:
        for match in reversed(list(typed.finditer(rows[at], start))):
            yield _with_row(rows, at, rows[at][: match.start()] + write + rows[at][match.end() :])


def _without_load(rows: list[str], item: Item) -> Iterator[list[str]]:
    """The rows without the load that is written for everybody, in the line or underneath."""
    if not item.line_loads:
        yield rows
        return
    for at, start in _doses(item):
        typed = rows[at]
        for match in _LEAD.finditer(typed[start:]):
            before, behind = typed[: start + match.start()], typed[start + match.end() :]
            yield _with_row(rows, at, before + behind)
    for at, _ in _load_rows(rows, item):
        yield _with_row(rows, at, "")


def _with_groups(one: Written) -> dict[Who, Load]:
    """What is wanted with the name of a group in place of its members, where it has one load for them all."""
    loads = dict(one.loads)
    for group in (load.who for load in one.item.loads if load.who in one.groups):
        members = one.groups[group]
        same = {one.loads.get(member) for member in members}
        if len(same) == 1 and None not in same:
            loads = {who: load for who, load in loads.items() if who not in members}
            loads[group] = one.loads[members[0]]
    return loads


def _by_name(rows: list[str], written: tuple[AthleteLoad, ...], loads: Mapping[Who, Load]) -> list[str]:
    """Loads under names: each own one is changed, or a new one put above those of the groups."""
    new = list(rows)
    own = {load.who: load.place.line - 1 for load in written}
    first = min(own.values())
    indent = rows[first][: len(rows[first]) - len(rows[first].lstrip())]
    added = [f"{indent}{who}: {load_typed(load)}" for who, load in loads.items() if who not in own]
    for who, at in own.items():
        if who in loads and (match := _VALUE.match(new[at])):
            new[at] = f"{match['key']}{load_typed(loads[who])}{match['remark'] or ''}"
    return [*new[:first], *added, *new[first:]]


def _beneath(rows: list[str], item: Item, lines: list[str]) -> list[str]:
    """The rows with lines in line with the movement, under its first line."""
    at = item.place.line - 1
    head = rows[at]
    indent = " " * (len(head) - len(head.lstrip()) + 2)
    return [*rows[: at + 1], *(f"{indent}{line}" for line in lines), *rows[at + 1 :]]


def _doses(item: Item) -> Iterator[tuple[int, int]]:
    """Where the dose is typed: its row, and the column it starts at."""
    if item.dose is not None:
        yield item.dose.place.line - 1, item.dose.place.column - 1


def _load_rows(rows: list[str], item: Item) -> Iterator[tuple[int, int]]:
    """Rows under a line that hold a load for everybody."""
    for at, row in _below(rows, item):
        if _LOAD_KEY.match(row):
            yield at, row.index(":") + 1


def _below(rows: list[str], item: Item) -> Iterator[tuple[int, str]]:
    """The rows under a line that belong to it."""
    head = rows[item.place.line - 1]
    depth = len(head) - len(head.lstrip())
    for at in range(item.place.line, len(rows)):
        row = rows[at]
        if row.strip() and len(row) - len(row.lstrip()) <= depth:
            return
        yield at, row


def _with_row(rows: list[str], at: int, row: str) -> list[str]:
    return [*rows[:at], *([row.rstrip()] if row.strip() else []), *rows[at + 1 :]]
