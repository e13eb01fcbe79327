"""Typed rows of ``data/movements.yaml``, the file that people edit.

Only ``catalogue`` and the engine read rows; everything else reads the compiled library through
``table``. Frames: the thorax frame (ISB), right arm: X forward, Y up, Z right, origin at the
suprasternal notch, metres and degrees.
"""

from functools import cache
from math import dist, isclose
from pathlib import Path as FilePath
from typing import Annotated, Any, Final, Literal, Self

import yaml
from pydantic import AfterValidator, BaseModel, ConfigDict, Field, ValidationError, model_validator

from setwright.library.closed import (
    Banned,
    ForceKind,
    Hands,
    Implement,
    LoadClass,
    LoadKind,
    Muscle,
    Pattern,
    ScoredBy,
    Sides,
)

MOVEMENTS_FILE: Final = FilePath(__file__).parents[1] / "data" / "movements.yaml"

UNIT_TOLERANCE: Final = 0.02
"""How far the length of a written direction may lie from 1; choice: the file writes two decimals."""

Vector = tuple[float, float, float]


def _unit(vector: Vector) -> Vector:
    if not isclose(dist(vector, (0, 0, 0)), 1, abs_tol=UNIT_TOLERANCE):
        raise ValueError(f"{list(vector)} is not a direction of length 1")
    return vector


Direction = Annotated[Vector, AfterValidator(_unit)]
Angle = Annotated[float, Field(ge=-180, le=180)]
Girdle = Annotated[float, Field(ge=-30, le=30)]
Share = Annotated[float, Field(gt=0, le=1)]
Slug = Annotated[str, Field(pattern=r"^[a-z0-9]+(-[a-z0-9]+)*$")]
Text = Annotated[str, Field(min_length=1)]


class RowError(ValueError):
    """A row of movements.yaml that can't be read; the text names the row, the field and the value."""


class _Strict(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class Station(_Strict):
    """What a movement needs: station words, bench angle (deg, negative = decline), pulley height."""

    needs: tuple[Text, ...]
    bench_deg: float | None = None
    pulley_height: str | None = None


class Load(_Strict):
    """What number a coach writes, and the share of body mass at the hands where one was measured."""

    kind: LoadKind
    write: Text
    note: str | None = None
    body_share: Share | dict[str, Share] | None = None
    share_source: str | None = None


class Loading(_Strict):
    """Heaviest class of the movement, by equipment, and why."""

    load_class: LoadClass = Field(alias="class")
    why: Text


class LoadRatio(_Strict):
    """Load here divided by the load of movement ``to``, with its source."""

    to: Slug
    value: Annotated[float, Field(gt=0, lt=3)]
    source: Text


class Muscles(_Strict):
    """Muscles trained; for engine-scored rows all but pectoralis major, which the engine scores."""

    prime: tuple[Muscle, ...]
    assist: tuple[Muscle, ...] = ()


class Torso(_Strict):
    """Posture of the trunk. ``recline_deg``: turned back from upright (90 supine, negative = forward)."""

    posture: Text
    recline_deg: Angle


class Force(_Strict):
    """Direction of the load on the right hand.

    ``side_share`` s adds (0, 0, s) to the unit vector of ``kind`` before it is normalised (+ pushes
    the right hand outward). ``point_m``: pulley, anchor or floor pivot.
    """

    kind: ForceKind
    side_share: Annotated[float, Field(ge=-1, le=1)] = 0.0
    point_m: Vector | None = None
    point_words: str | None = None

    @model_validator(mode="after")
    def _point_where_needed(self) -> Self:
        if (self.point_m is not None) != (self.kind in {"toward point", "pivoting bar"}):
            raise ValueError("point_m belongs to 'toward point' and 'pivoting bar', and to no other kind")
        return self


class _Posture(_Strict):
    at: Text
    protraction_deg: Girdle
    recline_deg: Angle | None = None


class HandKey(_Posture):
    """A posture given by the grip centre and the side on which the elbow lies (need not be perpendicular)."""

    hand_m: Vector
    swivel: Direction


class ElbowKey(_Posture):
    """A posture given by the upper arm (plane p, elevation e) and the unit direction from elbow to hand."""

    plane_elevation_deg: tuple[Angle, Annotated[float, Field(ge=0, le=180)]]
    forearm: Direction


class _Path(_Strict):
    torso: Torso
    force: Force

    def recline_deg(self, key: _Posture) -> float:
        """Recline at one key, degrees: the key's own, else the torso's."""
        return self.torso.recline_deg if key.recline_deg is None else key.recline_deg


class HandPath(_Path):
    """Arm path given by the hand; keys in lifting order, equal steps of the path parameter between them."""

    given: Literal["hand"]
    keys: Annotated[tuple[HandKey, ...], Field(min_length=2)]


class ElbowPath(_Path):
    """Arm path given by the elbow; keys in lifting order, equal steps of the path parameter between them."""

    given: Literal["elbow"]
    keys: Annotated[tuple[ElbowKey, ...], Field(min_length=2)]


Path = HandPath | ElbowPath


class Row(_Strict):
    """One movement. ``aliases`` may be printed; ``read_only_aliases`` are read, never printed.

    ``banned_by``: the words of a limit's ``no:`` that rule the movement out.
    """

    key: Slug
    name: Text
    aliases: tuple[Text, ...]
    read_only_aliases: tuple[Text, ...] = ()
    scored_by: ScoredBy
    pattern: Pattern
    implement: Implement
    station: Station
    hands: Hands
    sides: Sides
    banned_by: tuple[Banned, ...] = ()
    counting: Text
    load: Load
    load_direction: Text
    loading: Loading
    load_ratio: LoadRatio | None = None
    muscles: Muscles
    cautions: tuple[Text, ...]
    easier: tuple[Slug, ...]
    harder: tuple[Slug, ...]
    path: Annotated[Path, Field(discriminator="given")] | None = None

    @model_validator(mode="after")
    def _path_when_scored(self) -> Self:
        if (self.path is not None) != (self.scored_by == "engine"):
            raise ValueError("scored_by is 'engine' exactly when the row has a path")
        return self


def parse_rows(text: str) -> tuple[Row, ...]:
    """Rows of a text in the form of movements.yaml, in its order.

    Raises: RowError for a row outside the closed lists or the form; the message says which row,
    which field and which value.
    """
    return tuple(_row(item) for item in yaml.load(text, Loader=yaml.CSafeLoader))


@cache
def load_rows() -> tuple[Row, ...]:
    """All movements of the library, in the order of the file. Raises: RowError."""
    return parse_rows(MOVEMENTS_FILE.read_text(encoding="utf-8"))


def _row(item: dict[str, Any]) -> Row:
    try:
        return Row.model_validate(item)
    except ValidationError as error:
        faults = [
            f"{'.'.join(map(str, e['loc'])) or 'row'}: {e['msg']} (found {e['input']!r})"
            for e in error.errors()
        ]
        raise RowError(
            f"movements.yaml, {item.get('key', 'a row without a key')}: " + "; ".join(faults)
        ) from None
