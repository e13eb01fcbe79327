"""Fixed words of the sheets stand in the modules of words; a template holds none."""

import re
from pathlib import Path

import pytest

import setwright

TEMPLATES = sorted((Path(setwright.__file__).parent / "data" / "templates").glob("*"))
LOGIC = re.compile(r"\{#.*?#\}|\{%.*?%\}|\{\{.*?\}\}", re.DOTALL)
WORD = re.compile(r"[A-Za-z]{2,}")
SPOKEN = re.compile(r'(?:aria-label|title|alt)="([^"]*)"')
CSS_TEXT = re.compile(r'content:[^;]*?"([^"]*)"')


def fixed_words(template: str) -> list[str]:
    """Letters that a reader would see or hear, outside of tags, styles and what is filled in."""
    bare = LOGIC.sub("", template)
    spoken = [*SPOKEN.findall(bare), *CSS_TEXT.findall(bare)]
    page = re.sub(r"<style>.*?</style>", "", bare, flags=re.DOTALL)
    page = re.sub(r"@page[^{]*\{.*?\}\s*\}", "", page, flags=re.DOTALL)
    seen = re.sub(r"\.[\w-]+ \{[^}]*\}", "", re.sub(r"<[^>]*>", " ", page))
    return WORD.findall(" ".join([*spoken, seen]))


@pytest.mark.parametrize("template", TEMPLATES, ids=lambda path: path.name)
def test_a_template_holds_no_words(template: Path) -> None:
    text = template.read_text(encoding="utf-8")
    found = CSS_TEXT.findall(text) if template.suffix == ".css" else fixed_words(text)
    assert [word for word in found if word.strip()] == []


@pytest.mark.parametrize(
    ("template", "word"),
    [
        ("<p>Stop</p>", "Stop"),
        ('<b aria-label="box for {{ x }}"></b>', "box"),
        ('<style>@page { @bottom-right { content: "page " counter(page); } }</style>', "page"),
    ],
)
def test_words_are_seen(template: str, word: str) -> None:
    assert word in fixed_words(template)


def test_what_is_filled_in_is_no_word() -> None:
    assert fixed_words('{# a note #}<p class="x">{{ words.NAME }}{% if a %} {% endif %}</p>') == []
