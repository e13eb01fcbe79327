"""What was done: a form to type it in, and keeping it."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from setwright.commands import shared

if TYPE_CHECKING:
    from setwright.model.plan import Session, Week

app = typer.Typer(rich_markup_mode=None)


@app.command(epilog="Example:  setwright record week-3.yaml --day Monday")
def record(
    file: shared.PlanFile,
    day: Annotated[
        str | None,
        typer.Option("--day", metavar="DAY", help="The session's day or name; needed for several."),
    ] = None,
    week: shared.Week = None,
    form: Annotated[
        Literal["yaml", "csv"], typer.Option("--format", help="A text file, or a table for a spreadsheet.")
    ] = "yaml",
    out: Annotated[
        Path | None, typer.Option(metavar="FORM", help="The file to write; - prints it. Never overwritten.")
    ] = None,
) -> None:
    """Write the form in which what was done is typed. Every athlete's lines stand in it as planned."""
    from setwright.records.form import HEAD, form_of
    from setwright.records.paper import as_yaml
    from setwright.report.wrapping import plain

    checked = shared.sound(file, "no form is written")
    of_week = checked.weeks[shared.week_of(len(checked.weeks), week, file) - 1].week
    session = _session(of_week, day, file)
    sheet = form_of(of_week, session)
    target = out or file.parent / f"{_form_name(of_week, session)}.{form}"
    if form == "csv":
        from setwright.records.table import as_csv

        text = as_csv(sheet)
    else:
        keep_it = f"Then: setwright keep {target.name if out is None else target}"
        text = as_yaml(sheet, (*HEAD, *([] if str(target) == "-" else [keep_it])))
    if str(target) == "-":
        typer.echo(text, nl=False)
        return
    shared.write_new(target, text, "what is typed in it would be lost")
    names = ", ".join(name for name, _ in sheet.athletes)
    typer.echo(plain(f"{target}  ({names or 'nobody has a line in it'})"))


def _session(week: "Week", day: str | None, file: Path) -> "Session":
    """The session that is asked for, or the end of the command."""
    from setwright.reading.nearest import choice
    from setwright.records.form import called as word_of

    if not week.sessions:
        shared.stop(f"{file}: there is no training in week {week.number}, so nothing to record")
    called = [one for one in week.sessions if day is None or one.is_called(day)]
    if len(called) == 1:
        return called[0]
    asked = f'"{day}" names {len(called) or "no"} session' if day else f"it has {len(called)} sessions"
    names = choice(f'"{word_of(week, one)}"' for one in week.sessions)
    return shared.stop(f"{file}: {asked}; say which one with --day {names}")


def _form_name(week: "Week", session: "Session") -> str:
    """The name of a form: the date of the session, or the week of a block, and what it is called."""
    from setwright.model.dates import session_date
    from setwright.records.form import called
    from setwright.records.keeping import slug

    date = session_date(week, session)
    when = f"{date}-" if date else f"week-{week.number}-" if week.of > 1 else ""
    return f"record-{when}{slug(called(week, session))}"


@app.command(epilog="Example:  setwright keep record-2027-11-15-monday.yaml")
def keep(
    form: Annotated[Path, typer.Argument(metavar="FORM", help="A form that was filled in (YAML or CSV).")],
    plan: Annotated[
        Path | None,
        typer.Option(metavar="FILE", help="The plan it is of; else the one of that name beside the form."),
    ] = None,
) -> None:
    """Check a form against its plan and keep it for good. It is kept in the folder record beside the plan.

    A kept record is never changed. To correct one, write `corrects:` and its name at the top of the form.

    Exit status: 0 kept, 1 something is to be mended first, 2 could not run.
    """
    from setwright.files import CannotRun, read_text
    from setwright.records.keeping import hold, plan_called, plan_of, read_form
    from setwright.records.store import KeptAlready
    from setwright.records.store import keep as store
    from setwright.report.kept import already, held_text, kept_text

    try:
        text = read_text(form)
        read = read_form(form, text)
        if read.record is None:
            typer.echo(held_text(str(form), read.record, read.findings, read.sources), nl=False)
            raise typer.Exit(1)
        found = plan_of(plan or plan_called(read.record.plan, form))
        held = hold(form, text, found)
        if held.findings:
            typer.echo(held_text(str(form), held.record, held.findings, held.sources), nl=False)
        if held.kept is None:
            shared.stop_with(1, f"{form} is not kept: mend what stands above and keep it again")
        assert held.fitted is not None
        if not held.fitted.is_written:
            shared.stop_with(1, f"{form} is not kept: nothing is written in it yet")
        try:
            path = store(found.folder, held.kept, held.text)
        except KeptAlready as before:
            told, fine = already(before.kept, found.folder, held.text, form)
            typer.echo(told) if fine else shared.stop(told)
        else:
            typer.echo(kept_text(path, held.fitted), nl=False)
    except CannotRun as error:
        shared.stop_for(error)


@app.command("next", epilog="Example:  setwright next week-3.yaml")
def next_(
    file: shared.PlanFile,
    week: shared.Week = None,
    missed: Annotated[bool, typer.Option("--missed", help="Nothing of the week was trained.")] = False,
    out: Annotated[
        Path | None, typer.Option(metavar="FILE", help="The file to write; never overwritten.")
    ] = None,
) -> None:
    """Write next week's plan from what was done. By the rules under `next:`, each change with its reason.

    Of a plan of several weeks it is the week after as a plan of its own; the block stays as it is.
    """
    from setwright.files import CannotRun
    from setwright.records.going_on import going_on
    from setwright.records.keeping import plan_of
    from setwright.records.last_time import with_last_time
    from setwright.records.next_week import next_week
    from setwright.report.next_week import changes_text

    checked = shared.sound(file, "no next week is written")
    number = shared.week_of(len(checked.weeks), week, file)
    try:
        plan = with_last_time(plan_of(file))
        going = going_on(plan, shared.plan_text(file), number, missed=missed)
        found = next_week(going)
    except CannotRun as error:
        shared.stop(str(error))
    for told in going.done.unread:
        shared.tell(f"{told}; it is left out")
    target = out or file.with_name(f"{going.coming.stem}{file.suffix}")
    squad = [(target.with_name(found.squad[0]), found.squad[1])] if found.squad else []
    files = [*([] if target.exists() else squad), (target, found.text)]
    for path, text in files:
        shared.write_new(path, text, "it may have been edited already")
    typer.echo(changes_text(found, going), nl=False)
    typer.echo("\n" + "\n".join(str(path) for path, _ in files))
