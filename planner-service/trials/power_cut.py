"""State of a folder after a power cut: everything that was forced to the disk and, at random, part of the rest."""
import os, struct, subprocess

HERE = os.path.dirname(os.path.abspath(__file__))
NOTE = struct.Struct("=5Q")
SECTOR = 512


class Disk:
    """The disk below a folder that one process writes. Needs a C compiler."""

    def __init__(self, place, folder, lies=False):
        self.folder, self.notes, self.lies = folder, folder + "-not-forced", lies
        self.fails = os.path.join(place, "forcing-fails")
        self.library = os.path.join(place, "power_cut.so")
        self.cuts = self.lost = self.bytes_lost = 0
        os.makedirs(self.notes, exist_ok=True)
        subprocess.run(["cc", "-shared", "-fPIC", "-O1", "-o", self.library, os.path.join(HERE, "power_cut.c"), "-ldl"], check=True)

    def command(self):
        """Goes before the words that start the process."""
        return ["env", "LD_PRELOAD=" + self.library, "STIRTIDE_POWER_FOLDER=" + self.folder, "STIRTIDE_POWER_NOTES=" + self.notes,
                "STIRTIDE_POWER_FAILS=" + self.fails, *(["STIRTIDE_POWER_LIES=/log.db"] if self.lies else [])]

    def fail(self, how):
        """From now on forcing fails, "E", or never comes back, "S"."""
        with open(self.fails, "w") as file:
            file.write(how)

    def heal(self):
        os.remove(self.fails)

    def cut(self, chance, reached=None):
        """The process has been killed; takes from its files what need not have reached the disk, all but that share of it."""
        self.cuts += 1
        if reached is None:
            reached = 0 if self.lies else chance.choice([0, 0.1, 0.5, 0.9])
        in_order = chance.random() < 0.3
        before = self.bytes_lost
        for name in sorted(os.listdir(self.notes)):
            notes = os.path.join(self.notes, name)
            file = os.path.join(self.folder, name.replace("%", "/"))
            if os.path.exists(file):
                self.settle(file, read(notes), chance, reached, in_order)
            os.remove(notes)
        self.lost += self.bytes_lost > before

    def settle(self, file, changes, chance, reached, in_order):
        with open(file, "rb") as open_file:
            state = bytearray(open_file.read())
        for _, offset, size, old, _ in reversed(changes):
            put(state, offset, old)
            resize(state, size)
        still = True
        for resizes, offset, _, _, new in changes:
            if in_order:
                still = still and chance.random() < reached
            if resizes and (still if in_order else chance.random() < reached):
                resize(state, offset)
            for at, piece in sectors(offset, new):
                if still if in_order else chance.random() < reached:
                    put(state, at, piece)
                else:
                    self.bytes_lost += len(piece)
        with open(file, "wb") as open_file:
            open_file.write(state)


def resize(state, size):
    state.extend(bytes(max(0, size - len(state))))
    del state[size:]


def put(state, at, piece):
    state.extend(bytes(max(0, at - len(state))))
    state[at:at + len(piece)] = piece


def sectors(offset, new):
    """The bytes written from there on, by the sectors of the disk: (where, bytes)."""
    end = offset + len(new)
    while offset < end:
        after = min(end, (offset // SECTOR + 1) * SECTOR)
        yield offset, new[len(new) - (end - offset):len(new) - (end - after)]
        offset = after


def read(notes):
    """(whether it changes the length, offset, old length of the file, old bytes, new bytes) of every change, the oldest first;
    the last may be cut short."""
    with open(notes, "rb") as file:
        text = file.read()
    at, changes = 0, []
    while at + NOTE.size <= len(text):
        resizes, offset, size, old, new = NOTE.unpack_from(text, at)
        at += NOTE.size
        if at + old + new > len(text):
            break
        changes.append((resizes, offset, size, text[at:at + old], text[at + old:at + old + new]))
        at += old + new
    return changes
