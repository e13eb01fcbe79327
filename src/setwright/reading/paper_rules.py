"""The text rule about the coach's own mark on the sheets."""

from typing import Final

from setwright.reading.faults import TextRule

LOGO = TextRule(
    "logo-not-usable",
    "a logo that can't be printed",
    "the logo becomes part of every sheet, so without it none is printed",
    "squad:\n  paper:\n    logo: crest.bmp",
    "squad:\n  paper:\n    logo: crest.png",
)

RULES: Final = (LOGO,)
