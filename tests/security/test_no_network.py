"""Nothing is ever asked of the network."""

import subprocess
import sys
from pathlib import Path

import typer

from setwright.cli import app
from tests.security.offline import COMMANDS

ROOT = Path(__file__).parents[2]


def test_every_command_runs_without_asking_the_network(tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "tests.security.offline", str(tmp_path)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert list((tmp_path / "crew" / "sheets").glob("img-src-http-*.pdf"))


def test_no_command_is_left_out() -> None:
    group = typer.main.get_command(app)
    assert isinstance(group, typer.core.TyperGroup)
    assert {command[0] for command in COMMANDS} == set(group.commands)


def test_whoever_asks_the_network_is_noted() -> None:
    code = """
import socket, urllib.request
from tests.security.offline import no_network
asked = []
no_network(asked)
for ask in (
    lambda: socket.create_connection(("127.0.0.1", 9)),
    lambda: socket.gethostbyname("setwright.invalid"),
    lambda: urllib.request.urlopen("http://setwright.invalid/"),
):
    try:
        ask()
    except OSError:
        pass
print(*(one.split()[0] for one in asked))
"""
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["socket.getaddrinfo", "socket.gethostbyname", "socket.getaddrinfo"]
