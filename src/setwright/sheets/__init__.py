"""Sheets to print: ``html`` makes one file a kind and paper, from templates in ``data/templates``.

``kinds`` is the table of what there is to print, and a module of each kind's name makes its pages from a
checked plan (``sessions``, ``overview``, ``summary``, ``rack``, ``board``, ``station``, ``log``,
``home``), with ``blocks``, ``headings``, ``boxes``, ``loads``, ``cutting``, ``clock_plan``, ``people``,
``key``. What stands on a sheet is plain data (``view``); ``words`` and ``card_words`` have the fixed words.
``figures`` draws the fibre picture, the strip and the signs as SVG, from the engine's arrays (``fibre``,
``fan``, ``strip``, ``signs``, ``distance``, ``projection``, ``svg``).
``printing`` writes the files: ``names`` calls them, ``editions`` and ``changes`` know the last print,
``pdf`` makes PDFs.
"""

from setwright.sheets.html import sheet_html
from setwright.sheets.kinds import NothingToPrint, WrongPaper, asked
from setwright.sheets.names import sheet_name
from setwright.sheets.printing import Order, print_sheets

__all__ = [
    "NothingToPrint",
    "Order",
    "WrongPaper",
    "asked",
    "print_sheets",
    "sheet_html",
    "sheet_name",
]
