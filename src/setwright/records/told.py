"""The report on a week in plain words, in three editions: who may read which, and what stands in it.

It is told as lines of text, which screen and paper print alike.
"""

from collections.abc import Callable, Mapping
from typing import Final, Literal, NamedTuple

from setwright.records import told_coach, told_crew, told_medical
from setwright.records.review import LookBack, Review
from setwright.records.told_shapes import Section

Edition = Literal["crew", "coach", "medical"]


class Form(NamedTuple):
    """One edition: what stands under the title, the sections of a week, and what stands last.

    ``readers``: "public" where anybody may read it.
    """

    readers: Literal["public", "coach", "medical"]
    about: str
    sections: Callable[[LookBack, Review], tuple[Section, ...]]
    last: str = ""


FORMS: Final[Mapping[Edition, Form]] = {
    "crew": Form("public", "For everybody", told_crew.sections),
    "coach": Form("coach", "For the coach: not for the wall", told_coach.sections),
    "medical": Form(
        "medical",
        "For the medical person of these athletes alone",
        told_medical.sections,
        "What was done is held against what was written. Angles are those of each movement in a model of one "
        "body, 5 degrees either way. No diagnosis, no advice.",
    ),
}


class Told(NamedTuple):
    """The report on one week, for the readers of one edition. ``athlete``: whose alone it is, or None."""

    edition: Edition
    athlete: str | None
    review: Review
    sections: tuple[Section, ...]

    @property
    def form(self) -> Form:
        """Who may read it, and what stands first and last."""
        return FORMS[self.edition]

    @property
    def about(self) -> str:
        """Who may read it."""
        return f"For {self.athlete} and who looks after them" if self._is_theirs else self.form.about

    @property
    def _is_theirs(self) -> bool:
        return self.athlete is not None and self.form.readers == "public"

    @property
    def title(self) -> str:
        """The week, and whose report it is."""
        title = f"{self.review.done.week.title}: what was done"
        return f"{self.athlete}, {title}" if self.athlete else title


def told(found: LookBack, edition: Edition, athlete: str | None = None) -> tuple[Told, ...]:
    """The reports on some weeks, by date. ``athlete``: the one that ``found`` is of, if it is of one."""
    make = told_crew.own_sections if edition == "crew" and athlete else FORMS[edition].sections
    name = found.names[0] if athlete else None
    return tuple(Told(edition, name, week, make(found, week)) for week in found.weeks)
