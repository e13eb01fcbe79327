"""The gym floor: who does what when, on the stations that there are.

``kit.py``: the stations of a gym, and what a movement holds of them. ``blocks.py``: a session as blocks,
each a line or a group with its sets, rests and stations. ``timing.py``: how long a block lasts for so many
people at one station, and the rest that gives. ``groups.py``: people in groups. ``schedule.py``: the
timetable, a small search with a stated objective. ``room.py``: the flow, from a session and a gym to a
``Floor``. ``conflicts.py``: what will go wrong on the day.
"""
