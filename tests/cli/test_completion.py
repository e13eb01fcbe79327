"""Shell completion, in processes as a shell starts them."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

COMMAND = [sys.executable, "-c", "from setwright.cli import app; app(prog_name='setwright')"]
BY_NAME = {"_TYPER_COMPLETE_TEST_DISABLE_SHELL_DETECTION": "1"}
"""Lets a shell be named in place of the one that the process runs in."""


def shell(*arguments: str, **variables: str) -> str:
    """What the program prints in an environment with these variables."""
    environment = {**os.environ, **variables}
    return subprocess.run(
        [*COMMAND, *arguments], env=environment, check=True, capture_output=True, text=True
    ).stdout


@pytest.mark.parametrize(
    ("name", "line"),
    [
        ("bash", "complete -o default -F _setwright_completion setwright"),
        ("zsh", "compdef _setwright_completion setwright"),
        ("fish", "complete --command setwright --no-files"),
    ],
)
def test_show_completion_prints_the_script_of_a_shell(name: str, line: str) -> None:
    assert line in shell("--show-completion", name, **BY_NAME)


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("setwright ch", ["check"]),
        ("setwright re", ["read", "record", "review"]),
        ("setwright check --wa", ["--watch"]),
    ],
)
def test_bash_is_given_what_may_follow(typed: str, found: list[str]) -> None:
    last = str(len(typed.split()) - 1)
    told = shell(_SETWRIGHT_COMPLETE="complete_bash", COMP_WORDS=typed, COMP_CWORD=last)
    assert told.split() == found


def test_zsh_and_fish_are_given_the_command_with_what_it_does() -> None:
    typed = {"_TYPER_COMPLETE_ARGS": "setwright ch"}
    assert '("check":"' in shell(_SETWRIGHT_COMPLETE="complete_zsh", **typed)
    fish = shell(_SETWRIGHT_COMPLETE="complete_fish", _TYPER_COMPLETE_FISH_ACTION="get-args", **typed)
    assert fish.startswith("check")


@pytest.mark.skipif(shutil.which("bash") is None, reason="not run: no bash")
def test_the_tab_key_in_bash(tmp_path: Path) -> None:
    program = tmp_path / "setwright"
    program.write_text(f'#!{sys.executable}\nfrom setwright.cli import app\napp(prog_name="setwright")\n')
    program.chmod(0o755)
    script = f"{shell('--show-completion', 'bash', **BY_NAME)}\nCOMP_WORDS=(setwright ch)\nCOMP_CWORD=1\n"
    script += '_setwright_completion setwright\necho "${COMPREPLY[@]}"\n'
    on_path = {**os.environ, "PATH": f"{tmp_path}{os.pathsep}{os.environ['PATH']}"}
    done = subprocess.run(["bash", "-c", script], env=on_path, check=True, capture_output=True, text=True)
    assert done.stdout == "check\n"
