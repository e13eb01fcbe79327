"""The coach's own mark, said back."""

from setwright.model.stationery import Stationery
from setwright.report.read_paper import on_paper
from tests.pages.plans import NO_CHEST, check


def test_what_is_as_usual_is_not_said() -> None:
    assert list(on_paper(Stationery())) == []


def test_every_key_is_said_back() -> None:
    paper = Stationery(title="Room two", logo="crest.svg", footer="open from six", decimals="comma")
    said = "title Room two, logo crest.svg, footer open from six, dates day first, decimal comma"
    assert list(on_paper(paper)) == [f"on every sheet: {said}"]
    assert list(on_paper(Stationery(dates="numbers"))) == ["on every sheet: dates numbers, decimal point"]


def test_keys_of_paper_that_are_none_are_said() -> None:
    plan = "plan: A\nsquad:\n  athletes: [Isla]\n  paper: nice\n" + NO_CHEST.split("\n", 1)[1]
    (wrong,) = [f for f in check(plan).findings if "`title:`" in f.message]
    assert wrong.message == "`title:`, `logo:` or `footer:` with its text is expected here"
    assert wrong.change == "write one key with its value a line, two blanks further in"
