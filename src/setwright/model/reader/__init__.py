"""From the text of a plan to its weeks: everything that can be trusted, a finding for everything else.

``keys`` reads keys by tables: which key, which field, how its value is typed.
``plan`` starts here: the top of the file, then ``session``, ``group`` and ``item``, once a week; ``by_week``
(with ``week_words``) gives them what holds in that week, ``dose_lines`` the dose. ``schemes``, ``turns`` and
``lighter`` read what the top says of weeks.
``squad`` and ``gym`` read a file beside the plan or the same keys underneath; ``house`` is what all share.
``next`` reads rules for next time, ``weekly`` what is asked of a week, ``record`` what was done; a value that
can mean two things is an ``asked``.
``alone`` tells a squad, gym or record from a plan and reads it by itself.
"""

from setwright.model.reader.plan import BlockRead, read_block

__all__ = ["BlockRead", "read_block"]
