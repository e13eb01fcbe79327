"""Texts in 80 columns, safe for a terminal."""

import textwrap
from typing import Final

WIDTH: Final = 80
"""Columns of a line (choice: the narrowest terminal in use)."""

_TURNING: Final = (*range(0x202A, 0x202F), *range(0x2066, 0x206A))
"""Embeddings, overrides and isolates (Unicode Standard Annex 9): they make a line read as another one."""
_CONTROLS: Final = dict.fromkeys((*range(32), *range(127, 160), *_TURNING), "?") | {ord("\t"): " "}


def plain(text: str) -> str:
    """The text without control characters: no plan can move the cursor, colour the screen or turn a line."""
    return text.translate(_CONTROLS)


def wrapped(text: str, first: str = "", rest: str = "") -> str:
    """The text in lines of at most 80 columns, ``first`` before the first one, ``rest`` before the others."""
    return textwrap.fill(
        plain(text),
        WIDTH,
        initial_indent=first,
        subsequent_indent=rest,
        break_long_words=False,
        break_on_hyphens=False,
    )
