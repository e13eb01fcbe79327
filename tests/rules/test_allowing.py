"""What `allow` silences, where it holds, and what is said when it silences nothing."""

import pytest

from setwright.findings import Level
from tests.rules.plans import checked, rules_in, week

FLAT = "flat barbell bench press: 4 x 8 at 2 RIR"
ALLOW = "allow:\n  heavy-line-not-finished: the crossing work is with the other coach\n"
MONDAY = f"""Monday
{FLAT}
pull-up: 6 x 8 at 2 RIR
incline 30 barbell bench press: 4 x 8 at 2 RIR
low-to-high cable crossover: 2 x 12 at 1 RIR
dip: 3 x 6 at 2 RIR
high-to-low cable crossover: 2 x 12 at 1 RIR"""
PLAN = week(MONDAY, top="focus: [chest]\n")


def indented(text: str, by: int) -> str:
    return "".join(f"{' ' * by}{line}\n" for line in text.splitlines())


@pytest.mark.parametrize(
    "text",
    [
        PLAN + ALLOW,
        PLAN.replace("    work:\n", f"{indented(ALLOW, 4)}    work:\n"),
        PLAN.replace(f"- {FLAT}\n", f"- {FLAT}\n{indented(ALLOW, 8)}"),
    ],
    ids=["plan", "session", "line"],
)
def test_an_allow_silences_where_it_holds(text: str) -> None:
    assert rules_in(checked(PLAN)) == ["heavy-line-not-finished"]
    one = checked(text)
    assert one.findings == ()
    assert [(a.finding.rule, a.reason) for a in one.allowed] == [
        ("heavy-line-not-finished", "the crossing work is with the other coach")
    ]


def test_an_allow_under_a_superset_holds_for_its_lines() -> None:
    pair = (
        f"superset:\n          - {FLAT}\n          - bench pull: 4 x 8 at 2 RIR\n{indented(ALLOW, 8)}".rstrip(
            "\n"
        )
    )
    text = PLAN.replace(f"- {FLAT}\n", f"- {pair}\n")
    assert rules_in(checked(text)) == []


def test_an_allow_inside_a_superset_holds_for_its_own_line() -> None:
    pair = f"superset:\n          - {FLAT}\n{indented(ALLOW, 12)}          - bench pull: 4 x 8 at 2 RIR"
    assert rules_in(checked(PLAN.replace(f"- {FLAT}\n", f"- {pair}\n"))) == []


def test_an_allow_elsewhere_silences_nothing_and_is_told() -> None:
    text = PLAN.replace("- dip: 3 x 6 at 2 RIR\n", f"- dip: 3 x 6 at 2 RIR\n{indented(ALLOW, 8)}")
    assert rules_in(checked(text)) == ["heavy-line-not-finished", "allow-silences-nothing"]


def test_an_allow_for_a_rule_that_another_speaks_for_is_answered() -> None:
    flat_only = week(
        f"Monday\n{FLAT.replace('4 x', '5 x')}\nbench pull: 4 x 8 at 2 RIR", top="focus: [chest]\n"
    )
    text = flat_only + "allow:\n  no-work-at-short-length: bar only this week\n"
    one = checked(text)
    assert "allow-silences-nothing" not in rules_in(one)
    assert any("short length" in also for f in one.findings for also in f.also)


def test_a_text_rule_is_known_but_an_allow_does_not_silence_it() -> None:
    found = checked(
        week("Monday\ngoblet squat: 4 x 10 at 3 RIR") + "allow:\n  double-key: I like it\n"
    ).findings
    assert [(f.rule, f.level) for f in found] == [("allow-silences-nothing", Level.advice)]


def test_an_unknown_rule_in_allow_gets_the_nearest() -> None:
    found = checked(week("Monday\ngoblet squat: 4 x 10 at 3 RIR") + "allow:\n  half-pair: alone\n").findings
    assert [(f.rule, f.level) for f in found] == [("unknown-rule-in-allow", Level.gap)]
    assert found[0].change == 'write "half-a-pair: alone"'


def test_an_unknown_rule_like_no_other_points_to_the_list() -> None:
    found = checked(week("Monday\ngoblet squat: 4 x 10 at 3 RIR") + "allow:\n  zzz: alone\n").findings
    assert "setwright explain" in found[0].change


def test_while_a_line_is_unread_the_week_is_not_judged() -> None:
    one = checked(PLAN.replace("pull-up", "pull-up of doom") + ALLOW)
    assert one.waiting
    assert all(f.level is Level.error for f in one.findings)
