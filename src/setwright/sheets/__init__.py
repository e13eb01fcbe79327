"""Sheets to print: ``html`` makes one file a kind and paper, from templates in ``data/templates``.

``view`` is what stands on a sheet, as plain data; ``sessions``, ``overview`` and ``summary`` fill it from a
checked plan, with ``blocks``, ``headings``, ``boxes``, ``loads``, ``cutting``, ``key``; ``words`` has fixed
words.
``figures`` draws the fibre picture, the strip and the signs as SVG, from the engine's arrays (``fibre``,
``fan``, ``strip``, ``signs``, ``distance``, ``projection``, ``svg``).
"""

from setwright.sheets.html import sheet_html, sheet_name

__all__ = ["sheet_html", "sheet_name"]
