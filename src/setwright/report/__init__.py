"""What is printed, from plain findings and plain library rows; no numpy, no templates.

``terminal`` prints a check for people, ``machine`` as JSON, short lines or annotations; ``wrapping`` fits
texts to 80 columns. ``read`` says a plan back. ``move`` explains movements. ``explain`` tells a rule or lists
the sources; ``rule_docs`` writes docs/rules from the same text.
"""
