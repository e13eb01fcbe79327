"""The half-minute summary: what an experienced colleague asks before a week is published.

``page`` puts the eight answers together: ``fits`` (with ``stations``), ``loading``, ``hurt``, ``balance``,
``dose``, ``progress`` (with ``weeks`` and ``maxes``, the block in sentences), ``odd``, and what changed.
``shapes``: the answers as data. They name athletes, so only the coach's own screen and folder get them.
"""

from setwright.glance.page import glance
from setwright.glance.shapes import Answer, Glance

__all__ = ["Answer", "Glance", "glance"]
