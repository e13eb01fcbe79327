"""Plans with one athlete and one line, and what the line asks of her."""

from setwright.library.table import library
from setwright.loads.asked_for import Asked, load_asked_for
from setwright.model.plan import Item, Lifted, Week
from setwright.own.plan import read_plan


def week(
    line: str, *, top: str = "", athlete: str = "", maxes: str = "", squad: str = "", faults: bool = False
) -> Week:
    """A week with one line, for an athlete with more keys and maxes, each a line of its own."""
    keys = "".join(f"      {one}\n" for one in athlete.splitlines())
    best = "".join(f"        {one}\n" for one in maxes.splitlines())
    people = f"squad:\n{squad}  athletes:\n    - name: Ann\n{keys}" + (
        f"      maxes:\n{best}" if best else ""
    )
    text = f"plan: A\nunit: kg\nsides: each\nstarts: 2027-02-01\n{top}{people}work:\n  - {line}\n"
    read = read_plan("week.yaml", text, lambda _: None).read
    assert faults or read.findings == (), [finding.message for finding in read.findings]
    assert read.week is not None
    return read.week


def asked_of(one: Week, *, last_kg: float | None = None) -> Asked:
    """What the first load of the line asks of the athlete."""
    item = one.sessions[0].work[0]
    assert isinstance(item, Item)
    assert one.squad is not None
    load = item.line_loads[0] if item.line_loads else None
    ann = one.squad.athletes[0]
    lifted = () if last_kg is None else (Lifted(who=ann.name, place=item.place, kg=last_kg),)
    return load_asked_for(load, item, ann, one.model_copy(update={"lifted": lifted}), library())
