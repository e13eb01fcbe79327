"""What is read and typed back reads the same: lines of the dose, and items with words in it or beneath."""

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from setwright.model.plan import Item
from setwright.reading.asked import MOST_CHARACTERS
from setwright.reading.dose import Dose
from setwright.reading.doseline import read_dose
from setwright.reading.habits import Habits
from setwright.reading.say import say_dose
from tests.reading import typed_back
from tests.reading.dose_lines import at
from tests.reading.plans import read

HABITS = Habits(unit="kg", dose_order="sets x reps", bands=frozenset({"red"}))
INTS = st.integers(1, 12)


def ranges(low: int, high: int) -> st.SearchStrategy[str]:
    ends = st.tuples(st.integers(low, high), st.integers(low, high)).map(sorted)
    return ends.map(lambda pair: f"{pair[0]}" if pair[0] == pair[1] else f"{pair[0]}-{pair[1]}")


def listed(one: st.SearchStrategy[str], join: str) -> st.SearchStrategy[str]:
    return st.lists(one, min_size=2, max_size=5).map(join.join)


NUMBERS = INTS.map(str)
UNITS = (" s", " s hold", " m", " steps", " cal")
AMOUNTS = st.one_of(
    ranges(1, 30),
    *(st.builds("{}{}".format, ranges(1, 90), st.just(unit)) for unit in UNITS),
    st.sampled_from(["max", "5+", "tested max minus 2", "1:30", ":45", "2 min", "8 s fast"]),
    st.just("6 + 4 lowering only"),
)  # fmt: skip
HEADS = st.one_of(
    st.builds("{} {} {}".format, ranges(1, 6), st.sampled_from(["x", "sets of", "sets x"]), AMOUNTS),
    st.builds("sets of {}".format, listed(ranges(1, 20), ", ")),
    st.builds("sets of {}".format, listed(st.sampled_from(["30 s", "45 s", "1:00"]), ", ")),
    st.builds(
        "{} x {} {}".format,
        NUMBERS,
        st.sampled_from(["cluster", "rest-pause", "partials"]),
        listed(NUMBERS, " + "),
    ),
    st.builds("{} x ladder {} to {}".format, NUMBERS, NUMBERS, NUMBERS),
    st.builds("ladder 1 to {} to 1".format, st.integers(2, 10)),
    st.builds("ladder 2 to {} by 2".format, st.sampled_from([4, 10, 20])),
    st.builds("{} total".format, st.integers(20, 100)),
    st.sampled_from(["work up to 5RM", "test 3RM", "test max reps", "30 min", "2 km", "12, 10, 8"]),
)
SIDES = st.sampled_from(
    ["", "", "", " each side", " each arm alternating", " left", " weaker side", " in all", " /leg"]
)
LOADS = st.one_of(
    st.builds("at {} kg".format, ranges(11, 120)),
    st.builds("at {}%".format, ranges(40, 100)),
    st.builds("at {} kg".format, listed(st.integers(40, 90).map(str), ", ")),
    st.sampled_from([
        "62,5 kg", "135 lb", "135#", "at 2 x 20 kg", "24 kg each", "at 75% of training max",
        "at 70% of back squat",
        "at 60% of bodyweight", "at bodyweight", "at bodyweight + 10 kg", "at BW - 20 kg",
        "at bar + 20 kg a side",
        "at bar", "at 10RM", "at pin 7", "with 2 red bands", "with red band to 2 m", "at own choice", "heavy",
        "at 0.5 m/s", "at last time + 5 kg", "at last week + 2.5%", "at 60% + 20 kg chain", "rising to 80 kg",
        "rising to 85%", "at 62.5", "at 90% of top set",
    ]),
)  # fmt: skip
HOW = {
    "load": LOADS,
    "effort": st.one_of(
        st.sampled_from(
            ["2 RIR", "at 1-2 RIR", "RPE 8", "RPE 7.5-8", "Borg 13", "to failure", "at 3, 2, 1 RIR"]
        )
    ),
    "rest": st.sampled_from([
        "rest 2:00", "rest 90", "rest 60-90 s", "rest none", "rest as needed", "rest when partner is done",
        "rest 400 m", "rest equal to the work", "rest half the work", "rest 3 times the work", "45 s rest",
    ]),
    "tempo": st.sampled_from([
        "tempo 3-1-1-0", "tempo 31X1", "3 s down", "fast up", "2 s up, pause 1 s at the top",
        "4 s down, pause 2 s at the bottom", "pause 2 s at the chest",
    ]),
    "pause": st.just("pause 20 s"),
    "every": st.sampled_from(["every 1:00", "every minute", "every 90 s"]),
    "drop": st.sampled_from(["drop 20% for max", "drop to 30 kg for 8", "drop 20% for 6, drop 10% for max"]),
    "cap": st.sampled_from(["cap 8", "cap 12:00"]),
    "target": st.just("in 24 s"),
    "rate": st.just("rate 20"),
    "split": st.just("split 2:05.3"),
    "stop": st.just("stop at 20% slower"),
    "last": st.sampled_from([
        "last set 5+", "last set to failure", "last set max at 50 kg", "last set drop 20% for max",
    ]),
}  # fmt: skip


@st.composite
def groups(draw: st.DrawFn) -> str:
    """How much, a side, and some of the words for how."""
    kinds = draw(st.lists(st.sampled_from(sorted(set(HOW) - {"last"})), unique=True, max_size=4))
    how = [draw(HOW[kind]) for kind in [*kinds, *(["last"] if draw(st.integers(0, 5)) == 0 else [])]]
    return ", ".join([draw(HEADS) + draw(SIDES), *how])


LINES = st.one_of(groups(), groups(), st.lists(groups(), min_size=2, max_size=3).map(", then ".join))


def dose_of(line: str) -> Dose | None:
    dose, _ = read_dose(line, at(line), HABITS)
    return dose


def meaning(dose: Dose) -> tuple[object, ...]:
    return dose.groups, dose.warm_up


@settings(max_examples=400, deadline=None)
@given(LINES)
def test_a_line_typed_back_means_the_same(line: str) -> None:
    dose = dose_of(line)
    assume(dose is not None)
    assert dose is not None
    back = typed_back.line(dose)
    assume(len(back) <= MOST_CHARACTERS)
    again = dose_of(back)
    assert again is not None, back
    assert meaning(again) == meaning(dose), back
    assert say_dose(again, HABITS) == say_dose(dose, HABITS)
    assert typed_back.line(again) == back


BENEATH = {"load": ("at ", "with "), "effort": ("at ",), "rest": ("rest ",), "tempo": ("tempo ",)}
"""Words of an item that may stand in the line or underneath, and the lead words that they lose there."""


@st.composite
def spread(draw: st.DrawFn) -> tuple[str, dict[str, str]]:
    """How much, and some of the words that may stand beneath it."""
    kinds = draw(st.lists(st.sampled_from(sorted(BENEATH)), min_size=1, unique=True))
    return draw(HEADS) + draw(SIDES), {kind: draw(HOW[kind]) for kind in kinds}


def item(line: str, beneath: dict[str, str]) -> Item | None:
    """The item of a plan with the line and the keys beneath it; None when something is asked."""
    keys = "".join(f"    {key}: {value!r}\n" for key, value in beneath.items())
    done = read(f"plan: A\nunit: kg\ndose order: sets x reps\nwork:\n  - pull-up: {line}\n{keys}")
    assert done.week is not None
    (only,) = done.week.sessions[0].items()
    return only if done.complete else None


def without_lead(kind: str, words: str) -> str:
    lead = next((one for one in BENEATH[kind] if words.startswith(one)), "")
    return words.removeprefix(lead).removesuffix(" rest")


@settings(max_examples=150, deadline=None)
@given(spread())
def test_words_in_the_line_and_beneath_it_mean_the_same(typed: tuple[str, dict[str, str]]) -> None:
    head, how = typed
    in_line = item(", ".join([head, *how.values()]), {})
    assume(in_line is not None)
    beneath = item(head, {kind: without_lead(kind, words) for kind, words in how.items()})
    assert in_line is not None
    assert beneath is not None
    assert in_line.dose is not None
    assert beneath.dose is not None
    assert meaning(beneath.dose) == meaning(in_line.dose)
