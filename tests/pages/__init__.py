"""Printed pages in a real browser: ``python -m tests.pages OUT``.

``browser`` drives an installed Chromium over its DevTools pipe; nothing is downloaded.
``plans`` holds the plans that are printed, ``measure`` what is read off the page and the PDF,
``faults`` what may not be found there, ``__main__`` prints one line a sheet and leaves with 1
on any fault. The page images land in OUT, to be looked at.
"""
