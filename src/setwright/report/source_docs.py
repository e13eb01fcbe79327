"""docs/sources.md and docs/cautions.md, written from the data: cited works, and what is not decided."""

from collections.abc import Iterable
from typing import Final

from setwright.report.explain import bibliography, cautions_text
from setwright.report.wrapping import wrapped
from setwright.rules import EVERY_RULE

HEAD: Final = """\
# Sources

Written from `data/sources.json`; `setwright explain sources` prints the same works and the notice of the
data that is shipped. "Second hand" is a work that was read only where others quote it, "mirror" a copy that
stands elsewhere than at its publisher's. What has no source says so at the number: `setwright explain RULE`.
"""


def sources_page() -> str:
    """The page in Markdown, one heading a work, so that a rule's page links to it by its key."""
    return "\n".join((HEAD, *(_work(key) for key in bibliography())))


def cautions_page() -> str:
    """The cautions in Markdown, as `setwright explain cautions` prints them, with a link."""
    return cautions_text().replace("docs/engine.md", "[engine.md](engine.md)")


def linked(keys: Iterable[str]) -> str:
    """Links from a rule's page to these works."""
    return ", ".join(f"[{key}](../sources.md#{key})" for key in keys)


def _work(key: str) -> str:
    work = bibliography()[key]
    rules = ", ".join(f"[{rule.id}](rules/{rule.id}.md)" for rule in EVERY_RULE if key in rule.sources)
    told = (
        f"Read: {work['read_via']} ({work['where_read']}).",
        f"Taken: {work['taken']}.",
        f"Rules that lean on it: {rules or 'none'}.",
    )
    lines = "\n".join(wrapped(line, "- ", "  ") for line in told)
    return f"## {key}\n\n{wrapped(work['cite'])}.\n\n{lines}\n"
