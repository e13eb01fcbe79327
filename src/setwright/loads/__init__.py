"""What a line asks of an athlete in kilograms, and what a load is on the floor: what this gym can put on.

``ranges`` holds a number with two ends. ``estimates``: a max from repetitions, by the published formulas;
``handbook``: the percent that so many repetitions go with. ``bodyweight``: how much of the body is lifted.
``maxes``: what is on file for an athlete, a movement and a day; ``asked_for``: the kilograms of a load, not
rounded.

``means_of`` says what a movement is loaded by here: a bar, dumbbells, a stack, a band.
``plates`` (with ``sums``), ``dumbbells``, ``stack`` and ``bands`` find the loads next to the one asked for;
``loadable`` picks one by the squad's rounding, or says why there is none; ``put`` is what they hand over.
``typed`` finds the kilograms that a line gives, with what the gym has for each.
``together`` tells whether several lifters can have their loads at the same time.
"""
