"""What a load is on the floor: what this gym can put on, and what it takes.

``means_of`` says what a movement is loaded by here: a bar, dumbbells, a stack, a band.
``plates`` (with ``sums``), ``dumbbells``, ``stack`` and ``bands`` find the loads next to the one asked for;
``loadable`` picks one by the squad's rounding, or says why there is none; ``put`` is what they hand over.
``typed`` finds the kilograms that a line gives, with what the gym has for each.
``together`` tells whether several lifters can have their loads at the same time.
"""
