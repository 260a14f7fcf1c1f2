"""Shared by the trials: arguments, the service as a process, connections, figures, and the result of each check."""
import argparse, atexit, http.client, json, os, re, signal, socket, subprocess, sys, tempfile, time, urllib.error, urllib.request

MODULE = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
ROOT = os.path.dirname(MODULE)
# The service closes a connection after twelve seconds without a request.
IDLE_SECONDS = 8
failed = []


def arguments(text):
    """A parser whose --help shows the text of the trial. It rejects wrong usage with exit code 64."""
    class Parser(argparse.ArgumentParser):
        def error(self, message):
            self.exit(64, f"{message}\n{self.format_usage()}")
    name = os.path.splitext(os.path.basename(sys.argv[0]))[0].replace("_", "-")
    return Parser(prog="planner-service/trials/run " + name, description=text,
                  formatter_class=argparse.RawDescriptionHelpFormatter)


def positive(text):
    """Type of an argument: a whole number of 1 or more."""
    if not re.fullmatch("[1-9][0-9]{0,8}", text):
        raise argparse.ArgumentTypeError(f"'{text}' is not a whole number of 1 or more")
    return int(text)


def check(name, ok, figure):
    """Prints the result of a check; the trial ends with 1 when one of them failed."""
    print(f"{'ok  ' if ok else 'FAIL'} {name}: {figure}", flush=True)
    if not ok:
        failed.append(name)


def finish():
    sys.exit(1 if failed else 0)


def load():
    return f"load {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores"


def folder(where=None):
    if where:
        os.makedirs(where, exist_ok=True)
    return tempfile.mkdtemp(prefix="stirtide-trial-", dir=where)


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def classes():
    """Class path of the service. STIRTIDE_CLASSES names another one, such as a copy that later builds do not touch."""
    if os.environ.get("STIRTIDE_CLASSES"):
        return os.environ["STIRTIDE_CLASSES"]
    subprocess.run([f"{MODULE}/serve", "--help"], check=True, stdout=subprocess.DEVNULL)
    return f"{MODULE}/target/lib/*"


def archive():
    """Options for the class data archive that planner-service/serve starts with."""
    file = os.environ.get("STIRTIDE_ARCHIVE", f"{MODULE}/target/serve.jsa")
    return ["-Xshare:auto", f"-XX:SharedArchiveFile={file}", "-Xlog:disable", "-Xlog:all=error:stderr"]


def percentile(values, share):
    ordered = sorted(values)
    return ordered[min(len(ordered) - 1, int(len(ordered) * share))] if ordered else float("nan")


def latencies(milliseconds):
    figures = " ".join(f"p{share * 100:g} {percentile(milliseconds, share):.1f}" for share in (0.5, 0.95, 0.99, 0.999))
    return f"{figures} max {max(milliseconds, default=float('nan')):.0f} ms over {len(milliseconds)}"


def slope(points):
    """Slope of the least-squares line through points (x, y)."""
    count = len(points)
    if count < 2:
        return 0.0
    middle_x, middle_y = sum(x for x, _ in points) / count, sum(y for _, y in points) / count
    spread = sum((x - middle_x) ** 2 for x, _ in points)
    return sum((x - middle_x) * (y - middle_y) for x, y in points) / spread if spread else 0.0


class Service:
    """The service as a process on a data folder that is kept over restarts."""

    def __init__(self, data, *words, heap="512m", jvm=(), command=()):
        self.data, self.words, self.command = data, list(words), list(command)
        self.jvm = ["-XX:+UseSerialGC", "--enable-native-access=ALL-UNNAMED", f"-Xmx{heap}", *archive(), *jvm]
        self.port, self.management = free_port(), free_port()
        self.path = classes()
        self.process = None
        self.out = open(os.path.join(os.path.dirname(data) or ".", "service.out"), "ab")

    def start(self, *more):
        """Starts it and returns the seconds until it was ready. Ends the trial when it does not start."""
        seconds = self.try_start(*more)
        if seconds is None:
            sys.exit(f"FAIL the service does not start; see {self.out.name}")
        return seconds

    def try_start(self, *more):
        """The same, but returns None when the process ended before it was ready."""
        began = time.monotonic()
        self.process = subprocess.Popen(
            self.command + ["java", *self.jvm, "-cp", self.path,
                            "stirtide.planner.service.ServiceMain", "--data", self.data, "--port", str(self.port),
                            "--management-port", str(self.management), *self.words, *more],
            stdout=subprocess.PIPE, stderr=self.out)
        atexit.register(self.process.kill)
        line = self.process.stdout.readline()
        return time.monotonic() - began if b"ready on" in line else None

    def end(self, sig=signal.SIGTERM, patience=30):
        """Sends a signal, waits and returns the exit code."""
        if self.process.poll() is None:
            self.process.send_signal(sig)
        code = self.process.wait(patience)
        self.process.stdout.close()
        return code

    def metrics(self, name):
        """Sum of all lines of one metric; a label such as area="heap" may be part of the name."""
        with urllib.request.urlopen(f"http://127.0.0.1:{self.management}/metrics", timeout=20) as answer:
            lines = answer.read().decode().splitlines()
        plain, _, label = name.partition("{")
        return sum(float(line.rsplit(" ", 1)[1]) for line in lines
                   if re.match(re.escape(plain) + r"[{ ]", line) and label.rstrip("}") in line)

    def readiness(self):
        """State the service reports: ready, not ready, read only."""
        try:
            with urllib.request.urlopen(f"http://127.0.0.1:{self.management}/ready", timeout=60) as answer:
                return json.load(answer)["state"]
        except urllib.error.HTTPError as refused:
            return json.load(refused)["state"]

    def memory_kilobytes(self):
        with open(f"/proc/{self.process.pid}/status") as status:
            return int(re.search(r"VmRSS:\s+(\d+)", status.read()).group(1))

    def live_heap_megabytes(self):
        """Heap in use after a full collection; the least of three, because a running search holds memory too."""
        heaps = []
        for _ in range(3):
            subprocess.run(["jcmd", str(self.process.pid), "GC.run"], check=True, stdout=subprocess.DEVNULL)
            heaps.append(self.metrics('jvm_memory_used_bytes{area="heap"}') / 2**20)
            time.sleep(0.5)
        return min(heaps)

    def cpu_seconds(self):
        with open(f"/proc/{self.process.pid}/stat") as stat:
            fields = stat.read().rsplit(")", 1)[1].split()
        return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")

    def open_files(self):
        return len(os.listdir(f"/proc/{self.process.pid}/fd"))


def care(path, *words):
    """Runs a task of planner-service/care; returns exit code, standard output and standard error."""
    ran = subprocess.run(["java", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx256m", "-cp", path,
                          "stirtide.planner.admin.CareMain", *words], capture_output=True, text=True)
    return ran.returncode, ran.stdout, ran.stderr


class Connection:
    """A connection that is kept open. Answers are (status, headers, body); the next request opens a lost connection again."""

    def __init__(self, port, token=None, patience=60):
        self.port, self.token, self.patience = port, token, patience
        self.http = None
        self.used = 0
        self.resent = 0

    def ask(self, method, path, body=None, **headers):
        head = {name.replace("_", "-"): value for name, value in headers.items()}
        if self.token and "authorization" not in head:
            head["authorization"] = "Bearer " + self.token
        if head.get("authorization") == "":
            del head["authorization"]
        if body is not None:
            head["content-type"] = "application/json"
            body = body if isinstance(body, (str, bytes)) else json.dumps(body)
        if time.monotonic() - self.used > IDLE_SECONDS:
            self.close()
        if self.http is None:
            self.http = http.client.HTTPConnection("127.0.0.1", self.port, timeout=self.patience)
        try:
            self.http.request(method, path, body, head)
            answer = self.http.getresponse()
            content = answer.read()
            self.used = time.monotonic()
            return answer.status, answer.headers, content
        except (OSError, http.client.HTTPException):
            self.close()
            raise

    def ask_again(self, method, path, body=None, **headers):
        """The same; sends the request a second time when the service had closed the idle connection."""
        try:
            return self.ask(method, path, body, **headers)
        except (http.client.RemoteDisconnected, ConnectionError, BrokenPipeError):
            self.resent += 1
            return self.ask(method, path, body, **headers)

    def close(self):
        if self.http:
            self.http.close()
            self.http = None


def open_day(connection, body):
    """Opens a day. Ends the trial when the service rejects it."""
    status, _, answer = connection.ask("POST", "/days", body)
    if status not in (200, 201):
        sys.exit(f"FAIL the day cannot be opened: {status} {answer[:300]}")
