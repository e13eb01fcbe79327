"""The record of a session, from a file of its own."""

from collections.abc import Iterator
from typing import Final, NamedTuple, TypeGuard

from setwright.findings import Finding, has_errors
from setwright.model.reader.beside import Files
from setwright.model.reader.keys import Key, Table, fold, is_empty, pairs_of, raw, read_keys
from setwright.model.record import AthleteDone, LineDone, Record
from setwright.places import Place, Source
from setwright.reading import fields, measures
from setwright.reading import key_rules as rules
from setwright.reading.done import Done
from setwright.reading.gathering import Gathering
from setwright.reading.habits import Habits
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.recordline import read_done

KEYS: Final[Table] = {
    "record": Key("plan", fields.text),
    "week": Key("week", fields.whole(1)),
    "session": Key("session", fields.text),
    "date": Key("date", measures.date),
    "unit": Key("unit", fields.one_of("unit", measures.UNITS)),
    "corrects": Key("corrects", fields.text),
    "done": Key("done", raw),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
}
LINE_KEYS: Final[Table] = {
    "instead of": Key("instead_of", fields.text),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
}
_REMARKS: Final = {"note": "notes", "private note": "private_notes"}


class RecordRead(NamedTuple):
    """What became of a record file. ``record`` is None when nothing in it could be read.

    ``sources``: the text of the file, by its name.
    """

    record: Record | None
    findings: tuple[Finding, ...]
    sources: dict[str, Source]

    @property
    def complete(self) -> bool:
        """Whether everything typed arrived in ``record``."""
        return self.record is not None and not has_errors(self.findings)


def read_record(file: str, text: str, unit: measures.Unit | None = None) -> RecordRead:
    """The record in ``text``, as far as it can be trusted, and a finding for everything else.

    ``unit``: the plan's, for loads without one where the record names none.
    """
    found = Gathering()
    files = Files(file, lambda _: None, found)
    root = files.read(file, text)
    record = None
    if isinstance(root, Pairs) and root.pairs:
        record = record_of(root, unit, found)
    elif not found.findings:
        change = "start with `record:` and the plan's name, then `done:` and the athletes"
        found.say(rules.WRONG_FORM, Place.top(file), "the keys of a record are expected here", change)
    return RecordRead(record, found.findings, files.sources)


def record_of(root: Pairs, unit: measures.Unit | None, found: Gathering) -> Record:
    """The record of some keys with their values, and a finding for what can't be read; ``unit`` as above."""
    read = read_keys(root.pairs, KEYS, found, "a record")
    top = read.keys.get("record", root.pairs[0][0])
    if "plan" not in read.values:
        change = "write `record:` and the name of the plan at the top"
        found.say(rules.NAME_MISSING, top.place, "the record does not name its plan", change)
    if "done" not in read.keys:
        change = (
            "write `done:`, under it each athlete's name, and under the name `- movement: 60 kg x 8, 8, 6`"
        )
        found.say(rules.NO_WORK, top.place, "the record does not say what was done", change)
    done = read.values.pop("done", None)
    habits = Habits(unit=read.values.get("unit") or unit)
    pairs = () if done is None else pairs_of(done, found, "an athlete's name with a list of lines")
    athletes = tuple(_athlete(name, node, habits, found) for name, node in pairs)
    return Record(plan=read.values.pop("plan", "the plan"), place=top.place, athletes=athletes, **read.values)


def _athlete(name: Scalar, node: Node, habits: Habits, found: Gathering) -> AthleteDone:
    lines: list[LineDone] = []
    remarks: dict[str, tuple[str, ...]] = {}
    if not name.text.strip():
        found.say(
            rules.NAME_MISSING, name.place, "an athlete has no name", "write the name in front of the colon"
        )
    with found.of(name.text.strip() or "an athlete"):
        for entry in _entries(name, node, found):
            key, value = entry.pairs[0]
            remark = _REMARKS.get(fold(key.text))
            if remark is None:
                lines.append(_line(key, value, entry.pairs[1:], habits, found))
            elif said := fields.text(value, found):
                remarks[remark] = (*remarks.get(remark, ()), said)
    return AthleteDone(name=name.text, place=name.place, lines=tuple(lines), **remarks)


def _entries(name: Scalar, node: Node, found: Gathering) -> Iterator[Pairs]:
    """The lines of an athlete that name a movement or hold a remark; a finding for each other one."""
    if isinstance(node, Listing):
        yield from (entry for entry in node.nodes if _is_line(entry, found))
    elif not is_empty(node):
        change = f"write one line a movement under `{name.text}:`, for example `- dip: 8, 8, 6`"
        change += f"; a remark is `- note: {node.text}`" if isinstance(node, Scalar) else ""
        found.say(rules.WRONG_FORM, node.place, f"a list of what {name.text} did is expected here", change)


def _is_line(entry: Node, found: Gathering) -> TypeGuard[Pairs]:
    if isinstance(entry, Scalar) and not entry.is_empty and not found.is_covered(entry.place):
        message = f'"{entry.text}" does not say what was done'
        change = f"put a colon behind the movement, `- {entry.text}: done`; nothing behind it is not written"
        if entry.text[:1].isdigit():
            message = f'"{entry.text}" does not say of which movement'
            change = f"write the movement in front, for example `- dip: {entry.text}`"
        found.say(rules.WRONG_FORM, entry.place, message, change)
    elif isinstance(entry, Listing):
        found.say(
            rules.WRONG_FORM, entry.place, "a list inside a list", "write one movement a line, `- dip: done`"
        )
    if not isinstance(entry, Pairs) or not entry.pairs or found.is_covered(entry.pairs[0][0].place):
        return False
    key, _ = entry.pairs[0]
    if not key.text.strip():
        change = "write the movement in front of the colon, `- dip: 8, 8, 6`"
        found.say(rules.WRONG_FORM, key.place, "the line does not say of which movement", change)
        return False
    if fold(key.text) == "instead of":
        change = "take the hyphen away and write `instead of:` in line with the movement above"
        found.say(
            rules.KEY_OUT_OF_LINE, key.place, f'"{key.text}" stands here as if it were a movement', change
        )
        return False
    return True


def _line(
    name: Scalar, value: Node, below: tuple[tuple[Scalar, Node], ...], habits: Habits, found: Gathering
) -> LineDone:
    read = read_keys(below, LINE_KEYS, found, "a line of a record")
    return LineDone(name=name.text, place=name.place, done=_done(name, value, habits, found), **read.values)


def _done(name: Scalar, value: Node, habits: Habits, found: Gathering) -> Done | None:
    if is_empty(value):
        return Done(kind="not written", text="", place=name.place)
    typed = fields.word(value, found)
    if typed is None:
        return None
    done, findings = read_done(typed.text, typed.place, habits)
    found.add(*findings)
    return done
