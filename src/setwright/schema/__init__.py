"""JSON Schema for editors: completion, hover and wrong choices while a file is typed.

``words`` reads ``data/keys.yaml``, one entry a key; ``kinds`` turns a kind of value into JSON Schema,
``movements`` the library into keys of a line, ``build`` puts the schema of one kind of file together.
"""

from setwright.schema.build import Kind, schema_text

__all__ = ["Kind", "schema_text"]
