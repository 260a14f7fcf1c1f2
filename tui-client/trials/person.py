"""A terminal and whoever stands at it: types with fingers, by accident or on purpose, and reads what the screen says."""
import os, random, re, select, signal, time
from rig import HERE, Pty, folder
from screen import Screen
from salon import DAY, PEOPLE

ESC, ENTER, TAB = b"\x1b", b"\r", b"\t"
ARROWS = [b"\x1b[A", b"\x1b[B", b"\x1b[C", b"\x1b[D"]
LETTERS = [letter.encode() for letter in "mwofbaszniu/123?cpxtrgedhjkly,.-+0459 qXZ"]
ODD = [b"\x1b[200~9.5\r40,2 g\ry\x1b[201~", b"\x1b[200~" + b"m1\ty\x1b[31mw\n" * 200 + b"\x1b[201~", b"\x1b[<0;10;5M",
       b"\x1b[<0;10;5m", b"\x1b[I", b"\x1b[O", b"40.2 g\r\n", b"\x1b[24;80R", b"\xff\xfe\x80", "é½ß漢😀".encode(), b"\x1bOP",
       b"\x1b[15~", b"\x1b[1;5C", b"\x00", b"\x1a", b"\x1c", b"\x13", b"\x0c", b"\x7f", b"\x1b[Z", b"\x1b[200~never ended"]
SIZES = [(80, 24), (120, 36), (200, 60), (80, 24), (100, 30), (79, 24), (40, 10), (1, 1), (2, 2), (300, 100), (120, 35)]
SAID = re.compile(r"(sent|done|sent after waiting): (.*)")
NOBODY = ""


class Person:
    def __init__(self, name, gate, salon, chance: random.Random):
        self.name, self.gate, self.salon, self.chance = name, gate, salon, chance
        self.state = folder()
        self.token = salon.terminal_token(name)
        # Every line said, and who was signed on when a line said that something was sent.
        self.said, self.sent_by = [], []
        self.sign_ons = self.wrong_codes = 0
        self.unread = ""
        self.starts = self.keys = self.frames = 0
        self.dirty, self.crashes = [], []
        self.pty = None

    def open(self):
        self.columns, self.rows = self.chance.choice(((80, 24), (120, 36), (200, 60)))
        self.pty = Pty([f"{HERE}/bar", "--server", f"http://127.0.0.1:{self.gate.port}", "--day", DAY,
                        "--token-file", self.token, "--state", self.state], self.columns, self.rows)
        self.pty.hold_line()
        self.screen = Screen(self.columns, self.rows)
        self.starts += 1
        self.last_said = ""
        if not self.wait(r"BAR.*floor.*day", 30) and self.alive():
            self.crashes.append(f"{self.name}: no picture within 30 s of a start")

    # ---- reading

    def look(self, seconds=0.12):
        """Takes what is drawn until nothing more comes for a moment."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            ready, _, _ = select.select([self.pty.fd], [], [], 0.03)
            if not ready:
                continue
            before = len(self.pty.out)
            if not self.pty.take(0):
                return
            self.draw(self.pty.out[before:])
            if len(self.pty.out) > 400_000:
                self.pty.out = self.pty.out[-100_000:]

    def draw(self, data):
        """Frame by frame: a line said for one frame only is read too."""
        for piece in re.split(rb"(?<=\x1b\[\?2026l)", data):
            self.screen.feed(piece)
            if piece.endswith(b"\x1b[?2026l"):
                self.frames += 1
                self.listen()

    def listen(self):
        if not self.readable() or self.screen.height < 3:
            return
        said = SAID.match(self.screen.rows()[self.screen.height - 3])
        words = said.group(2).split("   ")[0].strip() if said else ""
        if words and words != self.last_said:
            self.said.append(words)
            if said.group(1) == "sent":
                self.sent_by.append((self.signed_on(), words))
        self.last_said = words

    def signed_on(self):
        """Who the header says is signed on here, empty text for nobody."""
        last = self.screen.rows()[0].rsplit("  ", 1)[-1].strip().lower()
        return last if last in PEOPLE else NOBODY

    def readable(self):
        return self.columns >= 80 and self.rows >= 24

    def wait(self, pattern, seconds):
        end = time.monotonic() + seconds
        while time.monotonic() < end and self.alive():
            if re.search(pattern, self.screen.text()):
                return True
            self.look(0.05)
        return bool(re.search(pattern, self.screen.text()))

    def panel(self):
        """Title of the panel on show, empty text for none."""
        title = re.search(r"┌─ (.*?) ─*┐", self.screen.text())
        return title.group(1) if title else ""

    # ---- typing

    def press(self, key, pause=0.12):
        self.keys += 1
        try:
            self.pty.type(key)
        except OSError:
            return
        self.look(pause)

    def type(self, text):
        for letter in text:
            self.press(letter.encode(), 0.04)
        self.look(0.1)

    def home(self):
        self.pty.type(b"\x1b[201~")
        for _ in range(3):
            self.press(ESC, 0.4)
        self.press(b"1")
        return not self.panel()

    def sign_on(self, who):
        """With the code, now and then with a wrong one first; whether the header then shows the name."""
        if not self.panel():
            self.press(b"0", 0.3)
        if self.panel() != "SIGN ON":
            return False
        self.press(who[0].encode())
        self.press(ENTER)
        wrong = self.chance.random() < 0.08
        self.wrong_codes += wrong
        code = self.salon.codes[who]
        self.type(code[:-1] + str((int(code[-1]) + wrong) % 10))
        self.press(ENTER, 0.2)
        self.wait(r"│ ! " if wrong else rf"{who.capitalize()}\s*\n", 15)
        done = self.signed_on() == who
        self.sign_ons += done
        if not done:
            self.press(ESC, 0.3)
        return done

    def resize(self, columns, rows):
        self.columns, self.rows = columns, rows
        self.screen.size(columns, rows)
        self.pty.size(columns, rows)
        self.look(0.3)

    # ---- the program

    def alive(self):
        return self.pty is not None and self.pty.alive()

    def program(self):
        return self.pty.program()

    def leave(self, sig=None):
        """Ends the program, by its own key if no signal is named, and looks at what it leaves."""
        if self.alive():
            if sig is None:
                self.home()
                self.press(b"q", 0.3)
                self.press(b"y", 0.3)
            else:
                try:
                    os.kill(self.program(), sig)
                except ProcessLookupError:
                    pass
        end = time.monotonic() + 30
        while self.alive() and time.monotonic() < end:
            self.look(0.1)
        if self.alive():
            self.crashes.append(f"{self.name}: did not end on {sig}")
            os.kill(self.program(), signal.SIGKILL)
        self.look(0.3)
        self.after(sig)

    def after(self, sig):
        code = os.waitstatus_to_exitcode(self.pty.end())
        # Keys typed after the program had left are shown by the line itself. One that ended with 0 left before a signal came.
        wrong = self.pty.clean(echo=not isinstance(sig, int) or code == 0)
        if wrong:
            self.dirty.append(f"{self.name} after {sig or 'its own key'} (exit {code}): {wrong}")
        if code == 70 or (sig is None and code not in (0, 74)):
            self.crashes.append(f"{self.name}: exit {code}: {self.pty.out[-300:]}")
        self.pty.close()
        self.pty = None

    def faults(self):
        """Lines of the program's log that a fault would leave."""
        try:
            with open(os.path.join(self.state, "bar.log"), errors="replace") as log:
                return [line.strip() for line in log if re.search(r"Exception|Error|\bat stirtide", line)]
        except FileNotFoundError:
            return []
