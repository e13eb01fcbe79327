"""What is compiled from the files that people edit: ``python -m setwright.catalogue --write`` or ``--check``.

``data/library.json`` comes from ``data/movements.yaml`` and the engine, ``docs/movements`` and the pictures
of ``docs/engine.md`` from that library, ``docs/rules`` from the rules, ``docs/sources.md`` and
``docs/cautions.md`` from the data files of these names.
A further product is one more entry of ``products``.
"""

import json
import sys
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any, Final

from setwright.engine.movement import scored_fields
from setwright.engine.partners import paired, partners
from setwright.files import write_whole
from setwright.library.index import compile_names
from setwright.library.rows import Row, load_rows
from setwright.library.table import LIBRARY_FILE, library
from setwright.report.movement_docs import movement_pages
from setwright.report.rule_docs import pages
from setwright.report.source_docs import cautions_page, sources_page
from setwright.sheets.figures import is_drawn, movement_picture_svg, small_picture_svg

FORMAT: Final = "setwright-library/1"
"""The form of ``data/library.json``."""

DOCS: Final = Path(__file__).parents[2] / "docs"
"""The documents in a checkout."""

RULE_PAGES: Final = DOCS / "rules"
"""The pages of the rules in a checkout."""

MOVEMENT_PAGES: Final = DOCS / "movements"
"""The pages of the movements in a checkout, with their pictures."""

GENERATED: Final = (RULE_PAGES, MOVEMENT_PAGES)
"""Folders that hold nothing but products."""

PICTURED: Final = ("flat-barbell-bench-press", "level-cable-crossover", "parallel-bar-dip-leaning")
"""The movements that docs/engine.md shows."""


def compile_library() -> dict[str, Any]:
    """The whole library as plain data in the form "setwright-library/1"."""
    rows = load_rows()
    scored = [row for row in rows if row.path is not None]
    fields = dict(zip((row.key for row in scored), scored_fields(scored), strict=True))
    movements = {
        row.key: {**_described(row), "scored": row.key in fields, **fields.get(row.key, {})} for row in rows
    }
    for key in fields:
        movements[key]["partners"] = partners(movements[key], paired(movements[key], movements))
    return {"format": FORMAT, "movements": movements, **compile_names(rows)}


def _described(row: Row) -> dict[str, Any]:
    """What a row says of itself."""
    shares = (
        {}
        if row.load.body_share is None
        else {"body_share": row.load.body_share, "share_source": row.load.share_source}
    )
    return {
        "key": row.key,
        "name": row.name,
        "aliases": list(row.aliases),
        "read_only_aliases": list(row.read_only_aliases),
        "pattern": row.pattern,
        "implement": row.implement,
        "needs": list(row.station.needs),
        "bench_deg": row.station.bench_deg,
        "hands": row.hands,
        "sides": row.sides,
        "banned_by": list(row.banned_by),
        "counting": row.counting,
        "load_kind": row.load.kind,
        "load_write": row.load.write,
        **shares,
        "class": row.loading.load_class,
        "class_why": row.loading.why,
        "load_ratio": None if row.load_ratio is None else row.load_ratio.model_dump(),
        "prime": list(row.muscles.prime),
        "assist": list(row.muscles.assist),
        "cautions": list(row.cautions),
        "easier": list(row.easier),
        "harder": list(row.harder),
    }


def library_text() -> str:
    """The text of ``data/library.json``: one movement, name or question a line, so that diffs read well."""
    sections = []
    for name, section in compile_library().items():
        if isinstance(section, dict):
            lines = (f"{_json(key)}:{_json(value)}" for key, value in section.items())
            sections.append(f"{_json(name)}:{{\n" + ",\n".join(lines) + "\n}")
        else:
            sections.append(f"{_json(name)}:{_json(section)}")
    return "{" + ",\n".join(sections) + "}\n"


def _json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def products() -> Iterator[tuple[Path, str]]:
    """Every compiled file with the text that its sources give; first the library, of which some are made."""
    yield LIBRARY_FILE, library_text()
    library.cache_clear()
    yield DOCS / "sources.md", sources_page()
    yield DOCS / "cautions.md", cautions_page()
    yield from ((RULE_PAGES / name, page) for name, page in pages().items())
    yield from ((MOVEMENT_PAGES / name, page) for name, page in movement_pages(library()).items())
    drawn = (key for key, movement in library().movements().items() if is_drawn(movement))
    yield from ((MOVEMENT_PAGES / "pictures" / f"{key}.svg", small_picture_svg(key)) for key in drawn)
    yield from ((DOCS / "pictures" / f"{key}.svg", movement_picture_svg(key)) for key in PICTURED)


def write() -> list[Path]:
    """Write every product that differs from its sources, and name those written."""
    written = []
    for path, text in products():
        if _is_stale(path, text):
            write_whole(path, text)
            written.append(path)
    return written


def check() -> list[str]:
    """What is not as its sources have it, a sentence each: what differs, and files that nothing makes."""
    texts = dict(products())
    stale = (path for path, text in texts.items() if _is_stale(path, text))
    there = (path for folder in GENERATED for path in sorted(folder.rglob("*")) if path.is_file())
    return [
        *(f"{path} differs from its sources: run python -m setwright.catalogue --write" for path in stale),
        *(f"{path} is made from nothing any more: delete it" for path in there if path not in texts),
    ]


def _is_stale(path: Path, text: str) -> bool:
    return not path.exists() or path.read_text(encoding="utf-8") != text


def main(arguments: Sequence[str]) -> int:
    """Write or check from the command line; 0 when all is in step, 1 when not, 2 for other arguments."""
    if list(arguments) == ["--write"]:
        for path in write():
            print(f"written: {path}")  # noqa: T201  # a tool of the repository, not a command of the product
        return 0
    if list(arguments) == ["--check"]:
        faults = check()
        for fault in faults:
            print(fault)  # noqa: T201  # as above
        return 1 if faults else 0
    print("usage: python -m setwright.catalogue --write | --check")  # noqa: T201  # as above
    return 2


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
