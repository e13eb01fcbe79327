"""Text rules about records typed into a table. ``bad`` and ``good`` are whole tables."""

from setwright.reading.faults import TextRule

NO_TABLE = TextRule(
    "table-without-columns",
    "a table whose first row does not name an athlete and a movement",
    "without the names nobody knows what stands in which column",
    "Ann,dip,done",
    "record,athlete,movement,done\nA,Ann,dip,done",
)
COLUMN = TextRule(
    "table-column-unknown",
    "a column of a record's table that has no known name, or a cell outside every column",
    "what stands there would be lost",
    "record,athlete,movement,donne\nA,Ann,dip,done",
    "record,athlete,movement,done\nA,Ann,dip,done",
)
CELLS_DIFFER = TextRule(
    "table-of-two-records",
    "rows of one table that name two plans, weeks, sessions, dates or units",
    "a record is of one session",
    "record,week,athlete,movement,done\nA,3,Ann,dip,done\nA,4,Ben,dip,done",
    "record,week,athlete,movement,done\nA,3,Ann,dip,done\nA,3,Ben,dip,done",
)
WHO = TextRule(
    "table-row-without-name",
    "a row of a record's table without an athlete, or with something done and no movement",
    "it would be lost",
    "record,athlete,movement,done\nA,,dip,done\nA,Ben,dip,done",
    "record,athlete,movement,done\nA,Ann,dip,done\nA,Ben,dip,done",
)
RULES = (NO_TABLE, COLUMN, CELLS_DIFFER, WHO)
