"""Who a sheet is for, and how people of one name are told apart."""

from setwright.sheets.people import first_names, full_names, known_as, who_trains
from tests.pages.plans import CLUB, NO_CHEST, check


def test_who_is_out_is_no_reader_and_without_a_squad_one_sheet_is_for_all() -> None:
    week = check(CLUB).week
    assert week is not None
    people = who_trains(week)
    assert [one.name for one in people if one] == [
        "Isla Marrack", "Tam Rae", "Isla Rae", "Struan Corr", "Wren Tolquhoun",
    ]  # fmt: skip
    assert known_as(week, people[1]) == frozenset({"Tam Rae", "blue"})
    alone = check(NO_CHEST).week
    assert alone is not None
    assert who_trains(alone) == (None,)
    assert known_as(alone, None) is None


def test_people_of_one_name_get_a_letter() -> None:
    assert full_names(["Tam", "Isla", "tam", "TAM"]) == ("Tam (a)", "Isla", "tam (b)", "TAM (c)")
    assert full_names(()) == ()


def test_first_names_get_an_initial_and_then_a_letter() -> None:
    assert first_names(["Isla Marrack", "Tam Rae"]) == ("Isla", "Tam")
    assert first_names(["Isla Marrack", "Isla Mure"]) == ("Isla M. (a)", "Isla M. (b)")
    assert first_names(["* Ola *", "🏋", "1 2"]) == ("Ola", "🏋", "1")
    assert first_names(["Isla", "Isla"]) == ("Isla (a)", "Isla (b)")
