"""Rows of the library with one thing changed, for chains of movements."""

from typing import Any

from setwright.engine.movement import scored_fields
from setwright.library.rows import Row, load_rows

ROWS = {row.key: row for row in load_rows()}
SCORED = [row for row in load_rows() if row.path is not None]


def changed(key: str, **changes: Any) -> Row:
    """A row whose path is copied with fields replaced."""
    row = ROWS[key]
    assert row.path is not None
    return row.model_copy(update={"path": row.path.model_copy(update=changes)})


def with_pulley(key: str, height: float) -> Row:
    """A row whose pulley stands at this height beside the notch, metres."""
    row = ROWS[key]
    assert row.path is not None
    point = row.path.force.point_m
    assert point is not None
    force = row.path.force.model_copy(update={"point_m": (point[0], height, point[2])})
    return changed(key, force=force)


def figures(*rows: Row | str) -> list[dict[str, Any]]:
    """Scored fields of rows, or of library movements named by key."""
    return scored_fields([ROWS[row] if isinstance(row, str) else row for row in rows])


def of_part(fields: list[dict[str, Any]], part: str, figure: str) -> list[float]:
    """One figure of one part, movement by movement."""
    return [one["parts"][part][figure] for one in fields]
