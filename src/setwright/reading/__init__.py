"""From typed text to typed values, each with its place.

``traps`` and ``lines`` look at the lines of a file, ``tree`` at its YAML, ``broken`` at what YAML can't read.
``fields`` types single values by the key they stand under; ``nearest`` proposes words.
``doseline`` and its parts (``lexer``, ``heads``, ``loads`` ...) read one dose line into a ``dose``.
``recordline`` reads what was done into a ``done``, by the same words; ``done_typed`` writes it as a line.
``say`` puts a dose back into words, ``counting`` counts it; every fault in text is a rule of ``text_rules``.
"""
