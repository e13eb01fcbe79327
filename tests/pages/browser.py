"""Chromium over its DevTools pipe (file descriptors 3 and 4, JSON ended by a NUL byte)."""

import base64
import json
import os
import select
import shutil
import signal
import tempfile
from pathlib import Path
from types import TracebackType
from typing import Any, Self

NAMES = ("chromium", "chromium-browser", "google-chrome", "chrome")
ARGUMENTS = (
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-dev-shm-usage",
    "--remote-debugging-pipe",
)
ANSWER_WITHIN_S = 60
"""Seconds one answer may take on a busy machine (choice)."""

LOADED = """new Promise(done => document.readyState === "complete"
    ? done(true) : addEventListener("load", () => done(true)))"""


def installed() -> str | None:
    """Path of the browser on this machine, or None."""
    named = os.environ.get("CHROMIUM")
    return named or next((path for name in NAMES if (path := shutil.which(name))), None)


class Browser:
    """One running browser with one page; use as a context manager, which also ends it."""

    def __init__(self, path: str) -> None:
        self._profile = tempfile.mkdtemp(prefix="pages-")
        their_in, self._out = os.pipe()
        self._in, their_out = os.pipe()
        self._pid = os.posix_spawn(
            path,
            [path, *ARGUMENTS, f"--user-data-dir={self._profile}", "about:blank"],
            os.environ,
            file_actions=[
                (os.POSIX_SPAWN_OPEN, 2, os.devnull, os.O_WRONLY, 0),
                (os.POSIX_SPAWN_DUP2, their_in, 3),
                (os.POSIX_SPAWN_DUP2, their_out, 4),
            ],
            setpgroup=0,
        )
        os.close(their_in)
        os.close(their_out)
        self._number = 0
        self._waiting = b""
        self._session: str | None = None

    def __enter__(self) -> Self:
        target = self.call("Target.createTarget", url="about:blank")["targetId"]
        self._session = self.call("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        os.killpg(self._pid, signal.SIGKILL)
        os.waitpid(self._pid, 0)
        os.close(self._in)
        os.close(self._out)
        shutil.rmtree(self._profile, ignore_errors=True)

    def call(self, method: str, **params: Any) -> dict[str, Any]:
        """The result of one DevTools command.

        Raises: RuntimeError with the browser's own words when it refuses.
        """
        self._number += 1
        message: dict[str, Any] = {"id": self._number, "method": method, "params": params}
        if self._session:
            message["sessionId"] = self._session
        _write(self._out, json.dumps(message).encode() + b"\0")
        while True:
            answer = self._next()
            if answer.get("id") == self._number:
                break
        if "error" in answer:
            raise RuntimeError(f"{method}: {answer['error']['message']}")
        result: dict[str, Any] = answer["result"]
        return result

    def open(self, page: Path) -> None:
        """Load a file and wait until it stands, under the rules for print."""
        self.call("Emulation.setEmulatedMedia", media="print")
        self.call("Page.navigate", url=page.resolve().as_uri())
        self.evaluate(LOADED)

    def width(self, pixels: int) -> None:
        """Lay pages out this many CSS pixels wide from now on, without a scroll bar."""
        self.call("Emulation.setScrollbarsHidden", hidden=True)
        self.call(
            "Emulation.setDeviceMetricsOverride", width=pixels, height=1000, deviceScaleFactor=1, mobile=False
        )

    def evaluate(self, script: str) -> Any:
        """The JSON value of an expression on the open page."""
        got = self.call("Runtime.evaluate", expression=script, returnByValue=True, awaitPromise=True)
        if "exceptionDetails" in got:
            raise RuntimeError(got["exceptionDetails"]["exception"]["description"])
        return got["result"].get("value")

    def pdf(self) -> bytes:
        """The open page printed on the paper its style sheet names, without backgrounds, as browsers do."""
        got = self.call("Page.printToPDF", preferCSSPageSize=True, printBackground=False)
        return base64.b64decode(got["data"])

    def _next(self) -> dict[str, Any]:
        """The next message, answer or event."""
        while b"\0" not in self._waiting:
            ready, _, _ = select.select([self._in], [], [], ANSWER_WITHIN_S)
            chunk = os.read(self._in, 1 << 20) if ready else b""
            if not chunk:
                raise RuntimeError("the browser does not answer")
            self._waiting += chunk
        line, self._waiting = self._waiting.split(b"\0", 1)
        message: dict[str, Any] = json.loads(line)
        return message


def _write(descriptor: int, data: bytes) -> None:
    """Write all of ``data``, however little the pipe takes at a time."""
    while data:
        data = data[os.write(descriptor, data) :]
