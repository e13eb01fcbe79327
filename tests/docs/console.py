"""Console blocks of a Markdown page: commands with the output they must print."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

FENCE = re.compile(r"^```(\w*)\n(.*?)^```$", re.MULTILINE | re.DOTALL)
FILE_NAME = re.compile(r"# (\S+\.yaml)\n")


@dataclass(frozen=True)
class Step:
    """One command line and what is printed under it; a line ``...`` stands for any lines."""

    page: str
    command: str
    expected: str

    def printed(self, output: str) -> bool:
        """Whether ``output`` is what the page shows."""
        pattern = re.escape(self.expected).replace(re.escape("...\n"), r"(?:.*\n)*?")
        return re.fullmatch(pattern, output) is not None


def fences(page: Path) -> list[tuple[str, str]]:
    """Every fenced block of a page in order: its language and its text."""
    return FENCE.findall(page.read_text(encoding="utf-8"))


def outside(page: Path) -> list[str]:
    """The lines of a page that stand in no fenced block."""
    return FENCE.sub("", page.read_text(encoding="utf-8")).splitlines()


def blocks(page: Path, root: Path) -> list[list[Step]]:
    """The commands of each of a page's console blocks, in order."""
    name = str(page.relative_to(root))
    return [list(_steps(name, text)) for language, text in fences(page) if language == "console"]


def saved(page: Path) -> dict[str, str]:
    """The files that a page tells to save: YAML blocks whose first line is a remark with a file's name."""
    texts = (text for language, text in fences(page) if language == "yaml")
    return {named[1]: text for text in texts if (named := FILE_NAME.match(text))}


def _steps(page: str, block: str) -> Iterator[Step]:
    before, *parts = re.split(r"^\$ ", block, flags=re.MULTILINE)
    assert not before, f"{page}: a console block starts with a command, not with {before!r}"
    for part in parts:
        command, _, expected = part.partition("\n")
        yield Step(page, command, expected)
