"""Any text gives a dose or findings; a grammatical line has the meaning of its parts."""

import string

from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.reading import keys
from setwright.reading.counting import count
from setwright.reading.dose import Span
from setwright.reading.doseline import read_dose
from setwright.reading.habits import Habits
from setwright.reading.say import say_dose
from setwright.reading.short import dose_short
from setwright.reading.vocabulary import VOCABULARY
from tests.reading.dose_lines import KG, at, read

PIECES = [
    *VOCABULARY,
    *("x", "X", "×", "*", "-", "–", "+", "/", ",", ", ", ":", "%", "#", "@", "(", ")", "[", "]", "'", '"'),
    *("1", "2", "3", "5", "8", "10", "12", "20", "60", "62,5", "75", "2.5", "1:30", ":45", "0:30.5", "31X1"),
    *("red", "A1", "EMOM", "->", "Aug", "wk", "TM", "back squat", "\u00a0", "\u200b", "sets of", "last set"),
]
HABITS = st.builds(
    Habits,
    unit=st.sampled_from([None, "kg", "lb"]),
    dose_order=st.sampled_from([None, "sets x reps", "reps x sets"]),
    percent_of=st.sampled_from([None, "training max"]),
    bands=st.sampled_from([None, frozenset({"red"})]),
    member=st.sampled_from(["alone", "rounds", "each", "ladder"]),
)
LINES = st.one_of(
    st.lists(st.sampled_from(PIECES), max_size=12).map(" ".join),
    st.lists(st.sampled_from(PIECES), max_size=12).map("".join),
    st.text(max_size=40),
    st.text(alphabet=string.printable, max_size=40),
)


def check_findings(text: str, findings: tuple[object, ...]) -> None:
    for finding in findings:
        place = finding.place  # type: ignore[attr-defined]
        assert place.line == 7
        assert 1 <= place.column <= place.end_column <= len(text) + 1


@settings(max_examples=600)
@given(LINES, HABITS)
def test_any_text_is_read_or_asked_and_never_breaks(text: str, habits: Habits) -> None:
    dose, findings = read_dose(text, at(text), habits)
    assert (dose is None) == bool(findings)
    check_findings(text, findings)
    if dose is not None:
        assert say_dose(dose, habits) == say_dose(dose, habits) != ""
        dose_short(dose)
        counted = count(dose)
        assert counted.hard.low <= counted.sets.low
        assert counted.seconds >= 0
        assert read_dose(text, at(text), habits) == (dose, findings)


@settings(max_examples=150)
@given(LINES, HABITS, st.sampled_from(["load", "effort", "rest", "tempo", "sides", "warm_up"]))
def test_any_key_is_read_or_asked(text: str, habits: Habits, name: str) -> None:
    value, findings = getattr(keys, f"read_{name}")(text, at(text), habits)
    assert (value is None) == bool(findings)
    check_findings(text, findings)


def spans(low: int, high: int) -> st.SearchStrategy[tuple[str, Span]]:
    def pair(ends: tuple[int, int]) -> tuple[str, Span]:
        first, last = sorted(ends)
        text = str(first) if first == last else f"{first}-{last}"
        return text, Span(low=first, high=last)

    return st.tuples(st.integers(low, high), st.integers(low, high)).map(pair)


LOADS = [
    (" at 75%", "percent"),
    (", 60 kg", "mass"),
    (" at bodyweight + 10 kg", "bodyweight"),
    (" at pin 7", "setting"),
    ("", None),
]
EFFORTS = [(", 2 RIR", "RIR"), (", RPE 7-8", "RPE"), (" Borg 13", "Borg"), ("", None)]
RESTS = [(", rest 2:00", "seconds"), (" rest as needed", "as_needed"), (", 90 s rest", "seconds"), ("", None)]
SIDES = [(" each side", "each"), (" left", "left"), (" in all", "in_all"), ("", None)]
TEMPOS = [(", tempo 31X0", 3.0), (", 4 s down", 4.0), ("", None)]


@settings(max_examples=200)
@given(
    st.tuples(spans(1, 5), spans(1, 30)),
    st.tuples(st.sampled_from(SIDES), st.sampled_from(LOADS)),
    st.permutations(["effort", "rest", "tempo"]),
    st.fixed_dictionaries(
        {"effort": st.sampled_from(EFFORTS), "rest": st.sampled_from(RESTS), "tempo": st.sampled_from(TEMPOS)}
    ),
)
def test_a_grammatical_line_means_its_parts(
    numbers: tuple[tuple[str, Span], tuple[str, Span]],
    side_and_load: tuple[tuple[str, str | None], tuple[str, str | None]],
    order: list[str],
    how: dict[str, tuple[str, str | float | None]],
) -> None:
    (sets, reps), (side, load) = numbers, side_and_load
    line = f"{sets[0]} sets of {reps[0]}{side[0]}{load[0]}" + "".join(how[name][0] for name in order)
    (group,) = read(line, KG).groups
    (work,) = group.works
    assert (group.sets, work.amount.span) == (sets[1], reps[1])
    assert (group.sides and group.sides.kind) == side[1]
    assert (work.load and work.load.kind) == load[1]
    assert (work.effort and work.effort.scale) == how["effort"][1]
    assert (group.rest and group.rest.kind) == how["rest"][1]
    assert (group.tempo and group.tempo.lower_s) == how["tempo"][1]


@settings(max_examples=100)
@given(st.lists(st.integers(1, 30), min_size=2, max_size=8), st.sampled_from([", ", ","]))
def test_a_list_has_one_set_a_number(reps: list[int], comma: str) -> None:
    (group,) = read(f"sets of {comma.join(map(str, reps))}").groups
    assert [work.amount.span.low for work in group.works] == reps
    assert group.sets.low == len(reps)


@settings(max_examples=100)
@given(
    spans(1, 5),
    spans(1, 30),
    st.sampled_from(EFFORTS[:2] + EFFORTS[3:]),
    st.sampled_from(SIDES[:2] + SIDES[3:]),
)
def test_the_short_form_reads_the_same(
    sets: tuple[str, Span],
    reps: tuple[str, Span],
    effort: tuple[str, str | None],
    side: tuple[str, str | None],
) -> None:
    habits = Habits(dose_order="sets x reps")
    dose = read(f"{sets[0]} x {reps[0]}{side[0]}{effort[0]}", habits)
    again = read(dose_short(dose).replace("left", "RIR") if side[1] != "left" else dose.text, habits)
    assert again.groups == dose.groups
