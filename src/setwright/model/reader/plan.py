"""The top of a plan: what it is for, its habits, its people and room; then its sessions, week by week."""

from collections.abc import Callable, Iterator, Mapping
from functools import partial
from typing import Any, Final, NamedTuple

from setwright.findings import Finding, has_errors
from setwright.model.lighter import lighter as lightened
from setwright.model.plan import Lighter, Session, Week
from setwright.model.reader.alone import KINDS, PLAN_KEYS
from setwright.model.reader.beside import Beside, Files
from setwright.model.reader.by_name import people_of
from setwright.model.reader.gym import read_gym
from setwright.model.reader.house import House
from setwright.model.reader.keys import OTHER_WORDS, Keys, fold, read_keys
from setwright.model.reader.lighter import read_lighter
from setwright.model.reader.own import read_own
from setwright.model.reader.schemes import read_schemes
from setwright.model.reader.session import read_sessions, session_of
from setwright.model.reader.squad import read_squad
from setwright.model.reader.stages import check_stages
from setwright.model.reader.top import ELSEWHERE, KEYS, SESSION_FIELDS, SINGLE
from setwright.model.reader.turns import Turns, check_turns, dealt, read_turns
from setwright.places import Place, Source
from setwright.reading import key_rules as rules
from setwright.reading.file_rules import TOO_BIG
from setwright.reading.gathering import Gathering
from setwright.reading.habits import Habits
from setwright.reading.nodes import Pairs, Scalar, values_in

Sessions = Callable[[House], tuple[Session, ...]]

MOST_OVER_WEEKS: Final = 100_000
"""Most values of a plan, counted once a week (choice: 52 weeks of 600 lines each)."""


class BlockRead(NamedTuple):
    """What became of a plan file. ``weeks`` is empty when nothing in it could be read.

    ``complete`` is False when an error left something out. ``sources``: the text of every file that was read,
    by name.
    """

    weeks: tuple[Week, ...]
    findings: tuple[Finding, ...]
    sources: dict[str, Source]

    @property
    def week(self) -> Week | None:
        """The week of a plan of one week, the first of a block; None when nothing could be read."""
        return self.weeks[0] if self.weeks else None

    @property
    def complete(self) -> bool:
        """Whether everything typed arrived in ``weeks``."""
        return bool(self.weeks) and not has_errors(self.findings)


def read_block(file: str, text: str, beside: Beside) -> BlockRead:
    """The weeks of the plan in ``text``, as far as they can be trusted, and a finding for everything else.

    ``file`` names the plan in places and findings; ``beside`` gives the text of a file that the plan
    names, or None when it can't be read.
    """
    found = Gathering()
    files = Files(file, beside, found)
    root = files.read(file, text)
    weeks: tuple[Week, ...] = ()
    if not isinstance(root, Pairs):
        if not found.findings:
            _no_plan(Place.top(file), "the file has no keys", found)
    elif _is_plan(root, found):
        weeks = _weeks(root, files)
    return BlockRead(weeks, found.findings, files.sources)


def _no_plan(place: Place, message: str, found: Gathering) -> None:
    change = "start a plan with `plan:` and its name, then `sessions:` or `work:`"
    found.say(rules.NO_PLAN, place, message, change)


def _is_plan(root: Pairs, found: Gathering) -> bool:
    """Whether the keys are those of a plan and not of a file that belongs beside one."""
    keys = [fold(key.text) for key, _ in root.pairs]
    if PLAN_KEYS & {OTHER_WORDS.get(key, key) for key in keys}:
        return True
    if keys and keys[0] in KINDS:
        message = f"this is a {keys[0]} file, not a plan"
        found.say(rules.NO_PLAN, root.pairs[0][0].place, message, "name the plan file instead")
    else:
        _no_plan(root.place, "the file has neither `plan` nor `sessions` nor `work`", found)
    return False


def _is_single(root: Pairs) -> bool:
    """Whether the plan is one session, with its keys at the top."""
    keys = [fold(key.text) for key, _ in root.pairs]
    return "work" in keys or ("sessions" not in keys and "work" in map(OTHER_WORDS.get, keys))


def _weeks(root: Pairs, files: Files) -> tuple[Week, ...]:
    found = files.found
    single = _is_single(root)
    read = read_keys(root.pairs, SINGLE if single else KEYS, found, "a plan", ELSEWHERE)
    values = read.values
    top = (read.keys.get("plan") or root.pairs[0][0]) if root.pairs else Scalar("", root.place)
    if "title" not in values:
        found.say(
            rules.NAME_MISSING, top.place, "the plan has no name", "write `plan:` and its name at the top"
        )
    weeks = values.pop("weeks", None) or 1
    if _is_too_long(root, weeks, read, found):
        return ()
    values["own_movements"], values["unread_movements"] = read_own(values.pop("own_movements", None), files)
    values["squad"] = read_squad(values.pop("squad", None), files, values.get("unit"))
    values["gym"] = read_gym(values.pop("gym", None), files, values.get("unit"))
    people = None if values["squad"] is None and "squad" in read.keys else people_of(values["squad"])
    house = House(found, _habits(values), {}, people=people, weeks=weeks, there=tuple(range(1, weeks + 1)))
    house = house._replace(schemes=read_schemes(values.pop("schemes", None), house))
    lighter, values["lighter_every"] = read_lighter(values.pop("lighter_weeks", None), house)
    turns = read_turns(read, found)
    listed = _listed(read, single=single, top=top, house=house)
    values |= {f"{key}_place": read.keys[key].place for key in ("aim", "follows") if key in values}
    always = Week(name=values.pop("title", "the plan"), place=top.place, sessions=(), of=weeks, **values)
    read_weeks = tuple(_each_week(always, listed, turns, lighter, house))
    if always.stages or "stages" not in read.keys:
        every = tuple(session for week in read_weeks for session in week.sessions)
        check_stages(every, always.stages, found)
    return read_weeks


def _is_too_long(root: Pairs, weeks: int, read: Keys, found: Gathering) -> bool:
    """Whether reading the plan once a week would take minutes; that is said."""
    if weeks == 1 or weeks * values_in(root) <= MOST_OVER_WEEKS:
        return False
    found.say(
        TOO_BIG,
        read.keys["weeks"].place,
        f"{weeks} weeks of a plan this long are more than {MOST_OVER_WEEKS:,} values, which no plan has",
        "write a plan of its own for some of the weeks",
    )
    return True


def _each_week(
    always: Week, listed: Sessions, turns: Turns | None, lighter: Mapping[int, Lighter], house: House
) -> Iterator[Week]:
    """Every week of the plan; ``always``: what holds in all of them."""
    read = {number: listed(house._replace(week=number)) for number in house.there}
    check_turns(read, turns, house.found)
    trained = 0
    for number, written in read.items():
        how = lighter.get(number)
        sessions = dealt(written, turns, trained)
        if how:
            sessions = () if how.no_training else tuple(lightened(session, how) for session in sessions)
        trained += not (how and how.no_training)
        yield always.model_copy(update={"sessions": sessions, "number": number, "lighter": how})


def _habits(values: dict[str, Any]) -> Habits:
    gym = values["gym"]
    return Habits(
        unit=values.get("unit"),
        dose_order=values.get("dose_order"),
        percent_of=values.get("percent_of"),
        sides=values.get("sides"),
        bands=None if gym is None else frozenset(band.name.casefold() for band in gym.bands),
    )


def _listed(read: Keys, *, single: bool, top: Scalar, house: House) -> Sessions:
    """A reader of the plan's sessions, as they are in the week of a house."""
    listed = read.values.pop("sessions", None)
    if single:
        if listed is not None:
            message = "the plan has `work` at the top and `sessions`; one of them would be lost"
            change = (
                "put the work into a session of its own, `- name: ...` with `work:`, or take `sessions:` out"
            )
            house.found.say(rules.WRONG_FORM, read.keys["sessions"].place, message, change)
        own = {field: read.values.pop(field) for field in SESSION_FIELDS if field in read.values}
        return partial(_single, Keys(own, read.keys, read.nodes), top.place)
    if listed is None:
        place = read.keys["sessions"].place if "sessions" in read.keys else top.place
        change = "write `sessions:` with one `- day:` a session, or `work:` for a single one"
        house.found.say(rules.NO_WORK, place, "the plan has no sessions that can be read", change)
        return lambda _: ()
    return partial(read_sessions, listed)


def _single(read: Keys, place: Place, house: House) -> tuple[Session, ...]:
    session = session_of(Keys(dict(read.values), read.keys, read.nodes), place, house)
    return () if session is None else (session,)
