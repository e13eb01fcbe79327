"""A squad, gym or record file read alone, without the plan that names it."""

from typing import TYPE_CHECKING, Final, Literal, NamedTuple, get_args

from setwright.findings import Finding, has_errors
from setwright.model.people import Squad
from setwright.model.reader.beside import Files
from setwright.model.reader.gym import read_gym
from setwright.model.reader.keys import OTHER_WORDS, fold
from setwright.model.reader.squad import read_squad
from setwright.model.room import Gym
from setwright.places import Place, Source
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Pairs

if TYPE_CHECKING:
    from setwright.model.record import Record

Kind = Literal["squad", "gym", "record"]
KINDS: Final[tuple[Kind, ...]] = get_args(Kind)
"""First keys of files that are no plans."""
PLAN_KEYS: Final = frozenset({"plan", "sessions", "work"})
"""A file with one of these keys is a plan, whatever its first key."""


class FileRead(NamedTuple):
    """What became of a file that is no plan. ``held`` is None when nothing in it could be read."""

    kind: Kind
    held: "Squad | Gym | Record | None"
    findings: tuple[Finding, ...]
    sources: dict[str, Source]

    @property
    def complete(self) -> bool:
        """Whether everything typed arrived in ``held``."""
        return self.held is not None and not has_errors(self.findings)

    @property
    def names(self) -> frozenset[str]:
        """The athletes who are named in it."""
        people = () if self.held is None or isinstance(self.held, Gym) else self.held.athletes
        return frozenset(athlete.name for athlete in people)


def kind_of(text: str) -> Kind | None:
    """Which kind of file a text is, told by its first key; None for a plan and for what is none of them."""
    lines = text.removeprefix("\ufeff").splitlines()
    keys = [fold(line.partition(":")[0]) for line in lines if line[:1].isalpha() and ":" in line]
    if PLAN_KEYS & {OTHER_WORDS.get(key, key) for key in keys}:
        return None
    return next((kind for kind in KINDS if keys[:1] == [kind]), None)


def read_alone(kind: Kind, file: str, text: str) -> FileRead:
    """The squad, gym or record in ``text``, as far as it can be trusted, and a finding for all else."""
    if kind == "record":
        from setwright.model.reader.record import read_record  # noqa: PLC0415 - a plan's check need not load it

        return FileRead(kind, *read_record(file, text))
    found = Gathering()
    files = Files(file, lambda _: None, found)
    root = files.read(file, text)
    held: Squad | Gym | None = None
    if isinstance(root, Pairs):
        held = read_squad(root, files) if kind == "squad" else read_gym(root, files, None)
    elif not found.findings:
        message = f"the keys of a {kind} are expected here"
        change = f"start with `{kind}:` and its name"
        found.say(rules.WRONG_FORM, Place.top(file), message, change)
    return FileRead(kind, held, found.findings, files.sources)
