"""Sheets to print: ``html`` makes one file a kind and paper, from templates in ``data/templates``.

``kinds`` is the table of what there is to print. ``view`` is what stands on a sheet, as plain data;
``sessions`` and ``overview`` fill it from a checked plan, with ``blocks``, ``headings``, ``boxes``,
``loads``, ``cutting``, ``key``; ``words`` has fixed words. ``figures`` draws the fibre picture, the strip
and the signs as SVG, from the engine's arrays (``fibre``, ``fan``, ``strip``, ``signs``, ``distance``,
``projection``, ``svg``). ``printing`` writes the files: ``names`` calls them, ``editions`` and ``changes``
know the last print, ``pdf`` makes PDFs.
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
