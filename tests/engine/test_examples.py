"""The examples in the docstrings of the engine and of the words for its figures are executed."""

import doctest
import importlib
import inspect
import pkgutil

import pytest

import setwright.engine

MODULES = [f"setwright.engine.{one.name}" for one in pkgutil.iter_modules(setwright.engine.__path__)]


@pytest.mark.parametrize("name", [*MODULES, "setwright.report.phrases"])
def test_examples_hold(name: str) -> None:
    assert doctest.testmod(importlib.import_module(name)).failed == 0


@pytest.mark.parametrize("name", MODULES)
def test_every_public_function_has_an_example(name: str) -> None:
    module = importlib.import_module(name)
    for function, value in vars(module).items():
        if getattr(value, "__module__", None) == name and not function.startswith("_"):
            documented = inspect.unwrap(value)
            if inspect.isfunction(documented):
                assert ">>>" in (documented.__doc__ or ""), function
