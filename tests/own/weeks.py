"""Plans with movements of their own."""

import textwrap
from collections.abc import Mapping
from typing import Any

from setwright.findings import Finding
from setwright.library.rows import ElbowKey, ElbowPath
from setwright.own.plan import PlanRead, read_plan


def plan(movements: str, work: str = "- pull-up: 3 x 8") -> str:
    """A plan with these movements of its own."""
    own = textwrap.indent(textwrap.dedent(movements).strip(), "  ")
    lines = textwrap.indent(textwrap.dedent(work).strip(), "  ")
    return f"plan: A\nunit: kg\nsides: each\nwork:\n{lines}\nmovements:\n{own}\n"


def read(movements: str, work: str = "- pull-up: 3 x 8", **files: str) -> PlanRead:
    """The plan with these movements, read and resolved."""
    return read_plan("week.yaml", plan(movements, work), files.get)


def own(movements: str) -> Mapping[str, Any]:
    """The entry of the only movement."""
    done = read(movements)
    assert done.read.findings == ()
    (name,) = done.read.week.own_movements if done.read.week else ()
    key = done.table.find(name.name).key
    assert key is not None
    return done.table.movement(key)


def told(movements: str) -> list[Finding]:
    """What is said about the movements."""
    return list(read(movements).read.findings)


def typed(path: ElbowPath, pattern: str) -> str:
    """A library's path as a coach types it: postures, trunk, and the place of the load."""
    lines = ["ours:", f"  pattern: {pattern}", f"  torso: {_torso(path.torso.recline_deg)}"]
    lines += [
        f"  load pulls: {_pull(path)}",
        "  path:",
        *(line for key in path.keys for line in _posture(key)),
    ]
    return "\n".join(lines)


def _torso(recline: float) -> str:
    return f"lean back {recline:g}" if recline >= 0 else f"lean forward {-recline:g}"


def _pull(path: ElbowPath) -> str:
    kinds = {
        "gravity": "down",
        "support vertical": "up",
        "against path": "against the motion",
        "toward other hand": "toward the other hand",
    }
    if path.force.point_m is None:
        return kinds[path.force.kind]
    ways = zip(path.force.point_m, (("ahead", "behind"), ("above", "below"), ("out", "in")), strict=True)
    return "toward " + ", ".join(f"{abs(one):g} m {words[one < 0]}" for one, words in ways)


def _posture(key: ElbowKey) -> list[str]:
    plane, up = key.plane_elevation_deg
    return [
        f"    - at: {key.at}",
        f"      plane: {plane:g}",
        f"      up: {up:g}",
        f"      forearm: [{', '.join(f'{one:g}' for one in key.forearm)}]",
        f"      shoulders forward: {key.protraction_deg:g}",
    ]
