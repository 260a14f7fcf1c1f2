"""A tmux of its own for every trial: a socket name used twice fails now and then."""
import os, subprocess, time


class Tmux:
    def __init__(self, command, columns, rows, **environment):
        self.name = f"stirtide{os.getpid()}x{time.monotonic_ns()}"
        words = [f"{name}={value}" for name, value in environment.items()]
        self.start = time.monotonic()
        self.run("new-session", "-d", "-x", str(columns), "-y", str(rows), " ".join(["exec", "env", *words, *command]), ";",
                 "set", "-g", "status", "off", ";", "set", "-g", "window-size", "manual", ";", "set", "-sg", "escape-time", "0")

    def run(self, *words):
        return subprocess.run(["tmux", "-u", "-f", "/dev/null", "-L", self.name, *words], capture_output=True, text=True).stdout

    def attach(self):
        return ["tmux", "-u", "-f", "/dev/null", "-L", self.name, "attach"]

    def rows(self, colors=False):
        return self.run("capture-pane", "-p", *(["-e"] if colors else [])).split("\n")

    def text(self):
        return "\n".join(self.rows())

    def wait(self, word, seconds=20):
        """Seconds from the start until a word is on the screen, None when it never is."""
        while time.monotonic() - self.start < seconds:
            if word in self.text():
                return time.monotonic() - self.start
        return None

    def keys(self, *names):
        self.run("send-keys", *names)

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.run("kill-server")

    @classmethod
    def start_times(cls, command):
        """Milliseconds until the first frame and until a picture of the day, None for one that never came."""
        with cls(command, 80, 24) as session:
            return tuple(seconds and seconds * 1000 for seconds in (session.wait("BAR"), session.wait("AFTER THAT")))
