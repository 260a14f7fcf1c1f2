"""The soak: fifty clients in ten salons, day after day, every answer held against what was expected."""
import collections, datetime, json, os, signal, threading, time
import harness, sample_salon
from soak_commands import ROLES, ClientModel, Request

PEOPLE = [("mary", "MANAGER"), ("cole", "STYLIST"), ("ann", "ASSISTANT"), ("abe", "ASSISTANT")]
FIRST_DAY = "2027-03-09"
OPENS, CLOSES = 8, 19
STEP_MINUTES = 5
LOOK_SECONDS = 10
LARGEST_PAGE = 500
MOST_TRIES = 20


class Clock:
    """The clock of the salons: minutes requested and minutes confirmed, counted from the first day."""

    def __init__(self):
        self.asked = self.done = 60 * OPENS

    @staticmethod
    def between(one, other):
        one, other = (datetime.datetime.fromisoformat(text.replace("Z", "+00:00")) for text in (one, other))
        return (other - one).total_seconds() / 60

    def move(self, line, minutes):
        """Moves it. All plans on the way are drawn, which under load may take longer than a connection is kept open."""
        self.asked = minutes
        to = sample_salon.minutes(FIRST_DAY, 0, minutes)
        for _ in range(MOST_TRIES):
            try:
                status, _, body = line.ask("POST", "/clock/advance", {"to": to})
            except (OSError, harness.http.client.HTTPException):
                continue
            if status == 503 and b"NOT_NOW" in body:
                continue
            if status == 200:
                self.done = minutes
            return "" if status == 200 else f"clock: {status} {body[:200]}"
        return "clock: no answer"


class Client(threading.Thread):
    def __init__(self, soak, salon, name, token, offset):
        super().__init__(daemon=True)
        self.soak, self.salon, self.name_, self.offset = soak, salon, name, offset
        self.line = harness.Connection(soak.service.port, token)
        self.milliseconds, self.counts, self.codes = [], collections.Counter(), collections.Counter()

    def run(self):
        try:
            for number in range(self.soak.days):
                self.day(number, sample_salon.day_after(FIRST_DAY, number))
                if self.soak.stopping:
                    break
        except Exception as broken:  # a client that ends early makes the trial fail
            self.soak.error(self.salon, self.name_, "the client ended", repr(broken))
            self.soak.abort()

    def day(self, number, day):
        soak = self.soak
        seed = f"{soak.seed}-{self.salon}-{self.name_}-{number}"
        model = ClientModel(self.salon, self.name_, day, soak.clock, seed, soak.rival(self.salon))
        soak.meet("dawned")
        if self.name_ == "mary":
            body = sample_salon.opening(self.salon, day, PEOPLE, "mary", f"open-{self.salon}-{day}")
            status, _, answer = self.line.ask_again("POST", "/days", body)
            if status != 201:
                soak.error(self.salon, self.name_, "OpenDay", f"{status} {answer[:300]}")
            soak.expected[self.salon] = {body["commandId"]: None}
        soak.meet("opened")
        scene, answer = None, None
        while True:
            if scene is None:
                if soak.over(number):
                    break
                scene = model.scene()
                answer = None
            try:
                ask = scene.send(answer)
            except StopIteration:
                scene = None
                continue
            answer = self.send(model, ask)
        soak.meet("worked")
        with soak.lock:
            soak.expected[self.salon].update(model.acknowledged)
        soak.meet("told")
        if self.name_ == "mary":
            self.close(model)
        soak.meet("closed")
        if self.name_ == "prog":
            self.read(day)
        soak.meet("read")

    def close(self, model):
        ask = Request(model.command("CloseDay"), (200, None))
        if self.send(model, ask) is not None:
            self.soak.expected[self.salon].update(model.acknowledged)

    def send(self, model, ask):
        """Sends one request at its time; returns the answer when it was accepted, else None."""
        if ask.method == "POST":
            self.pace()
        path = ask.path if ask.path.startswith("/") else f"/days/{self.salon}/{model.day}/{ask.path}".rstrip("/")
        began, lost = time.monotonic(), self.line.resent
        status, _, body = self.line.ask_again(ask.method, path, ask.body, **ask.headers)
        took = 1000 * (time.monotonic() - began)
        what = "GET" if ask.method == "GET" else ask.body["command"]["type"] if isinstance(ask.body, dict) and "command" in ask.body else "other"
        wrong = model.judge(ask, status, body, self.line.resent > lost)
        if wrong:
            self.soak.error(self.salon, self.name_, what, wrong)
        if ask.method == "POST":
            self.milliseconds.append(took)
            self.counts[status] += 1
        return json.loads(body) if status == 200 else None

    def pace(self):
        """Sends commands at even intervals; a client that waited at the end of a day catches up."""
        self.offset += self.soak.clients / self.soak.rate
        wait = self.soak.began + self.offset - time.monotonic()
        if wait > 0:
            time.sleep(wait)

    def read(self, day):
        """Reads the events of the closed day: it has every accepted command once, as accepted, and no other."""
        expected, seen, newest = dict(self.soak.expected[self.salon]), collections.defaultdict(list), 0
        while True:
            path = f"/days/{self.salon}/{day}/events?after={newest}&limit={LARGEST_PAGE}"
            _, _, body = self.line.ask_again("GET", path)
            events = json.loads(body)["events"]
            if not events:
                break
            for event in events:
                newest += 1
                if int(event["sequence"]) != newest:
                    self.soak.error(self.salon, day, "events", f"{event['sequence']} where {newest} was to come")
                    return
                if "commandid" in event:
                    seen[event["commandid"]].append((newest, event["data"]))
        for command, told in expected.items():
            found = seen.pop(command, [])
            if told is None:
                continue
            first, last, data = told
            right = [revision for revision, _ in found] == list(range(first, last + 1))
            if not right or data and not data.items() <= found[0][1].items():
                self.soak.error(self.salon, day, "events", f"{command}: {told} against {found}"[:300])
        for command in seen:
            self.soak.error(self.salon, day, "events", f"{command} was never accepted")
        with self.soak.lock:
            self.soak.events += newest


class Soak:
    def __init__(self, service, tokens, operator, minutes, rate, seed, day_seconds):
        self.service, self.rate, self.seed, self.day_seconds = service, rate, seed, day_seconds
        self.days = max(1, round(60 * minutes / day_seconds))
        self.clock, self.lock = Clock(), threading.Lock()
        self.expected, self.errors, self.events, self.looks, self.lives = {}, [], 0, [], []
        self.clients = len(tokens)
        self.salons = sorted({salon for salon, _ in tokens})
        self.threads = [Client(self, salon, name, token, n / rate) for n, ((salon, name), token) in enumerate(tokens.items())]
        self.barrier = threading.Barrier(self.clients + 1)
        self.stopping = False
        self.operator = harness.Connection(service.port, operator)
        self.began = time.monotonic()
        self.days_done = 0

    def rival(self, salon):
        return self.salons[(self.salons.index(salon) + 1) % len(self.salons)]

    def error(self, *what):
        with self.lock:
            self.errors.append(what)
            if len(self.errors) <= 20:
                print("WRONG", *what, flush=True)

    def abort(self):
        self.stopping = True
        self.barrier.abort()

    def meet(self, _):
        self.barrier.wait(300)

    def over(self, number):
        return self.stopping or time.monotonic() - self.began > (number + 1) * self.day_seconds

    def run(self):
        signal.signal(signal.SIGTERM, lambda *_: self.stop())
        signal.signal(signal.SIGINT, lambda *_: self.stop())
        looking = threading.Thread(target=self.look, daemon=True)
        for thread in self.threads:
            thread.start()
        looking.start()
        for number in range(self.days):
            self.play(number)
            if self.stopping:
                break
        for thread in self.threads:
            thread.join(60)
        self.looked = True
        self.cpu = self.service.cpu_seconds()
        return time.monotonic() - self.began

    def stop(self):
        """Stops after the current day, so that everything sent is still compared with the log."""
        self.stopping = True

    def play(self, number):
        """Moves the clock through one day, five minutes at a time, while the clients work."""
        start = 24 * 60 * number + 60 * OPENS
        wrong = self.clock.move(self.operator, start)
        if wrong:
            self.error(wrong)
        self.meet("dawned")
        self.meet("opened")
        steps = (CLOSES - OPENS) * 60 // STEP_MINUTES
        for step in range(steps):
            if self.over(number):
                break
            wrong = self.clock.move(self.operator, start + step * STEP_MINUTES)
            if wrong:
                self.error(wrong)
            wait = self.began + number * self.day_seconds + (step + 1) * self.day_seconds / steps - time.monotonic()
            if wait > 0:
                time.sleep(wait)
        self.meet("worked")
        self.meet("told")
        self.meet("closed")
        self.meet("read")
        self.days_done += 1
        # All days are closed and no client works: the heap now holds what closed days need.
        self.lives.append(((time.monotonic() - self.began) / 3600, self.service.live_heap_megabytes()))

    looked = False

    def look(self):
        last = 0
        while not self.looked:
            at = time.monotonic() - self.began
            try:
                self.looks.append((at, self.service.memory_kilobytes() / 1024, self.service.open_files()))
            except (OSError, ValueError):
                pass
            if at - last > 300:
                last = at
                print(f"     {at / 60:.0f} minutes, {self.sent()} commands, {len(self.errors)} wrong, {self.days_done} days, "
                      f"rss {self.looks[-1][1]:.0f} MB, {harness.load()}", flush=True)
            time.sleep(LOOK_SECONDS)

    def sent(self):
        return sum(len(thread.milliseconds) for thread in self.threads)


def report(soak, seconds, data_bytes):
    milliseconds = [one for thread in soak.threads for one in thread.milliseconds]
    statuses = collections.Counter()
    for thread in soak.threads:
        statuses.update(thread.counts)
    harness.check("commands sent, events read back, memory looked at", milliseconds and soak.events > 0 and soak.looks,
                  f"{len(milliseconds)}, {soak.events}, {len(soak.looks)} times")
    if harness.failed:
        return
    rate = len(milliseconds) / seconds
    print(f"     {seconds / 60:.1f} minutes, {len(milliseconds)} commands, {rate:.1f} a second, {soak.clients} clients, "
          f"{soak.days_done * len(soak.salons)} days of {len(soak.salons)} salons, {soak.events} events read back, "
          f"{data_bytes / 2**20:.0f} MiB of log, {harness.load()}")
    print(f"     processor: service {1000 * soak.cpu / len(milliseconds):.1f} ms a command, trial {1000 * sum(os.times()[:2]) / len(milliseconds):.1f} ms")
    print(f"     answers {dict(sorted(statuses.items()))}, connections opened again {sum(t.line.resent for t in soak.threads)}")
    harness.check("wrong answers", not soak.errors, f"{len(soak.errors)}")
    harness.check("pace", rate > 0.97 * soak.rate, f"{rate:.1f} of {soak.rate} commands a second")
    harness.check("time to the answer", True, harness.latencies(milliseconds))
    settled = [look for look in soak.looks if look[0] > min(1200, seconds / 4)] or soak.looks
    rss = harness.slope([(look[0] / 3600, look[1]) for look in settled])
    heap = [point for point in soak.lives if point[0] * 3600 >= min(1200, seconds / 4)]
    growth = harness.slope(heap)
    days_an_hour = soak.days_done * len(soak.salons) / seconds * 3600
    harness.check("memory", growth < 24 and max(look[1] for look in settled) < 800,
             f"rss at most {max(look[1] for look in settled):.0f} MB, slope {rss:+.1f} MB an hour; heap after a "
             f"collection when all days are closed {min((one for _, one in heap), default=0):.0f} to {max((one for _, one in heap), default=0):.0f} MB, "
             f"slope {growth:+.1f} MB an hour at {days_an_hour:.0f} closed days an hour")
    files = [look[2] for look in settled]
    harness.check("open files", max(files) - min(files) <= soak.clients, f"{min(files)} to {max(files)}, "
             f"slope {harness.slope([(look[0] / 3600, look[2]) for look in settled]):+.1f} an hour")
