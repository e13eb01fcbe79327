"""What a line asks of an athlete in kilograms, and what a load is on the floor: what this gym can put on.

``ranges`` holds a number with two ends. ``estimates``: a max from repetitions, by the published formulas;
``handbook``: the percent that so many repetitions go with. ``bodyweight``: how much of the body is lifted.
``maxes``: what is on file for an athlete, a movement and a day; ``asked_for``: the kilograms of a load, not
rounded. ``lines``: the lines of a session as they are done, and by whom.

``means_of`` says what a movement is loaded by here: a bar, dumbbells, a stack, a band.
``plates`` (with ``sums``), ``dumbbells``, ``stack`` and ``bands`` find the loads next to the one asked for;
``loadable`` picks one by the squad's rounding, or says why there is none; ``put`` is what they hand over.
``typed`` finds what a load of a line comes to for each athlete, with what the gym has for it; ``sets`` does
so for all sets of a line, warm-up sets first. ``together`` tells whether several loads are there at the same
time, ``at_once`` for whom of a line they are not.
"""
