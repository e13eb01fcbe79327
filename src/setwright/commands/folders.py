"""A new folder: a starter week, or a block used again."""

from pathlib import Path
from typing import Annotated

import typer

from setwright.commands import shared

app = typer.Typer(rich_markup_mode=None)


@app.command(epilog="Example:  setwright new spring-block --from block.yaml --squad squad.yaml")
def new(
    folder: Annotated[Path, typer.Argument(metavar="FOLDER", help="A folder to make, or an empty one.")],
    block: Annotated[
        Path | None, typer.Option("--from", metavar="PLAN", help="Use this plan again, without its people.")
    ] = None,
    squad: Annotated[
        Path | None, typer.Option(metavar="FILE", help="The squad file of the new people.")
    ] = None,
) -> None:
    """Start a folder, or use a block again. A week, a squad and a gym to change, each key explained."""
    from setwright.files import CannotRun, read_text
    from setwright.report.wrapping import wrapped
    from setwright.starting.starter import SQUAD, WHO_MAY_READ, starter_files, taken

    names, said = starter_files(), list[str]()
    try:
        if block is not None:
            names, said = _again(block)
        if squad is not None:
            names[SQUAD] = read_text(squad)
    except CannotRun as error:
        shared.stop(str(error))
    if there := taken(folder, names):
        shared.stop(
            f"{folder} has {', '.join(there)} already, and nothing is written over; name another folder"
        )
    for name, text in names.items():
        shared.write_new(folder / name, text, "somebody wrote it meanwhile")
        typer.echo(folder / name)
    for line in said:
        typer.echo(line)
    typer.echo(wrapped(WHO_MAY_READ))


def _again(block: Path) -> tuple[dict[str, str], list[str]]:
    """The files of a block used again, and what is said of it. Raises: CannotRun."""
    from functools import partial

    from setwright.files import CannotRun, read_beside
    from setwright.model.reader import read_block
    from setwright.report.wrapping import wrapped
    from setwright.starting.again import goes_along, used_again
    from setwright.starting.starter import NOT_SHARED, SQUAD, starter_files

    text = shared.plan_text(block)
    beside = partial(read_beside, block)
    read = read_block(str(block), text, beside)
    if not read.complete or read.week is None:
        raise CannotRun(f"{block} has errors; `setwright check {block}` says which")
    again = used_again(str(block), text, read.week.squad)
    starter = starter_files()
    names = {block.name: again.text, SQUAD: starter[SQUAD]}
    gone = [one.words for one in again.gone]
    for name in again.beside:
        along = goes_along(name, beside(name) or "", read.week.squad)
        names[name] = along.text
        gone += [f"{name}, {one.words}" for one in along.gone]
    said = [wrapped(f"left out: {'; '.join(gone)}", rest="  ")] if gone else []
    said.append("Loads that stand in the lines went along: look at each before others lift them.")
    return names | {NOT_SHARED: starter[NOT_SHARED]}, said
