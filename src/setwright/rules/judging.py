"""The rules run over a case, and one finding made of one fault: covered, allowed, past cure, or merged."""

from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from setwright.findings import Finding, Level
from setwright.model.plan import Allowed
from setwright.rules import RULES
from setwright.rules import no_cure_in_this_gym as no_cure
from setwright.rules.allowing import Silenced, about, allows, partition
from setwright.rules.matrix import Marks, marks_of
from setwright.rules.rule import Case, Rule
from setwright.rules.spoken import Spoken


class Verdict(NamedTuple):
    """What the rules say of a week: the findings, what the coach allowed, and which cells they speak of.

    ``answered``: each ``allow`` that some fault answers.
    """

    findings: tuple[Finding, ...]
    silenced: tuple[Silenced, ...]
    marks: Marks
    answered: tuple[Allowed, ...] = ()


def judge(case: Case, text_rules: Iterable[str] = (), rules: Iterable[Rule] = RULES) -> Verdict:
    """The verdict of the rules; ``text_rules``: ids of rules about typed text, which an ``allow`` may name.

    While the case is waiting, only what is wrong with a line itself is judged: what the week leaves out
    may stand on the line that could not be read.
    """
    allowed = allows(case.coverage)
    kept, silenced, answered = partition(_uncovered(_spoken(case, rules)), allowed)
    kept = _folded(kept)
    kept, also_silenced, also_answered = partition(_hopeless_as_one(case, kept), allowed)
    told = _merged(kept)
    findings = tuple(one.finding() for one in told)
    idle = [each.allowed for each in allowed if each not in (*answered, *also_answered)]
    return Verdict(
        findings=(*findings, *about(idle, text_rules, waiting=case.waiting)),
        silenced=(*silenced, *also_silenced),
        marks=marks_of(
            (each.fault.parts, each.rule.cells, finding)
            for one, finding in zip(told, findings, strict=True)
            for each in one.everyone
        ),
        answered=tuple(each.allowed for each in (*answered, *also_answered)),
    )


def standing(case: Case, rules: Iterable[Rule] = RULES) -> tuple[Spoken, ...]:
    """What the rules find in a case and nobody allowed, each fault by itself, before any are told as one."""
    kept, _, _ = partition(_uncovered(_spoken(case, rules)), allows(case.coverage))
    return tuple(kept)


def _spoken(case: Case, rules: Iterable[Rule]) -> Iterator[Spoken]:
    for rule in rules:
        level = case.aim.level(rule.id, case.coverage)
        waits = case.waiting and rule.looks_at != "item"
        if level is not None and not waits:
            for fault in rule.find(case):
                yield Spoken(rule, fault, fault.level or level)


def _uncovered(spoken: Iterable[Spoken]) -> list[Spoken]:
    """Faults whose rule another one covers, for the same part of the chest, told under that one."""
    kept: list[Spoken] = []
    for one in spoken:
        _told_under(kept, one, [one.rule.id in before.rule.covers and _share(before, one) for before in kept])
    return kept


def _folded(spoken: Iterable[Spoken]) -> list[Spoken]:
    """Faults that one rule finds in several places as one, the others told under the first."""
    kept: list[Spoken] = []
    for one in spoken:
        _told_under(kept, one, [_is_one(before, one) for before in kept])
    return kept


def _is_one(before: Spoken, one: Spoken) -> bool:
    same = bool(one.fault.about) and before.fault.about == one.fault.about
    return before.rule is one.rule and (same or (one.rule.folds and before.level == one.level))


def _hopeless_as_one(case: Case, spoken: Sequence[Spoken]) -> list[Spoken]:
    """Faults that nothing at hand closes as one piece of advice, the others as they are."""
    hopeless = tuple(one for one in spoken if one.fault.cure is None)
    faults = no_cure.find(case, tuple(one.fault for one in hopeless))
    return [one for one in spoken if one.fault.cure] + [
        Spoken(no_cure.RULE, fault, Level.advice, hopeless) for fault in faults
    ]


def _merged(spoken: Iterable[Spoken]) -> list[Spoken]:
    """Faults that the move proposed for an earlier one closes too, told under that one."""
    kept: list[Spoken] = []
    for one in spoken:
        _told_under(kept, one, [_closes(before, one) for before in kept])
    return kept


def _told_under(kept: list[Spoken], one: Spoken, speaks_for: list[bool]) -> None:
    if True in speaks_for:
        at = speaks_for.index(True)
        kept[at] = kept[at].speaking_for(one)
    else:
        kept.append(one)


def _share(before: Spoken, one: Spoken) -> bool:
    return bool(before.fault.parts & one.fault.parts)


def _closes(before: Spoken, one: Spoken) -> bool:
    cure = before.fault.cure
    return cure is not None and cure.movement is not None and one.fault.closed_by(cure.movement)
