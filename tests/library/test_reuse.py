"""Days like another one: independent copies, names by alias, and nothing lost in silence."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.coverage import cover
from setwright.findings import Finding
from setwright.model.plan import Group, Session
from setwright.own.plan import read_plan
from setwright.reading.habits import Habits
from setwright.report.read_session import session_lines
from tests.reading.plans import read
from tests.rules.plans import nothing_beside

HEAD = "plan: A\nunit: kg\ndose order: sets x reps\nsides: each\nsessions:\n"
MONDAY = """\
  - day: Monday
    name: Push
    date: 2027-03-01
    minutes: 50
    warm-up: 8 min
    if interrupted: go on
    allow:
      push-without-pull: pulls are done in the boat
    note: easy
    work:
      - flat barbell bench press: 4 x 6 at 60 kg
        rest: 2:00
        priority: 1
        note: tight
      - superset:
          - dip: 3 x 8
          - press-up: 3 x 12
        rest: 1:30
      - circuit:
          - goblet squat: 12
          - box jump: 5
        rounds: 3
      - machine fly: 3 x 12
      - pec deck: 2 x 15
    cool-down: walk
"""


def plan(*days: str) -> str:
    """The plan of Monday and of days like another one; each is its own name and then its keys, one a line."""
    made = []
    for day in days:
        name, *keys = day.splitlines()
        made.append(f"  - day: {name}\n" + "".join(f"    {key}\n" for key in keys))
    return f"{HEAD}{MONDAY}{''.join(made)}"


def sessions(text: str) -> tuple[Session, ...]:
    result = read(text)
    assert result.findings == ()
    assert result.week is not None
    return result.week.sessions


def names(session: Session) -> list[str]:
    return [item.name for item in session.items()]


def told(text: str) -> Finding:
    (finding,) = read(text).findings
    return finding


def test_what_is_not_written_comes_along_with_the_work_but_name_date_and_notes() -> None:
    monday, copy = sessions(plan("Thursday\nlike: push"))
    assert copy.work == monday.work
    assert (copy.minutes, copy.warm_up_minutes, copy.cool_down) == (50, 8, ("walk",))
    assert copy.if_interrupted == "go on"
    assert (copy.day, copy.name, copy.date, copy.note, copy.allow) == ("Thursday", None, None, None, ())
    assert copy.reuse is not None
    assert copy.reuse.along == ("minutes", "warm-up", "cool-down", "if interrupted")


def test_what_is_written_holds() -> None:
    below = "Thursday\nlike: Mon\nminutes: 30\nwarm-up:\n  - push-up: 1 x 10\ncool-down: stretch"
    _, copy = sessions(plan(below))
    assert (copy.minutes, copy.warm_up_minutes, copy.cool_down) == (30, None, ("stretch",))
    assert [item.key for item in copy.warm_up] == ["push-up"]
    assert copy.reuse is not None
    assert copy.reuse.along == ("if interrupted",)


def test_names_are_met_by_alias_and_the_typed_one_comes_first() -> None:
    below = "Thursday\nlike: Monday\nleave out: [pec deck, Push-Ups]\nswap:\n  BB bench press: push press"
    monday, copy = sessions(plan(below))
    assert names(copy) == ["push press", "dip", "goblet squat", "box jump", "machine fly"]
    assert copy.items()[0].key == "push-press"
    assert names(monday)[0] == "flat barbell bench press"


def test_a_swap_keeps_the_dose_and_every_other_word() -> None:
    monday, copy = sessions(plan("Thursday\nlike: Monday\nswap:\n  flat barbell bench press: push press"))
    old, new = monday.items()[0], copy.items()[0]
    kept = {"name", "place", "key"}
    assert new.model_dump(exclude=kept) == old.model_dump(exclude=kept)
    assert new.place.line > old.place.line


def test_two_movements_may_change_places() -> None:
    _, copy = sessions(plan("Thursday\nlike: Monday\nswap:\n  dip: press-up\n  press-up: dip"))
    pair = copy.work[1]
    assert isinstance(pair, Group)
    assert [item.name for item in pair.items] == ["press-up", "dip"]


def test_a_new_dose_replaces_the_old_one_whole_and_leaves_the_rest() -> None:
    _, copy = sessions(
        plan("Thursday\nlike: Monday\nchange:\n  - bench press: 5 x 5\n    note: fast\n  - goblet squat: 20")
    )
    press, squat = copy.items()[0], copy.items()[3]
    assert press.dose is not None
    assert press.dose.text == "5 x 5"
    assert press.dose.groups[0].rest is None
    assert (press.rest, press.priority, press.note) == (None, 1, "fast")
    assert squat.dose is not None
    assert squat.dose.groups[0].works[0].amount.span.low == 20


@pytest.mark.parametrize(
    ("word", "old", "new"),
    [("each: 40 s", "", "12"), ("ladder: 1 to 5", "rung", "rung x 2"), ("time: 12:00", "10", "15")],
)
def test_a_new_dose_is_read_as_its_group_asks(word: str, old: str, new: str) -> None:
    circuit = f"      - circuit:\n          - push-up: {old}\n          - pull-up: {old}\n        {word}\n"
    monday = f"{HEAD}  - day: Monday\n    work:\n{circuit}"
    _, copy = sessions(f"{monday}  - day: Friday\n    like: Monday\n    change:\n      - push-up: {new}\n")
    dose = copy.items()[0].dose
    assert dose is not None
    assert dose.text == new


def test_what_is_done_instead_takes_the_new_dose_and_loads_by_athlete_go_with_the_old_one() -> None:
    squad = "squad:\n  athletes:\n    - name: Ann\n"
    own = "        load:\n          Ann: 8 kg\n        instead:\n          Ann: dip\n"
    line = f"      - goblet squat: 3 x 8\n{own}"
    monday = f"{HEAD}  - day: Monday\n    work:\n{line}  - day: Friday\n    like: Monday\n"
    _, copy = sessions(f"{monday}    change:\n      - goblet squat: 5 x 5\n{squad}")
    (squat,) = copy.items()
    (instead,) = squat.instead
    assert [(one.key, one.dose) for one in instead.lines] == [("parallel-bar-dip-leaning", squat.dose)]
    assert squat.loads == ()


def test_a_swapped_movement_may_get_a_new_dose_by_its_new_name() -> None:
    below = "Thursday\nlike: Monday\nswap:\n  dip: pull-up\nchange:\n  - pull-up: 5 x 3"
    _, copy = sessions(plan(below))
    pull = copy.items()[1]
    assert pull.dose is not None
    assert (pull.key, pull.dose.text) == ("pull-up", "5 x 3")


def test_added_lines_stand_at_the_end_and_groups_may_be_added() -> None:
    below = "Thursday\nlike: Monday\nadd:\n  - superset:\n      - pull-up: 3 x 8\n      - push press: 3 x 5"
    monday, copy = sessions(plan(below))
    assert len(copy.work) == len(monday.work) + 1
    assert isinstance(copy.work[-1], Group)


def test_a_group_goes_with_its_last_movement_and_keeps_going_with_one() -> None:
    _, copy = sessions(plan("Thursday\nlike: Monday\nleave out: [dip, press-up, box jump]"))
    kinds = [entry.kind if isinstance(entry, Group) else entry.name for entry in copy.work]
    assert kinds == ["flat barbell bench press", "circuit", "machine fly", "pec deck"]
    assert len(copy.items()) == 4


def test_a_day_like_a_day_that_is_like_another_one_in_any_order() -> None:
    first = "Tuesday\nlike: Thursday\nadd:\n  - pull-up: 3 x 8"
    _, tuesday, thursday = sessions(plan(first, "Thursday\nlike: Monday\nleave out: [dip]"))
    assert names(tuesday) == [*names(thursday), "pull-up"]
    assert tuesday.minutes == 50


@pytest.mark.parametrize(
    ("days", "message", "change"),
    [
        (["Thursday\nlike: Pash"], "Pash is no session of the plan", "write `Push`"),
        (["Thursday\nlike: Tuesday"], "Tuesday is no session of the plan", "write `Push`"),
        (
            ["Thursday\nlike: Thursday"],
            "Thursday is like Thursday, and that leads back to Thursday",
            "write the work of one of these days out, under `work:`",
        ),
        (
            ["Thursday\nlike: Friday", "Friday\nlike: Thursday\nleave out: [dip]"],
            "Friday is like Thursday, and that leads back to Friday",
            "write the work of one of these days out, under `work:`",
        ),
        (
            ["Tuesday\nname: Pull\nlike: Push", "Tuesday\nname: Legs\nlike: Push", "Friday\nlike: Tuesday"],
            "Tuesday is 2 sessions of the plan",
            "write the name of one: `Pull` or `Legs`",
        ),
    ],
)
def test_a_day_that_is_not_there_or_not_clear(days: list[str], message: str, change: str) -> None:
    finding = told(plan(*days))
    assert (finding.rule, finding.message, finding.change) == ("like-names-no-day", message, change)
    assert finding.where in finding.message or "session" in finding.message


def test_the_only_session_has_no_other_to_be_like() -> None:
    finding = told(f"{HEAD}  - day: Monday\n    like: Tuesday\n")
    assert finding.change == "write the day out"


@pytest.mark.parametrize(
    ("below", "rule", "message", "change"),
    [
        (
            "leave out: [dap]",
            "not-in-the-day-it-is-like",
            '"dap" is not in Monday',
            "write `dip`",
        ),
        (
            "swap:\n  back squat: leg press",
            "not-in-the-day-it-is-like",
            '"back squat" is not in Monday',
            "write `goblet squat`",
        ),
        (
            "change:\n  - xyz: 3 x 8",
            "not-in-the-day-it-is-like",
            '"xyz" is not in Monday',
            "write `flat barbell bench press`, `dip` or `press-up`",
        ),
        (
            "leave out: [dip]\nchange:\n  - dip: 3 x 8",
            "not-in-the-day-it-is-like",
            '"dip" is not in Monday any more once the rest of this is done',
            "keep one of the two places that name dip",
        ),
        (
            "leave out: [butterfly machine]",
            "twice-in-the-day-it-is-like",
            "Monday has butterfly machine 2 times, typed machine fly or pec deck",
            "write Thursday out, with `work:` in place of `like:`",
        ),
        (
            "change:\n  - goblet squat: 3 x 20",
            "sets-in-a-round",
            None,
            None,
        ),
        (
            "change:\n  - dip: 12",
            "sets-missing",
            None,
            None,
        ),
        (
            "swap:\n  dip: flat barbel bench pres",
            "unknown-movement",
            None,
            "write `flat barbell bench press`",
        ),
    ],
)
def test_a_name_that_can_not_be_met(below: str, rule: str, message: str | None, change: str | None) -> None:
    finding = told(plan(f"Thursday\nlike: Monday\n{below}"))
    assert (finding.rule, finding.where) == (rule, "Thursday")
    assert finding.place.line > plan().count("\n")
    assert message in (None, finding.message)
    assert change is None or finding.change.startswith(change)


def test_a_day_of_which_nothing_is_left() -> None:
    text = f"{HEAD}  - day: Monday\n    work:\n      - dip: 3 x 8\n  - day: Friday\n    like: Monday\n"
    finding = told(f"{text}    leave out: [dip]\n")
    assert (finding.rule, finding.where, finding.message) == (
        "work-missing",
        "Friday",
        "nothing of Monday is left",
    )
    assert (
        told(f"{HEAD}  - day: Monday\n    like: Friday\n  - day: Friday\n    work: none\n").where == "Friday"
    )


def test_a_fault_in_a_line_that_is_copied_is_told_once() -> None:
    text = f"{HEAD}  - day: Monday\n    work:\n      - dap: 3 x 8\n  - day: Friday\n    like: Monday\n"
    assert told(text).where == "Monday"


LINES = (
    "push-up: 3 x 12",
    "flat barbell bench press: 4 x 6 at 60 kg, 2 RIR, rest 2:00",
    "one-arm dumbbell row: 3 x 10",
    "level cable crossover: 3 x 12-15, last set to failure",
    "front plank: 3 x 30 s hold",
    "farmer's walk: 3 x 40 m at 2 x 24 kg",
)


def superset(lines: list[str]) -> str:
    members = "".join(f"          - {line}\n" for line in lines)
    return f"      - superset:\n{members}        rest: 2:00\n"


entries = st.lists(
    st.one_of(
        st.sampled_from(LINES).map(lambda line: f"      - {line}\n"),
        st.lists(st.sampled_from(LINES), min_size=2, max_size=3).map(
            lambda lines: (
                "      - superset:\n"
                + "".join(f"          - {line}\n" for line in lines)
                + "        rest: 2:00\n"
            )
        ),
    ),
    min_size=1,
    max_size=4,
).map("".join)


@settings(max_examples=40, deadline=None)
@given(entries)
def test_a_day_like_another_one_equals_that_day_written_out(work: str) -> None:
    """In what it counts to and in what is said back, whatever the day holds."""
    monday = f"{HEAD}  - day: Monday\n    minutes: 40\n    work:\n{work}  - day: Thursday\n"
    copied = read_plan("a.yaml", f"{monday}    like: Monday\n", nothing_beside)
    written = read_plan("a.yaml", f"{monday}    minutes: 40\n    work:\n{work}", nothing_beside)
    assert copied.read.findings == written.read.findings == ()
    assert copied.read.week is not None
    assert written.read.week is not None
    one, other = (cover(plan.read.week, plan.table) for plan in (copied, written) if plan.read.week)
    assert [part.sets for part in one.parts] == [part.sets for part in other.parts]
    assert (one.chest, one.muscles, one.push, one.pull) == (
        other.chest,
        other.muscles,
        other.push,
        other.pull,
    )
    assert [session.minutes for session in one.sessions] == [session.minutes for session in other.sessions]
    first, *lines = session_lines(copied.read.week.sessions[1], Habits(), copied.table)
    assert first == "like Monday, a copy of its own: nothing changed; minutes from there"
    assert lines == list(session_lines(written.read.week.sessions[1], Habits(), written.table))
