"""Commands of the command line, by what they are about; ``cli`` says which is where.

``shared`` is what they have in common: arguments, a plan read or checked, one sentence to leave with.
``checking`` checks and reads back; ``fitting`` works out loads and swaps; ``sheets`` prints; ``floor`` is the
timetable of a session; ``records`` keeps what was done and goes on from it; ``folders`` starts a folder;
``moves`` explains movements; ``telling`` rules, sources and schemas. Heavy things are imported in a command.
"""
