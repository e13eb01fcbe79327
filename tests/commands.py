"""Commands in this process, and what they print."""

from typer.testing import CliRunner, Result

from setwright.cli import app


def run(*arguments: object) -> Result:
    """A command with its arguments as text."""
    return CliRunner().invoke(app, [str(one) for one in arguments])


def said(result: Result) -> str:
    """Everything a command printed, on one line."""
    return " ".join(result.output.split())
