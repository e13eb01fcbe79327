"""Files as an editor sees them: YAML 1.2 with its types, and the schemas to hold them against."""

import json
import re
from functools import cache

import yaml
from jsonschema import Draft7Validator

from setwright.schema import Kind, schema_text


class Core(yaml.SafeLoader):
    """The core schema of YAML 1.2.2, section 10.3.2: dates, `yes` and 1:30 stay text, 60 is a number."""

    yaml_implicit_resolvers: dict[str, list[tuple[str, re.Pattern[str]]]] = {}  # noqa: RUF012  # PyYAML's own name


for _tag, _form in {
    "null": r"(?:~|null|Null|NULL|)$",
    "bool": r"(?:true|True|TRUE|false|False|FALSE)$",
    "int": r"[-+]?[0-9]+$",
    "float": r"[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?$",
}.items():
    Core.add_implicit_resolver(f"tag:yaml.org,2002:{_tag}", re.compile(_form), None)


@cache
def validator(kind: Kind) -> Draft7Validator:
    """What holds files of one kind against their schema."""
    return Draft7Validator(json.loads(schema_text(kind)))


def faults(kind: Kind, text: str) -> list[str]:
    """What the schema has against a text, each with its place in it."""
    tree = yaml.load(text, Core)
    return [
        f"{'/'.join(map(str, error.absolute_path))}: {error.message}"
        for error in validator(kind).iter_errors(tree)
    ]
