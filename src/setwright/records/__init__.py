"""What was done: forms to type it in, records that are kept, and what follows from them.

``planned`` says what somebody was to do in a session; ``paper`` is a form or record as rows, written as YAML
(``paper``) or as a table (``table``); ``form`` fills one in from a plan.
``fitting`` holds a record against its plan, ``keeping`` goes from a file to that; ``store`` keeps it whole.
"""
