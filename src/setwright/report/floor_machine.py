"""The floor of sessions as JSON, for programs: no names unless they are asked for."""

from collections.abc import Iterable
from typing import Any, Final

from setwright.floor.room import Stay, letter
from setwright.floor.today import Today
from setwright.report.as_json import as_json

FORMAT: Final = "setwright-floor/1"


def floor_json(sessions: Iterable[Today], *, with_names: bool = False) -> str:
    """The document; times in whole seconds from the start of the session. Ends with a line end."""
    told = [_session(one, with_names=with_names) for one in sessions]
    return as_json({"format": FORMAT, "sessions": told})


def _session(today: Today, *, with_names: bool) -> dict[str, Any]:
    floor = today.floor
    return {
        "session": floor.session.title,
        "minutes": floor.session.minutes,
        "warm_up_s": round(floor.warm_up_s),
        "finish_s": round(floor.whole_s),
        "least_s": round(floor.warm_up_s + floor.least_s),
        "proved": floor.proved,
        "groups": [
            {
                "group": letter(at),
                "people": len(group),
                **({"names": [one.name for one in group]} if with_names else {}),
                "blocks": [_stay(stay, floor.warm_up_s) for stay in floor.of_group(at)],
            }
            for at, group in enumerate(floor.groups)
        ],
        "conflicts": [{"kind": one.kind, "text": one.text, "change": one.change} for one in today.conflicts],
        "left_out": [block.number for block in today.cut.dropped] if today.cut else [],
    }


def _stay(stay: Stay, warm_up_s: float) -> dict[str, Any]:
    return {
        "block": stay.block.number,
        "name": stay.block.name,
        "people": len(stay.everyone),
        "start_s": round(warm_up_s + stay.start_s),
        "end_s": round(warm_up_s + stay.end_s),
        "rest_s": None if stay.rest_s is None else round(stay.rest_s),
    }
