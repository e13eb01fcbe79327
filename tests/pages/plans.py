"""The plans that are printed: the examples, a club with every kind of sheet, long sessions, awkward names."""

from collections.abc import Iterable, Iterator
from functools import partial
from pathlib import Path

from setwright.checked import Checked, check_plan
from setwright.files import read_beside, read_text
from setwright.sheets.kinds import KINDS, LARGE, Kind

EXAMPLES = Path(__file__).parents[2] / "examples" / "skerrow-bay"

LONG = """\
plan: Long evening
starts: 2027-11-15
unit: kg
dose order: sets x reps
sides: each
if interrupted: finish the set, note its number, go on there
next: repeat
sessions:
  - day: Tuesday
    name: Everything
    minutes: 150
    start: "18:30"
    place: old hall
    days to match: 4
    warm-up:
      - band pull-apart: 2 x 15
      - push-up: 1 x 10
    work:
      - superset:
          - flat barbell bench press: 5 x 5 at 75%
            warm-up: 10 at bar, 5 at 40 kg, 3 at 60 kg
            next: add 2.5 kg when every set reaches the top
          - level cable crossover: 5 x 12 at 1 RIR
        rest: 2:30
        priority: 1
      - incline 30 dumbbell bench press: 6 x 8-10 at 24 kg, 2 RIR, rest 2:00, tempo 3-1-X-0
        note: ribs down, feet flat
      - superset:
          - dip: 3 x max at bodyweight + 10 kg
          - pull-up: 3 x 5+ at bodyweight
            priority: 3
          - front plank: 3 x 40 s hold
        rest: 90 s
        between moves: 15 s
      - bench pull: 4 x 8-10 at 70%, rest 2:00
        stop: the chest leaves the bench
      - superset:
          - one-arm dumbbell row: 3 x 10 each arm at 26 kg
          - face pull: 3 x 15 at 2 RIR
        rest: 60 s
      - barbell back squat: sets of 8, 6, 4 at 80, 90, 100 kg, rest 3:00
      - wide-grip pulldown: 12 x 5 every 1:00
      - suitcase carry: 3 x 30 m each side at 24 kg, rest 60 s
        kit: [kettlebell]
        priority: 3
      - push-up: ladder 1 to 10, pause 10 s
        priority: 3
    note: the hall closes at nine
"""

CIRCUIT = """\
plan: Station crew circuit
unit: kg
sides: each
people: 5
minutes: 40
if interrupted: finish the station, note its number, start again at the next one
work:
  - circuit:
      - dumbbell floor press: at 2 x 20 kg
      - bent-over barbell row: 12 at 40 kg
      - step-up:
        kit: [box, weight vest]
      - push-up
    rounds: 4
    each: 35 s
    between moves: 25 s
    rest: 2:00
  - circuit:
      - push-up: 10
      - goblet squat: 15 at 24 kg
      - front plank: 30 s
    time: 12:00
  - front plank: 1 x 60 s
  - side plank: 1 x 30 s each side
"""

AWKWARD = """\
plan: "Week <b>one</b> & \\"two\\" {{ 7 * 7 }}"
starts: 2027-11-15
unit: lb
dose order: sets x reps
squad:
  squad: "</style><script>alert(1)</script> Skerrow"
  athletes:
    - name: "<b>Bold</b> & 'quoted'"
    - name: Wilhelmina-Alexandrina of the Outer and the Inner Skerries Isles
      participation: modified
    - name: "ليلى بنت الساحل"
    - name: "🏋️‍♀️ Ola 🏋️‍♀️"
    - name: Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamter
    - name: Gone
      participation: out
sessions:
  - day: Monday
    name: "Prešš & pūll <i>x</i>"
    place: "Hall \\\\ 1; } body { color: red"
    work:
      - flat barbell bench press: 4 x 6 at 135 lb, rest 3:00
        note: "<img src=x onerror=alert(1)> elbows & ribs"
      - superset:
          - wide-grip pulldown: 3 x 10 at pin 7
          - internal rotation with the elbow at the side: 3 x 15 each side
        rest: 60 s
      - circuit:
          - push-up: 10
            note: "<i>x</i> & Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamter"
          - internal rotation with the elbow at the side: 15 each side
            kit: ["<u>towel</u>"]
        rounds: 3
  - name: Alone & <i>x</i>
    place: home
    work:
      - push-up: 3 x 10
        stop: "<i>x</i>"
"""

SIX_DAYS = """\
plan: Six days
starts: 2027-11-15
unit: kg
dose order: sets x reps
sides: each
aim: size
focus: [chest]
sessions:
""" + "".join(
    f"""\
  - day: {day}
    name: {name}
    minutes: 60
    work:
      - {first}: 3 x 8-10 at 2 RIR, rest 2:00
      - {second}: 3 x 10-12 at 2 RIR, rest 90 s
      - front plank: 3 x 40 s hold, rest 30 s
"""
    for day, name, first, second in (
        ("Monday", "Push", "flat barbell bench press", "standing barbell overhead press"),
        ("Tuesday", "Pull", "pull-up", "chest-supported dumbbell row"),
        ("Wednesday", "Legs", "barbell back squat", "Romanian deadlift"),
        ("Thursday", "Push again", "incline 30 dumbbell bench press", "dumbbell lateral raise"),
        ("Friday", "Pull again", "wide-grip pulldown", "face pull"),
        ("Saturday", "Legs again", "leg press", "leg curl"),
    )
)

CLUB = """\
plan: Club evening
starts: 2027-11-15
unit: kg
dose order: sets x reps
sides: each
next: repeat
squad:
  squad: Old hall club
  athletes:
    - name: Isla Marrack
    - name: Tam Rae
      participation: modified
    - name: Isla Rae
    - name: Struan Corr
    - name: Wren Tolquhoun
    - name: Gone Away
      participation: out
  groups:
    blue: [Isla Marrack, Tam Rae]
    red: [Isla Rae, Struan Corr, Wren Tolquhoun]
gym:
  gym: Old hall
  unit: kg
  racks: 2
  people per rack: 3
  benches: 2
  bars:
    20 kg: 2
  plates per rack:
    20 kg: 2 pairs
    10 kg: 1 pair
    5 kg: 1 pair
    2.5 kg: 1 pair
    1.25 kg: 1 pair
  dumbbells:
    4-32 kg by 2: 1 pair
  cables:
    - name: tower
      number: 2
      heights: floor to 2.1 m
      stack: 5-90 kg by 5
  bands:
    red:
      pull: 60 N at 2 m
      number: 5
  stations:
    pull-up bar: 1
    box: 1
  spotter: yes
sessions:
  - day: Monday
    name: Press and circuit
    start: "18:30"
    minutes: 70
    place: old hall
    warm-up: 8 min
    work:
      - superset:
          - flat barbell bench press: 4 x 6, 2 RIR
            load:
              Isla Marrack: 52.5 kg
              Tam Rae: 75 kg
              Isla Rae: 47.5 kg
              Struan Corr: 82.5 kg
              Wren Tolquhoun: 45 kg
            warm-up: 10 at bar, 5 at 30 kg, 3 at 40 kg
            note: elbows under the bar
          - low-to-high cable crossover: 3 x 12 at 1 RIR
        rest: 2:30
        priority: 1
      - barbell back squat: 3 x 5 at 75%, rest 3:00
        for: [red]
        warm-up: 2 sets
      - circuit:
          - push-up
          - low-to-high cable crossover:
            note: one foot forward, sweep both hands up and inward, come back slowly
          - step-up: at 2 x 12 kg
            kit: [box]
            stop: the knee falls inward
          - front plank
        rounds: 3
        each: 40 s
        between moves: 20 s
        rest: 2:00
  - day: Wednesday
    name: On your own
    place: home
    work:
      - knee push-up: 3 x 8-10 at 2 RIR, rest 60 s
        note: hands under the shoulders
      - band pull-apart: 2 x 15, rest 45 s
      - side plank: 2 x 20 s each side
        for: [blue]
      - Nordic curl: 2 x 4
        for: [red]
        stop: the calf cramps
"""

LIMIT = "      limits:\n        - arm behind at most: 0 deg\n          until: cleared\n"
LARGE_SQUAD = f"{SIX_DAYS}squad:\n  athletes:\n" + "".join(
    f"    - name: Invented Person {number}\n{LIMIT if number % 3 == 0 else ''}" for number in range(30)
)
"""Thirty people, of whom ten have a limit that the week breaks."""

NO_CHEST = """\
plan: Off week
unit: kg
dose order: sets x reps
sides: each
sessions:
  - day: Monday
    work:
      - pull-up: 3 x 5-8 at 3 RIR, rest 2:00
      - goblet squat: 3 x 10 at 24 kg, rest 90 s
"""


EVENING = """\
plan: Thursday evening
starts: 2027-11-18
unit: kg
dose order: sets x reps
sides: each
if interrupted: finish the set, note its number, go on there
squad:
  squad: Twenty-four
  athletes: [{names}]
gym:
  unit: kg
  racks: 6
  people per rack: 4
  benches: 3
  bars:
    20 kg: 6
  plates per rack:
    20 kg: 2 pairs
    10 kg: 2 pairs
  dumbbells:
    10-30 kg by 2: 2 pairs
  cables:
    - name: tower
      number: 2
  stations:
    pull-up bar: 2
sessions:
  - day: Thursday
    name: The whole squad
    minutes: 70
    start: "18:30"
    warm-up: 8 min
    work:
      - back squat: 4 x 5 at 3 RIR, rest 2:00
      - flat barbell bench press: 3 x 6 at 2 RIR, rest 2:00
      - pull-up: 3 x 6 at 2 RIR, rest 90 s
      - face pull: 2 x 12 at 2 RIR, rest 60 s
      - circuit:
          - push-up
          - front plank
          - goblet squat
        rounds: 2
        each: 40 s
""".format(
    names="Ansel, Brae, Caja, Dorrit, Edwin, Fenna, Garth, Hanneke, Inge, Jory, Keld, Lorne, Maren, Nial, "
    "Oona, Piers, Quill, Runa, Sorrel, Tove, Ulric, Vigdis, Wynn, Yara"
)
"""Twenty-four invented athletes: six groups, with fewer benches, pull-up bars and cables than groups."""


def check(text: str, file: str = "week.yaml") -> Checked:
    """A plan given as text, checked, with nothing beside it."""
    return check_plan(file, text, lambda _name: None)


def example(name: str) -> Checked:
    """A plan of the example crew, checked, with its squad and gym."""
    path = EXAMPLES / name
    return check_plan(str(path), read_text(path), partial(read_beside, path))


def school() -> Checked:
    """The week of the example school whose loads are worked out for each."""
    path = EXAMPLES.parent / "ossing-school" / "week-good.yaml"
    return check_plan(path.name, read_text(path), partial(read_beside, path))


def plans() -> Iterator[tuple[str, Checked, Iterable[Kind]]]:
    """Every plan that is printed: a short name, the plan, and the kinds of sheet that show something new."""
    yield "good", example("week-good.yaml"), ("week", "session", "rack", "board", "summary")
    yield "flawed", example("week-flawed.yaml"), ("week", "summary")
    yield "block", example("block.yaml").only(4), ("week", "session", "summary")
    yield "loads", school(), ("session", "rack", "log")
    yield "club", check(CLUB), [kind for kind in KINDS if kind not in LARGE.values()]
    yield "long", check(LONG), KINDS
    yield "circuit", check(CIRCUIT), KINDS
    yield "evening", check(EVENING), ("rack", "board", "station")
    yield "awkward", check(AWKWARD), KINDS
    yield "six-days", check(SIX_DAYS), ("week", "summary")
    yield "large-squad", check(LARGE_SQUAD), ("summary",)
    yield "no-chest", check(NO_CHEST), ("week", "session", "summary")
