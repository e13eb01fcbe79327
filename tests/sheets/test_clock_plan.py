"""The clock plan: blocks one after the other, adding up to what the session is said to take."""

from setwright.coverage.clock import session_minutes
from setwright.model.plan import Session
from setwright.places import Place
from setwright.sheets.clock_plan import clock_plan
from tests.pages.plans import LONG, check
from tests.sheets.hand import group, item, session, straight


def times(done: Session) -> list[str]:
    return [slot.times for slot in clock_plan(done)]


def test_each_block_begins_where_the_one_before_ended() -> None:
    press = item(done=straight(4, 10)).model_copy(update={"place": Place("week.yaml", 2, 1, 2, 5)})
    pair = group(item(), item())
    slots = clock_plan(session(press, pair, warm_up_minutes=8, start="18:30"))
    assert [slot.entry for slot in slots] == [None, press, pair]
    assert [slot.number for slot in slots] == [None, 1, 2]
    assert [slot.begins for slot in slots[1:]] == [slot.ends for slot in slots[:-1]]
    # By docs/plan-language.md: set-up 1 min, 4 sets of 10 at 3 s, three rests of 2 min.
    assert slots[1].times == "18:38 to 18:47"


def test_minutes_from_the_start_where_no_time_is_written() -> None:
    assert times(session(item(done=straight(4, 10)))) == ["0 to 9 min"]


def test_past_midnight_the_clock_begins_anew() -> None:
    assert times(session(item(done=straight(4, 10)), start="23:57")) == ["23:57 to 0:06"]


def test_the_last_block_ends_when_the_session_does() -> None:
    week = check(LONG).week
    assert week is not None
    (long,) = week.sessions
    ends = clock_plan(long.model_copy(update={"start": None}))[-1].ends
    assert ends == f"{session_minutes(long):.0f} min"
