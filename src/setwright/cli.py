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


PLAINLY: Final = (
    ("Value error, ", ""),
    ("Input should be a valid integer, unable to parse string as an integer", "it takes a whole number"),
    ("Input should be greater than or equal to", "the least it takes is"),
)
"""What a library says of a value on the command line, and what that is in words for a coach."""


class OneOfMany(TyperGroup):
    """The commands of ``MODULES``."""

    def __init__(self, **settings: Any) -> None:
        super().__init__(**settings)
        self.commands = Built(MODULES)

    def resolve_command(self, ctx: Any, args: list[str]) -> Any:
        """The command that is named; a file in its place is answered with the line to type."""
        if args[0] not in MODULES and args[0].endswith((".yaml", ".yml")):
            ctx.fail(f"a command comes first: setwright check {args[0]}")
        return super().resolve_command(ctx, args)

    def invoke(self, ctx: Any) -> Any:
        """The command run; what is wrong with a value is said plainly."""
        try:
            return super().invoke(ctx)
        except typer.BadParameter as wrong:
            for words, plain in PLAINLY:
                wrong.message = wrong.message.replace(words, plain)
            raise


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
