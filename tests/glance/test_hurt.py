"""Who is hurt, with the swap or none yet; and nothing of what a limit says."""

import pytest

from setwright.glance import glance
from setwright.report.machine import github, json_text, short
from setwright.report.summary import summary_text
from tests.glance.plans import of, of_example
from tests.rules.plans import checked, week
from tests.rules.test_limits import PRIVATE, full_of_limits

ISLA = """\
squad:
  athletes:
    - name: Isla
      limits:
        - arm behind at most: 0 deg
          until: cleared
    - name: Isla Ann
      avoid: [bench pull]
    - name: Rory
      participation: out
    - name: Tam
"""
DIP = "dip: 3 x 8 at 2 RIR"


def hurt(*lines: str, squad: str = ISLA) -> tuple[str, ...]:
    return of(week("\n".join(["Monday", *lines]), top=squad), "hurt")


def test_a_line_against_a_limit_has_no_swap_yet() -> None:
    assert hurt(DIP, "bench pull: 3 x 8 at 2 RIR") == (
        "No swap yet: Isla (dip); Isla Ann (bench pull).",
        "Out: Rory.",
    )


def test_what_they_do_instead_or_not_at_all() -> None:
    told = hurt(
        DIP,
        "        instead:\n          Isla: leg press",
        "bench pull: 3 x 8 at 2 RIR",
        "        not for: [Isla, Isla Ann]",
    )
    assert told == (
        "Changed: Isla (leg press for dip and without bench pull); Isla Ann (without bench pull).",
        "Out: Rory.",
    )


def test_a_group_that_is_not_for_somebody() -> None:
    told = hurt(
        "superset:",
        f"          - {DIP}",
        "          - bench pull: 3 x 8 at 2 RIR",
        "        rest: 2:00",
        "        not for: [Isla]",
        "leg press: 3 x 8 at 2 RIR",
    )
    assert told[:2] == (
        "No swap yet: Isla Ann (bench pull).",
        "Changed: Isla (without dip and without bench pull).",
    )


def test_what_is_no_answer_is_to_be_asked_about() -> None:
    assert hurt("goblet squat: 3 x 8 at 2 RIR")[:2] == (
        "To be asked about: Isla (goblet squat).",
        "Nothing in the week stands against theirs: Isla Ann.",
    )


def test_a_swap_that_is_against_the_limit_too() -> None:
    assert hurt(DIP, "        instead:\n          Isla: deep push-up")[:2] == (
        "No swap yet: Isla (deep push-up).",
        "Changed: Isla (deep push-up for dip).",
    )


def test_nothing_in_the_week_stands_against_it() -> None:
    told = hurt("leg press: 3 x 8 at 2 RIR")[0]
    assert told == "Nothing in the week stands against theirs: Isla and Isla Ann."
    assert of_example("week-good.yaml", "hurt") == ("Nothing in the week stands against theirs: Callan.",)


def test_who_is_alike_is_told_together_and_nobody_is_left_out() -> None:
    crew = "".join(f"    - name: Crew{n}\n      avoid: [dip]\n" for n in range(12))
    (told,) = hurt(DIP, squad=f"squad:\n  athletes:\n{crew}")
    assert told == "No swap yet: " + ", ".join(f"Crew{n}" for n in range(11)) + " and Crew11 (dip)."


def test_many_movements_of_one_athlete_are_counted() -> None:
    lines = (DIP, "bench pull: 3 x 8", "push-up: 3 x 8", "pull-up: 3 x 8", "back squat: 3 x 8")
    squad = "squad:\n  athletes:\n    - name: Isla\n      avoid: [dip, bench pull, push-up, pull-up]\n"
    assert hurt(*lines, squad=squad) == ("No swap yet: Isla (dip, bench pull and 2 more).",)


def test_somebody_takes_part_with_changes_and_none_is_written() -> None:
    squad = "squad:\n  athletes:\n    - name: Isla\n      participation: modified\n"
    assert hurt(DIP, squad=squad) == ("No swap yet: Isla (Monday).",)


def test_a_squad_without_limits_and_no_squad() -> None:
    squad = "squad:\n  athletes:\n    - name: Tam\n"
    assert hurt(DIP, squad=squad) == ("No limit, list or changed part is written for the 1 of the squad.",)
    assert hurt(DIP, squad="") == ("No squad written, so nobody's limits are known.",)


@pytest.mark.parametrize("word", [word for word in PRIVATE if word != "Isla"])
def test_nothing_of_a_limit_or_a_body_is_in_the_summary(word: str) -> None:
    assert word not in summary_text(glance(checked(full_of_limits())))


def test_programs_never_read_whom_a_finding_is_about() -> None:
    one = checked(week(f"Monday\n{DIP}", top=ISLA))
    assert {finding.who for finding in one.findings} == {"Isla"}
    assert {finding.for_others().who for finding in one.findings} == {""}
    for told in (json_text([one]), short(one), github(one)):
        assert "Isla" not in told
