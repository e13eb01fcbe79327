"""What one athlete does instead: only where a limit or a list stands against a line, never near the limit."""

import pytest

from setwright.checked import Checked
from setwright.findings import Level
from setwright.library.table import library
from setwright.report.swap import INSIDE, SHOW
from setwright.report.swap_for import swap_for_text
from setwright.report.wrapping import WIDTH
from setwright.rules.limits import nears
from setwright.rules.means import means
from setwright.swapping.instead import ForOne, propose_for
from setwright.swapping.likeness import lost
from setwright.swapping.paste import pasted
from setwright.swapping.proposal import NotToSwap
from tests.rules.plans import HEAD, checked
from tests.swapping.plans import movement, screen

PLAN = f"""\
{HEAD}squad:
  athletes:
    - name: Isla
      avoid: [bench pull]
      limits:
        - arm behind at most: 20 deg
          until: cleared
          set by: the club's physiotherapist
    - name: Rory
    - name: Una
      participation: out
sessions:
  - day: Monday
    work:
      - parallel-bar dip: 2 x 8 at 2 RIR
        tempo: 3-1-1-0
      # then pull
      - bench pull: 2 x 8 at 2 RIR
      - flat barbell bench press: 3 x 8 at 2 RIR
"""


def told(text: str, name: str = "Isla") -> ForOne:
    return propose_for(checked(text), name)


def typed(one: ForOne) -> list[tuple[int, tuple[str, ...]]]:
    return [(line.edit.first, line.edit.new) for line in one.lines if line.edit]


def with_line(line: str) -> str:
    return PLAN.replace("bench pull: 2 x 8 at 2 RIR", line)


def test_each_line_against_a_limit_or_a_list_gets_a_movement_inside_it() -> None:
    one = told(PLAN)
    assert [(line.item.name, line.why) for line in one.lines] == [
        ("parallel-bar dip", ("arm behind at most 20 deg",)),
        ("bench pull", ('on the list, "bench pull"',)),
    ]
    for line in one.lines:
        assert line.movement
        assert not nears(line.movement, one.athlete)
        assert line.ask == ()
    assert one.lines[0].movement
    assert one.lines[0].movement["key"] == "high-to-low-cable-crossover"
    assert one.lines[0].lost == ("load (heavy to light)",)
    assert one.ask == ("flat barbell bench press (line 23)",)


def test_the_lines_to_type_stand_under_the_line_in_its_own_indentation() -> None:
    assert typed(told(PLAN))[0] == (
        21,
        (
            "        instead:",
            "          Isla:",
            "            - high-to-low cable crossover: 2 x 12 at 1 RIR",
        ),
    )


def test_a_movement_of_the_same_kind_takes_the_dose_of_the_line() -> None:
    text = (
        with_line("push-up: 3 x 12 at 2 RIR")
        .replace("[bench pull]", "[push-up]")
        .replace("Isla", '"Isla: A"')
    )
    (_, (first, second)) = typed(told(text, "Isla: A"))[-1]
    assert (first, second.split(": ")[0].strip()) == ("        instead:", '"Isla')
    assert second.count(":") == 2
    assert typed(told(with_line("push-up: 3 x 12 at 5 kg").replace("[bench pull]", "[push-up]")))[-1][1][
        2
    ].startswith("            - ")


def test_a_member_of_rounds_gets_one_round() -> None:
    members = "          - bench pull: 8 at 2 RIR\n          - goblet squat: 12 at 2 RIR"
    (_, new) = typed(told(with_line(f"superset:\n{members}\n        rounds: 3")))[-1]
    assert new == (
        "            instead:",
        "              Isla:",
        "                - wide-grip high cable row: 10 at 2 RIR",
    )


def test_two_lines_of_a_session_get_two_movements() -> None:
    one = told(with_line("parallel-bar dip: 1 x 8 at 2 RIR"))
    keys = [line.movement["key"] for line in one.lines if line.movement]
    assert len(keys) == len(set(keys)) == 2


FLOOR = f"""\
{HEAD}squad:
  athletes:
    - name: Isla
      limits:
        - arm behind at most: 0 deg
          until: cleared
          set by: the club's physiotherapist
    - name: Rory
sessions:
  - day: Monday
    work:
      - leaning parallel-bar dip: 2 x 8 at 2 RIR
      - flat barbell bench press: 2 x 8 at 2 RIR
      - flat dumbbell fly: 2 x 12 at 2 RIR
  - day: Thursday
    work:
      - barbell floor press: 2 x 8 at 2 RIR
      - dumbbell floor press: 2 x 8 at 2 RIR
"""


def broken(one: Checked) -> list[str]:
    """The names of the lines that a check says break a limit."""
    return [
        seen.text.split(", ")[1].split(" takes ")[0]
        for finding in one.findings
        if finding.rule == "limit-broken" and finding.level is Level.error
        for seen in finding.seen
    ]


def test_a_limit_on_the_arm_behind_the_body_flags_deep_presses_and_a_floor_press_is_offered() -> None:
    one = checked(FLOOR)
    assert broken(one) == ["leaning parallel-bar dip", "flat barbell bench press", "flat dumbbell fly"]
    (at_the_limit,) = (f for f in one.findings if f.rule == "limit-broken" and f.level is Level.advice)
    assert "is just reached by barbell floor press and 1 more" in at_the_limit.message
    found = told(FLOOR)
    offered = {line.item.name: line.movement["name"] for line in found.lines if line.movement}
    assert offered["flat barbell bench press"] == "barbell floor press"
    assert offered["flat dumbbell fly"] == "dumbbell floor press"
    assert "at a limit, so ask before it is done: arm behind at most 0 deg (the club's" in swap_for_text(
        found
    )


@pytest.mark.parametrize("text", [PLAN, FLOOR], ids=["20 deg and a list", "0 deg"])
def test_with_the_lines_typed_the_check_finds_nothing_broken(text: str) -> None:
    found = told(text)
    after = checked(pasted(text, (line.edit for line in found.lines if line.edit)))
    assert after.complete
    left = [line.item.name for line in found.lines if line.movement is None]
    assert broken(after) == left
    assert not [f for f in after.findings if f.rule == "avoided-move" and f.level is Level.error]
    assert [line.item.name for line in propose_for(after, "Isla").lines] == left


def test_what_is_done_instead_is_held_against_the_limit_in_its_place() -> None:
    line = "bench pull: 2 x 8 at 2 RIR\n        instead:\n          Isla:\n            - {}: 2 x 8 at 2 RIR"
    inside = told(with_line(line.format("chest-supported dumbbell row")))
    assert "bench pull" not in [one.item.name for one in inside.lines]
    beyond = told(with_line(line.format("bench dip")))
    (one,) = (one for one in beyond.lines if one.item.name == "bench dip")
    assert one.edit is None
    assert f"  | {one.typed[-1]}" in swap_for_text(beyond)


def test_of_a_day_like_another_the_lines_are_said_and_not_placed() -> None:
    text = PLAN + "  - day: Saturday\n    like: Monday\n"
    assert {line.edit for line in told(text).lines} == {None}


def test_what_sounds_like_the_list_is_not_proposed() -> None:
    one = told(PLAN.replace("[bench pull]", "[bench press]"))
    (line,) = (line for line in one.lines if line.item.name == "flat barbell bench press")
    assert line.movement
    assert not {"bench", "press"} <= set(line.movement["name"].split())


def test_where_nothing_is_like_it_the_coach_leaves_the_athlete_out() -> None:
    text = PLAN.replace(
        "squad:", "gym:\n  stations:\n    dip bars: 1\n    high pull bench: 1\n  bars:\n    20 kg: 1\nsquad:"
    )
    text = text.replace("arm behind at most: 20 deg", "no: [hanging, bar grip, hands on the floor, overhead]")
    one = told(text.replace("[bench pull]", "[bench pull, bench dip, push-up]"))
    alone = [line for line in one.lines if line.movement is None]
    assert alone
    assert "`not for: [Isla]` under it" in " ".join(swap_for_text(one).split())


def test_what_is_not_cut_by_lines_or_has_an_instead_is_left_to_the_coach() -> None:
    one = told(
        PLAN.replace("- parallel-bar dip: 2 x 8 at 2 RIR\n        tempo: 3-1-1-0", "- {dip: 2 x 8 at 2 RIR}")
    )
    assert one.lines[0].edit is None
    assert "write the change yourself" in swap_for_text(one)


def test_the_screen_is_headed_and_ends_with_who_decides() -> None:
    text = swap_for_text(told(PLAN))
    assert text.splitlines()[1] == INSIDE
    assert text.endswith(f"{SHOW}\n")
    assert all(len(line) <= WIDTH for line in text.splitlines() if not line.startswith("  |"))


def test_nothing_against_an_athlete_is_said() -> None:
    text = swap_for_text(told(PLAN, "Rory"))
    assert text == "Rory: no line of the plan breaks a written limit or is on the list\n"


@pytest.mark.parametrize(
    ("text", "name", "says"),
    [
        (PLAN, "Isle", "the plan's squad has no athlete Isle; did you mean Isla?"),
        (PLAN, "Zebedee", "the plan's squad has no athlete Zebedee"),
        (f"{HEAD}work:\n  - dip: 3 x 8 at 2 RIR\n", "Isla", "the plan's squad has no athlete Isla"),
        (PLAN, "Una", "Una is out (`participation: out`): nothing is proposed"),
        (
            PLAN.replace("          set by: the club's physiotherapist\n", ""),
            "Isla",
            "a limit of Isla does not say who set it",
        ),
        (with_line("bench pull: 8 times 3"), "Isla", "the plan has lines that can't be read"),
    ],
)
def test_when_nothing_can_be_proposed(text: str, name: str, says: str) -> None:
    with pytest.raises(NotToSwap) as stop:
        told(text, name)
    assert str(stop.value).startswith(says)


def test_for_everybody_too_a_limit_needs_a_name_under_it() -> None:
    with pytest.raises(NotToSwap, match="does not say who set it"):
        screen(PLAN.replace("          set by: the club's physiotherapist\n", ""))
    assert "For an athlete's own lines: setwright swap FILE --for NAME" in screen(PLAN)


def test_what_is_lost_is_said() -> None:
    one = checked(PLAN)
    assert one.week
    at_hand = means(one.week, library())
    gone = lost(movement("level-cable-crossover"), movement("flat-barbell-bench-press"), at_hand)
    assert {"sternal loaded short", "the way past the midline"} <= set(gone)
    assert "the sternal line" not in gone
    press, squat = movement("flat-barbell-bench-press"), movement("goblet-squat")
    assert lost(press, squat, at_hand)[0] == "the sternal line"
    assert lost(press, squat, at_hand)[-1] == "load (heavy to moderate)"
    assert lost(squat, press, at_hand) == ()


HEAVY = (
    PLAN.replace("          set by: the club", "          set by: the club", 1)
    .replace("        - arm behind at most: 20 deg\n", "        - load at most: 30 kg\n")
    .replace("flat barbell bench press: 3 x 8 at 2 RIR", "flat barbell bench press: 3 x 8 at 45 kg")
)


def test_a_limit_on_the_load_asks_for_less_on_the_same_line() -> None:
    one = told(HEAVY.replace("      avoid: [bench pull]\n", ""))
    (line,) = one.lines
    assert (line.item.name, line.movement) == ("flat barbell bench press", None)
    assert line.typed == ("load:", "  Isla: 30 kg")
    screen_of = swap_for_text(one)
    assert "no more than that" in screen_of
    assert screen_of.startswith("Isla: 1 line outside what is written for Isla\n" + INSIDE)
    assert line.edit
    written = pasted(one.before.sources["week.yaml"].text, (line.edit,))
    assert not [f for f in checked(written).findings if f.rule == "limit-broken" and f.level is Level.error]


def test_the_least_of_several_limits_on_the_load_is_taken_and_left_to_the_coach() -> None:
    two = HEAVY.replace(
        "        - load at most: 30 kg\n",
        "        - load at most: 40%\n          until: cleared\n          set by: the doctor\n"
        "        - load at most: 30 kg\n",
    ).replace(
        "      limits:\n",
        "      maxes:\n        flat barbell bench press: 60 kg tested 2027-01-04\n      limits:\n",
    )
    (line,) = told(two.replace("      avoid: [bench pull]\n", "")).lines
    assert (line.typed, line.edit) == (("load:", "  Isla: 30 kg"), None)
