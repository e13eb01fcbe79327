"""The coach's own mark on the sheets, said back."""

from collections.abc import Iterator

from setwright.model.stationery import Stationery


def on_paper(paper: Stationery) -> Iterator[str]:
    """What stands on every sheet, dates and numbers there; nothing where all is as usual."""
    marks = (("title", paper.title), ("logo", paper.logo), ("footer", paper.footer))
    told = [f"{word} {said}" for word, said in marks if said]
    if paper != Stationery():
        yield "on every sheet: " + ", ".join((*told, f"dates {paper.dates}", f"decimal {paper.decimals}"))
