"""The week before: of the same plan, or the last one of the plan that it follows."""

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import Coverage


def week_before(checked: Checked, one: CheckedWeek) -> tuple[str, Coverage] | None:
    """What the week before is called and what it adds up to; None where there is none to be read."""
    number = one.week.number - 1
    if number:
        return f"week {number}", checked.across[number - 1].coverage
    return checked.before
