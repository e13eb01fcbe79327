"""Limits: what is inside, at the limit, broken or not known, on which side, until when; and who reads it."""

import datetime as dt
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.findings import Level
from setwright.library.closed import Banned
from setwright.library.rows import load_rows
from setwright.library.table import library
from setwright.model.people import Athlete, Limit
from setwright.places import Place
from setwright.report.machine import github, json_text, short
from setwright.report.terminal import text
from setwright.rules.limits import ANGLES, TOLERANCE_DEG, hold
from tests.rules.plans import checked, of, rules_in, week

PLACE = Place("squad.yaml", 1, 1, 1, 5)

BANS = {
    "hanging": {
        "pull-up", "chin-up", "neutral-grip-pull-up", "assisted-pull-up", "hanging-leg-raise",
        "scapular-pull-up",
    },
    "chest on a bench": {
        "bench-pull", "chest-supported-dumbbell-row", "prone-y-raise", "reverse-machine-fly", "machine-row",
        "preacher-curl", "leg-curl",
    },
    "hands on the floor": {
        "push-up", "feet-raised-push-up", "knee-push-up", "narrow-push-up", "wide-push-up", "deep-push-up",
        "pike-push-up", "explosive-push-up", "push-up-plus", "bird-dog", "mountain-climber", "bear-crawl",
        "burpee", "get-up",
    },
    "jumping": {
        "countermovement-jump", "box-jump", "broad-jump", "hurdle-hop", "depth-jump", "bounding",
        "rope-skipping", "burpee",
    },
    "kneeling": {
        "knee-push-up", "bird-dog", "wheel-rollout", "partner-hamstring-lower", "get-up",
        "one-arm-dumbbell-row",
    },
}  # fmt: skip
"""Looked over by hand, movement by movement (common practice, no source)."""


def limit(**fields: object) -> Limit:
    return Limit.model_validate({"place": PLACE, "until": "cleared", **fields})


def answer(one: Limit, key: str) -> str:
    return hold(one, library().movement(key)).answer


@pytest.mark.parametrize("word", sorted(BANS))
def test_each_word_of_no_bans_the_movements_looked_over_by_hand(word: str) -> None:
    assert {row.key for row in load_rows() if word in row.banned_by} == BANS[word]


def test_overhead_bans_whatever_takes_the_arm_beside_the_ears_and_no_bench() -> None:
    banned = {row.key for row in load_rows() if "overhead" in row.banned_by}
    high = {key for key in library().keys() if _reaches(key, "arm_up") > 130}  # noqa: SIM118 - no dict
    assert high <= banned
    assert not any("bench-press" in key for key in banned)
    assert {row.key for row in load_rows() if row.pattern == "vertical pull"} <= banned


def _reaches(key: str, angle: str) -> float:
    movement = library().movement(key)
    return float(movement["extremes"][angle]["max"]) if movement["scored"] else 0.0


def test_a_bar_grip_bans_every_barbell_and_no_pair_of_dumbbells() -> None:
    banned = {row.key for row in load_rows() if "bar grip" in row.banned_by}
    assert {row.key for row in load_rows() if row.implement in ("barbell", "guided bar")} <= banned
    assert not {row.key for row in load_rows() if row.implement == "dumbbells"} & banned


@pytest.mark.parametrize(
    ("angle", "at_most", "key", "said"),
    [
        ("arm behind", 0, "parallel-bar-dip-leaning", "broken"),
        ("arm behind", 0, "flat-barbell-bench-press", "broken"),
        ("arm behind", 0, "flat-dumbbell-fly", "broken"),
        ("arm behind", 0, "barbell-floor-press", "at the limit"),
        ("arm behind", 0, "dumbbell-squeeze-press", "inside"),
        ("arm up", 90, "incline-45-dumbbell-bench-press", "broken"),
        ("arm up", 90, "flat-barbell-bench-press", "at the limit"),
        ("arm up", 90, "push-up", "inside"),
        ("arm across", 0, "level-cable-crossover", "broken"),
        ("arm turned out", 30, "behind-neck-press", "broken"),
        ("arm behind", 0, "back-squat", "not known"),
        ("arm turned out", 0, "dumbbell-front-raise", "not known"),
        ("arm behind", 0, "leg-press", "inside"),
    ],
)
def test_an_angle_is_held_against_the_extremes(angle: str, at_most: float, key: str, said: str) -> None:
    """Trade facts: dips, presses with the elbows below the bench and flies take the arm behind the body."""
    assert answer(limit(angle=angle, at_most_deg=at_most), key) == said


@given(
    angle=st.sampled_from(sorted(ANGLES)),
    at_most=st.floats(-60, 180),
    key=st.sampled_from([key for key in library().keys() if library().movement(key)["scored"]]),  # noqa: SIM118
)
def test_a_wider_limit_never_says_worse(angle: str, at_most: float, key: str) -> None:
    worse = ["inside", "at the limit", "broken"]
    movement = library().movement(key)
    narrow, wide = (
        hold(limit(angle=angle, at_most_deg=deg), movement).answer for deg in (at_most, at_most + 7)
    )
    if "not known" in (narrow, wide):
        assert narrow == wide
    else:
        assert worse.index(wide) <= worse.index(narrow)


def test_the_tolerance_is_open_below_and_closed_above() -> None:
    reached = _reaches("parallel-bar-dip-leaning", "arm_behind")
    at = {
        gap: answer(limit(angle="arm behind", at_most_deg=reached - gap), "parallel-bar-dip-leaning")
        for gap in (-TOLERANCE_DEG, -TOLERANCE_DEG + 0.01, TOLERANCE_DEG, TOLERANCE_DEG + 0.01)
    }
    assert list(at.values()) == ["inside", "at the limit", "at the limit", "broken"]


SQUAD = """squad:
  athletes:
    - name: Isla
{limits}    - name: Rory
"""
BEHIND = "      limits:\n        - arm behind at most: 0 deg\n          until: {until}\n{more}"
DIPS = "Monday\ndip: 2 x 8 at 2 RIR\nchin-up: 2 x 8 at 2 RIR"


def limited(lines: str = DIPS, until: str = "cleared", more: str = "", starts: str = "") -> str:
    return week(lines, top=starts + SQUAD.format(limits=BEHIND.format(until=until, more=more)))


def test_a_broken_limit_is_one_error_with_every_line() -> None:
    one = checked(limited("Monday\ndip: 2 x 8 at 2 RIR\npush-up: 2 x 8 at 2 RIR"))
    broken = [f for f in one.findings if f.rule == "limit-broken"]
    assert [f.level for f in broken] == [Level.error]
    assert (
        broken[0].message == "Isla: the written limit, arm behind at most 0 deg, is broken by dip and 1 more"
    )
    assert [seen.text for seen in broken[0].seen] == [
        "Monday, dip takes the arm 49 deg behind the body",
        "Monday, push-up takes the arm 21 deg behind the body",
    ]
    press = checked(limited("Monday\nflat barbell bench press: 2 x 8 at 2 RIR\nchin-up: 2 x 8 at 2 RIR"))
    change = next(f.change for f in press.findings if f.rule == "limit-broken")
    assert "`Isla: dumbbell squeeze press`, inside the written limit, not cleared by it" in change


def test_at_the_limit_and_not_known_are_questions_for_whoever_set_it() -> None:
    lines = "Monday\nbarbell floor press: 2 x 8 at 2 RIR\nback squat: 2 x 8 at 2 RIR"
    found = [f for f in checked(limited(lines, more="          set by: Dr Onn\n")).findings if f.to_others]
    assert {f.level for f in found} == {Level.advice}
    assert {f.change for f in found} == {"ask Dr Onn before Isla does it"}


def test_whoever_the_line_is_not_for_is_not_judged_by_it() -> None:
    for key in ("not for: [Isla]", "for: [Rory]"):
        kept = DIPS.replace("RIR\nchin", f"RIR\n        {key}\nchin", 1)
        assert "limit-broken" not in rules_in(checked(limited(kept)))


def test_whoever_is_out_is_not_judged() -> None:
    assert "limit-broken" not in rules_in(checked(limited(more="      participation: out\n")))


def test_a_group_named_in_not_for_counts_for_its_members() -> None:
    kept = DIPS.replace("RIR\nchin", "RIR\n        not for: [careful]\nchin", 1)
    grouped = limited(kept).replace("sessions:", "  groups:\n    careful: [Isla]\nsessions:")
    assert "limit-broken" not in rules_in(checked(grouped))


def test_members_of_a_group_and_warm_ups_are_judged_too() -> None:
    paired = "Monday\nsuperset:\n          - dip: 2 x 8 at 2 RIR\n          - chin-up: 2 x 8 at 2 RIR"
    assert "limit-broken" in rules_in(checked(limited(paired)))
    warmed = limited("Monday\nchin-up: 2 x 8 at 2 RIR").replace(
        "    work:", "    warm-up:\n      - push-up: 2 x 8\n    work:"
    )
    assert "limit-broken" in rules_in(checked(warmed))
    unknown = warmed.replace("push-up", "arm circles of our own")
    assert "limit-broken" not in rules_in(checked(unknown))


@pytest.mark.parametrize(
    ("side", "line", "breaks"),
    [
        ("left", "one-arm dumbbell bench press: 2 x 8 left at 2 RIR", True),
        ("left", "one-arm dumbbell bench press: 2 x 8 right at 2 RIR", False),
        ("left", "one-arm dumbbell bench press: 2 x 8 each side at 2 RIR", True),
        ("left", "one-arm dumbbell bench press: 2 x 8 weaker side at 2 RIR", False),
        ("left", "one-arm dumbbell bench press: 2 x 8 stronger side at 2 RIR", True),
        ("left", "flat dumbbell bench press: 2 x 8 at 2 RIR", True),
    ],
)
def test_a_limit_on_one_side(side: str, line: str, *, breaks: bool) -> None:
    more = f"          side: {side}\n      weaker side: right\n"
    found = rules_in(checked(limited(f"Monday\n{line}\n        note: meant", more=more)))
    assert ("limit-broken" in found) is breaks


def test_a_weaker_side_that_nobody_wrote_down_is_held_against_either() -> None:
    line = "one-arm dumbbell bench press: 2 x 8 weaker side at 2 RIR"
    one = checked(limited(f"Monday\n{line}", more="          side: left\n"))
    assert "limit-broken" in rules_in(one)


@pytest.mark.parametrize(
    ("until", "level"), [("2027-11-15", Level.error), ("2027-11-14", Level.advice), ("cleared", Level.error)]
)
def test_a_limit_holds_up_to_its_day_and_is_asked_about_after_it(until: str, level: Level) -> None:
    one = checked(limited(until=until, starts="starts: 2027-11-15\n"))
    assert [f.level for f in one.findings if f.rule == "limit-broken"] == [level]


def test_a_date_of_the_session_decides_before_the_week() -> None:
    dated = limited(until="2027-11-15").replace(
        "  - day: Monday\n", "  - day: Monday\n    date: 2027-11-16\n"
    )
    assert of(checked(dated), "limit-broken") == [
        "Isla: the written limit, arm behind at most 0 deg, ended before dip"
    ]


def test_a_limit_always_wins_over_an_allow() -> None:
    for rule, plan in (("limit-broken", limited()), ("avoided-move", avoiding("bar dips"))):
        one = checked(f"{plan}allow:\n  {rule}: he says it is fine\n")
        assert {rule, "allow-silences-nothing"} <= set(rules_in(one))
        assert of(one, "allow-silences-nothing") == [f"allow: {rule} can't be silenced"]


def avoiding(name: str, *, through: str = "avoid", lines: str = DIPS) -> str:
    plain = f"      avoid: [{name}]\n"
    as_limit = f"      limits:\n        - avoid: [{name}]\n          until: 2027-11-14\n"
    limits = plain if through == "avoid" else as_limit
    return week(lines, top=SQUAD.format(limits=limits))


def test_an_avoided_movement_is_found_under_every_name() -> None:
    for name in ("dip", "bar dips", "Leaning parallel-bar dip"):
        assert of(checked(avoiding(name)), "avoided-move") == [
            f'Isla avoids "{name}", and dip is on the list'
        ]


def test_a_movement_whose_name_holds_the_words_is_asked_about() -> None:
    one = checked(avoiding("push-up", lines="Monday\nwide push-up: 2 x 8\npull-up: 2 x 8"))
    found = [f for f in one.findings if f.rule == "avoided-move"]
    assert [(f.level, f.message) for f in found] == [
        (Level.advice, 'Isla avoids "push-up"; is wide push-up meant too?')
    ]


def test_a_warm_up_that_the_library_lacks_is_read_by_its_words() -> None:
    warm_up = "    warm-up:\n      - slow chair dips: 2 x 8\n    work:"
    plan = avoiding("dip", lines="Monday\nchin-up: 2 x 8 at 2 RIR").replace("    work:", warm_up)
    assert of(checked(plan), "avoided-move") == ['Isla avoids "dip"; is slow chair dips meant too?']


def test_what_a_limit_says_to_avoid_is_asked_about_after_its_day() -> None:
    plan = avoiding("dip", through="limit")
    assert of(checked(plan), "avoided-move") == ['Isla avoids "dip", and dip is on the list']
    dated = plan.replace("squad:", "starts: 2027-11-15\nsquad:", 1)
    assert of(checked(dated), "avoided-move") == ['Isla avoids "dip" until a day before dip']


def test_without_a_movement_like_it_the_line_is_left_to_the_others() -> None:
    bare = avoiding("dip").replace("sessions:", "gym:\n  stations:\n    dip bars: 1\nsessions:")
    found = next(f for f in checked(bare).findings if f.rule == "avoided-move")
    assert "not for: [Isla]" in found.change


PRIVATE = (
    "Isla", "arm behind", "at most 0", "0 deg", "Dr Onn", "2027-12-24", "the bar slipped", "61 kg",
    "overhead", "bar dips",
)  # fmt: skip
MUCH = """\
      body mass: 61 kg
      avoid: [bar dips]
      private note: the bar slipped
      limits:
        - arm behind at most: 0 deg
          until: 2027-12-24
          set by: Dr Onn
        - no: [overhead]
          until: cleared
          set by: Dr Onn
"""


def full_of_limits() -> str:
    lines = "Monday\ndip: 2 x 8 at 2 RIR\npull-up: 2 x 8 at 2 RIR\nback squat: 2 x 5 at 2 RIR"
    return week(lines, top=f"starts: 2027-11-15\n{SQUAD.format(limits=MUCH)}")


def test_machine_output_holds_no_name_and_no_limit_unless_asked() -> None:
    one = checked(full_of_limits())
    assert {"limit-broken", "avoided-move"} <= set(rules_in(one))
    for said in (json_text([one]), short(one), github(one)):
        told = "\n".join(_messages(said))
        assert not [word for word in PRIVATE if word in told]
    assert "Isla" in short(one, with_names=True)
    assert "arm behind at most 0 deg" in github(one, with_names=True)
    assert "arm behind at most 0 deg" in " ".join(text(one, colour=False).split())


def _messages(said: str) -> list[str]:
    if not said.startswith("{"):
        return said.splitlines()
    return [json.dumps(finding) for finding in json.loads(said)["findings"]]


def test_every_banned_word_of_the_squad_file_is_known_to_the_library() -> None:
    from typing import get_args

    from setwright.model.reader.squad import BANNED

    assert set(BANNED) == set(get_args(Banned))


def test_a_date_is_worked_out_from_the_start_of_the_plan() -> None:
    from setwright.rules.limits import date_of

    one = checked(week("Wednesday\ndip: 2 x 8", top="starts: 2027-11-15\n")).week
    assert one is not None
    assert date_of(one, one.sessions[0]) == dt.date(2027, 11, 17)


def test_own_movements_are_not_known_to_a_ban() -> None:
    own = (
        "movements:\n  crate carry:\n    pattern: carry\n    counted in: m\n"
        "    muscles:\n      direct: [forearm flexors]\n"
    )
    limits = "      limits:\n        - no: [kneeling]\n          until: cleared\n"
    one = checked(week("Monday\ncrate carry: 2 x 20 m", top=SQUAD.format(limits=limits) + own))
    assert of(one, "limit-broken") == ["Isla: the written limit, no kneeling, may be broken by crate carry"]


def test_modified_with_limits_on_file_is_left_to_the_limits() -> None:
    plan = limited("Monday\nchin-up: 2 x 8 at 2 RIR", more="      participation: modified\n")
    assert "modified-but-nothing-changed" not in rules_in(checked(plan))


def test_a_session_title_may_not_name_an_athlete_and_a_plan_for_one_may() -> None:
    two = week(DIPS, top=SQUAD.format(limits=""))
    named = two.replace("  - day: Monday\n", "  - day: Monday\n    name: Rory's day\n")
    assert of(checked(named), "name-in-a-public-title") == ['the title "Rory\'s day" names Rory']
    alone = named.replace("    - name: Isla\n", "")
    assert of(checked(alone), "name-in-a-public-title") == []


def test_athletes_without_limits_are_silent() -> None:
    assert Athlete(name="Rory", place=PLACE).limits == ()
    assert rules_in(checked(week(DIPS, top=SQUAD.format(limits="")))) == []
