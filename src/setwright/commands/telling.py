"""What the rules and the sources say, and the schema for editors."""

from pathlib import Path
from typing import Annotated, Literal

import typer

from setwright.commands import shared

app = typer.Typer(rich_markup_mode=None)


@app.command(epilog="Example:  setwright explain heavy-line-not-finished")
def explain(
    rule: Annotated[
        str | None,
        typer.Argument(
            metavar="[RULE|sources|cautions]", help="A rule's id, sources or cautions; none lists the rules."
        ),
    ] = None,
) -> None:
    """Say what a rule looks at, and on whose word. Or every source, or the cautions."""
    from setwright.report.explain import explain as told

    text, known = told(rule)
    if not known:
        shared.stop(text)
    typer.echo(text, nl=False)


@app.command(epilog="Example:  setwright schema plan --out plan.schema.json")
def schema(
    kind: Annotated[
        Literal["plan", "squad", "gym", "record"],
        typer.Argument(metavar="KIND", help="The kind of file: plan, squad, gym or record."),
    ],
    out: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Write it into this file instead of printing it.")
    ] = None,
) -> None:
    """Print the JSON Schema for an editor. With it one completes and explains words: docs/editor.md."""
    from setwright.files import CannotRun, write_whole
    from setwright.schema import schema_text

    text = schema_text(kind)
    if out is None:
        typer.echo(text, nl=False)
        return
    try:
        write_whole(out, text)
    except CannotRun as stop:
        shared.stop(str(stop))
    typer.echo(f"{out}  (first line of a {kind} beside it: # yaml-language-server: $schema={out.name})")
