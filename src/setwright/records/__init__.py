"""What was done: forms to type it in, records that are kept, and what follows from them.

``planned`` says what somebody was to do in a session; ``paper`` is a form or record as rows, written as YAML
(``paper``) or as a table (``table``); ``form`` fills one in from a plan.
``week_done`` gathers a week's records, ``lines_done`` its lines (``line_keys``: which is which elsewhere),
``outcome`` what came of one, ``progress`` what its rule makes of it, ``next_load`` the load.
``going_on`` starts ``next``: ``coming`` is the week that comes (``one_week`` of a block, ``next_head`` its
top, ``names``), ``changes`` what becomes of every line (``own_step`` by the block itself, ``before`` from
earlier weeks), ``next_week`` the text of it. ``rewriting`` tries the ``ways`` to write a line and holds each
against what is wanted; ``taken_up`` puts missed sessions first, ``training_max`` steps the squad's maxes.
``review`` looks back at weeks: ``achieved`` is what was done as a week, ``trend`` loads from record to
record, ``limits_kept`` limits held against it; ``told`` is the report in plain words (``told_crew``,
``told_coach``, ``told_medical``, ``told_shapes``).
``fitting`` holds a record against its plan, ``keeping`` goes from a file to that; ``store`` keeps it whole.
"""
