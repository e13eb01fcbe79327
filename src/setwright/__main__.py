"""``python -m setwright``: the command line, where the program itself is not on the path."""

from setwright.cli import main

main()
