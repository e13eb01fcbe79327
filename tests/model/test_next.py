"""Rules for next time: every form, every question, and what is offered reads."""

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.findings import Finding
from setwright.model.next import (
    Add,
    ByEffort,
    ByRepetitions,
    Case,
    EveryWeeks,
    NextRule,
    Repeat,
    WhenReached,
    typed_next,
)
from setwright.model.reader.next import read_next
from setwright.places import Place
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from tests.reading.plans import read as read_plan
from tests.reading.plans import whole_plan

KG = Add(amount=2.5, unit="kg")
REP = Add(amount=1, unit="reps")
LB = Add(amount=5, unit="lb")
AT = Place("week.yaml", 3, 7, 3, 20)


def scalar(text: str) -> Scalar:
    return Scalar(text, AT)


def listing(text: str) -> Listing:
    """The list whose entries are joined by semicolons, as a rule is said back."""
    entries = (entry.partition(": ") for entry in text.split("; "))
    return Listing(tuple(Pairs(((scalar(key), scalar(value)),), AT) for key, _, value in entries), AT)


def outcome(node: Node) -> tuple[NextRule | None, tuple[Finding, ...]]:
    found = Gathering()
    read = read_next(node, found)
    assert (read is None) == bool(found.findings)
    return (read.rule if read else None), found.findings


def rule(text: str) -> NextRule:
    read, findings = outcome(scalar(text))
    assert read is not None, [f.message for f in findings]
    return read


def asked(node: Node) -> Finding:
    read, findings = outcome(node)
    assert read is None
    (finding,) = findings
    return finding


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("add 2.5 kg when every set reaches the top", WhenReached(add=KG, sets="every")),
        ("Add 2,5 kg when all sets reach the top.", WhenReached(add=KG, sets="every")),
        ("add 2.5 kg when the first set reaches the top", WhenReached(add=KG, sets="first")),
        ("add 2.5 kg every week", EveryWeeks(add=KG, weeks=1)),
        ("add  2.5kg every\u00a0week", EveryWeeks(add=KG, weeks=1)),
        ("add 1 rep every week", EveryWeeks(add=REP, weeks=1)),
        ("add 1 set every 2 weeks", EveryWeeks(add=Add(amount=1, unit="sets"), weeks=2)),
        ("take off 5 lb every week", EveryWeeks(add=Add(amount=-5, unit="lb"), weeks=1)),
        (
            "add 2.5% of last week's load every week",
            EveryWeeks(add=Add(amount=2.5, unit="%", of="last week"), weeks=1),
        ),
        (
            "add 2.5% of the first week’s load every 3 weeks",
            EveryWeeks(add=Add(amount=2.5, unit="%", of="first week"), weeks=3),
        ),
        (
            "add 5 kg to the training max every 3 weeks",
            EveryWeeks(add=Add(amount=5, unit="kg"), weeks=3, to="training max"),
        ),
        ("2% for each half point of effort", ByEffort(percent=2)),
        ("repeat", Repeat()),
    ],
)
def test_each_sentence(text: str, expected: NextRule) -> None:
    assert rule(text) == expected
    assert rule(typed_next(expected)) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("12 or more: add 5 lb; otherwise: repeat",
         ByRepetitions(cases=(Case(low=12, high=None, then=LB),), otherwise=Repeat())),
        ("8-11: repeat; 7: add 1 rep; 0-6: take off 5 lb",
         ByRepetitions(cases=(
             Case(low=8, high=11, then=Repeat()), Case(low=7, high=7, then=REP),
             Case(low=0, high=6, then=Add(amount=-5, unit="lb")),
         ))),
    ],
)  # fmt: skip
def test_a_list_by_repetitions(text: str, expected: NextRule) -> None:
    assert outcome(listing(text)) == (expected, ())
    assert typed_next(expected) == text


def test_six_or_fewer_starts_at_nothing() -> None:
    read, _ = outcome(listing("6 or fewer reps: repeat; 7 to 9: repeat"))
    assert isinstance(read, ByRepetitions)
    assert [(case.low, case.high) for case in read.cases] == [(0, 6), (7, 9)]


@pytest.mark.parametrize(
    ("text", "rule_id", "change"),
    [
        ("add 2.5 kg", "next-without-when",
         "write `add 2.5 kg every week` or `add 2.5 kg when every set reaches the top`"),
        ("add 2.5%", "next-percent-of-what",
         "write `add 2.5% of last week's load every week` or `add 2.5% of the first week's load every week`"),
        ("add 2% every week", "next-percent-of-what",
         "write `add 2% of last week's load every week` or `add 2% of the first week's load every week`"),
        ("add 2.5 every week", "next-not-read",
         "write `add 2.5 kg every week`, or lb, reps or sets in its place"),
        ("+2.5/wk", "next-not-read", "write `add 2.5 kg every week`"),
        ("3x8 → 4x8", "next-not-read", "write `add 3 kg every week`"),
        ("if 12-13 reps -> +5 lb", "next-not-read",
         "write a list, `- 12 or more: add 5 lb` and `- otherwise: repeat`"),
        ("first set at the top, +5 lb", "next-not-read",
         "write `add 5 lb when the first set reaches the top`"),
        ("when all are done", "next-not-read", "write `add 2.5 kg when every set reaches the top`"),
        ("raise the TM by 2 reps", "next-not-read",
         "write `add 2.5 kg to the training max every 3 weeks`"),
        ("add 5% to the training max every week", "next-not-read",
         "write `add 5 kg to the training max every 3 weeks`"),
        ("add 1.5 reps every week", "next-not-read", "write `add 2.5 kg every week`"),
        ("add 0 kg every week", "next-not-read", "write `add 2.5 kg every week`"),
        ("add 5 kg of last week's load every week", "next-not-read", "write `add 5 kg every week`"),
        ("0% for each half point of effort", "next-not-read", "write `2% for each half point of effort`"),
        ("2 more", "next-not-read",
         "write `add 2 kg every week` or `add 2 kg when every set reaches the top`"),
        ("same again", "next-not-read", "write `repeat`"),
        ("as it feels", "next-not-read",
         "write `add 2.5 kg when every set reaches the top`, `add 2.5 kg every week` or `repeat`"),
    ],
)  # fmt: skip
def test_everything_else_is_asked_with_the_nearest_rule(text: str, rule_id: str, change: str) -> None:
    finding = asked(scalar(text))
    assert (finding.rule, finding.change) == (rule_id, change)


@pytest.mark.parametrize(
    ("lines", "column"),
    [
        ("- 12 or more: add 5 lb\n- repeat", 5),
        ("- otherwise: repeat", 3),
        ("- otherwise: repeat\n- 12 or more: add 5 lb", 5),
        ("- 12+: add 5 lb", 5),
        ("- 12-8: repeat", 5),
        ("- 12 or more:", 5),
        ("- 12 or more: [a]", 5),
        ("- 12 or more: more", 17),
        ("- 12 or more: add 5 apples", 17),
        ("- 12 or more: add 5", 17),
        ("- 12 or more: add 5%", 17),
        ("- [a]", 5),
    ],
)
def test_a_list_is_asked_where_it_is_unclear(lines: str, column: int) -> None:
    text = whole_plan("next:\n" + "\n".join(f"  {line}" for line in lines.splitlines()))
    (finding,) = read_plan(text).findings
    assert finding.rule.startswith("next-")
    assert finding.place.column == column


def test_each_sentence_of_the_page_reads() -> None:
    page = (Path(__file__).parents[2] / "docs" / "plan-language.md").read_text(encoding="utf-8")
    rows = page.partition("## Next time")[2].partition("By the repetitions")[0].split("\n| `")[1:]
    sentences = [one for row in rows for one in re.findall(r"`?([^`]+)`", row.partition(" | ")[0])]
    assert len([rule(one.removeprefix(", ")) for one in sentences if one != ", "]) == 10


def test_keys_are_no_rule() -> None:
    assert asked(Pairs(((scalar("a"), scalar("b")),), AT)).rule == "value-in-wrong-form"


def test_an_item_and_a_group_keep_their_own() -> None:
    week = read_plan(
        whole_plan(
            "- dip: 3 x 8\n  next: repeat\n"
            "- superset:\n    - dip: 3 x 8\n    - pull-up: 3 x 8\n  next: add 1 rep every week"
        )
    ).week
    assert week is not None
    assert [entry.next.rule for entry in week.sessions[0].work if entry.next] == [
        Repeat(),
        EveryWeeks(add=REP, weeks=1),
    ]


PIECES = [
    *("add", "take off", "2.5", "5", "12", "kg", "lb", "%", "reps", "set", "every week", "every 2 weeks"),
    *("when every set reaches the top", "the first set", "top", "of last week's load", "to the training max"),
    *(
        "repeat",
        "otherwise",
        "or more",
        "for each half point of effort",
        "if",
        "->",
        "+",
        "/wk",
        "TM",
        "same",
    ),
]
WORDS = st.sampled_from(PIECES)
TEXTS = st.lists(WORDS, max_size=10).map(" ".join) | st.text(max_size=40)


@settings(max_examples=400, deadline=None)
@given(TEXTS)
def test_any_text_is_read_or_asked_and_what_is_offered_reads(text: str) -> None:
    node = scalar(text)
    if node.is_empty:
        return
    read, findings = outcome(node)
    if read is not None:
        assert rule(typed_next(read)) == read
    for finding in findings:
        for offered in re.findall(r"`([^`]+)`", finding.change) if "`" not in text else ():
            assert offered.startswith("- ") or rule(offered)


ODD = st.sampled_from(
    [
        "",
        '""',
        '" "',
        "8",
        "repeat",
        "add 5 lb",
        "add 5",
        "[a, b]",
        "{a: 8}",
        "12 or more",
        "otherwise",
        "0-0",
    ]
)


@settings(max_examples=150, deadline=None)
@given(
    st.sampled_from(["next", "sets a week", "last week"]),
    st.lists(st.tuples(st.sampled_from(["  - ", "    ", "  "]), ODD, ODD), max_size=5),
)
def test_any_lines_under_a_key_are_read_or_asked(key: str, rows: list[tuple[str, str, str]]) -> None:
    body = "\n".join(f"{lead}{name}: {value}" for lead, name, value in rows)
    result = read_plan(f"plan: A\nwork:\n  - dip: 3 x 8\n{key}:\n{body}\n")
    assert result.week is not None or result.findings
    assert all(f.where and f.why and f.change for f in result.findings)


ADDS = st.builds(
    Add,
    amount=st.integers(1, 400).map(lambda n: n / 4) | st.integers(-400, -1).map(lambda n: n / 4),
    unit=st.sampled_from(["kg", "lb"]),
) | st.builds(Add, amount=st.integers(1, 9), unit=st.sampled_from(["reps", "sets"]))
CASES = st.tuples(st.integers(0, 30), st.integers(0, 9) | st.none(), ADDS | st.just(Repeat())).map(
    lambda row: Case(low=row[0], high=None if row[1] is None else row[0] + row[1], then=row[2])
)


@settings(max_examples=200, deadline=None)
@given(
    st.builds(WhenReached, add=ADDS, sets=st.sampled_from(["every", "first"]))
    | st.builds(EveryWeeks, add=ADDS, weeks=st.integers(1, 99))
    | st.builds(
        ByRepetitions,
        cases=st.lists(CASES, min_size=1, max_size=4).map(tuple),
        otherwise=ADDS | st.just(Repeat()) | st.none(),
    )
)
def test_said_and_read_again_keeps_the_meaning(said: NextRule) -> None:
    text = typed_next(said)
    assert outcome(listing(text) if isinstance(said, ByRepetitions) else scalar(text)) == (said, ())
