"""The words of every key, from ``data/keys.yaml``: what it is for, what may stand behind it."""

from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Annotated, Any, Final

import yaml
from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, TypeAdapter

KEYS_FILE: Final = Path(__file__).parents[1] / "data" / "keys.yaml"


def _listed(typed: str | list[str]) -> list[str]:
    return [typed] if isinstance(typed, str) else typed


class Word(BaseModel):
    """One key. ``kind``: a name of ``schema.kinds``; ``choices``: each with its meaning, which may be empty.

    ``also``: spellings of choices that are read and not proposed.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    kind: str = Field(alias="is")
    says: Annotated[str, Field(min_length=1)]
    example: Annotated[tuple[str, ...], BeforeValidator(_listed)] = ()
    choices: dict[str, str] = Field(default_factory=dict)
    also: tuple[str, ...] = ()


Sections = Mapping[str, Mapping[str, Word]]
_TYPED: Final[TypeAdapter[dict[str, dict[str, Word | str]]]] = TypeAdapter(dict[str, dict[str, Word | str]])


@cache
def sections() -> Sections:
    """The keys by the section of the file in which they stand, in the order of the file."""
    # BaseLoader: `no`, `yes` and numbers stay the text that they are
    raw: Any = yaml.load(KEYS_FILE.read_text(encoding="utf-8"), yaml.BaseLoader)  # noqa: S506  # BaseLoader makes text only
    typed = _TYPED.validate_python(raw)
    return {
        name: {key: _word(typed, key, word) for key, word in section.items()}
        for name, section in typed.items()
    }


def _word(typed: Mapping[str, Mapping[str, Word | str]], key: str, word: Word | str) -> Word:
    """The word itself; a section's name stands for the word of the same key there."""
    while isinstance(word, str):
        word = typed[word][key]
    return word
