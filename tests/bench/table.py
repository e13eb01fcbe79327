"""The figures of a run as a page: the machine, the day, and a table for each benchmark."""

import datetime as dt
import os
import platform
import re
from importlib.metadata import version
from pathlib import Path
from types import ModuleType
from typing import Final, NamedTuple

from tests.bench.figures import Figure

LIBRARIES: Final = ("typer", "pydantic", "PyYAML", "numpy", "Jinja2")

HEAD: Final = """\
# Benchmarks

Written by `python -m tests.bench --table docs/benchmarks.md` on {day}; every number is of that run. Most
are ratios to a floor that was measured in the same minutes, because the speed of a machine varies:
milliseconds hold for this one only. A load above the number of cores makes them longer, most of all what is
taken by the clock on the wall (`watching`, `engine`, `mujoco_loop`). What is missed is measured once more
before it is written here.

{machine}
"""


class Ran(NamedTuple):
    """A benchmark and what came out."""

    name: str
    bench: ModuleType
    figures: list[Figure]


def page(ran: list[Ran]) -> str:
    """The whole page."""
    head = HEAD.format(day=dt.datetime.now(tz=dt.UTC).date(), machine=_machine())
    return "\n".join([head, *map(_section, ran)])


def _section(one: Ran) -> str:
    told = " ".join((one.bench.__doc__ or "").replace("``", "`").split())
    rows = [f"| {figure.what} | {figure.measured} | {_asked(figure)} |" for figure in one.figures]
    return "\n".join(
        [f"## {one.name}", "", told, "", "| what | measured | asked |", "|---|---|---|", *rows, ""]
    )


def _asked(figure: Figure) -> str:
    return figure.asked if figure.holds else f"**missed**: {figure.asked}"


def _machine() -> str:
    """The machine in one paragraph: processor, cores, memory, system, versions, and how busy it was."""
    memory = os.sysconf("SC_PAGE_SIZE") * os.sysconf("SC_PHYS_PAGES") / 2**30
    _, _, busy = os.getloadavg()
    used = ", ".join(f"{name} {version(name)}" for name in LIBRARIES)
    return (
        f"Machine: {_processor()}, {os.cpu_count()} cores, {memory:.0f} GB, {platform.system()} "
        f"{platform.machine()}; {platform.python_implementation()} "
        f"{platform.python_version()}, {used}. Load of the last quarter of an hour: {busy:.1f}."
    )


def _processor() -> str:
    """The name of the processor, as Linux knows it."""
    told = Path("/proc/cpuinfo")
    text = told.read_text(encoding="utf-8") if told.exists() else ""
    found = re.search(r"^model name\s*:\s*(.+)$", text, re.MULTILINE)
    return found[1] if found else platform.processor() or "a processor without a name"
