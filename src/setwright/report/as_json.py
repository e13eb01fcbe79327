"""JSON as it is printed: letters of every script as they are, signs that a terminal obeys as escapes."""

import json
from typing import Any


def as_json(data: Any) -> str:
    r"""The data as JSON on several lines, with a line end.

    >>> print(as_json(["Isla", "\x9b31m"]), end="")
    [
      "Isla",
      "\u009b31m"
    ]

    Raises: ValueError for what is no number.
    """
    text = json.dumps(data, indent=2, ensure_ascii=False, allow_nan=False)
    return "\n".join(map(_shown, text.split("\n"))) + "\n"


def _shown(line: str) -> str:
    if line.isprintable():
        return line
    return "".join(sign if sign.isprintable() else json.dumps(sign)[1:-1] for sign in line)
