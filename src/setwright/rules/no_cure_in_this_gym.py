"""Rule no-cure-in-this-gym: what the week leaves out, and nothing here can close, as one line."""

from collections.abc import Iterator

from setwright.rules.rule import Case, Cure, Fault, Rule

BAD = """\
plan: One machine
unit: kg
dose order: sets x reps
focus: [chest]
gym:
  racks: 0
  benches: 0
  stations:
    chest press machine: 1
    row machine: 1
sessions:
  - day: Monday
    work:
      - machine chest press: 4 x 8 at 2 RIR
      - narrow push-up: 3 x 12 at 2 RIR
      - machine row: 5 x 8 at 2 RIR
  - day: Thursday
    work:
      - machine chest press: 4 x 8 at 2 RIR
      - narrow push-up: 3 x 12 at 2 RIR
      - machine row: 5 x 8 at 2 RIR
"""
GOOD = """\
plan: The gym next door
unit: kg
dose order: sets x reps
focus: [chest]
sessions:
  - day: Monday
    work:
      - machine chest press: 4 x 8 at 2 RIR
      - level cable crossover: 3 x 12 at 1 RIR
      - machine row: 5 x 8 at 2 RIR
  - day: Thursday
    work:
      - incline 30 barbell bench press: 4 x 8 at 2 RIR
      - low-to-high cable crossover: 2 x 12 at 1 RIR
      - dip: 3 x 8 at 2 RIR
      - high-to-low cable crossover: 2 x 12 at 1 RIR
      - pull-up: 5 x 8 at 2 RIR
"""


def find(case: Case, faults: tuple[Fault, ...]) -> Iterator[Fault]:
    """One fault that names the others."""
    if faults:
        yield Fault(
            place=case.coverage.week.place,
            where=case.week_word,
            message=f"nothing here, within these limits, closes: {'; '.join(f.message for f in faults)}",
            why=RULE.why,
            cure=Cure(RULE.change),
        )


RULE = Rule(
    id="no-cure-in-this-gym",
    looks_at="week",
    summary="what the week leaves out can't be closed with what the gym file lists, within everyone's limits",
    why="a finding that nobody can act on is only noise; in one line they are not lost",
    change="leave it, or list in the gym file what is there and not yet written",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=lambda _case: iter(()),
)
