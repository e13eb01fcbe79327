"""The movement library.

``data/movements.yaml`` is edited by people; ``rows`` reads it into typed rows within the lists of ``closed``.
``catalogue`` compiles the rows and the engine's scores into ``data/library.json``.
``table`` reads only that: look-up by name, nearest names, questions. ``names`` folds
spellings into one form and compiles the name tables of library.json.
"""
