"""A failing input made small: lines taken out as long as it still fails in the same way."""

from collections.abc import Callable

from tests.fuzz.seeds import Input

Fault = Callable[[Input], str | None]


def shrunk(one: Input, fault: Fault) -> Input:
    """The smallest input found that fails with the same kind of fault; ``one`` must fail."""
    kind = kind_of(fault(one))
    for field in Input._fields:
        for candidate in (b"", _shorter(one, field, fault, kind)):
            smaller = one._replace(**{field: candidate})
            if kind_of(fault(smaller)) == kind:
                one = smaller
                break
    return one


def _shorter(one: Input, field: str, fault: Fault, kind: str) -> bytes:
    """One file of the input without the lines that the fault does not need, in ever smaller blocks."""
    rows = getattr(one, field).splitlines(keepends=True)
    size = len(rows)
    while size := size // 2:
        at = 0
        while at < len(rows):
            fewer = [*rows[:at], *rows[at + size :]]
            if kind_of(fault(one._replace(**{field: b"".join(fewer)}))) == kind:
                rows = fewer
            else:
                at += size
    return b"".join(rows)


def kind_of(said: str | None) -> str:
    """The part of a fault that stays the same when the text gets shorter."""
    return "" if said is None else said.partition(":")[0].partition(",")[0]
