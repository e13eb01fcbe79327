"""A movement like another one with something changed comes out like the library's own of that kind."""

from collections.abc import Mapping
from typing import Any

import pytest

from setwright.library.table import library
from setwright.own import scoring
from tests.own.weeks import own, told


def like(name: str, *changes: str) -> Mapping[str, Any]:
    return own("\n".join([f"ours:\n  like: {name}", *(f"  {change}" for change in changes)]))


def lever(entry: Mapping[str, Any]) -> list[float]:
    return [part["lever_mm"] for part in entry["parts"].values()]


def shares(entry: Mapping[str, Any]) -> list[float]:
    return [part["share"] for part in entry["parts"].values()]


@pytest.mark.parametrize(
    ("base", "change", "shipped"),
    [
        ("flat barbell bench press", "bench: 30", "incline-30-barbell-bench-press"),
        ("flat dumbbell bench press", "bench: 30 deg", "incline-30-dumbbell-bench-press"),
        ("flat dumbbell bench press", "bench: -15", "decline-15-dumbbell-bench-press"),
        ("flat dumbbell fly", "bench: 30", "incline-30-dumbbell-fly"),
        ("flat barbell bench press", "arch: 15", "decline-15-barbell-bench-press"),
        ("flat barbell bench press", "grip: 81 cm", "wide-grip-barbell-bench-press"),
        ("flat barbell bench press", "grip: 0.72 m", "flat-barbell-bench-press"),
        ("push-up", "hands raised: 60 cm", "hands-raised-push-up"),
        ("push-up", "hands raised: 0 cm", "push-up"),
        ("level cable crossover", "pulley: 1.4 m", "level-cable-crossover"),
    ],
)
def test_a_change_leads_to_the_shipped_movement(base: str, change: str, shipped: str) -> None:
    """Shares to 0.03, levers to 4 mm: the library draws its paths one by one, ours are turned and shifted."""
    ours, theirs = like(base, change), library().movement(shipped)
    assert shares(ours) == pytest.approx(shares(theirs), abs=0.03)
    assert lever(ours) == pytest.approx(lever(theirs), abs=4)
    assert ours["serves"] == theirs["serves"]
    assert not ours["refused"]


def test_an_arch_takes_away_from_the_bench() -> None:
    both = like("flat dumbbell bench press", "bench: 30", "arch: 15")
    assert shares(both) == pytest.approx(shares(like("flat dumbbell bench press", "bench: 15")), abs=0.01)


def test_a_pulley_set_higher_takes_load_from_the_clavicular_part() -> None:
    low, high = (like("low-to-high cable crossover", f"pulley: {height}") for height in ("20 cm", "1.4 m"))
    assert shares(low)[0] > shares(high)[0] + 0.2


def test_a_strap_keeps_its_direction_when_the_hands_are_raised() -> None:
    low, high = (like("suspension strap push-up", f"hands raised: {cm} cm") for cm in (10, 60))
    assert shares(high)[2] > shares(low)[2]


def test_the_trunk_and_the_load_can_be_changed() -> None:
    leaning = like("band fly", "torso: bent over 20 deg")
    assert lever(leaning) == pytest.approx(lever(library().movement("band-fly")), abs=1)
    pulled = like("band fly", "load pulls: toward low pulley")
    assert shares(pulled)[0] > shares(library().movement("band-fly"))[0]
    renamed = like("band fly", "pattern: horizontal push", "load pulls: toward shoulder-height anchor behind")
    assert renamed["pattern"] == "horizontal push"


def test_a_leaning_dip_follows_the_lean_that_is_typed() -> None:
    assert (
        like("dip", "torso: lean forward 35")["line"]
        == library().movement("parallel-bar-dip-leaning")["line"]
    )


def test_shoulder_widths_are_those_of_the_model() -> None:
    assert lever(like("flat barbell bench press", "grip: 1.5 shoulder widths")) == pytest.approx(
        lever(like("flat barbell bench press", "grip: 58.6 cm")), abs=0.11
    )


@pytest.mark.parametrize(
    ("text", "rule", "says"),
    [
        ("like: dip\nbench: 30", "own-movement-change", "not done with the back on a bench"),
        ("like: barbell overhead press\narch: 5", "own-movement-change", "not done on the back"),
        ("like: dip\ngrip: 60 cm", "own-movement-change", "do not stay one width apart"),
        ("like: flat dumbbell bench press\ngrip: 60 cm", "own-movement-change", "one width apart"),
        ("like: push-up\npulley: 1 m", "own-movement-change", "nothing pulls the hand toward a pulley"),
        ("like: flat bench cable fly\npulley: 1 m", "own-movement-change", "not done standing"),
        ("like: wide-grip pulldown\npulley: 1 m", "own-movement-change", "not done standing"),
        ("like: dip\nhands raised: 20 cm", "own-movement-change", "is no push-up"),
        ("like: push-up\nhands raised: 2 m", "own-movement-change", "higher than the shoulders"),
        ("like: back squat\nbench: 30", "own-movement-change", "counted, not scored"),
        ("like: flat barbell bench press\ngrip: 150 cm", "own-movement-not-scored", "cm too short"),
        ("like: band fly\nload pulls: toward high pulley in front", "own-movement-not-scored", "helps"),
        ("like: flat barbell bench press\nload pulls: up", "own-movement-not-scored", "so it helps"),
        ("like: plank\nload pulls: toward low pulley", "own-movement-change", "counted, not scored"),
        ("like: flat barbel bench", "unknown-movement", "no single movement of the library"),
        ("like: xyzzy", "unknown-movement", "no single movement of the library"),
        ("like: row", "movement-unclear", "no single movement of the library"),
    ],
)  # fmt: skip
def test_what_does_not_fit_is_said(text: str, rule: str, says: str) -> None:
    lines = "\n".join(f"  {line}" for line in text.replace("plank", "front plank").splitlines())
    (finding,) = told(f"ours:\n{lines}")
    assert finding.rule == rule
    assert says in finding.message
    assert finding.where == "own movements"


def test_a_movement_that_no_forces_hold_is_told_and_not_scored(monkeypatch: pytest.MonkeyPatch) -> None:
    def unsolved(_: object) -> None:
        raise ArithmeticError

    monkeypatch.setattr(scoring, "scored_fields", unsolved)
    (finding,) = told("ours:\n  like: flat barbell bench press\n  bench: 10")
    assert finding.rule == "own-movement-not-scored"
    assert "no muscle forces that hold one of the postures" in finding.message


def test_a_change_without_a_value_is_not_written() -> None:
    assert lever(like("flat barbell bench press", "bench:", "grip: 81 cm")) == lever(
        like("flat barbell bench press", "grip: 81 cm")
    )


def test_a_change_that_a_trap_has_spoken_of_leaves_the_movement_unread() -> None:
    (finding,) = told("ours:\n  like: flat dumbbell bench press\n  bench: load: 30 deg")
    assert finding.rule == "second-colon"


@pytest.mark.parametrize(
    ("base", "loaded_by", "needs"),
    [
        ("bent-over barbell row", "two dumbbells", ["dumbbell pair"]),
        ("standing barbell overhead press", "hose pack", []),
        ("flat barbell bench press", "a kettlebell", ["flat bench", "kettlebell"]),
        ("flat dumbbell bench press", "barbell", ["flat bench", "bar and plates"]),
    ],
)
def test_another_load_needs_its_own_stations(base: str, loaded_by: str, needs: list[str]) -> None:
    assert like(base, f"loaded by: {loaded_by}")["needs"] == needs
    assert like(base, f"loaded by: {loaded_by}", "kit: [tyre]")["needs"] == ["tyre"]
