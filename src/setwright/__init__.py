"""Setwright: a programme designer for strength coaches.

One flow, always in this direction:
plan text (``reading``) -> typed models (``model``) -> fibre engine (``engine``,
compiled into ``data/library.json`` and read by ``library``) -> what a week adds up to
(``coverage``) -> findings (``rules``, ``report``) and paper (``sheets``); ``cli`` is on top.
"""

__version__ = "0.1.0"
