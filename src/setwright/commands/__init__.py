"""Commands of the command line, by what they are about; ``cli`` puts them together.

``shared`` is what they have in common: arguments, a plan read or checked, one sentence to leave with.
``floor`` is the timetable of a session on the gym floor, and the session cut on the day.
``records`` records what was done and keeps it; ``folders`` starts a folder.
Everything heavy is imported inside a command.
"""
