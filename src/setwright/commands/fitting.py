"""A plan fitted to its athletes and its gym: loads worked out, movements swapped."""

from typing import Annotated

import typer

from setwright.commands import shared

app = typer.Typer(rich_markup_mode=None)


@app.command(epilog="Example:  setwright loads week-3.yaml --for juniors")
def loads(
    file: shared.PlanFile,
    week: shared.Week = None,
    who: Annotated[
        str | None, typer.Option("--for", metavar="NAME", help="Of this athlete or group of the squad alone.")
    ] = None,
    form: shared.TextOrJson = "text",
) -> None:
    """Work out what each athlete puts on, plate by plate. Said too: what was asked, and how far off it is.

    Names stand in it: it is for the coach. Exit status: 0 every load is there, 1 one is not or needs a max,
    2 could not run.
    """
    from setwright.report.loads_view import loads_of, members

    checked = shared.checked(file, only_plans=True)
    number = shared.week_of(len(checked.weeks), week, file)
    checked = checked.only(number) if checked.weeks else checked
    if checked.week is None or checked.table is None:
        shared.stop(f"nothing of {file} could be read; `setwright check {file}` says why")
    names = None if who is None else members(checked.week, who)
    if names is not None and not names:
        shared.stop(f"nobody in the squad of {file} is called {who}")
    days = loads_of(checked.weeks[0], checked.table, names)
    if form == "json":
        from setwright.report.loads_json import loads_json

        typer.echo(loads_json(checked.week, days), nl=False)
    else:
        from setwright.report.loads import loads_text

        typer.echo(loads_text(checked, checked.week, days), nl=False)
    raise typer.Exit(any(row.missing for day in days for line in day.lines for row in line.rows))


@app.command(epilog="Example:  setwright swap week-3.yaml")
def swap(
    file: shared.PlanFile,
    athlete: Annotated[
        str | None,
        typer.Option("--for", metavar="NAME", help="What one athlete does instead, inside their limits."),
    ] = None,
    week: shared.Week = None,
) -> None:
    """Propose the fewest changes that close the open gaps. Prints the lines to type and edits nothing.

    Of a plan of several weeks the first with an open gap is taken, unless --week names one.

    Exit status: 0 nothing stays open, 1 something does, 2 could not run.
    """
    from functools import partial

    from setwright.files import read_beside
    from setwright.report.swap import swap_text
    from setwright.report.swap_for import swap_for_text
    from setwright.swapping.instead import propose_for
    from setwright.swapping.proposal import NotToSwap, open_week, propose

    checked = shared.checked(file, only_plans=True)
    first = open_week(checked, against_one=athlete is not None)
    number = first if week is None else shared.week_of(len(checked.weeks), week, file)
    try:
        if athlete is not None:
            one = propose_for(checked, athlete, number)
            text, left = swap_for_text(one), any(line.movement is None for line in one.lines)
        else:
            proposal = propose(checked, partial(read_beside, file), number)
            text, left = swap_text(proposal), bool(proposal.found.left)
    except NotToSwap as stop:
        shared.stop(str(stop))
    typer.echo(text, nl=False)
    raise typer.Exit(int(left))
