"""Console blocks of a Markdown page: commands with the output they must print."""

import re
from dataclasses import dataclass
from pathlib import Path

BLOCK = re.compile(r"^```console\n(.*?)^```$", re.MULTILINE | re.DOTALL)


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


def blocks(page: Path, root: Path) -> list[list[Step]]:
    """The commands of each of a page's console blocks, in order."""
    return [_steps(str(page.relative_to(root)), block) for block in BLOCK.findall(page.read_text("utf-8"))]


def _steps(page: str, block: str) -> list[Step]:
    parts = (part.partition("\n") for part in re.split(r"^\$ ", block, flags=re.MULTILINE)[1:])
    return [Step(page, command, expected) for command, _, expected in parts]
