"""The docs say what the program does: console blocks run, links lead somewhere, set-up lines agree."""

import re
import shlex
import shutil
import subprocess
from pathlib import Path

import pytest
from typer.testing import CliRunner

from setwright.cli import app
from tests.docs.console import Step, blocks

ROOT = Path(__file__).parents[2]
PAGES = [
    ROOT / "README.md",
    ROOT / "DEVELOPERS.md",
    *sorted((ROOT / "docs").rglob("*.md")),
    *sorted((ROOT / "examples").rglob("*.md")),
]
CONSOLE = [block for page in PAGES for block in blocks(page, ROOT)]
LINK = re.compile(r"\[[^\]]*\]\(([^)#\s]+)(?:#[^)]*)?\)")


@pytest.mark.parametrize("block", CONSOLE, ids=lambda block: f"{block[0].page}: {block[0].command}")
def test_console_blocks_print_what_the_page_shows(
    block: list[Step], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The commands of a block run one after the other, where the examples are."""
    shutil.copytree(ROOT / "examples", tmp_path / "examples")
    monkeypatch.chdir(tmp_path)
    for step in block:
        output = _output(step.command)
        assert step.printed(output), output


def _output(command: str) -> str:
    """What a command prints: setwright's, or a copy of a folder."""
    program, *arguments = shlex.split(command)
    if program == "cp":
        return subprocess.run([program, *arguments], check=True, capture_output=True, text=True).stdout
    assert program == "setwright"
    return CliRunner().invoke(app, arguments).output


@pytest.mark.parametrize("page", PAGES, ids=lambda page: str(page.relative_to(ROOT)))
def test_links_lead_somewhere(page: Path) -> None:
    for target in LINK.findall(page.read_text(encoding="utf-8")):
        if not target.startswith(("http://", "https://")):
            assert (page.parent / target).exists(), f"{page.name} links to {target}"


def test_ci_runs_the_readmes_own_test_command() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    command = next(line.strip() for line in readme.splitlines() if line.strip().endswith("-m pytest"))
    assert command in (ROOT / ".ci" / "run").read_text(encoding="utf-8").splitlines()


def test_the_top_level_holds_what_it_should() -> None:
    names = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")}
    made = {"dist", "build", "sheets"}
    assert names - made == {
        "README.md",
        "DEVELOPERS.md",
        "LICENSE",
        "pyproject.toml",
        "src",
        "tests",
        "examples",
        "docs",
    }
