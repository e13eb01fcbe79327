"""Sheets as PDF, through WeasyPrint and nothing else: tagged, fonts inside, nothing fetched, the same bytes.

WeasyPrint is the extra ``setwright[pdf]``; only this module knows it.
"""

import hashlib
import logging
import re
import warnings
from collections.abc import Callable
from typing import Any, Final

from setwright.files import CannotRun

NO_PACKAGE: Final = "a PDF needs the package WeasyPrint: type  pip install 'setwright[pdf]'"

NO_LIBRARY: Final = (
    "a PDF needs the system library Pango: on Debian and Ubuntu type  apt install libpango-1.0-0 "
    "libpangoft2-1.0-0 libharfbuzz-subset0,  on macOS  brew install pango,  on Windows install MSYS2 and "
    "there  pacman -S mingw-w64-x86_64-pango"
)

FONTS: Final = (
    (("Liberation Sans", "Arial", "Helvetica"), "fonts-liberation"),
    (("DejaVu Sans", "Verdana"), "fonts-dejavu-core"),
)
"""The families of ``page.css``, any one of each row, and the Debian package that brings the first."""

VARIANT: Final = "pdf/ua-1"
"""PDF/UA-1 (ISO 14289-1): headings, tables and pictures are tagged, language and title said."""

_PAGE: Final = re.compile(r"Creating layout - Page (\d+)")

Tell = Callable[[str], None]


class _Pages(logging.Handler):
    """Passes on which page of which file WeasyPrint says it begins."""

    def __init__(self, tell: Tell) -> None:
        super().__init__()
        self.tell, self.name_of_file = tell, ""

    def emit(self, record: logging.LogRecord) -> None:
        page = _PAGE.search(record.getMessage())
        if page:
            self.tell(f"{self.name_of_file}: page {page[1]}")


def printer(tell: Tell | None = None) -> Callable[[str, str], bytes]:
    """What makes a PDF of a sheet's HTML and the name of its file. ``tell`` hears of each page it begins.

    Raises: CannotRun, in one sentence, where the package, a system library or a font is missing.
    """
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # what it warns of, a machine without fonts, is said below
            import weasyprint  # noqa: PLC0415 - an extra, and slow to load
            from weasyprint.text.ffi import ffi, fontconfig  # noqa: PLC0415 - as above
    except ImportError:
        raise CannotRun(NO_PACKAGE) from None
    except OSError:
        raise CannotRun(NO_LIBRARY) from None
    for families, package in FONTS:
        if not any(_installed(family, ffi, fontconfig) for family in families):
            raise CannotRun(
                f"a PDF needs the font {families[0]} (or {' or '.join(families[1:])}): on Debian and Ubuntu "
                f"type  apt install {package}"
            )
    pages = _Pages(tell) if tell else None
    progress = logging.getLogger("weasyprint.progress")
    progress.handlers[:] = [pages or logging.NullHandler()]
    progress.setLevel(logging.INFO if tell else logging.WARNING)
    fetcher = weasyprint.urls.URLFetcher(allowed_protocols=("data",))

    def print_one(html: str, name_of_file: str) -> bytes:
        if pages:
            pages.name_of_file = name_of_file
        page = weasyprint.HTML(string=html, url_fetcher=fetcher)
        identifier = hashlib.sha256(html.encode("utf-8", "surrogatepass")).digest()[:16]
        made: bytes = page.write_pdf(pdf_variant=VARIANT, pdf_tags=True, pdf_identifier=identifier)
        return made

    return print_one


def _installed(family: str, ffi: Any, fontconfig: Any) -> bool:
    """Whether fontconfig has a font of just this family.

    Asked before anything is laid out, because Pango ends the whole process where there is no font at all.
    """
    config = fontconfig.FcInitLoadConfigAndFonts()
    pattern = fontconfig.FcPatternCreate()
    fontconfig.FcPatternAddString(pattern, b"family", family.encode())
    fontconfig.FcConfigSubstitute(config, pattern, fontconfig.FcMatchPattern)
    fontconfig.FcDefaultSubstitute(pattern)
    match = fontconfig.FcFontMatch(config, pattern, ffi.new("FcResult *"))
    found = ffi.new("FcChar8 **")
    if match == ffi.NULL or fontconfig.FcPatternGetString(match, b"family", 0, found):
        return False
    return bytes(ffi.string(found[0])).decode("utf-8", "replace") == family
