"""Every key of a movement of one's own, and what is said when it can't be read."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.model.own import Grip, OwnMovement
from setwright.own.table import own_table
from tests.own.weeks import own, plan, read, told

PATH = """\
crate press:
  pattern: vertical push
  loaded by: crate
  counted in: reps
  sides: both
  torso: upright
  load pulls: down
  muscles:
    direct: [triceps brachii]
    indirect: [serratus anterior]
  kit: [crate]
  cautions: [Mind the fingers.]
  hands: fixed apart
  note: from the quay
  path:
    - at: start
      plane: 60
      up: 40
      elbow: 130
      forearm: up
    - at: end
      plane: 80
      up: 140
      elbow: 10
      forearm: up
"""


def movement(text: str) -> OwnMovement:
    week = read(text).read.week
    assert week is not None
    (one,) = week.own_movements
    return one


def changed(old: str, new: str) -> str:
    assert old in PATH
    return PATH.replace(old, new)


def test_a_path_is_read_in_full() -> None:
    one, entry = movement(PATH), own(PATH)
    assert [posture.at for posture in one.path] == ["start", "end"]
    assert (one.note, one.recline) == ("from the quay", 0)
    assert entry["implement"] == "crate"
    assert entry["prime"] == ["triceps brachii"]
    assert entry["assist"] == ["serratus anterior"]
    assert entry["cautions"] == ["Mind the fingers."]
    assert entry["needs"] == ["crate"]
    assert entry["hands"] == "fixed apart"
    assert entry["counting"] == "each rep once"
    assert entry["scored"]
    assert entry["serves"] == []


def test_muscles_alone_are_counted_and_the_chest_with_them() -> None:
    text = "band hug:\n  pattern: carry\n  counted in: s\n  muscles:\n    direct: [pectoralis major]"
    entry = own(text)
    assert (entry["scored"], entry["counting"], entry["load_kind"]) == (False, "seconds", "external")
    assert own(f"{text}\n  loaded by: bodyweight")["load_kind"] == "bodyweight"


@pytest.mark.parametrize(
    ("typed", "recline"),
    [
        ("upright", 0), ("Supine", 90), ("prone", -90), ("incline 30 deg", 60), ("decline 15", 105),
        ("bent over 45 degrees", -45), ("lean forward 10", -10), ("leaning back 20 deg", 20),
    ],
)  # fmt: skip
def test_the_trunk_in_words(typed: str, recline: float) -> None:
    assert movement(changed("torso: upright", f"torso: {typed}")).recline == recline


@pytest.mark.parametrize(
    ("typed", "kind", "point", "height", "side"),
    [
        ("up", "support vertical", None, None, None),
        ("against the motion", "against path", None, None, None),
        ("square to the trunk", "support square", None, None, None),
        ("toward the other hand", "toward other hand", None, None, None),
        ("down on a pivoting bar", "pivoting bar", (1.8, -1.4, 0.0), None, None),
        ("toward low pulley", "toward point", None, "low", None),
        ("Toward chest-height anchor in front", "toward point", None, "chest", "in front"),
        ("towards a high pulley to the other side", "toward point", None, "high", "to the other side"),
        ("toward 0.4 m behind, 120 cm below, 0,9 m out", "toward point", (-0.4, -1.2, 0.9), None, None),
    ],
)
def test_the_load_in_words(
    typed: str, kind: str, point: tuple[float, ...] | None, height: str | None, side: str | None
) -> None:
    pull = movement(changed("load pulls: down", f'load pulls: "{typed}"')).pull
    assert pull is not None
    assert (pull.kind, pull.height, pull.side) == (kind, height, side)
    assert pull.point == (None if point is None else pytest.approx(point))


def test_a_grip_in_either_unit() -> None:
    assert movement("a b:\n  like: push-up\n  grip: 1,5 x shoulder widths").grip == Grip(
        value=1.5, in_widths=True
    )
    assert movement("a b:\n  like: push-up\n  grip: 0.6 m").grip == Grip(value=60, in_widths=False)


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("crate press:", "own-movement-unfinished"),
        ("crate press: push press", "own-movement-unfinished"),
        ("crate press:\n  note: heavy", "own-movement-unfinished"),
        ("crate press:\n  muscles: triceps", "value-in-wrong-form"),
        ("crate press:\n  muscles:\n    direct: [triceps brachii]", "own-movement-unfinished"),
        ("crate press:\n  pattern: press\n  muscles:\n    direct: [triceps brachii]", "not-one-of-the-words"),
        ("crate press:\n  pattern: carry\n  muscles:\n    direct: [xyzzy]", "not-one-of-the-words"),
        ("tray:\n  pattern: carry\n  muscles: {indirect: [deltoid]}\n  bench: 30", "own-movement-change"),
        ("crate press:\n  like: [push press]", "value-in-wrong-form"),
        ("crate press:\n  likes: push press", "unknown-key"),
        ("bench press:\n  like: push-up", "own-movement-name-taken"),
        ("row:\n  like: push-up", "own-movement-name-taken"),
        ("crate press:\n  like: push-up\nCrate presses:\n  like: push press", "own-movement-name-taken"),
        (changed("  load pulls: down\n", ""), "own-movement-unfinished"),
        (changed("  torso: upright\n", ""), "own-movement-unfinished"),
        (changed("  pattern: vertical push\n", ""), "own-movement-unfinished"),
        (changed("      plane: 60\n", ""), "own-movement-unfinished"),
        (changed("      elbow: 130\n      forearm: up\n", "      elbow: 130\n"), "own-movement-unfinished"),
        (PATH + "  like: push press\n", "own-movement-unfinished"),
        (PATH + "  grip: 60 cm\n", "own-movement-change"),
        (PATH + "  pulley: 1 m\n", "own-movement-change"),
        (changed("plane: 60", "plane: 170"), "number-expected"),
        (changed("up: 40", "up: level"), "number-expected"),
        (changed("elbow: 130", "elbow: 170"), "number-expected"),
        (changed("torso: upright", "torso: sideways"), "not-one-of-the-words"),
        (changed("torso: upright", "torso: [upright]"), "value-in-wrong-form"),
        (changed("load pulls: down", "load pulls: sideways"), "not-one-of-the-words"),
        (changed("pulls: down", "pulls: toward low pulley round the corner"), "not-one-of-the-words"),
        (changed("load pulls: down", "load pulls: toward 1 m nowhere"), "not-one-of-the-words"),
        (changed("load pulls: down", "load pulls: [down]"), "value-in-wrong-form"),
        (changed("load pulls: down", "load pulls: up"), "own-movement-not-scored"),
        (changed("130\n      forearm: up", "130\n      forearm: sideways"), "not-one-of-the-words"),
        (changed("elbow: 130\n      forearm: up", "forearm: [0, 0, 0]"), "not-one-of-the-words"),
        (changed("elbow: 130\n      forearm: up", "forearm: [[1], 0, 0]"), "not-one-of-the-words"),
        (changed("elbow: 130\n      forearm: up", "forearm:\n        up: 1"), "value-in-wrong-form"),
        (changed("up: 140\n      elbow: 10", "up: 178\n      elbow: 10"), "own-movement-change"),
        ("crate press:\n  like: push-up\n  grip: wide", "number-expected"),
        ("crate press:\n  like: push-up\n  grip: [wide]", "value-in-wrong-form"),
        ("crate press:\n  like: level cable crossover\n  pulley: high", "number-expected"),
        ("crate press:\n  like: level cable crossover\n  pulley: [1 m]", "value-in-wrong-form"),
        ("crate press:\n  path: up", "value-in-wrong-form"),
        ("crate press:\n  path:\n    - up\n    - down", "value-in-wrong-form"),
    ],
)  # fmt: skip
def test_each_fault_is_said_once_or_for_each_posture(text: str, rule: str) -> None:
    findings = told(text)
    assert {finding.rule for finding in findings} == {rule}
    assert len(findings) <= 2
    assert all(finding.change[-1] != "." for finding in findings)


def test_a_pulley_of_no_usual_place_is_asked() -> None:
    text = changed("load pulls: down", "load pulls: toward low pulley").replace("vertical push", "raise")
    (finding,) = told(text)
    assert "where does the pulley of a raise stand?" in finding.message
    assert own(text.replace("low pulley", "low pulley in front"))["scored"]


def test_a_pulley_at_a_height_above_the_floor() -> None:
    low, same = (
        own(
            changed("load pulls: down", "load pulls: toward low pulley behind").replace(
                "reps", f"reps{height}"
            )
        )
        for height in ("", "\n  pulley: 15 cm")
    )
    assert low["parts"] == same["parts"]


def test_a_bench_and_an_arch_set_the_trunk() -> None:
    flat = own(changed("torso: upright", "torso: incline 60"))
    assert own(changed("torso: upright", "bench: 75\n  arch: 15"))["parts"] == flat["parts"]


def test_a_fault_is_said_once_and_its_lines_are_left_alone() -> None:
    for text in ("crate press:\n  note: heavy", "crate press:\n  like: xyzzy"):
        done = read(text, "- Crate Press: 3 x 8")
        assert len(done.read.findings) == 1


def test_a_line_finds_its_own_movement_by_any_spelling() -> None:
    done = read("crate press:\n  like: push press", "- Crate-Presses: 3 x 8")
    assert done.read.findings == ()
    assert done.read.week is not None
    assert [item.key for item in done.read.week.sessions[0].items()] == ["own-crate-press"]


def test_movements_may_stand_in_a_file_of_their_own() -> None:
    head = "plan: A\nmovements: own.yaml\nwork:\n  - crate press: 3 x 8\n"
    from setwright.own.plan import read_plan

    for text in ("movements:\n  crate press:\n    like: push press\n", "crate press:\n  like: push press\n"):
        assert read_plan("week.yaml", head, {"own.yaml": text}.get).read.findings == ()


def test_a_crossing_move_of_ones_own_finishes_the_library_s_presses_and_its_own() -> None:
    done = read(
        "our cross:\n  like: level cable crossover\n  pulley: 1.4 m\n"
        "our copy:\n  like: level cable crossover\n"
        "our bench:\n  like: flat barbell bench press\n"
        "our wide bench:\n  like: flat barbell bench press\n  grip: 80 cm"
    ).table
    bench = [p["key"] for p in done.movement("flat-barbell-bench-press")["partners"] if p["finishes"]]
    assert {"own-our-cross", "own-our-copy"} <= set(bench)
    assert "own-our-copy" in [p["key"] for p in done.movement("own-our-bench")["partners"]]
    assert "own-our-bench" in [p["key"] for p in done.movement("level-cable-crossover")["partners"]]
    wide = [p["key"] for p in done.movement("level-cable-crossover")["partners"]]
    assert "own-our-wide-bench" in wide
    assert all("partner_of" not in done.movement(key) for key in done.keys())  # noqa: SIM118 - a library


def test_a_plan_without_own_movements_has_the_shipped_library() -> None:
    week = read("a b:\n  like: push-up").read.week
    assert week is not None
    from setwright.library.table import library

    assert own_table(week.model_copy(update={"own_movements": ()})).table is library()


PIECES = """
like pattern path at plane up elbow forearm bench grip torso muscles direct load pulls
72 cm 1.5 widths push-up - : [ ] , 30 deg toward low pulley down supine triceps
"""
WORDS = st.sampled_from([*PIECES.split(), "\n", "\n  ", "\n    "])


@settings(max_examples=80, deadline=None)
@given(st.lists(WORDS, max_size=25).map(" ".join))
def test_nothing_typed_breaks_the_reader(text: str) -> None:
    read("ours:\n  " + text)
    plan(text)
