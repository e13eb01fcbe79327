"""The gym floor: who does what when, on the stations that there are.

``kit``: the stations of a gym, and what a movement holds of them. ``blocks``: a session as blocks, each a
line or a group with its sets, rests and stations. ``timing``: how long a block lasts for so many people at
one station, and the rest that gives. ``ways``: who does something else in its place. ``groups``: people in
groups; ``lifting``: what each lifts. ``schedule``: the timetable, a small search with a stated objective.
``room``: the flow, from a session and a gym to a ``Floor``. ``conflicts``, with ``shared`` iron: what will go
wrong. ``cut`` and ``today``: a session on the day, with fewer minutes, people, kit. ``setup``: what is put
out. ``places``: which rack. ``revised``: the plan as it is done on the day.
"""
