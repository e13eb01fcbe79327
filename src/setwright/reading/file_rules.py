"""Text rules about the file as a whole: what YAML loses, changes or can't read."""

from setwright.findings import Level
from setwright.reading.faults import TextRule

HASH = TextRule(
    "text-lost-after-hash",
    "a # that would cut off the rest of the line",
    "YAML takes a # behind a blank for the start of a remark and loses what follows",
    "- band row: 3 x 15 with band 2 #heavy",
    "- band row: 3 x 15 with band 2   # heavy today",
)
SECOND_COLON = TextRule(
    "second-colon",
    "a second colon in one line",
    "a colon with a blank behind it starts a value; YAML can't read two on one line",
    "- dip: 3 x 8\n  note: keep tight: no flare",
    '- dip: 3 x 8\n  note: "keep tight: no flare"',
)
SIGN = TextRule(
    "value-starts-with-sign",
    "a value that starts with a sign YAML keeps for itself",
    "YAML reads @ % * ! > | a back-tick and a dash alone at the start of a value as commands, not as text",
    "- dip: 3 x 8\n  effort: @8",
    "- dip: 3 x 8\n  effort: RPE 8",
)
AFTER_QUOTE = TextRule(
    "text-after-quote",
    "words behind a closing quote",
    "a value that starts with a quote ends with the next one; YAML can't read what follows",
    '- dip: "3" x 8',
    "- dip: 3 x 8",
)
OPEN_QUOTE = TextRule(
    "quote-not-closed",
    "a quote that opens and does not close on its line",
    "YAML swallows the following lines until it finds the next quote",
    "- dip: 3 x 8\n  note: 'til failure",
    "- dip: 3 x 8\n  note: until failure",
)
OPEN_BRACKET = TextRule(
    "bracket-not-closed",
    "a bracket or brace that opens and does not close",
    "YAML swallows the following lines until it finds the other half",
    "focus: [chest, back",
    "focus: [chest, back]",
)
SPLIT = TextRule(
    "split-by-comma-in-braces",
    "a comma that splits text inside braces",
    "inside braces every comma starts a new key, so the text behind it is lost",
    "- {dip: 3 x 8, rest 2:00}",
    "- dip: 3 x 8, rest 2:00",
)
TAB = TextRule(
    "tab-in-file",
    "a tab, which looks like blanks",
    "YAML doesn't take tabs; they can't be seen, and they often come with text from a spreadsheet",
    "- dip:\t3 x 8",
    "- dip: 3 x 8",
)
ODD_BLANK = TextRule(
    "no-break-space",
    "a blank that is no plain blank",
    "such spaces look like blanks or like nothing, and YAML takes them for letters",
    "- dip:\u00a03 x 8",
    "- dip: 3 x 8",
)
ODD_BLANK_IN_VALUE = TextRule(
    "no-break-space-in-value",
    "a blank in a value that is no plain blank",
    "it is read as a plain blank here; at the start of a line the same character changes the plan",
    "- dip: 3\u00a0x 8",
    "- dip: 3 x 8",
    Level.advice,
)
CONTROL = TextRule(
    "character-not-text",
    "a character that is no text",
    "it can't be seen or printed, and it usually comes from another program",
    "- dip: 3 x 8\x07",
    "- dip: 3 x 8",
)
LIST_MARK = TextRule(
    "list-mark",
    "a line that starts with a bullet, a number or a dash without a blank",
    "only a hyphen with a blank behind it starts a line of a list",
    "• dip: 3 x 8",
    "- dip: 3 x 8",
)
NO_BLANK = TextRule(
    "no-blank-after-colon",
    "a colon without a blank behind it",
    "without the blank YAML takes the whole line for one word",
    "- dip:3 x 8",
    "- dip: 3 x 8",
)
GLUED = TextRule(
    "line-glued-to-the-one-above",
    "a line of a list that is indented too far",
    "YAML glues it to the text above without a word",
    "cool-down:\n  - easy walk\n   - stretching",
    "cool-down:\n  - easy walk\n  - stretching",
)
NO_COLON = TextRule(
    "list-without-colon",
    "a word above a list, without a colon",
    "without the colon YAML takes the word and the list for one text",
    "- face pull: 2 x 15\n- superset\n    - dip: 3 x 8\n    - pull-up: 3 x 8",
    "- face pull: 2 x 15\n- superset:\n    - dip: 3 x 8\n    - pull-up: 3 x 8",
)
OUT_OF_LINE = TextRule(
    "line-out-of-line",
    "a line that starts in the wrong column",
    "lines that belong together start in the same column",
    "- dip: 3 x 8\n    rest: 2:00",
    "- dip: 3 x 8\n  rest: 2:00",
)
UNREADABLE = TextRule(
    "line-not-readable",
    "a line that is neither a key with a value nor a line of a list",
    'a plan is made of lines like "key: value" and "- movement: dose"',
    "- dip: 3 x 8\n  three sets",
    "- dip: 3 x 8\n  note: three sets",
)
SECOND_PLAN = TextRule(
    "second-plan-in-file",
    "a line of three hyphens in the middle of a file",
    "it ends the plan, and what stands below is lost",
    "plan: A\nwork:\n  - dip: 3 x 8\n---\nplan: B\nwork:\n  - pull-up: 3 x 8",
    "plan: A\nwork:\n  - dip: 3 x 8",
)
ALIAS = TextRule(
    "repeats-itself",
    "a * that repeats the lines it stands in",
    "*name repeats lines that were marked with &name further up; lines that hold themselves never end",
    "cool-down: &all\n  - easy walk\n  - *all",
    "cool-down:\n  - easy walk",
)
TOO_BIG = TextRule(
    "file-too-big",
    "a file that is larger or deeper than any plan",
    "beyond these limits a file is a mistake or an attack",
    f"note: {41 * '['}deep{41 * ']'}",
    "note: deep",
)
DOUBLE_KEY = TextRule(
    "double-key",
    "a key that stands twice",
    "YAML keeps the last one and loses the first without a word",
    "- dip: 3 x 8\n  rest: 2:00\n  rest: 1:30",
    "- dip: 3 x 8\n  rest: 2:00",
)
RULES = (
    HASH, SECOND_COLON, SIGN, AFTER_QUOTE, OPEN_QUOTE, OPEN_BRACKET, SPLIT, TAB,
    ODD_BLANK, ODD_BLANK_IN_VALUE, CONTROL, LIST_MARK, NO_BLANK, GLUED, NO_COLON, OUT_OF_LINE, UNREADABLE,
    SECOND_PLAN, ALIAS, TOO_BIG, DOUBLE_KEY,
)  # fmt: skip
