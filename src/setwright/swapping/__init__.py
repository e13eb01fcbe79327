"""The smallest set of changes that closes what a plan leaves open; the plan itself is never touched.

``changes`` are the three kinds of change and what becomes of a week with one. ``state`` is what the rules say
of a week, as sets that can be compared. ``candidates`` lists the changes worth trying, ``search`` tries them
one, two and three at a time. ``paste`` turns a change into the lines to type and the text with them typed.
"""
