"""Plans, squads and gyms garbled by chance: whatever is typed, a check says findings and never breaks.

``seeds`` holds the texts that are garbled, ``garble`` the ways to do it, each input from its own number.
``verdict`` says what must hold of a check; ``shrink`` makes a failing input small.
``python -m tests.fuzz --count 5000 --seed 1`` runs it; ``--only N`` does one input again.
"""
