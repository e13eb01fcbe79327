"""Files that a plan names: looked up beside it, read once, shown with its findings."""

from collections.abc import Callable
from pathlib import PurePath

from setwright.files import CannotRun
from setwright.places import Source
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Node, Scalar
from setwright.reading.tree import read_tree

Beside = Callable[[str], str | None]
"""The text of a file beside the plan, None when there is none. Raises: CannotRun when it can't be read."""


class Files:
    """The plan's file and those beside it. ``sources`` holds the text of every file read, by name."""

    def __init__(self, plan: str, beside: Beside, found: Gathering) -> None:
        self.found = found
        self.sources: dict[str, Source] = {}
        self._plan = plan
        self._beside = beside

    def read(self, file: str, text: str) -> Node | None:
        """The nodes of a text; what is wrong with its lines goes to ``found``."""
        self.sources[file] = Source(file, text.removeprefix("\ufeff"))
        tree = read_tree(file, text)
        self.found.traps(tree.findings, tree.covers)
        return tree.root

    def named(self, name: Scalar, what: str) -> Node | None:
        """The nodes of the file that a plan names as its ``what``, or None and a finding."""
        path = PurePath(name.text)
        into = f"put {name.text} into the plan's folder, mend the name, or write the keys under `{what}:`"
        if path.is_absolute() or not name.text.isprintable():
            example = f"`{what}: {what}.yaml`"
            self._missing(
                name,
                f"{what}: {name.text!r} is no file beside the plan",
                f"put the file into the plan's folder and write its name, for example {example}",
            )
            return None
        try:
            text = self._beside(name.text)
        except CannotRun as stop:
            self._missing(name, f"{what}: {stop.what}", stop.change or into)
            return None
        if text is None:
            self._missing(name, f"{what}: {name.text} can't be read beside the plan", into)
            return None
        before = len(self.found.findings)
        root = self.read(str(PurePath(self._plan).parent / path), text)
        if root is None and len(self.found.findings) == before:
            change = f"write the keys of the {what} into it, or take `{what}:` out"
            self._missing(name, f"{what}: {name.text} holds nothing", change)
        return root

    def _missing(self, name: Scalar, message: str, change: str) -> None:
        self.found.say(rules.FILE_MISSING, name.place, message, change)
