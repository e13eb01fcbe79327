"""Rack cards from whole plans."""

from collections.abc import Callable

from setwright.floor.room import letter
from setwright.floor.today import Change, today
from setwright.library.table import library
from setwright.model.plan import Week
from setwright.sheets import sheet_html
from setwright.sheets.clock_plan import of_the_day
from setwright.sheets.floors import floors_of
from setwright.sheets.rack import RackCard, rack_cards
from setwright.sheets.view import LoadWords
from tests.pages.plans import CLUB, LONG, NO_CHEST, check, example


def cards(text: str) -> tuple[RackCard, ...]:
    return cards_of(check(text).week)


def cards_of(week: Week | None) -> tuple[RackCard, ...]:
    assert week is not None
    return rack_cards(week, "version abc", library(), floors_of(week, library()))


def large(card: RackCard) -> list[list[str]]:
    return [[load.large for load in row.loads] for row in card.rows]


NO_ROOM = CLUB[: CLUB.index("gym:\n")] + CLUB[CLUB.index("sessions:\n") :]
WITHOUT_CABLE = CLUB.replace("low-to-high cable crossover: 3 x 12 at 1 RIR", "push-up: 3 x 12")
"""A pair for which every group has its own rack, so that both lift at the same time."""


def test_people_of_like_loads_share_a_rack_the_lightest_left() -> None:
    strong, light, *_ = cards(WITHOUT_CABLE)
    assert (strong.title, strong.names) == ("Rack 1: flat barbell bench press", ("Isla M.", "Tam", "Struan"))
    assert (light.title, light.names) == ("Rack 2: flat barbell bench press", ("Wren", "Isla R."))
    assert large(light)[-1] == ["45", "47.5"]
    assert light.rows[-1].loads[0].small == "10 + 2.5 a side"
    assert large(light)[1] == ["30", "30"]
    assert light.rows[1].loads[0].small == "5 a side"
    assert [row.work for row in light.rows] == [False, False, False, True]
    assert light.rows[-1].what == ("4 × 6", "2 left")
    assert light.rows[1].what == ("warm-up", "5 reps")
    assert "Loads in kg with the bar. Lightest first." in light.notes


def test_a_card_says_when_which_rest_and_what_is_beside_it() -> None:
    one, *_, squat = cards(CLUB)
    assert one.facts == ("Monday 15 November 2027", "1a · group A 18:38 to 19:02")
    assert one.notes[:2] == (
        "Pair: 1a, then 1b straight after; rest 2:30 after both.",
        "Elbows under the bar.",
    )
    assert squat.notes[0] == "Rest 3:00."
    assert one.footer == "Old hall club · Club evening · Mon · version abc"
    assert cards(NO_ROOM)[0].facts[1] == "1a · 18:38 to 18:55"


def test_only_those_who_lift_it_are_on_it() -> None:
    *_, light, strong = cards(CLUB)
    assert (light.names, strong.names) == (("Isla R.", "Wren"), ("Struan",))
    assert light.rows[0].loads[0] == LoadWords(blank="kg")
    assert "Lightest first" not in " ".join(light.notes)


def test_the_next_in_line_spots_and_the_last_is_spotted_by_the_one_before() -> None:
    one, other, *_ = cards(CLUB)
    assert one.spots == ("Tam", "Struan", "Tam")
    assert other.spots == ("Isla R.", "Wren")


def test_cards_are_the_groups_of_the_floor_each_at_its_rack_and_time() -> None:
    """One bar for two groups: both at rack 1, one after the other."""
    week = check(CLUB.replace("racks: 2", "racks: 1").replace("    20 kg: 2\n", "    20 kg: 1\n")).week
    assert week is not None
    floor = today(week.sessions[0], week, library(), Change()).floor
    told = [card for card in cards_of(week) if "bench press" in card.title]
    stays = [stay for stay in floor.stays if stay.block.number == 1]
    assert [len(card.names) for card in told] == [len(stay.people) for stay in stays]
    assert [card.title[:6] for card in told] == ["Rack 1", "Rack 1"]
    for card, stay in zip(told, stays, strict=True):
        begins = of_the_day("18:30", (floor.warm_up_s + stay.start_s) / 60)
        assert card.facts[1].startswith(f"1a · group {letter(stay.group)} {begins} to ")


def test_without_spotters_the_bars_are_set_and_unknown_ones_are_written_in() -> None:
    none = cards(CLUB.replace("spotter: yes", "spotter: none"))[0]
    assert none.spots is None
    assert "Nobody spots: set the safety bars." in none.notes
    unknown = cards(CLUB.replace("  spotter: yes\n", ""))[0]
    assert unknown.spots == ("", "", "")


def test_who_is_alone_at_a_bar_has_nobody_named_to_spot() -> None:
    only_one = cards(CLUB.replace("for: [red]", "for: [Wren Tolquhoun]"))[-1]
    assert (only_one.names, only_one.spots) == (("Wren",), ("",))


def test_five_people_are_shared_out_evenly_where_no_gym_is_written() -> None:
    one, other, squat = cards(NO_ROOM)
    assert [len(one.names), len(other.names)] == [3, 2]
    assert (one.title, squat.title) == ("flat barbell bench press", "barbell back squat")


def test_without_a_squad_there_are_four_columns_to_write_names_on() -> None:
    bench, pull, squat = cards(LONG)
    assert bench.names == (None, None, None, None)
    assert bench.spots == ("", "", "", "")
    assert (pull.title, squat.title) == ("bench pull", "barbell back squat")
    assert "Name" not in sheet_html(check(LONG), "rack", "a4").split("</head>")[1]
    assert large(squat)[-1][0] == "80, 90, 100"


def test_somebody_who_does_another_movement_is_on_no_card() -> None:
    plan = CLUB.replace(
        "            note: elbows",
        "            instead:\n              Tam Rae: push-up\n            note: elbows",
    )
    plan = plan.replace("              Tam Rae: 75 kg\n", "")
    names = {name for card in cards(plan) if "bench press" in card.title for name in card.names}
    assert names == {"Wren", "Isla R.", "Isla M.", "Struan"}


def test_what_is_done_at_home_or_without_a_bar_has_no_card() -> None:
    assert cards(NO_CHEST) == ()
    assert cards(LONG.replace("place: old hall", "place: at home")) == ()


def test_the_example_has_a_card_for_each_lift_and_turn() -> None:
    told = cards_of(example("week-good.yaml").week)
    assert [card.title for card in told[::2]] == [
        "Rack 1: flat barbell bench press", "bench pull",
        "Rack 1: incline 30 barbell bench press", "Romanian deadlift",
    ]  # fmt: skip
    groups = [card.facts[1].partition(" · ")[2][:7] for card in told]
    assert [sorted(pair) for pair in zip(groups[::2], groups[1::2], strict=True)] == [
        ["group A", "group B"]
    ] * 4


def test_cards_are_those_that_were_looked_at(golden: Callable[[str, str], None]) -> None:
    golden("rack-club-a4.html", sheet_html(check(CLUB), "rack", "a4"))
