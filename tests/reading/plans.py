"""Whole plans around the fragments that text rules show."""

import textwrap

from setwright.model.reader import BlockRead
from setwright.own.plan import read_plan

FILES = {"squad.yaml": "squad: Hall\n", "gym.yaml": "gym: Hall\n"}


def whole_plan(fragment: str) -> str:
    """A plan that holds the fragment: a whole plan as it is, items of work, or keys of the top."""
    if fragment.startswith("plan:") or fragment == "gym: Hall":
        return fragment
    if fragment.lstrip().startswith(("-", "•")):
        return f"plan: A\nsides: each\nwork:\n{textwrap.indent(fragment, '  ')}\n"
    work = "" if fragment.startswith("sessions:") else "work:\n  - pull-up: 3 x 8\n"
    return f"plan: A\n{fragment}\n{work}"


def read(text: str, files: dict[str, str] = FILES) -> BlockRead:
    """The plan in ``text``, with ``files`` beside it."""
    return read_plan("week.yaml", text, files.get).read


def rules(text: str) -> list[str]:
    """The rules that the plan in ``text`` breaks, in the order they were found."""
    return [finding.rule for finding in read(text).findings]
