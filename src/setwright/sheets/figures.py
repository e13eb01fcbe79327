"""The figures of the sheets, by the key of a movement: each function returns one SVG, in mm, black on white.

Every call with the same library gives the same bytes. The phrase ``page.model_note`` belongs on each page
that shows one.
"""

from collections.abc import Mapping
from functools import cache
from typing import Any, Final

from setwright.engine.geometry import PARTS
from setwright.engine.picture import MovementPicture, picture
from setwright.library.rows import load_rows
from setwright.library.table import library
from setwright.sheets.distance import hand_words
from setwright.sheets.fan import Tone
from setwright.sheets.fibre import PLAIN, TECHNICAL, Names, Tones, front_view, view_from_above
from setwright.sheets.phrases import say, series
from setwright.sheets.projection import LAYOUTS, Size
from setwright.sheets.signs import SWATCH, TONES, line_sign_svg, swatch, swatch_svg
from setwright.sheets.strip import STRIPS, strip
from setwright.sheets.svg import drawing, rectangle, tag, text

__all__ = [
    "PLAIN",
    "NoPicture",
    "fibre_svg",
    "is_drawn",
    "line_sign_svg",
    "movement_picture_svg",
    "small_picture_svg",
    "strip_svg",
    "swatch_svg",
]

TONE_OF_DOSE: Final[Mapping[float, Tone]] = {1: "much", 0.5: "some", 0: "none"}
"""What a hard set counts for the part: it serves the part's line, only loads it along it, or neither."""


class NoPicture(ValueError):
    """Raised for a movement that the model doesn't score; the text says why, in words for a coach."""


def is_drawn(movement: Mapping[str, Any]) -> bool:
    """Whether there is a picture of a movement: the model scores it, and it is the library's."""
    return bool(movement["scored"]) and not movement["refused"] and not movement.get("own")


def fibre_svg(key: str, size: Size, id_prefix: str, names: Names = TECHNICAL) -> str:
    """The fibre picture, 60 or 120 mm wide: the chest from the front and the arm's travel from above.

    ``id_prefix``: begins the ids of the clips inside; unique in the file that holds the picture.
    ``names``: what the parts are called.

    Raises: KeyError for an unknown key; NoPicture.
    """
    layout = LAYOUTS[size]
    body = _fibre(key, size, id_prefix, names)
    return drawing(layout.width, layout.height, _fibre_label(key, names), [body])


def small_picture_svg(key: str) -> str:
    """The fibre picture 60 mm wide on white ground, to stand in a page. Raises: KeyError; NoPicture."""
    layout = LAYOUTS["60"]
    ground = rectangle((0, 0, layout.width, layout.height), fill="#fff", stroke="none")
    body = [ground, _fibre(key, "60", "p")]
    return drawing(layout.width, layout.height, _fibre_label(key), body)


def strip_svg(key: str, size: Size) -> str:
    """The length-and-resistance strip of a movement, 60 or 120 mm wide. Raises: KeyError; NoPicture."""
    form = STRIPS[size]
    return drawing(form.width, form.height, _strip_label(key), [strip(size, _picture(key))])


def movement_picture_svg(key: str) -> str:
    """A picture that stands alone: name, fibre picture, strip, key and note. Raises: KeyError; NoPicture."""
    layout, form = LAYOUTS["120"], STRIPS["120"]
    under_name, gap, row = 8, 3, 6.5
    below = under_name + layout.height + gap
    first_key = below + form.height + gap
    note = first_key + len(TONES) * row + 3
    model = series("picture.model")
    lines = (say("picture.arms"), *model)
    height = note + (len(lines) - 1) * 4.5 + 1.5
    label = f"{_fibre_label(key)}. {_strip_label(key)}. {' '.join(model)}"
    body = [
        rectangle((0, 0, layout.width, height), fill="#fff", stroke="none"),
        text((0, 5), _movement(key)["name"], 5, font_weight="bold"),
        tag("g", _fibre(key, "120", "picture"), transform=f"translate(0 {under_name})"),
        tag("g", strip("120", _picture(key)), transform=f"translate(0 {below})"),
        *(_key_row(tone, first_key + index * row) for index, tone in enumerate(TONES)),
        *(text((0, note + index * 4.5), words, 3.5) for index, words in enumerate(lines)),
    ]
    return drawing(layout.width, height, label, body)


def _key_row(tone: Tone, top: float) -> str:
    words = text((SWATCH[0] + 2, top + SWATCH[1] - 1.1), say(f"picture.{tone}"), 3.5)
    return swatch((0.0, top), tone) + words


def _fibre(key: str, size: Size, id_prefix: str, names: Names = TECHNICAL) -> str:
    layout, arrays = LAYOUTS[size], _picture(key)
    front = front_view(layout, arrays, _tones(key), f"{id_prefix}-front", names)
    return front + view_from_above(layout, arrays, f"{id_prefix}-above")


def _movement(key: str) -> Mapping[str, Any]:
    movement = library().movement(key)
    name = movement["name"]
    if not movement["scored"]:
        raise NoPicture(f"{name} is counted by its muscles, not scored, so there is nothing to draw")
    if movement["refused"]:
        raise NoPicture(f"{name} is not drawn. {movement['refused']}")
    return movement


@cache
def _picture(key: str) -> MovementPicture:
    _movement(key)
    return picture(next(row for row in load_rows() if row.key == key))


def _tones(key: str) -> Tones:
    parts = _movement(key)["parts"]
    return {part: TONE_OF_DOSE[parts[part]["dose"]] for part in PARTS}


def _fibre_label(key: str, names: Names = TECHNICAL) -> str:
    tones = ", ".join(
        say("picture.part_tone", part=names.of(part), tone=say(f"tone.{tone}"))
        for part, tone in _tones(key).items()
    )
    hand = hand_words(_picture(key).hand)
    return say("picture.label", name=_movement(key)["name"], tones=tones, hand=hand)


def _strip_label(key: str) -> str:
    lengths = ", ".join(
        say(
            "picture.strip_part",
            part=TECHNICAL.of(part),
            start=f"{values['length_start']:.0f}",
            end=f"{values['length_end']:.0f}",
            long=values["loaded_long"],
            short=values["loaded_short"],
        )
        for part, values in _movement(key)["parts"].items()
    )
    return say("picture.strip", parts=lengths)
