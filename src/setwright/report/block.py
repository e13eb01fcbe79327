"""A plan of several weeks at the head of a check: weeks that add up to the same, told together."""

from collections.abc import Iterator, Sequence

from setwright.checked import Checked, CheckedWeek
from setwright.findings import Finding
from setwright.reading.weeks import say_weeks
from setwright.report.across import across_the_weeks
from setwright.report.adds_up import aim, heads, in_force, matrix_text, note, sessions_and_minutes, sums
from setwright.report.wrapping import wrapped


def block_head(checked: Checked) -> Iterator[str]:
    """The plan, then one paragraph for all weeks that add up to the same."""
    weeks = checked.weeks
    first = weeks[0].week
    title = ", ".join(filter(None, (f"{first.name}: {len(weeks)} weeks", heads(first))))
    trained = [one for one in weeks if one.week.sessions]
    same_aim = len({one.aim for one in trained}) == 1
    yield "\n".join([wrapped(title), *([aim(trained[0])] if same_aim else []), *in_force(checked)])
    together: dict[str, list[CheckedWeek]] = {}
    for one in weeks:
        together.setdefault(_paragraph(one, checked.findings, with_aim=not same_aim), []).append(one)
    for paragraph, alike in together.items():
        yield "\n".join(filter(None, (wrapped(_heading(alike)), paragraph)))
    yield from across_the_weeks(checked)
    yield from note(weeks)


def _paragraph(one: CheckedWeek, findings: Sequence[Finding], *, with_aim: bool) -> str:
    if not one.week.sessions:
        return ""
    return "\n".join([*([aim(one)] if with_aim else []), matrix_text(one, findings), *sums(one)])


def _heading(alike: Sequence[CheckedWeek]) -> str:
    weeks = say_weeks([one.week.number for one in alike]).capitalize()
    how = {one.week.lighter.text for one in alike if one.week.lighter and one.week.sessions}
    less = f" ({'; '.join(sorted(how))})" if how else ""
    if not alike[0].week.sessions:
        return f"{weeks}: no training"
    return f"{weeks}{less}: {', '.join(sessions_and_minutes(alike))}"
