"""Plans proposed for, and what a coach sees."""

from setwright.checked import Checked
from setwright.coverage import Movement
from setwright.library.names import fold
from setwright.library.table import Library, library
from setwright.report.swap import swap_text
from setwright.rules.means import means
from setwright.swapping.paste import pasted
from setwright.swapping.proposal import Proposal, propose
from setwright.swapping.state import Judge
from tests.rules.plans import EXAMPLES, beside_the_example, checked, nothing_beside

GOOD = (EXAMPLES / "week-good.yaml").read_text(encoding="utf-8")
FLAWED = (EXAMPLES / "week-flawed.yaml").read_text(encoding="utf-8")


def proposed(text: str, *, crew: bool = False) -> Proposal:
    """What is proposed for a plan; ``crew``: with the example's squad and gym beside it."""
    beside = beside_the_example if crew else nothing_beside
    return propose(checked(text, beside), beside)


def typed_in(text: str, proposal: Proposal) -> str:
    """The plan with the proposed lines typed."""
    assert proposal.edits
    return pasted(text, proposal.edits)


def judge_of(one: Checked, table: Library | None = None) -> Judge:
    assert one.week is not None
    return Judge(means(one.week, table), table or library())


def screen(text: str) -> str:
    return swap_text(proposed(text))


def movement(key: str) -> Movement:
    return library().movement(key)


def narrow(*keys: str) -> Library:
    """A library of a few movements under their own names."""
    return Library(
        {
            "movements": {key: movement(key) for key in keys},
            "names": {fold(str(movement(key)["name"])): key for key in keys},
            "ambiguous": {},
        }
    )
