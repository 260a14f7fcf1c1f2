"""What the trials of the terminal share: a pseudo terminal with a screen behind it, the programs, the figures."""
import fcntl, os, pty, re, select, signal, socket, struct, subprocess, sys, tempfile, termios, time

HERE = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
ROOT = os.path.dirname(HERE)
TEST_CLASSES = f"{HERE}/target/test-classes"
LEAVE = b"\x1b[?1049l"
SAMPLE_DAY = "larch-lane/2027-05-14"
failed = []


class NotInPlace(Exception):
    """Something a check needs is not there: the stand-in, the day on the screen, an answer. The check has failed."""


def tell(name, ok, figure, timed=False):
    """Prints a figure. One that depends on time is not judged while others keep the machine busy: it says so."""
    busy = timed and not ok and os.getloadavg()[0] > 2
    print(f"{'ok  ' if ok else 'busy' if busy else 'FAIL'} {name}: {figure}, {load()}" if timed else
          f"{'ok  ' if ok else 'FAIL'} {name}: {figure}", flush=True)
    if not ok and not busy:
        failed.append(name)


def skip(name, missing):
    """Says that something was not checked for want of a program."""
    print(f"skip {name}: {missing} is not installed", flush=True)


def load():
    return f"load {os.getloadavg()[0]:.1f}"


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def folder():
    return tempfile.mkdtemp(prefix="stirtide-check-")


class StandIn:
    """The tests' stand-in for the service; words as its main takes them."""

    def __init__(self, *words):
        self.port = free_port()
        self.process = subprocess.Popen(["java", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp", f"{TEST_CLASSES}:{HERE}/target/lib/*",
                                         "stirtide.bar.FakeService", str(self.port), *words],
                                        stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        if not self.process.stdout.readline().startswith(b"http://"):
            self.end()
            raise NotInPlace("the stand-in for the service does not start; mvn -Pfast -pl tui-client -am test-compile")

    def url(self):
        return f"http://127.0.0.1:{self.port}"

    def end(self):
        self.process.kill()
        self.process.wait()


def arguments(url, state=None):
    return ["--server", url, "--day", SAMPLE_DAY, "--person", "tamsin", "--state", state or folder()]


def command():
    """The command that tui-client/bar ends in, asked once: the trials want to be the parent of the JVM itself."""
    if not command.words:
        asked = subprocess.run([f"{HERE}/bar"], env={**os.environ, "STIRTIDE_PRINT_COMMAND": "1"}, stdout=subprocess.PIPE, text=True)
        command.words = asked.stdout.splitlines()
        if asked.returncode or not command.words:
            raise NotInPlace("tui-client/bar cannot be started")
    return command.words


command.words = []


def java(url, *more):
    return [*command(), *arguments(url), *more]


def empty_program():
    """Milliseconds that a Java program takes that does nothing, with the options of the terminal."""
    flags = command()[:command().index("-cp")]
    started = time.monotonic()
    done = subprocess.run([*(word for word in flags if "SharedArchive" not in word), "-cp", TEST_CLASSES, "stirtide.bar.EmptyProgram"])
    if done.returncode:
        raise NotInPlace("stirtide.bar.EmptyProgram does not start; mvn -Pfast -pl tui-client -am test-compile")
    return (time.monotonic() - started) * 1000


def bar(url, *more):
    return [f"{HERE}/bar", *arguments(url), *more]


class Pty:
    """A program on a pseudo terminal; what it wrote is kept in out."""

    def __init__(self, command, columns=80, rows=24, **environment):
        self.start = time.monotonic()
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            # Started in the background this side may ignore a hang-up, and that is inherited.
            signal.signal(signal.SIGHUP, signal.SIG_DFL)
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
            os.environ.update({"TERM": "xterm-256color", **environment})
            os.execvp(command[0], command)
        self.out = b""
        self.slave = None
        self.typed = b""
        self.status = None

    def read(self, seconds, until=None):
        """Reads for a time, or until a pattern has come; whether it has."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            if until and re.search(until, self.out):
                return True
            if not self.take(min(0.05, max(0, end - time.monotonic()))):
                break
        return bool(until and re.search(until, self.out))

    def expect(self, pattern, seconds=20):
        """Reads until a pattern has come; without it there is nothing to check."""
        if not self.read(seconds, pattern):
            shown = re.sub(rb"\x1b\[[?\d;]*[A-Za-z]|\s+", b" ", self.out)[-300:].decode(errors="replace")
            self.end()
            self.close()
            raise NotInPlace(f"{pattern.decode()} was not on the screen within {seconds} s, but {shown!r}")

    def take(self, seconds):
        """Takes what comes within a time; false when the program has hung up."""
        ready, _, _ = select.select([self.fd], [], [], seconds)
        if not ready:
            return True
        try:
            more = os.read(self.fd, 65536)
        except OSError:
            return False
        self.out += more
        return bool(more)

    def forget(self):
        self.out = b""

    def type(self, data):
        os.write(self.fd, data)
        self.typed = (self.typed + data)[-4000:]

    def size(self, columns, rows):
        fcntl.ioctl(self.fd, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))

    def hold_line(self):
        """Keeps the other side open, so that its settings can be read after the program has ended."""
        number = struct.unpack("I", fcntl.ioctl(self.fd, 0x80045430, b"\0\0\0\0"))[0]
        self.slave = os.open(f"/dev/pts/{number}", os.O_RDWR | os.O_NOCTTY)

    def cooked(self):
        flags = termios.tcgetattr(self.slave)[3]
        return all(flags & bit for bit in (termios.ICANON, termios.ECHO, termios.ISIG, termios.IEXTEN))

    def clean(self, echo=False):
        """Empty text when the terminal is as a shell wants it, else what is wrong; echo: typed keys may stand there."""
        wrong = []
        if LEAVE in self.out and self.out.rfind(b"\x1b[?1049h") > self.out.rfind(LEAVE):
            wrong.append("picture still on")
        after = self.out.split(LEAVE)[-1] if LEAVE in self.out else b"never left"
        after = re.sub(rb"\x1b\[(\?2026l|0m|\?25h|\?2004l)", b"", after)
        if after and not (echo and after in shown(self.typed)):
            wrong.append(f"bytes after leaving: {after[:60]}")
        if not self.cooked():
            wrong.append("terminal not cooked")
        if self.out.rfind(b"\x1b[?25h") < self.out.rfind(b"\x1b[?25l"):
            wrong.append("cursor hidden")
        return "; ".join(wrong)

    def alive(self):
        if self.status is None:
            pid, status = os.waitpid(self.pid, os.WNOHANG)
            if pid:
                self.status = status
        return self.status is None

    def end(self, sig=signal.SIGKILL):
        if self.alive():
            os.kill(self.pid, sig)
        self.read(10)
        if self.status is None:
            self.status = os.waitpid(self.pid, 0)[1]
        return self.status

    def program(self):
        """Process id of Java, also when a script started it."""
        children = subprocess.run(["pgrep", "-P", str(self.pid), "java"], capture_output=True, text=True).stdout.split()
        return int(children[0]) if children else self.pid

    def close(self):
        for number in (self.fd, self.slave):
            try:
                if number is not None:
                    os.close(number)
            except OSError:
                pass


def shown(typed):
    """Keys as a line in its usual state echoes them."""
    return b"".join(b"\r\n" if key in b"\r\n" else b"\t" if key == 9 else b"^" + bytes([key ^ 64]) if key < 32 or key == 127
                    else bytes([key]) for key in typed)


def cpu_seconds(pid):
    """Processor time of a process so far, all its threads."""
    with open(f"/proc/{pid}/stat") as stat:
        fields = stat.read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def memory_kilobytes(pid):
    """Memory that is resident; 0 of a process that is ending just now."""
    try:
        with open(f"/proc/{pid}/status") as status:
            resident = re.search(r"VmRSS:\s+(\d+)", status.read())
    except OSError:
        return 0
    return int(resident.group(1)) if resident else 0


def open_files(pid):
    return len(os.listdir(f"/proc/{pid}/fd"))


def percentile(values, share):
    ordered = sorted(values)
    return ordered[min(len(ordered) - 1, int(len(ordered) * share))]
