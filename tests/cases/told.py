"""What check tells of a plan, each finding at the words it points at."""

from setwright.checked import Checked


def told(one: Checked) -> list[tuple[str, str]]:
    """The rule of every finding, and the line of the plan under which it is printed."""
    lines = one.sources[one.file].text.splitlines()
    return [(finding.rule, lines[finding.place.line - 1].strip()) for finding in one.findings]


def told_by_week(one: Checked) -> list[tuple[str, str, tuple[int, ...]]]:
    """The same of a block, with the weeks of each finding."""
    weeks = (finding.weeks for finding in one.findings)
    return [(rule, line, weeks) for (rule, line), weeks in zip(told(one), weeks, strict=True)]
