"""The top of a plan: what the week is for, its habits, its people and room; then its sessions."""

from typing import Any, Final, NamedTuple

from setwright.findings import Finding, Level
from setwright.model.people import Squad
from setwright.model.plan import Session, Week
from setwright.model.reader.beside import Beside, Files
from setwright.model.reader.gym import read_gym
from setwright.model.reader.house import House
from setwright.model.reader.item import BY_WEEK
from setwright.model.reader.keys import (
    OTHER_WORDS,
    Keys,
    fold,
    not_read_yet,
    pairs_of,
    read_keys,
)
from setwright.model.reader.own import read_own
from setwright.model.reader.session import read_sessions, session_of
from setwright.model.reader.squad import read_squad
from setwright.model.reader.top import ELSEWHERE, KEYS, SESSION_FIELDS, SINGLE
from setwright.places import Place, Source
from setwright.reading import fields
from setwright.reading import key_rules as rules
from setwright.reading.doseline import read_dose
from setwright.reading.gathering import Gathering
from setwright.reading.habits import Habits
from setwright.reading.nodes import Node, Pairs, Scalar

MOST_WEEKS: Final = 104
"""Longest block, in weeks (choice: two years)."""
OTHER_FILES: Final = ("squad", "gym", "record")
"""First keys of files that are no plans."""


class WeekRead(NamedTuple):
    """What became of a plan file. ``week`` is None when nothing in it could be read.

    ``complete`` is False when an error left something out of ``week``. ``sources``: the text of every file
    that was read, by name.
    """

    week: Week | None
    findings: tuple[Finding, ...]
    sources: dict[str, Source]

    @property
    def complete(self) -> bool:
        """Whether everything typed arrived in ``week``."""
        return self.week is not None and all(f.level < Level.error for f in self.findings)


def read_week(file: str, text: str, beside: Beside) -> WeekRead:
    """The week in ``text``, as far as it can be trusted, and a finding for everything else.

    ``file`` names the plan in places and findings; ``beside`` gives the text of a file that the plan
    names, or None when it can't be read.
    """
    found = Gathering()
    files = Files(file, beside, found)
    root = files.read(file, text)
    week = None
    if not isinstance(root, Pairs):
        if not found.findings:
            _no_plan(Place(file, 1, 1, 1, 1), "the file has no keys", found)
    elif _is_plan(root, found):
        week = _week(root, files)
    return WeekRead(week, found.findings, files.sources)


def _no_plan(place: Place, message: str, found: Gathering) -> None:
    change = "start a plan with `plan:` and its name, then `sessions:` or `work:`"
    found.say(rules.NO_PLAN, place, message, change)


def _is_plan(root: Pairs, found: Gathering) -> bool:
    """Whether the keys are those of a plan and not of a file that belongs beside one."""
    keys = [fold(key.text) for key, _ in root.pairs]
    if {"plan", "sessions", "work"} & {OTHER_WORDS.get(key, key) for key in keys}:
        return True
    if keys and keys[0] in OTHER_FILES:
        message = f"this is a {keys[0]} file, not a plan"
        found.say(rules.NO_PLAN, root.pairs[0][0].place, message, "name the plan file instead")
    else:
        _no_plan(root.place, "the file has neither `plan` nor `sessions` nor `work`", found)
    return False


def _is_single(root: Pairs) -> bool:
    """Whether the plan is one session, with its keys at the top."""
    keys = [fold(key.text) for key, _ in root.pairs]
    return "work" in keys or ("sessions" not in keys and "work" in map(OTHER_WORDS.get, keys))


def _week(root: Pairs, files: Files) -> Week:
    found = files.found
    single = _is_single(root)
    read = read_keys(root.pairs, SINGLE if single else KEYS, found, "a plan", ELSEWHERE)
    values = read.values
    top = (read.keys.get("plan") or root.pairs[0][0]) if root.pairs else Scalar("", root.place)
    if "title" not in values:
        found.say(
            rules.NAME_MISSING, top.place, "the plan has no name", "write `plan:` and its name at the top"
        )
    _one_week(values.pop("weeks", None), read, found)
    values["own_movements"], values["unread_movements"] = read_own(values.pop("own_movements", None), files)
    values["squad"] = read_squad(values.pop("squad", None), files)
    values["gym"] = read_gym(values.pop("gym", None), files, values.get("unit"))
    house = House(found, _habits(values), _schemes(values.pop("schemes", None), found))
    _check_schemes(house)
    sessions = _sessions(read, single=single, top=top, house=house)
    if "aim" in values:
        values["aim_place"] = read.keys["aim"].place
    return Week(name=values.pop("title", "the plan"), place=top.place, sessions=sessions, **values)


def _one_week(node: Node | None, read: Keys, found: Gathering) -> None:
    weeks = None if node is None else fields.whole(1, MOST_WEEKS)(node, found)
    if node is not None and weeks is not None and weeks > 1:
        not_read_yet(read.keys["weeks"], node, BY_WEEK, "write `weeks: 1`, and one plan a week", found)


def _habits(values: dict[str, Any]) -> Habits:
    gym = values["gym"]
    return Habits(
        unit=values.get("unit"),
        dose_order=values.get("dose_order"),
        percent_of=values.get("percent_of"),
        sides=values.get("sides"),
        training_maxes=_training_maxes(values["squad"]),
        bands=None if gym is None else frozenset(band.name.casefold() for band in gym.bands),
    )


def _training_maxes(squad: Squad | None) -> bool:
    """Whether an athlete has a training max, by words of the max as typed."""
    maxes = (best for athlete in squad.athletes for best in athlete.maxes) if squad else ()
    return any("training max" in best.text.casefold() for best in maxes)


def _schemes(node: Node | None, found: Gathering) -> dict[str, Scalar | None]:
    """Dose lines by their folded name; None for one that can't be read yet."""
    read: dict[str, Scalar | None] = {}
    for key, value in () if node is None else pairs_of(node, found, "a name with its dose line"):
        if key.text[:1].isdigit():
            message = f'"{key.text}" starts with a digit and would be read as a dose'
            found.say(
                rules.NOT_A_CHOICE,
                key.place,
                message,
                f"give it a name of words, for example `lift {key.text}`",
            )
        elif isinstance(value, Scalar):
            read[fold(key.text)] = fields.word(value, found)
        else:
            read[fold(key.text)] = None
            not_read_yet(
                key, value, f"it has values by week, and {BY_WEEK}", "write this week's dose line", found
            )
    return read


def _check_schemes(house: House) -> None:
    """Faults in a named dose are said once, where it is written."""
    for typed in house.schemes.values():
        if typed is not None:
            house.found.add(*read_dose(typed.text, typed.place, house.habits)[1])


def _sessions(read: Keys, *, single: bool, top: Scalar, house: House) -> tuple[Session, ...]:
    listed = read.values.pop("sessions", None)
    if single:
        if listed is not None:
            message = "the plan has `work` at the top and `sessions`; one of them would be lost"
            change = (
                "put the work into a session of its own, `- name: ...` with `work:`, or take `sessions:` out"
            )
            house.found.say(rules.WRONG_FORM, read.keys["sessions"].place, message, change)
        own = {field: read.values.pop(field) for field in SESSION_FIELDS if field in read.values}
        return (session_of(Keys(own, read.keys, read.nodes), top.place, house),)
    sessions = () if listed is None else read_sessions(listed, house)
    if listed is None:
        place = read.keys["sessions"].place if "sessions" in read.keys else top.place
        change = "write `sessions:` with one `- day:` a session, or `work:` for a single one"
        house.found.say(rules.NO_WORK, place, "the plan has no sessions that can be read", change)
    return sessions
