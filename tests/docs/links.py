"""Links of a Markdown page and the headings they may lead to."""

import re
from pathlib import Path

from tests.docs.console import FENCE

LINK = re.compile(r"\[(?:[^\[\]]|\[[^\]]*\])*\]\(([^)\s]+)\)")
HEADING = re.compile(r"^#{1,6} (.+)$", re.MULTILINE)
NAMED = re.compile(r"`((?:src|tests|docs|examples)/[\w./-]+)`")


def links(page: Path) -> list[tuple[str, str]]:
    """Every link and picture that stays in the project: the file, "" for the page itself, and the anchor."""
    found = (target.partition("#") for target in LINK.findall(page.read_text(encoding="utf-8")))
    return [(file, anchor) for file, _, anchor in found if not file.startswith(("http:", "https:"))]


def anchors(page: Path) -> set[str]:
    """What the headings of a page are called in links, as the code hosts make it.

    Source: the documentation of GitHub, "Section links": small letters, blanks become hyphens, other white
    space and punctuation is taken out; a second heading of one name gets -1.
    """
    found: set[str] = set()
    for heading in HEADING.findall(FENCE.sub("", page.read_text(encoding="utf-8"))):
        shown = re.sub(r"\[([^\]]*)\]\([^)]*\)", r"\1", heading)
        name = re.sub(r"[^\w -]", "", shown.lower()).replace(" ", "-")
        again = 0
        while (unique := f"{name}-{again}" if again else name) in found:
            again += 1
        found.add(unique)
    return found


def named(page: Path) -> list[str]:
    """The places of the project that a page names between backticks."""
    return NAMED.findall(page.read_text(encoding="utf-8"))
