"""The search: what it closes, what it never proposes, and that nothing smaller was there to find."""

from collections import Counter
from itertools import combinations, permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.findings import Level
from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.rules import (
    crossing_work_only,
    heavy_line_not_finished,
    line_never_followed,
    no_cure_in_this_gym,
    no_heavy_lift_for_part,
    nobody_can_use,
    part_not_loaded,
    push_without_pull,
    sets_under_range,
)
from setwright.rules.limits import nears
from setwright.rules.stations import has
from setwright.swapping.abilities import able, facts, finishing
from setwright.swapping.candidates import Candidates
from setwright.swapping.changes import Change, Spot, changed, dosable, lines, only_added
from setwright.swapping.search import A_MINUTE, search
from setwright.swapping.state import NEVER_CLOSED, Judge, State
from tests.rules.plans import beside_the_example, checked, week, without
from tests.swapping.plans import FLAWED, GOOD, judge_of, movement, narrow, proposed, screen, typed_in

SHORT = sets_under_range.BAD.replace("unit: kg", "unit: kg\naim: size")
FEW = SHORT.replace("2 x 8", "8 x 8").replace("4 x 8", "10 x 8")

BAD = {
    "part-not-loaded": part_not_loaded.BAD,
    "line-never-followed": line_never_followed.BAD.replace("unit: kg", "unit: kg\nfocus: [chest]"),
    "crossing-work-only": crossing_work_only.BAD,
    "no-heavy-lift-for-part": without(GOOD, "incline 30 barbell bench press"),
    "no-work-across-the-midline": FLAWED,
    "heavy-line-not-finished": heavy_line_not_finished.BAD,
    "push-without-pull": push_without_pull.BAD,
    "sets-under-range": FEW,
    "nobody-can-use": nobody_can_use.BAD,
}


@pytest.mark.parametrize("rule", BAD)
def test_each_gap_is_closed_and_the_typed_lines_check_clean(rule: str) -> None:
    crew = BAD[rule].count("gym: gym.yaml") > 0
    beside = {"beside": beside_the_example} if crew else {}
    assert rule in {f.rule for f in checked(BAD[rule], **beside).findings if f.level >= Level.gap}
    proposal = proposed(BAD[rule], crew=crew)
    assert not proposal.found.left
    after = checked(typed_in(BAD[rule], proposal), **beside)
    assert {f.rule for f in after.findings if f.level >= Level.gap} <= NEVER_CLOSED


def test_a_plan_without_a_gap_is_left_alone() -> None:
    proposal = proposed(GOOD, crew=True)
    assert (proposal.found.best, proposal.edits, proposal.found.tried) == (None, None, 0)
    assert "no gap is open" in screen(no_heavy_lift_for_part.GOOD)


def test_what_nothing_here_closes_is_said_and_stays_open() -> None:
    proposal = proposed(no_cure_in_this_gym.BAD)
    assert proposal.found.best is None
    assert proposal.found.left == proposal.found.before.gaps
    said = " ".join(screen(no_cure_in_this_gym.BAD).split())
    assert "No 3 changes with this gym, inside everyone's limits and in the minutes written" in said


def test_sets_that_no_three_changes_can_hold_stay_open_and_the_rest_is_closed() -> None:
    found = proposed(SHORT).found
    assert found.before.gaps.total() > 1
    assert [key.rule for key in found.left] == ["sets-under-range"]
    assert found.stopped_at is None


def test_a_gap_that_a_change_opens_is_closed_by_the_next() -> None:
    found = proposed(BAD["line-never-followed"]).found
    assert found.best
    first = changed(found.before.week, found.best.changes[:1])
    assert len(found.best.changes) == 2
    assert judge_of(checked(BAD["line-never-followed"]))(first).gaps


def test_a_line_without_kit_is_replaced_on_every_day_that_has_it() -> None:
    text = nobody_can_use.BAD + "  - day: Thursday\n    work:\n      - dip: 2 x 8 at 2 RIR\n"
    found = proposed(text).found
    assert not found.left
    assert found.best
    assert [(c.kind, c.spot) for c in found.best.changes] == [
        ("replace", Spot(0, 0)),
        ("replace", Spot(1, 0)),
    ]


def test_the_minutes_written_hold_what_is_proposed() -> None:
    text = push_without_pull.BAD.replace("    work:", "    minutes: 17\n    work:")
    found = proposed(text).found
    assert found.best
    assert [change.kind for change in found.best.changes] == ["replace"]
    tight = text.replace(
        "goblet squat: 4 x 10 at 3 RIR", "goblet squat: 4 x 10 at 3 RIR\n        priority: 1"
    )
    tight = tight.replace("push-up: 3 x 10 at 2 RIR", "push-up: 3 x 10 at 2 RIR\n        priority: 1")
    assert proposed(tight).found.best is None
    assert "No 3 changes with this gym" in screen(tight)


def test_sets_over_the_range_are_never_opened() -> None:
    def text(sets: int) -> str:
        monday = ("flat barbell bench press: 5 x 6 at 2 RIR", "bench pull: 5 x 8 at 2 RIR")
        thursday = (
            f"incline 30 barbell bench press: {sets} x 6 at 2 RIR",
            "low-to-high cable crossover: 3 x 12 at 1 RIR",
            f"dip: {sets} x 6 at 2 RIR",
            "high-to-low cable crossover: 3 x 12 at 1 RIR",
            f"pull-up: {sets} x 6 at 2 RIR",
        )
        kept = "\n        priority: 1\n"
        days = (
            f"{day}\n{kept.join(lines)}{kept}" for day, lines in (("Monday", monday), ("Thursday", thursday))
        )
        return week(*days, top="focus: [chest]\n")

    assert proposed(text(4)).found.best
    crowded = proposed(text(7)).found
    assert {key.rule for key in crowded.before.gaps} == {"heavy-line-not-finished"}
    assert not crowded.before.others
    assert crowded.best is None


def test_a_spent_budget_is_said_with_the_best_so_far() -> None:
    one = checked(part_not_loaded.BAD)
    assert one.week
    found = search(one.week, judge_of(one), budget=5)
    assert (found.tried, found.left, found.stopped_at) == (5, Counter(), None)
    short = checked(SHORT)
    assert short.week
    found = search(short.week, judge_of(short), budget=5)
    assert (found.tried, found.stopped_at) == (5, 1)
    assert found.left


SMALL = (
    "flat-barbell-bench-press", "incline-30-barbell-bench-press", "parallel-bar-dip-leaning",
    "decline-15-barbell-bench-press", "level-cable-crossover", "low-to-high-cable-crossover",
    "high-to-low-cable-crossover", "bench-pull", "pull-up", "goblet-squat", "machine-fly", "push-up",
)  # fmt: skip
GYM = """\
gym:
  racks: 1
  benches: 2
  bars:
    20 kg: 2
  cables:
    - name: tower
      number: 2
      heights: floor to 2.1 m
      stack: 5-90 kg by 5
      pulley: 2 to 1
  stations:
    high pull bench: 1
"""
FOCUS = "focus: [chest]\n"
LINES = tuple(f"{movement(key)['name']}: 3 x 8 at 2 RIR" for key in SMALL)


def every_change(state: State, judge: Judge) -> list[Change]:
    """Every movement at hand in every place it can take, whatever it is good for."""
    table, held = judge.means.table, [{item.key for item in one.items()} for one in state.week.sessions]
    made: list[Change] = []
    for one in judge.means.movements:
        of_class = judge.means.load_class(one)
        made += [
            Change("add", Spot(at, len(session.work)), one, of_class)
            for at, session in enumerate(state.week.sessions)
            if one["key"] not in held[at]
        ]
        for spot, item, _ in lines(state.week):
            if one["key"] not in held[spot.session]:
                made.append(Change("replace", spot, one, of_class))
                if finishing(one, table.movement(str(item.key))):
                    made.append(Change("pair", spot, one, of_class))
    return made


def by_brute_force(week: Week, judge: Judge, most: int) -> tuple[int, int]:
    """The fewest gaps that changes leave open by what is done, and how many changes it takes.

    A gap that is gone only as long as a replaced line is left out counts as open, and a set counts only where
    each change closes something in its turn.
    """
    before = judge(week)
    best = (before.gaps.total(), 0)
    for size in range(1, most + 1):
        for parts in combinations(every_change(before, judge), size):
            spots = {(one.spot, one.movement["key"] if one.kind == "add" else "") for one in parts}
            if len(spots) < size or len({(one.spot.session, one.movement["key"]) for one in parts}) < size:
                continue
            after = judge(changed(week, parts))
            if after.gaps - before.gaps or after.others - before.others or not inside(before, after):
                continue
            left = after.gaps | (judge(only_added(week, parts)).gaps & before.gaps)
            if (left.total(), size) < best and in_turn(week, judge, parts):
                best = left.total(), size
    return best


def in_turn(week: Week, judge: Judge, parts: tuple[Change, ...]) -> bool:
    """Whether in some order each change closes a gap by what is done, or brings sets that are missing."""

    def of_use(done: tuple[Change, ...], change: Change) -> bool:
        then = judge(changed(week, done))
        kept = change._replace(kind="beside") if change.kind == "replace" else change
        now = judge(changed(week, (*done, kept)))
        more = (now.coverage.muscles[group].high for group in then.short if group in now.coverage.muscles)
        had = (
            then.coverage.muscles[group].high if group in then.coverage.muscles else 0.0
            for group in then.short
            if group in now.coverage.muscles
        )  # fmt: skip
        return bool(then.gaps - now.gaps) or any(a > b for a, b in zip(more, had, strict=True))

    return any(
        all(of_use(order[:at], order[at]) for at in range(len(order))) for order in permutations(parts)
    )


def inside(before: State, after: State) -> bool:
    return all(
        session.minutes is None or now <= max(session.minutes + A_MINUTE, then)
        for session, then, now in zip(before.week.sessions, before.minutes, after.minutes, strict=True)
    )


@settings(max_examples=6, deadline=None)
@given(
    st.lists(st.sampled_from(SMALL), min_size=4, max_size=6, unique=True),
    st.lists(st.sampled_from(LINES), min_size=2, max_size=4, unique=True),
    st.sampled_from((None, 14, 24)),
)
def test_no_smaller_set_was_there_to_find_and_none_that_closes_more(
    keys: list[str], order: list[str], minutes: int | None
) -> None:
    half = (len(order) + 1) // 2
    text = week("\n".join(("Monday", *order[:half])), "\n".join(("Thursday", *order[half:])), top=FOCUS)
    if minutes is not None:
        text = text.replace("  - day: Monday\n", f"  - day: Monday\n    minutes: {minutes}\n")
    one = checked(text)
    assert one.week
    judge = judge_of(
        one, narrow(*keys, *(key for key, line in zip(SMALL, LINES, strict=True) if line in order))
    )
    found = search(one.week, judge, most=2, budget=10_000)
    assert found.stopped_at is None
    size = len(found.best.changes) if found.best else 0
    left = found.best.left.total() if found.best else found.before.gaps.total()
    assert (left, size) == by_brute_force(one.week, judge, 2)


def test_movements_alike_to_the_search_are_alike_to_the_rules() -> None:
    one = checked(FLAWED, beside_the_example)
    judge = judge_of(one)
    assert one.week
    alike: dict[object, list[State]] = {}
    for each in judge.means.movements:
        added = Change("add", Spot(1, 4), each, judge.means.load_class(each))
        alike.setdefault(facts(each, judge.means), []).append(judge(changed(one.week, (added,))))
    assert any(len(states) > 1 for states in alike.values())
    for states in alike.values():
        for state in states[1:]:
            assert (state.gaps, state.advice, state.minutes) == (
                states[0].gaps,
                states[0].advice,
                states[0].minutes,
            )
            assert state.coverage.muscles == states[0].coverage.muscles


@settings(max_examples=6, deadline=None)
@given(st.sets(st.sampled_from(LINES), max_size=5), st.sampled_from(["", "arm behind at most: 20 deg"]))
def test_what_is_proposed_fits_the_gym_the_limits_and_the_plan(gone: set[str], limit: str) -> None:
    kept = [line for line in LINES if line not in gone and "machine fly" not in line]
    squad = f"        - {limit}\n          until: cleared\n          set by: the physiotherapist\n"
    people = f"squad:\n  athletes:\n    - name: Ann\n      limits:\n{squad}    - name: Bo\n" if limit else ""
    text = week("\n".join(("Monday", *kept[::2])), "\n".join(("Thursday", *kept[1::2])), top=people + GYM)
    text = text.replace("  - day: Monday\n", "  - day: Monday\n    minutes: 60\n")
    proposal = proposed(text)
    found = proposal.found
    if found.best is None:
        return
    assert proposal.edits
    assert proposal.after
    gaps = [f for f in proposal.after.findings if f.level is Level.gap and f.rule != "sets-over-range"]
    assert bool(gaps) <= bool(found.left)
    week_before, after = found.before.week, found.best.state
    assert week_before.gym
    for change in found.best.changes:
        assert has(week_before.gym, change.movement)
        assert not any(nears(change.movement, athlete) for athlete in _people(week_before))
    for session in after.week.sessions:
        keys = [item.key for item in session.items()]
        assert len(keys) == len(set(keys))
    assert after.minutes[0] <= max(60 + A_MINUTE, found.before.minutes[0])


def _people(one: Week) -> tuple[Athlete, ...]:
    return one.squad.athletes if one.squad else ()


@pytest.mark.parametrize("rule", sorted(BAD))
def test_every_movement_whose_addition_closes_a_gap_is_listed(rule: str) -> None:
    crew = BAD[rule].count("gym: gym.yaml") > 0
    one = checked(BAD[rule], beside_the_example) if crew else checked(BAD[rule])
    judge = judge_of(one)
    assert one.week
    before = judge(one.week)
    candidates = Candidates(before, judge.means)
    listed = [change.movement for change in candidates.listed(before)]
    known = {facts(movement, judge.means) for movement in listed}
    for each in filter(dosable, judge.means.movements):
        for at, session in enumerate(one.week.sessions):
            added = Change("add", Spot(at, len(session.work)), each, judge.means.load_class(each))
            closed = before.gaps - judge(changed(one.week, (added,))).gaps
            assert not closed or facts(each, judge.means) in known
            assert closed.total() <= able(each, before) + (closed.total() and bool(before.short))
