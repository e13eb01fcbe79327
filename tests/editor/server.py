"""A YAML language server, driven as an editor drives it: JSON over its standard input and output.

The protocol: https://microsoft.github.io/language-server-protocol/specifications/lsp/3.17/specification
"""

import itertools
import json
import os
import select
import shutil
import subprocess
import time
from collections.abc import Callable
from pathlib import Path
from types import TracebackType
from typing import Any, Final, Self

SERVER: Final = (
    Path(__file__).parents[2]
    / ".editor" / "node_modules" / "yaml-language-server" / "bin" / "yaml-language-server"
)  # fmt: skip
"""Where .ci/run installs it."""
ANSWER_WITHIN_S: Final = 60
"""Seconds one answer may take on a busy machine (choice)."""
SETTINGS: Final = {"validate": True, "hover": True, "completion": True, "schemaStore": {"enable": False}}
"""What an editor answers when the server asks for its settings; no schema from the network."""
CAN: Final = {
    "textDocument": {"completion": {"completionItem": {"snippetSupport": True}}},
    "workspace": {"configuration": True},
}


def missing() -> str | None:
    """One sentence about what the tests need and don't find; None when all is there."""
    if shutil.which("node") is None:
        return "not run: no node on the path"
    return None if SERVER.is_file() else "not run: no YAML language server in .editor (see DEVELOPERS.md)"


class Server:
    """One running server; use as a context manager, which also ends it."""

    def __init__(self) -> None:
        self._process = subprocess.Popen(
            ["node", SERVER, "--stdio"], stdin=subprocess.PIPE, stdout=subprocess.PIPE
        )
        self._numbers = itertools.count(1)
        self._read = b""
        self._faults: dict[str, list[dict[str, Any]]] = {}
        self._ask("initialize", {"processId": os.getpid(), "rootUri": None, "capabilities": CAN})
        self._send({"method": "initialized", "params": {}})

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._process.kill()
        self._process.communicate()

    def open(self, file: Path, text: str) -> list[dict[str, Any]]:
        """Open a text as ``file``; what the server has against it."""
        self._faults.pop(file.as_uri(), None)
        document = {"uri": file.as_uri(), "languageId": "yaml", "version": 1, "text": text}
        self._send({"method": "textDocument/didOpen", "params": {"textDocument": document}})
        while file.as_uri() not in self._faults:
            self._take()
        return self._faults[file.as_uri()]

    def completion(self, file: Path, line: int, column: int) -> dict[str, str]:
        """What is proposed at a place (counted from 0): each label with the text that it puts in."""
        items = self._at("completion", file, line, column)["items"]
        return {item["label"]: item["insertText"] for item in items}

    def hover(self, file: Path, line: int, column: int) -> str:
        """What is explained at a place (counted from 0), as Markdown; empty when nothing is."""
        told = self._at("hover", file, line, column)
        return "" if told is None else str(told["contents"]["value"])

    def _at(self, what: str, file: Path, line: int, column: int) -> Any:
        place = {"textDocument": {"uri": file.as_uri()}, "position": {"line": line, "character": column}}
        return self._ask(f"textDocument/{what}", place)

    def _ask(self, method: str, params: dict[str, Any]) -> Any:
        number = next(self._numbers)
        self._send({"id": number, "method": method, "params": params})
        while True:
            message = self._take()
            if message.get("id") == number and "method" not in message:
                return message["result"]

    def _take(self) -> dict[str, Any]:
        """The next message; questions of the server are answered, faults of a file kept."""
        message = self._next()
        if message.get("method") == "textDocument/publishDiagnostics":
            self._faults[message["params"]["uri"]] = message["params"]["diagnostics"]
        elif "method" in message and "id" in message:
            asked = message["params"].get("items", ()) if message.get("params") else ()
            result = [SETTINGS if item.get("section") == "yaml" else {} for item in asked] or None
            self._send({"id": message["id"], "result": result})
        return message

    def _send(self, message: dict[str, Any]) -> None:
        body = json.dumps({"jsonrpc": "2.0", **message}).encode()
        assert self._process.stdin
        self._process.stdin.write(b"Content-Length: %d\r\n\r\n" % len(body) + body)
        self._process.stdin.flush()

    def _next(self) -> dict[str, Any]:
        head = self._upto(lambda read: read.find(b"\r\n\r\n") + 4 if b"\r\n\r\n" in read else None)
        length = next(
            int(row.split(b":")[1]) for row in head.splitlines() if row.startswith(b"Content-Length")
        )
        message: dict[str, Any] = json.loads(self._upto(lambda read: length if len(read) >= length else None))
        return message

    def _upto(self, end: Callable[[bytes], int | None]) -> bytes:
        """Bytes up to the place that ``end`` tells of those read, once it is there."""
        assert self._process.stdout
        until = time.monotonic() + ANSWER_WITHIN_S
        while (size := end(self._read)) is None:
            ready, _, _ = select.select([self._process.stdout], [], [], max(until - time.monotonic(), 0))
            more = os.read(self._process.stdout.fileno(), 65536) if ready else b""
            assert more, f"the server gave no answer within {ANSWER_WITHIN_S} s, or ended"
            self._read += more
        taken, self._read = self._read[:size], self._read[size:]
        return taken
