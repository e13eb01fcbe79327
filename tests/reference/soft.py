"""Orders that studies found and the model does not hold firmly, or contradicts: printed, never failed.

``python -m tests.reference.soft``. What a study measured is electromyography; each says how it was read.
"""

from typing import Final, NamedTuple

from tests.reference.model import work

TIE: Final = 10.0
"""Points of work below which two movements are alike."""


class Order(NamedTuple):
    """One part has more in ``more`` than in ``less``, by ``study``."""

    part: str
    more: str
    less: str
    study: str


BENCH: Final = {
    angle: f"{angle}-barbell-bench-press" for angle in ("decline-15", "flat", "incline-30", "incline-45")
}
TREBS: Final = "Trebs 2010 (abstract): clavicular head 44 > 0 deg"
LAUVER: Final = "Lauver 2016 (abstract): upper portion 30, 45 > 0, -15 deg, second quarter of the lift only"
RIDAO: Final = "Rodriguez-Ridao 2020 (abstract): upper portion most at 30 deg"
CORATELLA: Final = "Coratella 2020 (second hand): front deltoid least on the decline"
BARNETT: Final = "Barnett 1995 (mirror of the abstract): flat > decline"
CAMPOS: Final = "Campos 2014 (abstract): bench > pull-over"
SCHANKE: Final = "Schanke 2012 (abstract): crossover 93 % of the bench, not different"
COGLEY: Final = "Cogley 2005 (abstract): narrow > wide push-up"
MAUSEHUND: Final = "Mausehund 2022 (abstract): narrower grip more clavicular"

ORDERS: Final = (
    Order("clavicular", BENCH["incline-45"], BENCH["flat"], TREBS),
    Order("clavicular", BENCH["incline-30"], BENCH["decline-15"], LAUVER),
    Order("clavicular", BENCH["incline-45"], BENCH["decline-15"], LAUVER),
    Order("clavicular", BENCH["incline-30"], BENCH["incline-45"], RIDAO),
    Order("deltoid_anterior", BENCH["flat"], BENCH["decline-15"], CORATELLA),
    Order("sternal", BENCH["flat"], BENCH["decline-15"], BARNETT),
    Order("sternal", BENCH["flat"], "dumbbell-pullover", CAMPOS),
    Order("costal", BENCH["flat"], "dumbbell-pullover", CAMPOS),
    Order("sternal", BENCH["flat"], "level-cable-crossover", SCHANKE),
    Order("sternal", "narrow-push-up", "wide-push-up", COGLEY),
    Order("clavicular", "close-grip-barbell-bench-press", BENCH["flat"], MAUSEHUND),
)


def verdict(order: Order) -> str:
    """Holds, ties or contradicts, with both figures."""
    more, less = work(order.more, order.part), work(order.less, order.part)
    word = "tie" if abs(more - less) < TIE else "holds" if more > less else "CONTRADICTS"
    return f"{word:<11} {order.part}: {order.more} {more:.0f}, {order.less} {less:.0f}. {order.study}"


if __name__ == "__main__":
    for one in ORDERS:
        print(verdict(one))
