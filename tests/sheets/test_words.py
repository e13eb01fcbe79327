"""How numbers, times, dates and groups are written on paper."""

import datetime as dt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.reading.dose import Amount, Rest, Span, Tempo
from setwright.sheets import overview_words, words
from tests.sheets.hand import amount, span


@pytest.mark.parametrize(
    ("plain", "paper"),
    [
        ("4 x 6, 2 left", "4 × 6, 2 left"),
        ("3 x 8-10, 1-2 left", "3 × 8–10, 1–2 left"),
        ("3 x max", "3 × max"),
        ("tempo 3-1-1-0", "tempo 3-1-1-0"),
        ("3 x 5-8 at 2:00-3:00", "3 × 5–8 at 2:00–3:00"),
        ("push-up", "push-up"),
        ("3 x 15 s - 2 x 20 s", "3 × 15 s - 2 × 20 s"),
    ],
)
def test_typeset(plain: str, paper: str) -> None:
    assert words.typeset(plain) == paper


@given(st.text())
def test_typeset_twice_is_typeset_once(text: str) -> None:
    once = words.typeset(text)
    assert words.typeset(once) == once


@pytest.mark.parametrize(
    ("seconds", "written"), [(45, "45 s"), (59.5, "59.5 s"), (60, "1:00"), (90, "1:30"), (3600, "60:00")]
)
def test_clock(seconds: float, written: str) -> None:
    assert words.clock(seconds) == written


def test_dates_do_not_depend_on_the_machine() -> None:
    assert words.long_date(dt.date(2027, 11, 15)) == "Monday 15 November 2027"
    assert words.mark("abc123", dt.date(2027, 1, 2)) == "version abc123 of 2 Jan 2027"
    assert words.mark("abc123", None) == "version abc123"


@pytest.mark.parametrize(
    ("value", "written"),
    [
        (amount(6), "6"),
        (amount(8, 10), "8–10"),
        (Amount(unit="reps", span=Span(low=5, high=None)), "5+"),
        (Amount(unit="reps", span=Span(low=0, high=None)), "max"),
        (Amount(unit="reps", span=Span(low=0, high=None), less_than_tested=2), "max − 2"),
        (amount(30, unit="s"), "30 s"),
        (amount(90, unit="s"), "90 s"),
        (amount(150, unit="s"), "2:30"),
        (amount(20, 30, unit="s"), "20–30 s"),
        (amount(40, unit="m"), "40 m"),
        (amount(12, unit="steps"), "12"),
    ],
)
def test_amount(value: Amount, written: str) -> None:
    assert words.amount(value) == written


@pytest.mark.parametrize(
    ("value", "written"),
    [
        (Rest(kind="seconds", low=120, high=120), "2:00"),
        (Rest(kind="seconds", low=120, high=180), "2:00–3:00"),
        (Rest(kind="seconds", low=45), "45 s"),
        (Rest(kind="metres", low=400), "for 400 m"),
        (Rest(kind="times_work", low=1), "equal to the work"),
        (Rest(kind="times_work", low=0.5), "half the work"),
        (Rest(kind="times_work", low=3), "3 times the work"),
        (Rest(kind="as_needed"), "as needed"),
        (Rest(kind="partner"), "while your partner works"),
        (Rest(kind="none"), "none"),
    ],
)
def test_rest(value: Rest, written: str) -> None:
    assert words.rest(value) == written


@pytest.mark.parametrize(
    ("value", "written"),
    [
        (Tempo(lower_s=3, bottom_s=1, lift_s="X", top_s=0), "tempo 3-1-X-0"),
        (Tempo(lower_s=3), "3 s down"),
        (Tempo(lift_s="X", bottom_s=2), "2 s at the bottom, fast up"),
        (Tempo(held_s=2, held_at="at the chest"), "2 s at the chest"),
    ],
)
def test_tempo(value: Tempo, written: str) -> None:
    assert words.tempo(value) == written


def test_small_sentences() -> None:
    assert words.days_to_match(0) == "match day"
    assert words.days_to_match(1) == "1 day to the match"
    assert words.days_to_match(4) == "4 days to the match"
    assert words.sentence("stop here") == "Stop here."
    assert words.sentence("Stop!") == "Stop!"
    assert overview_words.remarks_title(0, 0) == "No gaps"
    assert overview_words.remarks_title(1, 2) == "One gap, two accepted"
    assert overview_words.remarks_title(9, 0) == "9 gaps"
    assert overview_words.counts("3", "0 to 6", 0) == "Pull 3 sets, push 0 to 6 sets."
    assert overview_words.counts("3", "6", 1) == "Pull 3 sets, push 6 sets; 1 move counted, not scored."
    assert overview_words.minutes(57.6, 60) == "58 of 60 min"
    assert overview_words.minutes(57.6, None) == "about 58 min"


@given(st.text(min_size=1))
def test_a_footer_never_grows_past_its_line(name: str) -> None:
    assert len(words.short(name)) <= words.FOOTER_NAME


def test_span_is_used_for_ranges() -> None:
    assert words.span(span(2, 4)) == "2–4"


@pytest.mark.parametrize(
    ("place", "letter"), [(0, "a"), (25, "z"), (26, "aa"), (27, "ab"), (52, "ba"), (702, "aaa")]
)
def test_letters_of_a_group(place: int, letter: str) -> None:
    assert words.letter(place) == letter
