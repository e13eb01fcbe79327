"""One fault, one finding: what covers, what the same move closes, and what nothing here closes."""

from setwright.findings import Level
from setwright.rules import half_a_pair, heavy_line_not_finished, no_cure_in_this_gym, no_work_at_long_length
from tests.rules.plans import checked, rules_in, week


def test_what_the_same_proposed_move_closes_is_one_finding() -> None:
    one = checked(no_work_at_long_length.BAD.split("allow:", maxsplit=1)[0])
    assert rules_in(one) == ["line-never-followed"]
    assert "leaning parallel-bar dip" in one.findings[0].change
    assert one.findings[0].also == ("the sternal part is never loaded at long length",)


def test_an_allowed_finding_does_not_take_others_with_it() -> None:
    one = checked(no_work_at_long_length.BAD)
    assert rules_in(one) == ["no-work-at-long-length"]
    assert [a.finding.rule for a in one.allowed] == ["line-never-followed"]


def test_a_heavy_line_speaks_for_the_short_end_of_its_part() -> None:
    text = heavy_line_not_finished.BAD.replace(
        "      - high-to-low cable crossover: 2 x 12 at 1 RIR\n", "", 1
    )
    found = {finding.place.line: finding.rule for finding in checked(text).findings}
    assert "no-work-at-short-length" not in found.values()
    assert list(found.values()).count("heavy-line-not-finished") == 2


def test_a_crossing_move_for_a_line_leaves_the_lines_of_other_presses_open() -> None:
    lines = (
        "flat barbell bench press: 4 x 6",
        "level cable crossover: 3 x 12",
        "dip: 3 x 6",
        "bench pull: 4 x 8",
    )
    one = checked(
        week("\n".join(("Monday", *(f"{line} at 2 RIR" for line in lines))), top="focus: [chest]\n")
    )
    assert [f.message for f in one.findings if f.rule == "heavy-line-not-finished"] == [
        "Monday's dip is never finished past the midline"
    ]


def test_what_nothing_at_hand_closes_is_one_piece_of_advice() -> None:
    found = checked(no_cure_in_this_gym.BAD).findings
    assert [(f.rule, f.level) for f in found] == [("no-cure-in-this-gym", Level.advice)]
    assert "never finished past the midline" in found[0].message
    assert "no movement of the week follows the costal line" in found[0].message


def test_what_nothing_at_hand_closes_can_be_allowed() -> None:
    one = checked(no_cure_in_this_gym.BAD + "allow:\n  no-cure-in-this-gym: the machine is all we have\n")
    assert one.findings == ()
    assert [a.reason for a in one.allowed] == ["the machine is all we have"]


def test_one_line_of_it_can_be_allowed_alone() -> None:
    one = checked(no_cure_in_this_gym.BAD + "allow:\n  line-never-followed: no dip bars\n")
    assert "costal line" not in one.findings[0].message
    assert [a.finding.rule for a in one.allowed] == ["line-never-followed"]
    assert one.allowed[0].finding.change == "nothing in this gym and within everyone's limits closes it"


def test_a_pair_is_not_called_half_while_a_line_of_the_plan_can_not_be_read() -> None:
    unread = half_a_pair.BAD + "      - front plank: 3x8x60\n"
    assert "half-a-pair" not in rules_in(checked(unread))
    assert "half-a-pair" in rules_in(checked(unread.replace("3x8x60", "3 x 40 s hold")))
