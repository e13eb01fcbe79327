"""``python -m tests.pages OUT``: print every plan, kind and paper; say what came out; 1 on any fault."""

import datetime as dt
import sys
from pathlib import Path

from setwright.checked import Checked
from setwright.sheets import NothingToPrint, sheet_html, sheet_name
from setwright.sheets.kinds import KINDS, Kind
from tests.pages.browser import Browser, installed
from tests.pages.faults import faults, summary, too_long
from tests.pages.measure import measure
from tests.pages.plans import plans

PRINTED = dt.date(2027, 11, 14)


def main(out: Path) -> int:
    """Print everything into ``out``; 0 without faults, 1 with any, 2 without a browser."""
    path = installed()
    if path is None:
        print("no Chromium on this machine; set CHROMIUM to its path")
        return 2
    out.mkdir(parents=True, exist_ok=True)
    with Browser(path) as browser:
        total = sum(
            _print(browser, name, checked, kind, out) for name, checked, kinds in plans() for kind in kinds
        )
    print(f"{total} faults; the page images are in {out}")
    return int(total > 0)


def _print(browser: Browser, name: str, checked: Checked, kind: Kind, out: Path) -> int:
    """Print one plan in one kind, if it gives any, on every paper; the number of faults, each printed."""
    count = 0
    for paper in KINDS[kind].papers:
        file = out / f"{name}--{sheet_name(checked, kind, paper)}"
        try:
            html = sheet_html(checked, kind, paper, PRINTED)
        except NothingToPrint:
            continue
        file.write_text(html, encoding="utf-8")
        seen = measure(browser, file, kind, paper)
        print(summary(f"{name} {kind} {paper}", seen))
        for fault in (*faults(seen), *too_long(seen, kind)):
            print(f"  FAULT {fault}")
            count += 1
    return count


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("usage: python -m tests.pages OUT")
    sys.exit(main(Path(sys.argv[1])))
