"""Movements of a coach's own, added to the library for one plan.

``plan`` reads a plan with them; ``table`` builds the library of a plan and says what is wrong.
``entry`` describes a movement in plain data; ``links`` pairs it with what it finishes or is finished by.
``body``: how large a lifter is against the model; ``sized``: a movement's figures at that size.
``scoring`` (with ``postures`` and ``changes``) asks the engine, and is loaded only for an arm path.
"""
