"""Folding of names and the words of the dose."""

import doctest

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.library import names
from setwright.library.names import fold, likeness, pairs, split, without_dose_words
from setwright.library.rows import load_rows

SPELLINGS = [spelling for row in load_rows() for spelling in (row.name, *row.aliases, *row.read_only_aliases)]


@pytest.mark.parametrize(
    ("typed", "same"),
    [
        ("Flat Barbell BENCH press", "flat barbell bench press"),
        ("push-up", "pushup"),
        ("Push Ups", "push-up"),
        ("pull\u2011up", "pull-up"),
        ("presses", "press"),
        ("flies", "fly"),
        ("flyes", "fly"),
        ("crunches", "crunch"),
        ("biceps curl", "bicep curls"),
        ("carries", "carry"),
        ("tyre drag", "tire drag"),
        ("centre grip", "center grip"),
        ("farmer\u2019s walk", "farmers walk"),
        ("lift & chop", "lift and chop"),
        ("DB bench press", "dumbbell bench press"),
        ("dumb bell press", "dumbbell press"),
        ("BB OHP", "barbell overhead press"),
        ("RDLs", "Romanian deadlift"),
        ("SA KB press", "one-arm kettlebell press"),
        ("single-arm row", "1-arm row"),
        ("incline 30\u00b0 press", "incline 30 deg press"),
        ("behind-the-neck press", "behind neck press"),
    ],
)
def test_spellings_of_one_name(typed: str, same: str) -> None:
    assert fold(typed) == fold(same)


@pytest.mark.parametrize(("one", "other"), [("press", "pres"), ("push-up", "pull-up"), ("ys", "y")])
def test_different_names_stay_apart(one: str, other: str) -> None:
    assert fold(one) != fold(other)


@pytest.mark.parametrize(
    ("typed", "rest", "stripped"),
    [
        ("tempo dip", "dip", ("tempo",)),
        ("Half-kneeling press", "press", ("half", "kneeling")),
        ("bench press with chains, each", "bench press", ("chains", "each")),
        ("external rotation with the elbow at the side", "external rotation with the elbow at the side", ()),
        ("left", "", ("left",)),
    ],
)
def test_words_of_the_dose_are_taken_out(typed: str, rest: str, stripped: tuple[str, ...]) -> None:
    assert without_dose_words(typed) == (rest, stripped)


def test_likeness_runs_from_0_to_1() -> None:
    assert likeness(4, len(pairs("bench")), len(pairs("bench"))) == 1
    assert likeness(0, len(pairs("bench")), len(pairs("row"))) == 0


@given(st.sampled_from(SPELLINGS), st.sampled_from(["-", " ", "  ", "\u2013"]), st.booleans())
def test_case_hyphens_and_blanks_never_matter(spelling: str, joint: str, upper: bool) -> None:  # noqa: FBT001  # hypothesis draws it
    typed = spelling.replace("-", joint)
    assert fold(typed.upper() if upper else typed) == fold(spelling)


@given(st.text())
def test_any_text_folds(text: str) -> None:
    assert fold(f" {text} ") == fold(text)
    rest, stripped = without_dose_words(text)
    assert len(split(rest)) + len(stripped) <= len(split(text))


def test_the_examples_run() -> None:
    assert doctest.testmod(names).failed == 0
