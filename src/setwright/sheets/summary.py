"""The half-minute summary as a sheet: the answers of ``glance`` in the type of paper."""

from setwright.checked import Checked
from setwright.glance import glance
from setwright.sheets import words
from setwright.sheets.view import SummarySheet


def summary_sheet(checked: Checked, mark: str) -> SummarySheet:
    """What stands on the summary of a week; ``mark``: version and print date for the footer."""
    told = glance(checked)
    assert checked.week is not None
    return SummarySheet(
        title=told.title,
        aim=told.aim,
        footer=words.footer(checked.week, mark),
        note=told.note,
        answers=tuple(
            (answer.question, tuple(words.typeset(line) for line in answer.lines)) for answer in told.answers
        ),
    )
