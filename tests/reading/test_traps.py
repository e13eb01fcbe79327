"""Traps of YAML: each found in one run, on whole and on broken files, with the line to type."""

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from setwright.findings import Finding
from setwright.reading.broken import explain
from setwright.reading.lines import anatomy
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.tree import read_tree

SCALARS = st.text(st.characters(codec="utf-8", exclude_categories=("Cc", "Cn", "Co", "Zs")), max_size=30)


def found(text: str) -> list[tuple[str, int, int]]:
    return [(f.rule, f.place.line, f.place.column) for f in read_tree("week.yaml", text).findings]


def only(text: str) -> Finding:
    (finding,) = read_tree("week.yaml", text).findings
    return finding


def plain(node: Node | None) -> object:
    if isinstance(node, Scalar):
        return node.text
    if isinstance(node, Listing):
        return [plain(one) for one in node.nodes]
    return {key.text: plain(value) for key, value in node.pairs} if node else None


@pytest.mark.parametrize(
    ("typed", "write"),
    [
        ("effort: @8", "effort: RPE 8"),
        ("effort: @ 7-8", "effort: RPE 7-8"),
        ("load: @ 75%", "load: 75%"),
        ("load: %75", "load: 75%"),
        ("load: %1RM", 'load: "%1RM"'),
        ("sides: *each side", "sides: each side"),
        ("stop: !now", "stop: now"),
        ("do: >8", "do: 8+"),
        ("do: > 8", "do: 8+"),
        ("note: |heavy", "note: heavy"),
        ("note: `bar`", "note: bar"),
        ("note: @", 'note: "@"'),
        ("load: 135 #", "load: 135 lb"),
        ("do: 3 x 8 #heavy", "do: 3 x 8 heavy"),
        ("do: with band #2", "do: with band 2"),
        ("load: #5", "load: 5"),
        ("note: keep tight: no flare", 'note: "keep tight: no flare"'),
        ("note: keep tight:", 'note: "keep tight:"'),
        ('do: "5" x 3', "do: 5 x 3"),
        ("note: 'til failure", "note: til failure"),
        ("do:\t3 x 8", "do: 3 x 8"),
        ("do: 3 x 8\tat 60 kg", "do: 3 x 8 at 60 kg"),
        ("do:\u00a03 x 8", "do: 3 x 8"),
        ("do: 3 x\u200b 8", "do: 3 x 8"),
        ("do: 3 x 8\x07", "do: 3 x 8"),
    ],
)
def test_one_trap_is_one_finding_with_the_line_to_type(typed: str, write: str) -> None:
    finding = only(f"- move: dip\n  {typed}\n  rest: 2:00\n")
    assert f"`{write}`" in finding.change
    assert finding.place.line == 2


@pytest.mark.parametrize(
    ("typed", "change"),
    [
        (
            "- A1: Bench: 3x8",
            "one movement, one colon: `- Bench: 3x8`; moves that go together stand under `superset:`",
        ),
        ("- dip: hard: 3x8", "one movement, one colon: `- hard: 3x8`; or put the text in quotes"),
        ("- dip: EMOM 10: 5", "write `- dip: 10 x 5 every 1:00`"),
        ("- dip: 3 x 8, deload: half", "write `- dip: 3 x 8`, and what is no dose underneath, under `note:`"),
        (
            "- dip: -",
            (
                "write `- dip:` if nothing is written down, or write words: `none` in a plan,"
                " `not done` in a record"
            ),
        ),
        ("- dip: **3 x 8**", "write `- dip: 3 x 8`"),
        ("- @8: dip", "write `- at 8: dip`"),
        ("• dip: 3 x 8", "write `- dip: 3 x 8`"),
        ("1. dip: 3 x 8", "write `- dip: 3 x 8`"),
        ("-dip: 3 x 8", "write `- dip: 3 x 8`"),
        ("– dip: 3 x 8", "write `- dip: 3 x 8`"),
        ("- dip:3 x 8", "write `- dip: 3 x 8`"),
    ],
)
def test_traps_of_a_line_of_a_list(typed: str, change: str) -> None:
    assert only(f"work:\n  - push-up: 3 x 8\n  {typed}\n").change == change


@pytest.mark.parametrize(
    "text",
    [
        "do: 3 x 8 # heavy today\n",
        "do: 3 x 8  ## heavy\n",
        "#do: 3 x 8\ndo: 3 x 8\n",
        "  # a remark: with a colon\ndo: 3 x 8\n",
        "note: see the sheet#2\n",
        "note: |\n  @8 #2 *x: y: z\n  \ttab\ndo: 3 x 8\n",
        "note: >-\n  folded # text\ndo: 3 x 8\n",
        "- note: |\n    deep: text: here\n  do: 3 x 8\n",
        "note: 'it''s fine: really #2'\n",
        'note: "a \\" quote: b #2"\n',
        "note: https://example.org/a:b\n",
        "start: 06:45\n",
        "work: &push\n  - dip: 3 x 8\nagain: *push\n",
        "lists: [&a one, *a]\n",
        "load: [60, 65,\n  70]\n",
        "load: [60, '#5', \"a: b\"]  # remark\n",
        "names: {a: b, c: d}\n",
        "---\nplan: A\n",
        "note: keep\u00a0tight\n",
        "a: b\r\nc: d\r\n",
        "\ufeffplan: A\n",
        '"quoted key": value\n',
        "empty:\n",
        "",
    ],
)
def test_what_is_fine_stays_silent(text: str) -> None:
    assert found(text) == []


def test_values_arrive_as_they_were_typed_whatever_yaml_makes_of_them() -> None:
    text = (
        "a: 1:30\nb: 0310\nc: No\nd: 010\ne: 1.10\nf: @8\ng: 135 #\n"
        "h: keep: it\ni: ~\nj: 12_10_8\nk: 2027-02-30\n"
    )
    assert plain(read_tree("week.yaml", text).root) == {
        "a": "1:30", "b": "0310", "c": "No", "d": "010", "e": "1.10", "f": "@8", "g": "135 #",
        "h": "keep: it", "i": "~", "j": "12_10_8", "k": "2027-02-30",
    }  # fmt: skip


def test_places_are_exact_beside_a_trap() -> None:
    text = "- dip: 3 x 8 #2\n  rest: 2:00\n\t- push-up: 4 x 5\n"
    root = read_tree("week.yaml", text).root
    assert isinstance(root, Listing)
    item = root.nodes[0]
    assert isinstance(item, Pairs)
    (name, dose), (rest, time) = item.pairs
    assert (name.place.line, name.place.column, name.place.end_column) == (1, 3, 6)
    assert (dose.place.column, dose.place.end_column) == (8, 16)
    assert (rest.place.line, rest.place.column) == (2, 3)
    assert isinstance(time, Scalar)
    assert time.text == "2:00"


def test_a_quoted_value_has_the_place_of_its_words() -> None:
    root = read_tree("week.yaml", 'do: " 3 x 8"\n').root
    assert isinstance(root, Pairs)
    value = root.pairs[0][1]
    assert isinstance(value, Scalar)
    assert (value.text, value.place.column, value.place.end_column) == ("3 x 8", 7, 12)


def test_a_broken_file_has_all_its_faults_in_one_run() -> None:
    text = (
        "plan: A\n"
        "Bench\t3x8\t80\n"
        "work:\n"
        "  - dip: 3 x 8\n"
        "      rest: 2:00\n"
        "  - row: @8\n"
        "    load: %75\n"
        "    focus: [chest\n"
        "    note: x\n"
        "   tempo: 3010\n"
        "  - press: 3 x 8\n"
        "note: done\n"
    )
    assert found(text) == [
        ("tab-in-file", 2, 6),
        ("value-starts-with-sign", 6, 10),
        ("value-starts-with-sign", 7, 11),
        ("line-out-of-line", 5, 7),
        ("bracket-not-closed", 8, 5),
        ("line-out-of-line", 10, 4),
    ]
    assert plain(read_tree("week.yaml", text).root) == {
        "plan": "A",
        "work": [{"dip": "3 x 8"}, {"row": "@8", "load": "%75", "note": "x"}, {"press": "3 x 8"}],
        "note": "done",
    }


def test_many_tabs_are_one_finding_that_names_the_lines() -> None:
    finding = only("work:\n\t- dip: 3 x 8\n\t- push-up: 3 x 8\n\t- pull-up: 3 x 8\n")
    assert finding.message == "a tab instead of blanks (and on 2 more lines)"
    assert [seen.line for seen in finding.seen] == [3, 4]


def test_a_tab_does_not_also_break_the_structure() -> None:
    text = "work:\n\t- dip: 3 x 8\n\t  rest: 2:00\n"
    assert plain(read_tree("week.yaml", text).root) == {"work": [{"dip": "3 x 8", "rest": "2:00"}]}


MIXED = """\
sessions:
  - day: Monday
    work:
      - bench press: 4 x 6
\trest: 2:00
      - dip: 3 x 8
\t\ttempo: 3010
\tnote: slow
\t\tand deep
\t- pull-up: 3 x 8
"""


def test_a_line_with_tabs_is_put_in_line_with_what_stands_above_it() -> None:
    tree = read_tree("week.yaml", MIXED)
    (finding,) = tree.findings
    assert finding.change == "write `        rest: 2:00`"
    assert [seen.text for seen in finding.seen] == [
        "write `        tempo: 3010`",
        "write `        note: slow`",
        "write `          and deep`",
        "write `      - pull-up: 3 x 8`",
    ]
    assert plain(tree.root)["sessions"][0]["work"] == [  # type: ignore[index]  # plain text, keys and lists
        {"bench press": "4 x 6", "rest": "2:00"},
        {"dip": "3 x 8", "tempo": "3010", "note": "slow and deep"},
        {"pull-up": "3 x 8"},
    ]


def test_a_file_of_tabs_alone_is_read_by_its_steps() -> None:
    text = (
        "sessions:\n\t- day: Monday\n\t  work:\n\t\t- superset:\n\t\t\t- dip: 3 x 8\n\t\t\t  rest: none\n"
        "\t\t\t- row: 3 x 8\n\t\t  rest: 2:00\n\t\t- curl: 3 x 8\n"
        "\t- day: Friday\n\t  work:\n\t\t- press: 3 x 8\nunit: kg\n"
    )
    pair = {"superset": [{"dip": "3 x 8", "rest": "none"}, {"row": "3 x 8"}], "rest": "2:00"}
    assert plain(read_tree("week.yaml", text).root) == {
        "sessions": [
            {"day": "Monday", "work": [pair, {"curl": "3 x 8"}]},
            {"day": "Friday", "work": [{"press": "3 x 8"}]},
        ],
        "unit": "kg",
    }


def test_places_on_a_line_that_began_with_tabs_are_those_that_were_typed() -> None:
    text = "work:\n  - dip: 3 x 8\n\t\t\t\t\t\trest: maybe\n"
    (finding,) = read_tree("week.yaml", text).findings
    assert (finding.place.line, finding.place.column, finding.change) == (3, 1, "write `    rest: maybe`")
    work = read_tree("week.yaml", text).root.pairs[0][1]  # type: ignore[union-attr]  # the text is keys
    (dip,) = work.nodes  # type: ignore[union-attr]  # and a list
    (_, (_, value)) = dip.pairs  # type: ignore[union-attr]  # of keys
    assert (value.place.line, value.place.column, value.place.end_column) == (3, 13, 18)


def test_text_split_by_a_comma_is_put_back_together() -> None:
    tree = read_tree("week.yaml", "- {move: dip, do: 12, 10, 8, rest: [1]}\n")
    assert plain(tree.root) == [{"move": "dip", "do": "12, 10, 8", "rest": ["1"]}]
    assert (
        tree.findings[0].change
        == "write without braces, one a line: `move: dip`; `do: 12, 10, 8`; `rest: ...`"
    )
    assert plain(read_tree("week.yaml", "{lost, [a]: b, {c: d}: e}").root) == {"lost": ""}
    assert plain(read_tree("week.yaml", "{a: [b], c}").root) == {"a": ["b"]}


def test_the_first_of_a_double_key_is_kept_and_both_lines_named() -> None:
    tree = read_tree("week.yaml", "monday: a\nsunday: b\nMonday: c\n")
    assert plain(tree.root) == {"monday": "a", "sunday": "b"}
    assert tree.findings[0].message == '"Monday" stands twice, on line 1 and on line 3'


def test_a_glued_line_is_taken_off_again() -> None:
    tree = read_tree("week.yaml", "- row 3x8\n   - press 3x8\n- dip\n")
    assert plain(tree.root) == ["row 3x8", "dip"]
    assert tree.findings[0].place.line == 2


def test_text_may_run_over_lines() -> None:
    tree = read_tree("week.yaml", "note: one\n  two\n")
    assert plain(tree.root) == {"note": "one two"}
    assert tree.findings == ()


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("a: " + "[" * 50 + "]" * 50, "levels deep"),
        ("[" * 30_000, "levels deep"),
        ("- a\n" * 60_001, "values"),
        (
            "a: &a [1,1,1,1,1,1,1,1]\n"
            + "".join(
                f"{b}: &{b} [*{a},*{a},*{a},*{a},*{a},*{a},*{a},*{a}]\n"
                for a, b in zip("abcdef", "bcdefg", strict=True)
            ),
            "values",
        ),
        ("#" * 1_000_001, "characters"),
    ],
    ids=["deep", "open", "long", "laughs", "large"],
)
def test_hostile_files_are_one_plain_error(text: str, what: str) -> None:
    tree = read_tree("week.yaml", text)
    assert tree.root is None
    assert [f.rule for f in tree.findings] == ["file-too-big"]
    assert what in tree.findings[0].message


def test_a_file_that_breaks_everywhere_ends() -> None:
    tree = read_tree("week.yaml", "a: b: c\n  - : [\n" * 60)
    assert tree.findings


@given(st.text(max_size=200))
def test_any_text_gives_nodes_or_findings(text: str) -> None:
    tree = read_tree("week.yaml", text)
    rows = text.removeprefix("\ufeff").splitlines()
    for finding in tree.findings:
        assert 1 <= finding.place.line <= max(len(rows), 1)
        assert finding.place.column >= 1


@given(st.text("ab:- #\t'\"{}[],&*!|>%@\n\u00a0", max_size=120))
def test_any_mix_of_signs_gives_nodes_or_findings(text: str) -> None:
    tree = read_tree("week.yaml", text)
    assert tree.root is not None or tree.findings or not text.replace("---", "").strip() or "#" in text


@given(SCALARS)
def test_a_quoted_text_arrives_whole(text: str) -> None:
    quoted = text.replace("'", "''")
    assert plain(read_tree("week.yaml", f"note: '{quoted}'\n").root) == {"note": text.strip()}


def test_a_parser_error_without_a_place_is_still_a_finding() -> None:
    broken = explain(yaml.YAMLError(), "week.yaml", ["", "# x"])
    assert (broken.row, broken.finding.rule) == (1, "line-not-readable")


def test_a_key_without_its_colon_is_shown_with_it() -> None:
    plan = "work:\n  - superset:\n      - dip: 3 x 8\n      - pull-up: 3 x 8\n    rest 90 s\n"
    assert only(plan).change == "write `rest: 90 s`"
    assert only(plan.replace("rest 90 s", "three sets")).change.startswith("write it as a key with a value")


def test_an_open_quote_in_brackets_reaches_to_the_end_of_its_line() -> None:
    assert found("a: ['x\nb: c\n") == [("quote-not-closed", 1, 1)]


def test_a_backslash_in_double_quotes() -> None:
    assert only('note: "a\\q"\n').change == 'write `note: "a\\\\q"`'


def test_the_anatomy_of_a_line() -> None:
    (line,) = anatomy(["  - dip: &a 3 x 8   # remark here"])
    assert (line.indent, line.start, line.key, line.said, line.hash) == (2, 4, "dip", "3 x 8", 20)
