"""The base of every typed model: frozen, and closed to unknown keys."""

from pydantic import BaseModel, ConfigDict


class Frozen(BaseModel):
    """A pydantic model that never changes after it is built and refuses keys it does not know."""

    model_config = ConfigDict(frozen=True, extra="forbid")
