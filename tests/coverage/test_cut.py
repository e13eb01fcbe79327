"""What a cut week loses, counted by hand from short plans."""

from setwright.coverage import Coverage
from setwright.coverage.cut import cuts, lost, priority, without_week
from tests.model.blocks import block
from tests.rules.plans import checked, week

CUT = week(
    "Monday\n"
    "flat barbell bench press: 4 x 6 at 2 RIR\n        priority: 1\n"
    "superset:\n"
    "          - bench pull: 3 x 8 at 2 RIR\n"
    "          - barbell back squat: 3 x 5 at 2 RIR\n            priority: 3\n"
    "        rest: 2:00\n"
    "standing calf raise: 3 x 12 at 1 RIR\n        priority: 3",
    "Thursday\nbench pull: 3 x 8 at 2 RIR",
)


def covered(plan: str) -> list[Coverage]:
    one = checked(plan)
    assert not [finding for finding in one.findings if finding.level.name == "error"], one.findings
    return [each.coverage for each in one.weeks]


def test_a_line_goes_with_its_group_or_before_it() -> None:
    (one,) = covered(CUT)
    assert [(work.name, priority(work)) for work in one.works] == [
        ("flat barbell bench press", 1),
        ("bench pull", 2),
        ("barbell back squat", 3),
        ("standing calf raise", 3),
        ("bench pull", 2),
    ]


def test_a_group_that_goes_early_takes_its_lines_along() -> None:
    (one,) = covered(
        week(
            "Monday\nsuperset:\n          - bench pull: 3 x 8 at 2 RIR\n            priority: 1\n"
            "          - push-up: 3 x 8 at 2 RIR\n        rest: 2:00\n        priority: 3"
        )
    )
    assert [priority(work) for work in one.works] == [3, 3]
    assert cuts(one) == ()


def test_the_lowest_priority_goes_first_and_then_the_next() -> None:
    (one,) = covered(CUT)
    first, then = cuts(one)
    assert (first.to, first.gone) == (2, ("barbell back squat", "standing calf raise"))
    assert first.loses == ("quadriceps", "hamstrings", "glutes", "calves")
    assert (then.to, then.gone) == (1, ("bench pull", "barbell back squat", "standing calf raise"))
    assert set(then.loses) > {"back", "quadriceps", "calves"}


def test_a_cut_that_takes_nothing_or_everything_is_none() -> None:
    (one,) = covered(week("Monday\nbench pull: 3 x 8 at 2 RIR"))
    assert cuts(one) == ()


def test_a_missed_session_and_what_others_still_train() -> None:
    (one,) = covered(CUT)
    monday = [work for work in one.works if work.session.day == "Monday"]
    thursday = [work for work in one.works if work.session.day == "Thursday"]
    assert lost(one.works, monday) == ()
    assert set(lost(one.works, thursday)) >= {"chest", "quadriceps", "calves"}
    assert "back" not in lost(one.works, thursday)


def test_parts_are_named_only_while_the_chest_is_trained() -> None:
    (one,) = covered(week("Monday\ndip: 3 x 8 at 2 RIR\nflat barbell bench press: 3 x 8 at 2 RIR"))
    dip, _ = one.works
    assert "chest" in lost(one.works, [])
    assert not [name for name in lost(one.works, []) if name.startswith("chest, ")]
    curls = covered(week("Monday\ndumbbell curl: 3 x 8 at 2 RIR"))[0].works
    assert lost((*curls, dip), curls)[0] == "chest"


def test_a_part_that_one_movement_alone_loads() -> None:
    (one,) = covered(week("Monday\ndip: 3 x 8 at 2 RIR\nlow-to-high cable crossover: 3 x 12 at 1 RIR"))
    dip, crossover = one.works
    assert crossover.dose("costal") == 0
    assert "chest, costal" in lost([dip, crossover], [crossover])
    assert "chest" not in lost([dip, crossover], [crossover])


def test_a_missed_week() -> None:
    one, two = covered(block(2, "- bench pull: 3 x 8 at 2 RIR\n- barbell back squat: [3 x 5, none]"))
    assert without_week([one, two], 0) == ("quadriceps", "hamstrings", "glutes")
    assert without_week([one, two], 1) == ()
