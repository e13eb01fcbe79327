"""What to type instead: a coach's own words without the sign that did the harm."""

import re

_SPACES = re.compile("[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]")
_INVISIBLE = re.compile("[\u200b-\u200f\u202a-\u202e\u2060-\u2064\ufeff\u00ad]")
_NAMES = {
    "\u00ad": "a soft hyphen",
    "\u200b": "a zero-width space",
    "\ufeff": "a byte-order mark",
    "\u00a0": "a no-break space",
    "\u202f": "a narrow no-break space",
}
_PERCENT = re.compile(r"(\d+(?:[.,-]\d+)*)(?=$|[\s,])")
_SMALL_NUMBER = re.compile(r"(\d|10)(\s*-\s*\d+)?$")


def plain_blanks(text: str) -> str:
    """The text with plain blanks only; what can't be seen is left out.

    >>> plain_blanks("3\u00a0x\u200b8")
    '3 x8'
    """
    return _INVISIBLE.sub("", _SPACES.sub(" ", text))


def name_of(char: str) -> str:
    """What a character that is no plain blank is called.

    >>> name_of("\u200b")
    'a zero-width space'
    """
    return _NAMES.get(char) or (
        "a blank of unusual width" if char.isspace() else "a character that can't be seen"
    )


def as_text(text: str) -> str:
    """The text in quotes, so that nothing in it is a sign any more.

    >>> as_text("keep tight: no flare")
    '"keep tight: no flare"'
    """
    return '"{}"'.format(text.replace("\\", "/").replace('"', "'"))


def without_hash(text: str) -> str:
    """The text with each lost # left out, or read as pounds behind a number at the end.

    >>> without_hash("band 2 #heavy"), without_hash("135 #")
    ('band 2 heavy', '135 lb')
    """
    pounds = re.sub(r"(\d)\s*#$", r"\1 lb", text)
    return re.sub(r"\s+", " ", pounds.replace("#", "")).strip()


def without_sign(text: str, key: str) -> str:
    """The text without the sign it starts with, in the words of the dose line where they are known.

    >>> without_sign("@8", "effort"), without_sign("%75", "load"), without_sign(">8", "do")
    ('RPE 8', '75%', '8+')
    """
    sign, rest = text[0], text[1:].strip()
    if sign == "@" and rest:
        if key.casefold() == "effort" and _SMALL_NUMBER.match(rest):
            return f"RPE {rest}"
        return rest if key else f"at {rest}"
    if sign == "%":
        return _PERCENT.sub(r"\1%", rest) if _PERCENT.match(rest) else as_text(text)
    if sign in "*`":
        return text.replace(sign, "").strip() or as_text(text)
    if sign == ">" and rest.isdigit():
        return f"{rest}+"
    return rest or as_text(text)
