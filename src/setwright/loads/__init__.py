"""What a line asks of an athlete, in kilograms.

``ranges`` holds a number with two ends. ``estimates``: a max from repetitions, by the published formulas;
``handbook``: the percent that so many repetitions go with. ``bodyweight``: how much of the body is lifted.
``maxes``: what is on file for an athlete, a movement and a day; ``asked_for``: the kilograms of a load.
Nothing here knows plates, and nothing is rounded.
"""
