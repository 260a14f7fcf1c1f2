"""What somebody at the bar does on purpose. Each task reads the screen; what it does not find it leaves."""
import re
from person import ENTER, ESC, NOBODY, TAB
from salon import PEOPLE

GRAMS = re.compile(r"│\s{1,3}(\S.*?)\s{2,}([\d ]*\d\.\d) g\s+\[")


def weigh(person, expected):
    """Fills the weigh-in that is open, near the plan or wide of it, and remembers what must arrive."""
    bowl = re.match(r"WEIGH-IN\s+(?:one mix, two bowls: |bowl )(\S+)", person.panel())
    planned = [float(row.group(2).replace(" ", "")) for row in map(GRAMS.search, person.screen.rows()) if row]
    if not bowl or not planned or not person.readable():
        return
    # A draft may stand in a field from before.
    if re.search(r"\[\s*\d", person.screen.text()):
        return
    before = len(person.sent_by)
    grams = [round(part * person.chance.choice((1, 1, 1, 1.02, 0.98, 1.3)), 1) for part in planned]
    for part in grams:
        person.type(f"{part:.1f}".replace(".", person.chance.choice(".,")))
        person.press(ENTER, 0.4)
    for _ in range(3):
        if person.panel().startswith("WEIGH-IN"):
            person.press(ENTER, 0.5)
    # The panel closes by itself when the service refuses the bowl's beginning meanwhile.
    for who, line in person.sent_by[before:]:
        if f"bowl {bowl.group(1)} weighed" in line and who != NOBODY:
            expected.append((who, bowl.group(1), [round(part * 1000) for part in grams]))
    divide(person)


def divide(person):
    """Pours what the plan says, if the panel that asks for it is open."""
    share = re.search(r"stay in \S+, ([\d.]+) g go into", person.screen.text())
    if person.panel().startswith("DIVIDE") and share and person.chance.random() < 0.8:
        person.type(share.group(1))
        person.press(ENTER, 0.4)
        person.press(ENTER, 0.4)


def mix(person, expected):
    person.press(b"m", 0.4)
    if person.panel().startswith("MIX "):
        person.press(person.chance.choice((ENTER, ENTER, b"\x1b[C")), 0.3)
        person.press(ENTER, 0.4)
    if person.panel().startswith("WEIGH-IN") and person.chance.random() < 0.8:
        weigh(person, expected)


def weigh_later(person, expected):
    person.press(TAB)
    person.press(b"w", 0.3)
    if person.panel().startswith("WEIGH-IN"):
        weigh(person, expected)
    divide(person)


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
    key = person.chance.choice((b"s", b"s", b"s", b"z", b"z", b"z", b"w", b"w", b"t", b"x", b"p", b"l", b"r"))
    person.press(key, 0.3)
    if key in b"pl":
        fill(person)
    elif person.panel() and not person.panel().startswith("SERVICES"):
        person.press(person.chance.choice((b"y", ENTER, ESC)), 0.3)


def fill(person):
    """Fills a form with what mostly fits, and sends it."""
    for _ in range(8):
        if not person.panel() or person.panel().startswith("SERVICES"):
            return
        person.type(person.chance.choice(("", "7", "8.5", "10:20")))
        person.press(ENTER, 0.2)


def setup(person, _):
    person.press(b"4", 0.3)
    for _ in range(person.chance.randrange(25)):
        person.press(b"j", 0.05)
    person.press(person.chance.choice((b"w", b"w", b"g", b"g", ENTER, b"n")), 0.3)
    fill(person)


def test_mixes(person, _):
    person.press(b"t", 0.5)
    person.press(person.chance.choice((b"n", b"p")), 0.3)
    for text in ("", "2", "6", "10", "30", "4.5", "9.5", ""):
        if person.panel():
            person.type(text)
            person.press(ENTER, 0.2)


def sign_off(person, _):
    person.press(b"0", 0.3)
    if person.panel().startswith("SIGN OFF"):
        person.press(b"y", 0.5)


def somebody_signed_on(person):
    """Signs somebody on when nobody is; at a bar it is mostly an assistant."""
    if person.signed_on() == NOBODY:
        person.sign_on(person.chance.choices(list(PEOPLE), (5, 4, 2, 2))[0])
    return person.signed_on() != NOBODY


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
         take_back, look_around, alarm, setup, test_mixes, sign_off]
