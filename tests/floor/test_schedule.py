"""The timetable: possible, in the stated order of aims, and as early as an independent optimiser's.

Outside check: SciPy's `milp` (HiGHS) on the textbook formulation of a shop with parallel machines, one binary
variable a pair of turns that want the same thing (Manne, On the job-shop scheduling problem, Operations
Research 8, 1960; formulation from memory, the optimum is the solver's).
"""

import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from setwright.floor import schedule
from setwright.floor.schedule import Slot, Task, Turn, least, place, timetable

POOLS = ("rack", "stack", "dip bars")


def task(holds: dict[str, int], seconds: tuple[float, ...], priority: int = 2) -> Task:
    """A block at which every group holds the same."""
    return Task((holds,) * len(seconds), seconds, priority)


tasks_of = st.integers(1, 3).flatmap(
    lambda groups: st.lists(
        st.builds(
            Task,
            st.tuples(*[st.dictionaries(st.sampled_from(POOLS), st.just(1), max_size=2)] * groups),
            st.tuples(*[st.integers(1, 9).map(lambda n: n * 60.0)] * groups),
            st.integers(1, 3),
        ),
        min_size=1,
        max_size=4,
    )
)
room = st.fixed_dictionaries({pool: st.integers(1, 3) for pool in POOLS})


def together(slots: tuple[Slot, ...], tasks: list[Task], pool: str) -> int:
    """The most of a pool held at one time."""
    return max(
        sum(
            tasks[s.turn.block].holds[s.turn.group].get(pool, 0) for s in slots if s.start <= at.start < s.end
        )
        for at in slots
    )


@settings(max_examples=30, deadline=None)
@given(tasks=tasks_of, there=room, available=st.none() | st.integers(5, 60))
def test_every_timetable_can_be_carried_out(
    tasks: list[Task], there: dict[str, int], available: int | None
) -> None:
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(schedule, "PLACED", 600)
        table = timetable(tasks, there, available and available * 60.0)
    turns = [Turn(g, b) for b, task in enumerate(tasks) for g in range(len(task.seconds))]
    assert sorted(slot.turn for slot in table.slots) == sorted(turns)
    for slot in table.slots:
        assert slot.end - slot.start == tasks[slot.turn.block].seconds[slot.turn.group]
    for one, two in itertools.combinations(table.slots, 2):
        assert one.turn.group != two.turn.group or one.end <= two.start or two.end <= one.start
    assert all(together(table.slots, tasks, pool) <= there[pool] for pool in POOLS)
    assert table.least_s <= table.finish_s


Weights = dict[object, float]


def optimum(tasks: list[Task], there: dict[str, int]) -> float:
    """The earliest possible finish by mixed-integer programming; every pool's things are told apart."""
    turns = [(g, b) for b, task in enumerate(tasks) for g in range(len(task.seconds))]
    length = {turn: tasks[turn[1]].seconds[turn[0]] / 60 for turn in turns}
    wants = {turn: [pool for pool in there if tasks[turn[1]].holds[turn[0]].get(pool)] for turn in turns}
    big = sum(length.values())
    at_most: list[tuple[Weights, float]] = [({turn: 1.0, "end": -1.0}, -length[turn]) for turn in turns]
    picks: list[Weights] = [
        {(turn, pool, unit): 1.0 for unit in range(there[pool])} for turn in turns for pool in wants[turn]
    ]
    for one, two in itertools.combinations(turns, 2):
        alike: list[tuple[object, ...]] = [()] if one[0] == two[0] else []
        alike += [
            ((one, pool, unit), (two, pool, unit))
            for pool in set(wants[one]) & set(wants[two])
            for unit in range(there[pool])
        ]
        for both in alike:
            apart: Weights = dict.fromkeys(both, big)
            before, slack = ("before", one, two), big * len(both)
            at_most.append(({one: 1.0, two: -1.0, before: big, **apart}, big + slack - length[one]))
            at_most.append(({two: 1.0, one: -1.0, before: -big, **apart}, slack - length[two]))
    return 60 * _solved(["end", *turns], at_most, picks, big)


def _solved(
    times: list[object], at_most: list[tuple[Weights, float]], picks: list[Weights], big: float
) -> float:
    """The least value of the first of ``times``; every other name in the rows is 0 or 1."""
    every = dict.fromkeys(times) | dict.fromkeys(name for row, _ in at_most for name in row)
    column = {name: number for number, name in enumerate(every | dict.fromkeys(n for p in picks for n in p))}

    def matrix(rows: list[Weights]) -> np.ndarray:
        dense = np.zeros((len(rows), len(column)))
        for number, row in enumerate(rows):
            for name, weight in row.items():
                dense[number, column[name]] = weight
        return dense

    constraints = [
        LinearConstraint(matrix([row for row, _ in at_most]), -np.inf, [most for _, most in at_most])
    ]
    constraints += [LinearConstraint(matrix(picks), 1.0, 1.0)] if picks else []
    is_whole = np.array([name not in times for name in column])
    found = milp(
        c=np.eye(len(column))[0],
        constraints=constraints,
        integrality=is_whole.astype(int),
        bounds=Bounds(0.0, np.where(is_whole, 1.0, big)),
    )
    assert found.success
    return float(found.fun)


THREE = (task({"rack": 1}, (300.0, 300.0, 420.0)), task({"rack": 1}, (180.0, 240.0, 240.0)))
ROOMS = [
    ([task({"rack": 1}, (300.0, 360.0)), task({"stack": 1}, (240.0, 240.0)), task({}, (90.0, 90.0))], (1, 1)),
    ([*THREE], (1, 1)),
    ([*THREE], (2, 1)),
    ([task({"rack": 1, "stack": 1}, (300.0, 300.0)), task({"stack": 1}, (200.0, 200.0))], (2, 1)),
    ([task({"stack": 2}, (240.0, 180.0, 300.0)), task({"rack": 1}, (600.0, 300.0, 300.0))], (1, 3)),
]  # fmt: skip


@pytest.mark.parametrize(("tasks", "number"), ROOMS[:4])
def test_small_rooms_end_as_early_as_the_optimiser_says(tasks: list[Task], number: tuple[int, int]) -> None:
    there = dict(zip(("rack", "stack"), number, strict=True))
    table = timetable(tasks, there, None)
    assert table.proved
    assert table.finish_s == pytest.approx(optimum(tasks, there))


@settings(max_examples=10, deadline=None)
@given(tasks=tasks_of.filter(lambda tasks: len(tasks) * len(tasks[0].seconds) <= 4), there=room)
def test_any_small_room_does(tasks: list[Task], there: dict[str, int]) -> None:
    assert timetable(tasks, there, None).finish_s == pytest.approx(optimum(tasks, there))


@pytest.mark.parametrize("number", [1, 2])
def test_the_climb_finds_the_optimum_where_not_every_order_is_tried(number: int) -> None:
    tasks = [
        task({"rack": 1}, (300.0, 420.0)), task({"stack": 1}, (240.0, 180.0)),
        task({"rack": 1, "stack": 1}, (120.0, 180.0)), task({}, (90.0, 90.0)),
    ]  # fmt: skip
    there = {"rack": number, "stack": 1}
    table = timetable(tasks, there, None)
    assert not table.proved
    assert table.finish_s == pytest.approx(optimum(tasks, there))


def test_two_stacks_held_at_once_are_told_apart() -> None:
    tasks, there = ROOMS[4][0], {"rack": 1, "stack": 3}
    table = timetable(tasks, there, None)
    assert together(table.slots, tasks, "stack") <= 3
    assert table.least_s == 1200


def orders(table: schedule.Timetable) -> list[list[int]]:
    """The blocks of each group, in the order of the clock."""
    groups = sorted({slot.turn.group for slot in table.slots})
    return [[slot.turn.block for slot in table.slots if slot.turn.group == group] for group in groups]


def test_what_comes_first_is_done_first_when_the_minutes_allow_it() -> None:
    """Each group would wait 200 s for it: less than four minutes. With 400 s there is no time to."""
    tasks = [task({"mat": 1}, (200.0, 200.0), 3), task({"rack": 1}, (200.0, 200.0), 1)]
    there = {"mat": 1, "rack": 1}
    assert orders(timetable(tasks, there, 20 * 60)) == [[1, 0], [1, 0]]
    tight = timetable(tasks, there, 400)
    assert tight.finish_s == 400
    assert sorted(orders(tight)) == [[0, 1], [1, 0]]


def test_nobody_waits_longer_than_four_minutes_for_what_comes_first() -> None:
    tasks = [task({"mat": 1}, (300.0, 300.0), 3), task({"rack": 1}, (300.0, 300.0), 1)]
    found = orders(timetable(tasks, {"mat": 1, "rack": 1}, 20 * 60))
    assert sorted(found) == [[0, 1], [1, 0]]


def test_even_rest_comes_before_an_early_finish() -> None:
    """Whoever lifts last does the other block while they wait; no order makes it less than 200 s."""
    tasks = [task({"rack": 1}, (300.0, 300.0)), task({}, (100.0, 100.0))]
    table = timetable(tasks, {"rack": 1}, 3600)
    assert sorted(orders(table)) == [[0, 1], [1, 0]]
    starts = {slot.turn: slot.start for slot in table.slots}
    assert max(starts.values()) == 300


def test_a_block_that_holds_more_than_there_is_has_no_timetable() -> None:
    with pytest.raises(ValueError, match="more than there is"):
        timetable([task({"stack": 2}, (60.0,))], {"stack": 1}, None)


def test_an_empty_session_takes_no_time() -> None:
    table = timetable([], {}, None)
    assert (table.slots, table.finish_s, table.least_s, table.proved) == ((), 0.0, 0.0, True)
    assert least([task({"band": 1}, (60.0,))], {"band": math.inf}) == 60


def test_a_turn_goes_into_a_gap_of_its_station_but_never_before_its_groups_last_one() -> None:
    tasks = [task({"rack": 1}, (100.0, 100.0)), task({"rack": 1}, (50.0, 50.0)), task({}, (150.0, 150.0))]
    order = (Turn(0, 2), Turn(0, 0), Turn(1, 0), Turn(1, 1))
    starts = {slot.turn: slot.start for slot in place(order, tasks, {"rack": 1})}
    assert starts == {(0, 2): 0, (0, 0): 150, (1, 0): 0, (1, 1): 100}
    late = {slot.turn: slot.start for slot in place((Turn(1, 2), Turn(1, 1)), tasks, {"rack": 1})}
    assert late == {(1, 2): 0, (1, 1): 150}


def test_the_search_is_the_same_every_time() -> None:
    tasks = [task({"rack": 1}, (300.0, 310.0, 320.0)) for _ in range(4)]
    assert timetable(tasks, {"rack": 2}, None) == timetable(tasks, {"rack": 2}, None)
    assert schedule.EVERY_ORDER < 12
