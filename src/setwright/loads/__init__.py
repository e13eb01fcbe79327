"""What a load is on the floor: what this gym can put on, and what it takes.

``means_of`` says what a movement is loaded by here: a bar, dumbbells, a stack, a band.
``plates``, ``dumbbells``, ``stack`` and ``bands`` find the loads just below and above the one asked for;
``loadable`` picks one by the squad's rounding, or says why there is none; ``put`` is what they hand over.
``together`` tells whether several lifters can have their loads at the same time.
"""
