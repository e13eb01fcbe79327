"""Files that somebody else wrote: too large, too deep, no files at all, or leading elsewhere."""

import os
import subprocess
import sys
import time
from pathlib import Path

import pytest

from setwright.findings import Level
from setwright.model.reader.plan import MOST_OVER_WEEKS
from tests.commands import run
from tests.security.texts import PLAN, checked, plan_file

PLAN_COMMANDS = ("check", "read", "loads", "swap", "sheet", "floor", "record", "next", "review")
CPU_S = 20.0
"""Seconds of processor time that a hostile file may cost (choice: each here takes 3 on an idle machine)."""


NESTED = "".join(f"{chr(98 + n)}: &{chr(98 + n)} [{', '.join([f'*{chr(97 + n)}'] * 9)}]\n" for n in range(12))
HOSTILE = {
    "a line of 300,000 signs": f"{PLAN}  - dip: {'8, ' * 100_000}8\n",
    "a number of half a million digits": f"{PLAN}  - dip: {'9' * 500_000} x 8\n",
    "a million brackets": f"plan: A\nwork: {'[' * 400_000}{']' * 400_000}\n",
    "nine to the twelfth values": f"a: &a [x, x, x, x, x, x, x, x, x]\n{NESTED}{PLAN}",
    "lines that hold themselves": "plan: A\nwork: &w\n  - dip: 3 x 8\n  - superset: *w\n",
    "a command for the parser": f"{PLAN}  - dip: !!python/object/apply:os.system ['touch pwned']\n",
    "an unclosed quote": f'{PLAN}  - dip: "{"x" * 300_000}\n',
    "brackets that are never closed": f"{PLAN}  - dip: 3 x 8 {'(' * 200_000}\n",
    "signs over signs": f"{PLAN}  - dip: 3 x {'8+' * 100_000}8\n",
    "twenty-five thousand lines": PLAN + "  - dip: 3 x 8\n" * 25_000,
}


@pytest.mark.parametrize("text", HOSTILE.values(), ids=HOSTILE)
def test_a_hostile_plan_is_a_finding_and_soon(
    text: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    start = time.process_time()
    assert any(one.level is Level.error for one in checked(text).findings)
    assert time.process_time() - start < CPU_S
    assert not list(tmp_path.iterdir())


def test_each_line_more_costs_about_as_much_as_the_one_before() -> None:
    start = time.process_time()
    assert checked(PLAN + "  - dip: 3 x 8 at 2 RIR\n" * 1_200).week is not None
    assert time.process_time() - start < CPU_S


def test_a_long_plan_of_many_weeks_is_not_read_a_hundred_times() -> None:
    lines = MOST_OVER_WEEKS // 3 // 104
    one = checked(PLAN.replace("work:", "weeks: 104\nwork:") + "  - dip: 3 x 8\n" * lines)
    assert [(found.rule, found.place.line) for found in one.findings] == [("file-too-big", 2)]
    assert "write a plan of its own for some of the weeks" in one.findings[0].change
    assert not one.weeks


@pytest.mark.parametrize("command", PLAN_COMMANDS)
def test_a_pipe_that_is_named_is_not_waited_for(command: str, tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "week.yaml")
    result = run(command, tmp_path / "week.yaml")
    assert result.exit_code == 2
    assert result.stderr.endswith("is a pipe and may never end; name `-` instead and pipe the text in\n")


def test_what_a_shell_pipes_in_under_dev_is_read() -> None:
    end, start = os.pipe()
    os.write(start, PLAN.encode() + b"  - dip: 3 x 8\n")
    os.close(start)
    assert "dip: 3 sets of 8" in run("read", f"/dev/fd/{end}").output
    os.close(end)


def test_a_device_without_an_end_is_left_after_a_megabyte() -> None:
    assert "is over 1,000,000 bytes" in run("check", "/dev/zero").stderr


def test_standard_input_without_an_end_is_left_after_a_megabyte() -> None:
    with Path("/dev/zero").open("rb") as endless:
        done = subprocess.run(
            [sys.executable, "-m", "setwright", "check", "-"], stdin=endless, capture_output=True, check=False
        )
    assert b"standard input is over 1,000,000 bytes" in done.stderr


@pytest.mark.parametrize("key", ["squad", "gym", "movements", "follows"])
@pytest.mark.parametrize("name", ["../secret", "secret.yaml", "../secret.txt"])
def test_only_yaml_is_read_beside_a_plan_whatever_leads_to_it(key: str, name: str, tmp_path: Path) -> None:
    folder = tmp_path / "plans"
    folder.mkdir()
    for hidden in ("secret", "secret.txt"):
        (tmp_path / hidden).write_text("password: hunter2\n", encoding="utf-8")
    (folder / "secret.yaml").symlink_to(tmp_path / "secret.txt")
    plan = plan_file(folder, f"{PLAN}  - dip: 3 x 8\n{key}: {name}\n")
    result = run("check", plan)
    assert result.exit_code == 1
    assert f"{key}: {name} is no .yaml file, and no other is read beside a plan" in " ".join(
        result.output.split()
    )
    assert "hunter2" not in result.output


@pytest.mark.parametrize("key", ["squad", "gym", "movements", "follows"])
@pytest.mark.parametrize("name", ["/etc/hosts.yaml", "a\\nb.yaml", "/dev/zero", "."])
def test_no_file_is_read_by_an_absolute_or_unprintable_name(key: str, name: str, tmp_path: Path) -> None:
    result = run("check", plan_file(tmp_path, f'{PLAN}  - dip: 3 x 8\n{key}: "{name}"\n'))
    assert (result.exit_code, result.exception.__class__) == (1, SystemExit)
    assert "file-not-found" in result.output


def test_a_squad_may_stand_in_a_folder_above(tmp_path: Path) -> None:
    folder = tmp_path / "week-3"
    folder.mkdir()
    (tmp_path / "squad.yaml").write_text("squad: Crew\nathletes:\n  - name: Isla\n", encoding="utf-8")
    assert (
        "1 person" in run("check", plan_file(folder, f"{PLAN}  - dip: 3 x 8\nsquad: ../squad.yaml\n")).output
    )


@pytest.mark.parametrize("command", PLAN_COMMANDS)
def test_a_plan_before_that_is_no_text_is_a_finding(command: str, tmp_path: Path) -> None:
    (tmp_path / "before.yaml").write_bytes(b"caf\xe9\n")
    result = run(command, plan_file(tmp_path, f"{PLAN}  - dip: 3 x 8\nfollows: before.yaml\n"))
    assert isinstance(result.exception, SystemExit | None)


def test_a_plan_before_that_is_no_text_says_what_to_do(tmp_path: Path) -> None:
    (tmp_path / "before.yaml").write_bytes(b"caf\xe9\n")
    said = run("check", plan_file(tmp_path, f"{PLAN}  - dip: 3 x 8\nfollows: before.yaml\n")).output
    assert "not UTF-8 text" in said
    assert "save it again in the editor with the encoding UTF-8" in " ".join(said.split())
