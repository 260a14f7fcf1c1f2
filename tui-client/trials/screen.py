"""A screen that understands what the terminal program writes, and nothing else."""
import re

TOKEN = re.compile(rb"\x1b\[([?\d;]*)([A-Za-z])|\x1b\][^\x07]*\x07|\x1b[()][A-Z0-9]|([^\x1b]+)", re.S)
# An escape sequence of which the rest has not come yet.
UNFINISHED = re.compile(rb"\x1b(\[[?\d;]*|\][^\x07]*|[()]?)?\Z")


class Screen:
    def __init__(self, columns, rows):
        self.rest = b""
        self.size(columns, rows)
        self.frames = 0
        self.odd = []

    def size(self, columns, rows):
        self.columns, self.height = columns, rows
        self.cells = [[" "] * columns for _ in range(rows)]
        self.column = self.row = 0

    def feed(self, data):
        data = self.rest + data
        cut = UNFINISHED.search(data)
        # A character of several bytes may be torn as well.
        end = cut.start() if cut else len(data)
        end -= torn(data[:end])
        self.rest = data[end:]
        for token in TOKEN.finditer(data[:end]):
            if token.group(3) is not None:
                self.put(token.group(3).decode("utf-8", "replace"))
            elif token.group(2) is not None:
                self.control(token.group(1).decode(), token.group(2).decode())

    def control(self, numbers, letter):
        if letter == "H":
            row, column = ([int(part or 1) for part in numbers.split(";")] + [1, 1])[:2]
            self.row, self.column = row - 1, column - 1
        elif letter == "J":
            self.cells = [[" "] * self.columns for _ in range(self.height)]
        elif letter == "l" and numbers == "?2026":
            self.frames += 1
        elif letter not in "mhlsut":
            self.odd.append(f"CSI {numbers}{letter}")

    def put(self, text):
        for letter in text:
            if letter < " ":
                if letter != "\x07":
                    self.odd.append(repr(letter))
                continue
            if 0 <= self.row < self.height and 0 <= self.column < self.columns:
                self.cells[self.row][self.column] = letter
            self.column += 1

    def rows(self):
        return ["".join(row).rstrip() for row in self.cells]

    def text(self):
        return "\n".join(self.rows())


def torn(data):
    """How many bytes at the end belong to a character of which the rest has not come."""
    for back in range(1, min(4, len(data)) + 1):
        byte = data[-back]
        if byte < 0x80:
            return 0
        if byte >= 0xC0:
            whole = 2 if byte < 0xE0 else 3 if byte < 0xF0 else 4
            return back if whole > back else 0
    return 0
