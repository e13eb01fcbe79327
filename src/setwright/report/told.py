"""The report on a week on the screen."""

from setwright.records.told import Told
from setwright.report.wrapping import wrapped


def told_text(told: Told) -> str:
    """The whole report in 80 columns, with a line end."""
    blocks = [f"{wrapped(told.title)}\n{wrapped(told.about)}"]
    for section in told.sections:
        lines = [wrapped(section.head), *(wrapped(line, "  ", "    ") for line in section.lines)]
        blocks.append("\n".join(lines))
    blocks += [wrapped(told.form.last)] if told.form.last else []
    return "\n\n".join(blocks) + "\n"
