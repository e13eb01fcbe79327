"""Golden files: ``pytest --update-golden`` writes them anew; without it they are compared byte for byte."""

from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import settings

settings.register_profile("any machine", deadline=None)  # a busy machine is no fault of the text
settings.load_profile("any machine")

GOLDEN = Path(__file__).parent / "sheets" / "golden"


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--update-golden", action="store_true", help="write the golden files in tests/sheets/golden anew"
    )


@pytest.fixture
def golden(request: pytest.FixtureRequest) -> Callable[[str, str], None]:
    """A function of a file name and a text: the text must be what the golden file of that name holds."""
    update = request.config.getoption("--update-golden")

    def compare(name: str, text: str) -> None:
        path = GOLDEN / name
        if update:
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(text.encode())
        assert path.is_file(), f"no golden file {name}: look at the output, then run pytest --update-golden"
        assert text.encode() == path.read_bytes(), (
            f"{name} changed: look at the output, then run pytest --update-golden"
        )

    return compare
