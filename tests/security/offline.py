"""Every command of the program, one after the other, in a process that may not use the network.

``python -m tests.security.offline FOLDER`` works in a copy of the example crew there. What asked for the
network is on the error stream, one event a line; so is a command that could not run.
"""

import os
import shutil
import signal
import sys
from pathlib import Path
from typing import Final

from setwright.cli import app

CREW: Final = Path(__file__).parents[2] / "examples" / "skerrow-bay"
NETWORK: Final = "socket."
"""How the audit event of each connection and look-up of a name begins (Library Reference, "Audit events")."""

REMOTE: Final = "http://setwright.invalid/mark.png"
"""An address under a name that never resolves (RFC 2606)."""

ADDRESSED: Final = f"""\
plan: <img src={REMOTE}> crew
squad:
  athletes:
    - name: Isla <link rel=stylesheet href={REMOTE}>
  paper:
    title: url({REMOTE})
    logo: crest.svg
    footer: <script src={REMOTE}></script>
sessions:
  - day: Monday
    work:
      - pull-up: 3 x 8
        note: "@import '{REMOTE}';"
"""
"""A plan with an address wherever text is printed."""

CREST: Final = f"""\
<?xml-stylesheet href="{REMOTE}"?><!DOCTYPE svg SYSTEM "{REMOTE}"><svg xmlns="http://www.w3.org/2000/svg"
 xmlns:xlink="http://www.w3.org/1999/xlink" width="9" height="9"><image xlink:href="{REMOTE}" width="9"
 height="9"/><use href="{REMOTE}#a"/><style>@import url({REMOTE});</style></svg>
"""

COMMANDS: Final = tuple(
    line.split()
    for line in f"""\
new spring
check week-good.yaml week-flawed.yaml block.yaml circuit.yaml squad.yaml gym.yaml
check week-good.yaml --summary
check week-good.yaml --watch
read week-good.yaml --count
loads week-good.yaml
swap week-flawed.yaml
swap week-good.yaml --for Morag
sheet week-good.yaml --csv
sheet addressed.yaml --kind session --pdf
floor week-good.yaml
record week-good.yaml --day Friday
keep record-week-3-monday.yaml
review week-good.yaml
next week-good.yaml
move dip --picture dip.svg
move dip --plan week-good.yaml --for Isla
explain sources
schema plan
check {CREW.parent / "own-movements" / "week.yaml"}
""".splitlines()
)
WATCHED_S: Final = 0.5
"""Seconds after which Ctrl-C ends a watch (choice)."""


def no_network(asked: list[str]) -> None:
    """From now on nothing in this process may ask the network; who tries is noted in ``asked``."""

    def refuse(event: str, arguments: tuple[object, ...]) -> None:
        if event.startswith(NETWORK):
            asked.append(f"{event} {arguments}")
            raise ConnectionRefusedError(asked[-1])

    sys.addaudithook(refuse)


def status(arguments: list[str]) -> int:
    """The exit status of a command; one that watches is ended as by Ctrl-C."""
    if "--watch" in arguments:
        signal.signal(signal.SIGALRM, signal.default_int_handler)
        signal.setitimer(signal.ITIMER_REAL, WATCHED_S)
    try:
        app(arguments)
    except SystemExit as left:
        return int(left.code or 0)
    return 0


def main() -> int:
    """Run every command in a copy of the crew. 0: all ran, and nothing was asked for."""
    folder = Path(shutil.copytree(CREW, Path(sys.argv[1]) / "crew"))
    os.chdir(folder)
    Path("addressed.yaml").write_text(ADDRESSED, encoding="utf-8")
    Path("crest.svg").write_text(CREST, encoding="utf-8")
    asked: list[str] = []
    no_network(asked)
    stopped = [command for command in COMMANDS if status(command) > 1]
    for one in (*asked, *(f"could not run: {' '.join(command)}" for command in stopped)):
        print(one, file=sys.stderr)
    return int(bool(asked or stopped))


if __name__ == "__main__":
    sys.exit(main())
