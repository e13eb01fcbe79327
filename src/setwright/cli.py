"""The command line: its commands in the order of a coach's work, and the version."""

from typing import Annotated

import typer

from setwright.commands import checking, fitting, floor, folders, moves, records, review, sheets, telling

app = typer.Typer(
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


for commands in (folders, checking, fitting, sheets, floor, records, review, moves, telling):
    app.add_typer(commands.app)


def main() -> None:
    """Run the command line, without collecting garbage: a command is over before it would matter."""
    import gc

    gc.disable()
    app()
