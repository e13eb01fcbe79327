"""Movements explained and compared."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from setwright.commands import shared

if TYPE_CHECKING:
    from setwright.own.plan import Sized

app = typer.Typer(rich_markup_mode=None)


def _movements(plan: Path | None, athlete: str | None) -> "Sized":
    """The library, with a plan's own movements and at the size of one of its athletes."""
    from functools import partial

    from setwright.files import read_beside
    from setwright.library.table import library
    from setwright.model.reader import read_block
    from setwright.own.body import NoSuchBody
    from setwright.own.plan import NotToSize, Sized, sized_library

    if plan is None:
        if athlete is not None:
            shared.stop("--for needs --plan and the plan that the athlete is in")
        return Sized(library(), 1.0, ())
    read = read_block(str(plan), shared.plan_text(plan), partial(read_beside, plan))
    try:
        return sized_library(read, athlete)
    except (NotToSize, NoSuchBody) as stop:
        shared.stop(str(stop))


def _keys(names: list[str], movements: "Sized") -> list[str]:
    """The keys of movements; words that only name one together, for want of quotes, are that one."""
    found = [movements.table.find(name).key for name in names]
    whole = movements.table.find(" ".join(names)).key if None in found else None
    return [whole] if whole else [_key(name, movements) for name in names]


def _key(name: str, movements: "Sized") -> str:
    """The key of a movement, or the end of the command."""
    from setwright.report.move import not_found

    match = movements.table.find(name)
    if name in movements.unread:
        shared.stop(f"{name} can't be read as written; `setwright check` and the plan say why")
    if match.key is None:
        shared.stop(not_found(name, match))
    return match.key


@app.command(epilog='Example:  setwright move "flat barbell bench press" "level cable crossover"')
def move(
    names: Annotated[
        list[str] | None, typer.Argument(metavar="[NAME]...", help="Movements; none lists them all.")
    ] = None,
    form: shared.TextOrJson = "text",
    picture: Annotated[
        Path | None, typer.Option(metavar="FILE.svg", help="Also draw the movement's picture into this file.")
    ] = None,
    plan: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Know the movements of this plan's own too.")
    ] = None,
    athlete: Annotated[
        str | None, typer.Option("--for", metavar="NAME", help="Figures for this athlete of the plan.")
    ] = None,
) -> None:
    """Explain one movement, compare several, or list them all."""
    from setwright.files import CannotRun, write_whole
    from setwright.report import move as moves

    movements = _movements(plan, athlete)
    table = movements.table
    keys = _keys(names or [], movements)
    if picture is not None:
        if len(keys) != 1:
            shared.stop("--picture draws one movement: name one")
        if table.movement(keys[0]).get("own"):
            shared.stop("--picture draws movements of the library, not those of a plan's own")
        from setwright.sheets.figures import NoPicture, movement_picture_svg

        try:
            write_whole(picture, movement_picture_svg(keys[0]))
        except (CannotRun, NoPicture) as stop:
            shared.stop(str(stop))
    chosen = [movements.movement(key) for key in keys or table.keys()]
    if form == "json":
        typer.echo(moves.move_json(chosen), nl=False)
    elif keys:
        typer.echo(moves.move_text(chosen), nl=False)
        if athlete is not None:
            typer.echo(moves.sized_for(athlete, movements.factor), nl=False)
    else:
        typer.echo(moves.list_text(chosen), nl=False)
