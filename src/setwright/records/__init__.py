"""What was done: forms to type it in, records that are kept, and what follows from them.

``planned`` says what somebody was to do in a session; ``paper`` is a form or record as rows, written as YAML
(``paper``) or as a table (``table``); ``form`` fills one in from a plan.
``week_done`` gathers a week's records, ``outcome`` says what came of a line, ``progress`` what its rule makes
of it, ``next_load`` the load; ``next_week`` puts that into the text of a plan (``rewriting``, ``next_head``).
``fitting`` holds a record against its plan, ``keeping`` goes from a file to that; ``store`` keeps it whole.
"""
