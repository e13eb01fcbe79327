"""Texts to copy, as whole lines: a piece that is proposed is put where the unclear one stood."""

import re
from collections.abc import Callable, Iterator

_PIECE = re.compile(r'"([^"]+)"')
_TIMES = re.compile(r"(\d)\s*x$", re.IGNORECASE)
_LEADS = re.compile(r"(?:(?:\b(?:at|with|rest|tempo|rpe|rir|borg)\b|@)\s*)+$", re.IGNORECASE)


def whole_lines(change: str, line: str, span: tuple[int, int], reads: Callable[[str], bool]) -> str:
    """``change`` with every quoted piece that is no line by itself made one, if ``line`` can then be read.

    ``span``: what the piece stands for, in characters of ``line``. ``reads``: whether a text can be read.

    >>> whole_lines('Write "rest 2:00"', "4 x 8, 2:00", (7, 11), lambda text: text.startswith("4 x 8"))
    'Write "4 x 8, rest 2:00"'
    """

    def line_of(match: re.Match[str]) -> str:
        readable = next(filter(reads, _ways(match[1], line, span)), match[1])
        return f'"{readable}"'

    return _PIECE.sub(line_of, change)


def _ways(piece: str, line: str, span: tuple[int, int]) -> Iterator[str]:
    """In its place, in its place without the word that leads there, by itself, as the only set."""
    before, after = _TIMES.sub(r"\1 x ", line[: span[0]]), line[span[1] :]
    if not before.rstrip().endswith("@"):
        yield f"{before}{piece}{after}"
    yield f"{_LEADS.sub('', before)}{piece}{after}"
    yield piece
    if not before + after:
        yield f"1 x {piece}"
