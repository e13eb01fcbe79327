"""The rules: one file a rule, named by its id with _ for -.

``rule`` holds what they share, ``aims`` what the week is for and the levels that follow, ``means`` and
``stations`` what gym and athletes leave to propose, ``cures`` the proposals, ``limits`` and ``doing`` what
holds for whom, ``loading`` the loads that lines ask for, ``lifts`` what a line asks of each athlete,
``reserve`` that beside the handbook table, ``failing`` sets with nothing left, ``ranges`` weekly sets,
``queues`` who shares what on the floor, ``past`` the weeks before. ``judging`` runs the rules and makes one
finding of one fault (``spoken``), ``allowing`` is about ``allow``, ``matrix`` the answers a part and a
question. ``RULES`` lists the rules in the order in which one speaks for others; ``EVERY_RULE`` adds the three
about the findings.
"""

from typing import Final

from setwright.rules import (
    above_tested_max,
    allow_silences_nothing,
    avoided_move,
    beginner_maximal_test,
    below_the_empty_bar,
    big_jump_from_last_week,
    bottom_lines_hold_all_the_pulls,
    crossing_work_only,
    effort_and_percent_disagree,
    failure_while_on_call,
    failure_without_spotter,
    half_a_pair,
    heavy_close_to_the_match,
    heavy_line_not_finished,
    light_before_heavy,
    limit_broken,
    line_never_followed,
    load_not_loadable,
    modified_but_nothing_changed,
    name_in_a_public_title,
    no_cure_in_this_gym,
    no_heavy_lift_for_part,
    no_lighter_week,
    no_max_for_percent,
    no_pull_from_overhead,
    no_warm_up_for_heavy_lift,
    no_work_across_the_midline,
    no_work_at_long_length,
    no_work_at_short_length,
    nobody_can_use,
    one_side_only,
    part_not_loaded,
    push_without_pull,
    reps_not_possible_at_load,
    rest_shorter_than_the_floor_allows,
    same_part_hard_next_day,
    session_over_time,
    sets_over_range,
    sets_under_range,
    stale_max,
    too_few_stations,
    unit_looks_wrong,
    unknown_rule_in_allow,
)
from setwright.rules.rule import Rule

RULES: Final[tuple[Rule, ...]] = tuple(
    module.RULE
    for module in (
        limit_broken,
        avoided_move,
        nobody_can_use,
        modified_but_nothing_changed,
        name_in_a_public_title,
        half_a_pair,
        one_side_only,
        below_the_empty_bar,
        load_not_loadable,
        crossing_work_only,
        part_not_loaded,
        line_never_followed,
        no_heavy_lift_for_part,
        no_work_across_the_midline,
        heavy_line_not_finished,
        no_work_at_long_length,
        no_work_at_short_length,
        sets_under_range,
        sets_over_range,
        big_jump_from_last_week,
        no_lighter_week,
        push_without_pull,
        no_pull_from_overhead,
        bottom_lines_hold_all_the_pulls,
        same_part_hard_next_day,
        light_before_heavy,
        heavy_close_to_the_match,
        no_warm_up_for_heavy_lift,
        failure_while_on_call,
        failure_without_spotter,
        session_over_time,
        too_few_stations,
        rest_shorter_than_the_floor_allows,
        no_max_for_percent,
        above_tested_max,
        reps_not_possible_at_load,
        effort_and_percent_disagree,
        stale_max,
        unit_looks_wrong,
        beginner_maximal_test,
    )
)

EVERY_RULE: Final[tuple[Rule, ...]] = (
    *RULES,
    no_cure_in_this_gym.RULE,
    allow_silences_nothing.RULE,
    unknown_rule_in_allow.RULE,
)

__all__ = ["EVERY_RULE", "RULES", "Rule"]
