"""What somebody at the bar does on purpose. Each task reads the screen; what it does not find it leaves."""
import re
from person import ENTER, ESC, TAB

GRAMS = re.compile(r"│\s{1,3}(\S.*?)\s{2,}([\d ]*\d\.\d) g\s+\[")


def weigh(person, expected):
    """Fills the weigh-in that is open, near the plan or wide of it, and remembers what must arrive."""
    bowl = re.match(r"WEIGH-IN\s+bowl (\S+)", person.panel())
    planned = [float(row.group(2).replace(" ", "")) for row in map(GRAMS.search, person.screen.rows()) if row]
    if not bowl or not planned or not person.readable():
        return
    # A draft may stand in a field from before.
    if re.search(r"\[\s*\d", person.screen.text()):
        return
    before = len(person.said)
    grams = [round(part * person.chance.choice((1, 1, 1, 1.02, 0.98, 1.3)), 1) for part in planned]
    for part in grams:
        person.type(f"{part:.1f}".replace(".", person.chance.choice(".,")))
        person.press(ENTER, 0.4)
    for _ in range(3):
        if person.panel().startswith("WEIGH-IN"):
            person.press(ENTER, 0.5)
    # The panel closes by itself when the service refuses the bowl's beginning meanwhile.
    if any(line.startswith(f"bowl {bowl.group(1)} weighed") for line in person.said[before:]):
        expected.append((person.name, bowl.group(1), [round(part * 1000) for part in grams]))


def mix(person, expected):
    person.press(b"m", 0.4)
    if person.panel().startswith("WEIGH-IN") and person.chance.random() < 0.8:
        weigh(person, expected)


def weigh_later(person, expected):
    person.press(TAB)
    person.press(b"w", 0.3)
    if person.panel().startswith("WEIGH-IN"):
        weigh(person, expected)


def on_live(key):
    def task(person, _):
        person.press(TAB)
        for _ in range(person.chance.randrange(3)):
            person.press(b"j")
        person.press(key, 0.3)
        if person.panel().startswith("FINISH"):
            person.press(b"y", 0.3)
    return task


def bin_bowl(person, _):
    person.press(TAB)
    person.press(b"b", 0.3)
    if person.panel().startswith("BIN"):
        person.type(f"{person.chance.randrange(0, 300) / 10}")
        person.press(ENTER, 0.3)
        person.press(ENTER, 0.3)
        person.press(person.chance.choice((b"y", b"y", ENTER)), 0.3)


def services(person, _):
    person.press(b"s", 0.3)
    for _ in range(person.chance.randrange(6)):
        person.press(b"j")
    person.press(person.chance.choice((b"s", b"s", b"z", b"z", b"t", b"x")), 0.3)
    if person.panel() and not person.panel().startswith("SERVICES"):
        person.press(person.chance.choice((b"y", ENTER, ESC)), 0.3)


def take_back(person, _):
    person.press(b"u", 0.3)
    if person.panel().startswith("TAKE BACK"):
        person.press(b"y", 0.3)


def look_around(person, _):
    for _ in range(4):
        person.press(person.chance.choice((b"2", b"3", b"1", b"i", b"?", b"/", ESC, b"r", b"x", b"e", b"t")), 0.25)


def alarm(person, _):
    person.press(person.chance.choice((b"a", b"z")), 0.3)
    if person.panel():
        person.press(ENTER, 0.3)


TASKS = [mix, mix, mix, weigh_later, weigh_later, on_live(b"o"), on_live(b"o"), on_live(b"f"), bin_bowl, services, services,
         take_back, look_around, alarm]
