"""Sessions in rooms, written short, and their floors."""

from collections.abc import Mapping

from setwright.floor.room import Floor, Room, floor, room
from tests.rules.plans import checked

HEAD = "plan: A room\nunit: kg\ndose order: sets x reps\nsides: each\n"
GYM = "gym:\n  unit: kg\n  people per rack: 4\n"
RACKS = "  racks: {0}\n  bars:\n    20 kg: {0}\n  plates per rack:\n    20 kg: 2 pairs\n    10 kg: 2 pairs\n"


def plan(*lines: str, top: str = "people: 8\n", gym: str = "", minutes: str = "60") -> str:
    """A session of these lines, in this gym."""
    work = "".join(f"      - {line}\n" for line in lines)
    room = f"{GYM}{gym}" if gym else ""
    return f"{HEAD}{top}{room}sessions:\n  - day: Monday\n    minutes: {minutes}\n    work:\n{work}"


def squad(**people: str) -> str:
    """A squad by name, with what is said of each: `Ada="height: 170 cm"`."""
    athletes = "".join(
        f"    - name: {name}\n" + "".join(f"      {line}\n" for line in said.splitlines())
        for name, said in people.items()
    )
    return f"squad:\n  unit: kg\n  athletes:\n{athletes}"


def room_of(
    text: str, *, absent: tuple[str, ...] = (), without: Mapping[str, int] | None = None, day: int = 0
) -> Room:
    one = checked(text)
    assert one.week is not None, [finding.message for finding in one.findings]
    assert one.table is not None
    return room(one.week.sessions[day], one.week, one.table, absent=absent, without=without)


def floor_of(text: str, *, absent: tuple[str, ...] = (), without: Mapping[str, int] | None = None) -> Floor:
    return floor(room_of(text, absent=absent, without=without))
