"""The command line: its commands in the order of a coach's work, and the version."""

from collections import UserDict
from importlib import import_module
from typing import Annotated, Any, Final

import typer
from typer.core import TyperGroup
from typer.main import get_group

MODULES: Final = {
    "new": "folders", "check": "checking", "read": "checking", "loads": "fitting", "swap": "fitting",
    "sheet": "sheets", "floor": "floor", "record": "records", "keep": "records", "next": "records",
    "review": "review", "move": "moves", "explain": "telling", "schema": "telling",
}  # fmt: skip
"""Command: its module in ``commands``, in the order of a coach's work."""


class Built(UserDict[str, Any]):
    """Each command by its name, imported and built when it is asked for: the others cost time."""

    def __getitem__(self, name: str) -> Any:
        module = import_module(f"setwright.commands.{self.data[name]}")
        return get_group(module.app).commands[name]


class OneOfMany(TyperGroup):
    """The commands of ``MODULES``."""

    def __init__(self, **settings: Any) -> None:
        super().__init__(**settings)
        self.commands = Built(MODULES)


app = typer.Typer(
    cls=OneOfMany,
    name="setwright",
    help="Check a strength week against the anatomy and print its sheets.",
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
)


def _version(wanted: bool) -> None:
    if wanted:
        from setwright import __version__

        typer.echo(f"setwright {__version__}")
        raise typer.Exit


@app.callback()
def setwright(
    version: Annotated[
        bool, typer.Option("--version", callback=_version, is_eager=True, help="Print the version and leave.")
    ] = False,
) -> None:
    """Check a strength week against the anatomy and print its sheets."""


def main() -> None:
    """Run the command line without collecting garbage: a command is over before it would matter.

    What it leaves is frozen, or the interpreter would look through all of it on its way out.
    """
    import gc

    gc.disable()
    try:
        app()
    finally:
        gc.freeze()
