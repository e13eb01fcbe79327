"""Fixed words of the sheets stand in ``data/sheet-words.toml``; no template and no other module holds one."""

import ast
import re
import string
from collections.abc import Iterator
from pathlib import Path

import pytest

import setwright
from setwright.sheets.phrases import phrases, say

HOUSE = Path(setwright.__file__).parent
TEMPLATES = sorted((HOUSE / "data" / "templates").glob("*"))
MODULES = sorted((HOUSE / "sheets").glob("*.py"))
LOGIC = re.compile(r"\{#.*?#\}|\{%.*?%\}|\{\{.*?\}\}", re.DOTALL)
WORD = re.compile(r"[A-Za-z]{2,}")
SPOKEN = re.compile(r'(?:aria-label|title|alt)="([^"]*)"')
CSS_TEXT = re.compile(r'content:[^;]*?"([^"]*)"')
PHRASE = re.compile(r'(?:say|series)\("([\w.-]+)"(\s*~)?')

ON_THE_SCREEN = {
    "editions": "the text in the file beside the prints, and what is said of a damaged one",
    "kinds": "why there is nothing to print, or not on that paper",
    "logo": "what is wrong with a logo",
    "names": "what files are called",
    "pdf": "what a PDF needs, and fonts",
    "phrases": "where the phrases stand",
    "printing": "which file was written",
    "today": "the same",
}
"""Modules whose texts are said by the command or name files, and stand on no sheet."""

OF_DRAWINGS = {
    "#fff", "-above", "-front", ".html.j2", "Liberation Sans, Arial, Helvetica, sans-serif", "bold",
    "data/templates", "end", "http://www.w3.org/2000/svg", "img", "middle", "mm", "none", "round", "stroke",
    "setwright", "translate(0 ", "url(#",
}  # fmt: skip
"""Parts of pictures and pages."""

READ = {
    " a side", " deg", ", then ", "at home", "bodyweight", "dose", "each", "external", "home", "last", "load",
    "load_kind", "load_write", "mass", "name", "percent", "rack", "remarks", "rm", "straight", "the ",
    "total with the bar", " to ",
}  # fmt: skip
"""Words of the plan, the library and the loads that a module knows something by."""

OF_FILES = {".html", ".pdf", "report", "surrogatepass", "told", "utf-8"}
"""Parts of what a file is called or how it is written."""

KEYS = {"_without_year", "much", "some", "none", "breastbone", "collarbone", "ribs"}
"""What ends the name of a phrase."""

TAKES_NAMES = {"say", "series", "_contains", "compile", "get", "tag", "TypeVar", "ParamSpec", "ContextVar"}
"""Calls that are given the name of something, or a pattern."""

Holes = frozenset[str]


def fixed_words(template: str) -> list[str]:
    """Letters that a reader would see or hear, outside of tags, styles and what is filled in."""
    bare = LOGIC.sub("", template)
    spoken = [*SPOKEN.findall(bare), *CSS_TEXT.findall(bare)]
    page = re.sub(r"<style>.*?</style>", "", bare, flags=re.DOTALL)
    page = re.sub(r"@page[^{]*\{.*?\}\s*\}", "", page, flags=re.DOTALL)
    seen = re.sub(r"\.[\w-]+ \{[^}]*\}", "", re.sub(r"<[^>]*>", " ", page))
    return WORD.findall(" ".join([*spoken, seen]))


def sentences(module: str) -> list[str]:
    """Texts of a module that could stand on paper."""
    tree = ast.parse(module)
    passed_over = {id(inner) for node in ast.walk(tree) for inner in _never_printed(node)}
    return [
        node.value
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant)
        and isinstance(node.value, str)
        and id(node) not in passed_over
        and WORD.search(node.value)
        and node.value not in phrases()
    ]


def _never_printed(node: ast.AST) -> Iterator[ast.AST]:
    """Docstrings, errors, what is compared or looked up, patterns, names of types and of phrases."""
    match node:
        case ast.Expr(value=ast.Constant()) | ast.Raise() | ast.Compare() | ast.MatchValue():
            yield from ast.walk(node)
        case ast.Subscript(slice=looked_up):
            yield from ast.walk(looked_up)
        case ast.Dict(keys=keys):
            yield from (key for key in keys if key)
        case ast.Assign(targets=[ast.Name(id="__all__")]):
            yield from ast.walk(node)
        case ast.Call() if _called(node) in TAKES_NAMES:
            for argument in node.args:
                yield from ast.walk(argument)


def _called(call: ast.Call) -> str:
    function = call.func
    return function.attr if isinstance(function, ast.Attribute) else getattr(function, "id", "")


def asked_for(module: str) -> Iterator[tuple[str, Holes | None]]:
    """The phrases that a module asks for, the start of a name and "*" where it puts one together.

    With what it fills in, where that is plain to see.
    """
    for node in ast.walk(ast.parse(module)):
        if isinstance(node, ast.Constant) and node.value in phrases():
            yield str(node.value), None
        if not (isinstance(node, ast.Call) and _called(node) in {"say", "series"}):
            continue
        holes = frozenset(keyword.arg or "" for keyword in node.keywords)
        match node.args[0]:
            case ast.Constant(value=str(name)):
                yield name, holes
            case ast.JoinedStr(values=[ast.Constant(value=str(start)), *_]):
                yield f"{start}*", None


def asked_for_by_pages() -> Iterator[str]:
    for template in TEMPLATES:
        for name, more in PHRASE.findall(template.read_text(encoding="utf-8")):
            yield f"{name}*" if more else name


def every_name() -> set[str]:
    by_modules = {name for module in MODULES for name, _ in asked_for(module.read_text(encoding="utf-8"))}
    return by_modules | set(asked_for_by_pages())


@pytest.mark.parametrize("template", TEMPLATES, ids=lambda path: path.name)
def test_a_template_holds_no_words(template: Path) -> None:
    text = template.read_text(encoding="utf-8")
    found = CSS_TEXT.findall(text) if template.suffix == ".css" else fixed_words(text)
    assert [word for word in found if word.strip()] == []


@pytest.mark.parametrize("module", MODULES, ids=lambda path: path.stem)
def test_a_module_holds_no_words(module: Path) -> None:
    found = set() if module.stem in ON_THE_SCREEN else set(sentences(module.read_text(encoding="utf-8")))
    assert found - OF_DRAWINGS - OF_FILES - READ - KEYS == set()


def test_nothing_is_excused_without_need() -> None:
    every = {one for module in MODULES for one in sentences(module.read_text(encoding="utf-8"))}
    assert every >= OF_DRAWINGS | OF_FILES | READ | KEYS
    assert {module.stem for module in MODULES} >= set(ON_THE_SCREEN)


def test_every_phrase_that_is_asked_for_is_there() -> None:
    names = set(phrases())
    assert [one for one in every_name() if not one.endswith("*") and one not in names] == []
    assert [one for one in every_name() if not any(_means(one, name) for name in names)] == []


def test_every_phrase_is_used() -> None:
    asked = every_name()
    assert [name for name in phrases() if not any(_means(one, name) for one in asked)] == []


def _means(asked: str, name: str) -> bool:
    return name == asked or (asked.endswith("*") and name.startswith(asked[:-1]))


def test_every_hole_is_filled() -> None:
    """A phrase that is named outright gets just what it has room for."""
    wrong = [
        (module.stem, name, holes)
        for module in MODULES
        for name, holes in asked_for(module.read_text(encoding="utf-8"))
        if holes is not None and holes != _holes(name)
    ]
    assert wrong == []


def _holes(name: str) -> Holes:
    phrase = phrases()[name]
    text = phrase if isinstance(phrase, str) else ""
    return frozenset(hole for _, hole, _, _ in string.Formatter().parse(text) if hole)


def test_no_two_entries_of_one_place_say_the_same() -> None:
    """A wording is changed once: only short words of different places may be alike."""
    long = [text for text in phrases().values() if isinstance(text, str) and len(text.split()) > 4]
    assert sorted(long) == sorted(set(long))


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


@pytest.mark.parametrize(
    "module",
    ['X = "both"', 'def f(n):\n    return f"{n} rounds"', 'f(x, label="a sign")', 'D = {1: "each set"}'],
)
def test_sentences_are_seen(module: str) -> None:
    assert len(sentences(module)) == 1


@pytest.mark.parametrize(
    "module",
    ['"""A module."""', 'raise ValueError(f"no {x} here")', 'P = re.compile("one two")', 'say("page.week")'],
)
def test_what_is_never_printed_is_no_sentence(module: str) -> None:
    assert sentences(module) == []


def test_what_is_filled_in_is_no_word() -> None:
    assert fixed_words('{# a note #}<p class="x">{{ say("page.name") }}{% if a %} {% endif %}</p>') == []


def test_a_phrase_is_filled_in() -> None:
    assert say("rack.title", number=1, lift="squat") == "Rack 1: squat"
