"""The table of commands, and that a command loads no other's module."""

import os
import subprocess
import sys
from importlib import import_module

import pytest
from typer.main import get_group
from typer.testing import CliRunner

from setwright.cli import MODULES, app

RUN = "from setwright.cli import main; main()"
LOADED = f"""
import sys
try:
    {RUN}
finally:
    print(*(name for name in sys.modules if name.startswith("setwright.commands.")), file=sys.stderr)
"""


@pytest.mark.parametrize("module", sorted(set(MODULES.values())))
def test_the_table_names_each_command_of_a_module(module: str) -> None:
    commands = get_group(import_module(f"setwright.commands.{module}").app).commands
    assert list(commands) == [name for name, its in MODULES.items() if its == module]


def test_help_lists_every_command_in_the_order_of_the_table() -> None:
    _, listed = CliRunner().invoke(app, ["--help"]).output.split("Commands:\n")
    assert [line.split()[0] for line in listed.splitlines()] == list(MODULES)


def test_a_command_typed_wrong_is_proposed() -> None:
    result = CliRunner().invoke(app, ["chek"])
    assert result.exit_code == 2
    assert "No such command 'chek'. Did you mean 'check'" in result.output


def test_a_command_loads_its_own_module_alone() -> None:
    arguments = [sys.executable, "-c", LOADED, "explain", "half-a-pair"]
    loaded = subprocess.run(arguments, capture_output=True, text=True, check=True).stderr.split()
    assert set(loaded) == {"setwright.commands.shared", "setwright.commands.telling"}


def test_the_shell_completes_commands() -> None:
    def completed(words: str) -> list[str]:
        asked = {"_SETWRIGHT_COMPLETE": "complete_bash", "COMP_WORDS": words, "COMP_CWORD": "1"}
        code = (
            "import sys; sys.argv[0] = 'setwright'; from setwright.cli import app; app(prog_name='setwright')"
        )
        told = subprocess.run(
            [sys.executable, "-c", code], capture_output=True, text=True, check=False, env=os.environ | asked
        )
        return told.stdout.split()

    assert completed("setwright re") == ["read", "record", "review"]
    assert "explain" in completed("setwright ")
