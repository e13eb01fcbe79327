"""The docs say what the program does: console blocks run, links lead somewhere, set-up lines agree."""

import re
import shlex
import shutil
import subprocess
from pathlib import Path

import pytest
from typer.testing import CliRunner

from setwright.cli import app
from setwright.library.table import library
from tests.docs.console import Step, blocks, fences, outside, saved
from tests.docs.links import anchors, links, named

ROOT = Path(__file__).parents[2]
README = ROOT / "README.md"
PAGES = [
    README,
    ROOT / "DEVELOPERS.md",
    *sorted((ROOT / "docs").rglob("*.md")),
    *sorted((ROOT / "examples").rglob("*.md")),
]
TOUR = [step for block in blocks(README, ROOT) for step in block]
CONSOLE = [TOUR, *(block for page in PAGES[1:] for block in blocks(page, ROOT))]
COMMAND = re.compile(r"\s*(?:\$ )?setwright [a-z]")


def _name(page: Path) -> str:
    return str(page.relative_to(ROOT))


@pytest.mark.parametrize("block", CONSOLE, ids=lambda block: f"{block[0].page}: {block[0].command}")
def test_console_blocks_print_what_the_page_shows(
    block: list[Step], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The commands of a block run one after the other, where the examples are; the README is one tour."""
    shutil.copytree(ROOT / "examples", tmp_path / "examples")
    monkeypatch.chdir(tmp_path)
    for file, text in saved(ROOT / block[0].page).items():
        Path(file).write_text(text, encoding="utf-8")
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


@pytest.mark.parametrize("page", PAGES, ids=_name)
def test_every_command_stands_in_a_block_that_is_run(page: Path) -> None:
    loose = [line for line in outside(page) if COMMAND.match(line)]
    assert not loose, f"{page.name}: write it in a console block: {loose}"
    for language, text in fences(page):
        assert language in {"console", "yaml"} or (page, language) == (README, "sh"), text


@pytest.mark.parametrize("page", PAGES, ids=_name)
def test_links_lead_somewhere(page: Path) -> None:
    for file, anchor in links(page):
        target = page.parent / file if file else page
        assert target.exists(), f"{page.name} links to {file}"
        assert not anchor or anchor in anchors(target), f"{page.name} links to {file}#{anchor}"


@pytest.mark.parametrize("page", PAGES, ids=_name)
def test_what_a_page_names_is_there(page: Path) -> None:
    missing = [place for place in named(page) if not (ROOT / place).exists()]
    assert not missing


def test_every_page_is_reached_from_the_readme() -> None:
    seen, waiting = set[Path](), [README]
    while waiting:
        page = waiting.pop()
        if page not in seen and page.suffix == ".md":
            seen.add(page)
            waiting += [(page.parent / file).resolve() for file, _ in links(page) if file]
    assert {_name(page) for page in PAGES} - {_name(page) for page in seen} == set()


def test_the_readme_counts_the_movements_right() -> None:
    scored = [library().movement(key)["scored"] for key in library().keys()]  # noqa: SIM118  # no mapping
    said = " ".join(README.read_text(encoding="utf-8").split())
    assert f"for {sum(scored)} movements with an arm path" in said
    assert f"{scored.count(False)} more movements by the muscles" in said


def test_ci_runs_the_readmes_own_test_command() -> None:
    readme = README.read_text(encoding="utf-8")
    command = next(line.strip() for line in readme.splitlines() if line.strip().endswith("-m pytest"))
    assert command in (ROOT / ".ci" / "run").read_text(encoding="utf-8").splitlines()


def test_the_top_level_holds_what_it_should() -> None:
    names = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")}
    made = {"dist", "build", "sheets", "crew", "bench.svg", "thursday.yaml"}  # the last by the tour
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
