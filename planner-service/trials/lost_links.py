"""A thousand listeners lose their connections at once, several times, while commands are sent.

    planner-service/trials/run lost-links [--listeners N] [--rounds N] [--rate N]        1000 listeners, 5 rounds, 10 commands a second

Every listener follows the events of one day. All connections are cut at once; each listener reconnects with the id of its
last event and must miss no event and get none twice. Meanwhile commands are sent and timed. Needs as many file descriptors
as listeners. Ends with 1 when not all listeners are complete again within ten seconds, when commands are not answered, or
when the heap in use grew from the first round to the last.
"""
import json, os, re, resource, selectors, shutil, socket, struct, sys, threading, time
import harness, sample_salon

DAY = "2027-03-09"
SALON = "far-away"
MOST_GAINED_MEGABYTES = 8
MOST_RESIDENT_MEGABYTES = 600
PEOPLE = [("mary", "MANAGER"), ("ann", "ASSISTANT")]
ID = re.compile(rb"(?:^|\n)id: (\d+)\n")
MOST_SECONDS = 10


class Listener:
    """Follows the events; counts those that are missing or come twice."""

    def __init__(self, port):
        self.port, self.last, self.wrong, self.refused = port, 0, 0, 0
        self.socket, self.rest = None, b""

    def connect(self):
        self.rest = b""
        self.socket = socket.create_connection(("127.0.0.1", self.port), timeout=30)
        self.socket.sendall((f"GET /days/{SALON}/{DAY}/events HTTP/1.1\r\nHost: localhost\r\nAccept: text/event-stream\r\n"
                             f"Last-Event-ID: {self.last}\r\n\r\n").encode())
        self.socket.setblocking(False)

    def cut(self):
        """Resets the connection, as a pulled cable does."""
        self.socket.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
        self.socket.close()

    def read(self):
        """Reads what has arrived; false when the connection has ended."""
        try:
            piece = self.socket.recv(262144)
        except BlockingIOError:
            return True
        except OSError:
            return False
        if not piece:
            return False
        text = self.rest + piece
        if text.startswith(b"HTTP/1.1 ") and not text.startswith(b"HTTP/1.1 200"):
            self.refused += 1
            return False
        end = text.rfind(b"\n\n") + 1
        for found in ID.finditer(text[:end]):
            number = int(found.group(1))
            self.wrong += number != self.last + 1
            self.last = number
        self.rest = text[end:]
        return True


class Crowd(threading.Thread):
    """All listeners on one thread."""

    def __init__(self, port, count):
        super().__init__(daemon=True)
        self.listeners = [Listener(port) for _ in range(count)]
        self.selector, self.over, self.losing = selectors.DefaultSelector(), False, False
        self.back = threading.Event()

    def run(self):
        for listener in self.listeners:
            self.join_in(listener)
        while not self.over:
            if self.losing:
                self.losing = False
                self.lose()
            for key, _ in self.selector.select(0.1):
                if not key.data.read():
                    self.selector.unregister(key.fileobj)
                    key.data.socket.close()
                    self.join_in(key.data)

    def join_in(self, listener):
        listener.connect()
        self.selector.register(listener.socket, selectors.EVENT_READ, listener)

    def lose(self):
        for listener in self.listeners:
            self.selector.unregister(listener.socket)
            listener.cut()
        for listener in self.listeners:
            self.join_in(listener)

    def behind(self, revision):
        return sum(listener.last < revision for listener in self.listeners)


class Worker(threading.Thread):
    def __init__(self, port, rate):
        super().__init__(daemon=True)
        self.line, self.rate, self.over, self.milliseconds, self.newest, self.odd = harness.Connection(port), rate, False, [], 0, 0

    def run(self):
        number = 0
        while not self.over:
            number += 1
            began = time.monotonic()
            body = sample_salon.command(f"work-{number:08}", "ann", "RecordLevels", service=1 + number % 12, zone=sample_salon.ZONES[0],
                                 levelBeforeTenths=10 + number % 90)
            status, _, answer = self.line.ask_again("POST", f"/days/{SALON}/{DAY}/commands", body)
            self.milliseconds.append(1000 * (time.monotonic() - began))
            if status == 200:
                self.newest = json.loads(answer)["lastRevision"]
            self.odd += status != 200
            time.sleep(max(0, 1 / self.rate - (time.monotonic() - began)))


def wait_for(crowd, worker, seconds):
    """Waits until every listener has an event newer than now; returns the seconds, None when that takes too long."""
    before, began = worker.newest, time.monotonic()
    while worker.newest == before or crowd.behind(before + 1):
        if time.monotonic() - began > seconds:
            return None
        time.sleep(0.02)
    return time.monotonic() - began


def main():
    words = harness.arguments(__doc__)
    words.add_argument("--listeners", type=harness.positive, default=1000)
    words.add_argument("--rounds", type=harness.positive, default=5)
    words.add_argument("--rate", type=float, default=10)
    given = words.parse_args()
    most = resource.getrlimit(resource.RLIMIT_NOFILE)[1]
    resource.setrlimit(resource.RLIMIT_NOFILE, (min(most, 3 * given.listeners), most))
    place = harness.folder()
    service = harness.Service(os.path.join(place, "log"), "--clock", "driven", "--clock-start", sample_salon.minutes(DAY, 8),
                          "--rate-permille", "0", "--plan-rounds", "3")
    service.start()
    harness.open_day(harness.Connection(service.port), sample_salon.opening(SALON, DAY, PEOPLE, "mary", "open-the-day"))
    crowd, worker = Crowd(service.port, given.listeners), Worker(service.port, given.rate)
    memory, seconds, during = [service.memory_kilobytes() / 1024], [], []
    try:
        worker.start()
        crowd.start()
        time.sleep(1)
        first = wait_for(crowd, worker, 120)
        print(f"     {given.listeners} listeners there {'after %.1f s' % first if first is not None else 'missing after 120 s'}, "
              f"{harness.load()}", flush=True)
        if first is None:
            sys.exit("FAIL the listeners did not all receive events")
        worker.milliseconds.clear()
        time.sleep(3)
        quiet = list(worker.milliseconds)
        held = [service.live_heap_megabytes()]
        for _ in range(given.rounds):
            worker.milliseconds.clear()
            crowd.losing = True
            while crowd.losing:
                time.sleep(0.001)
            seconds.append(wait_for(crowd, worker, 60))
            during += worker.milliseconds
            memory.append(service.memory_kilobytes() / 1024)
            time.sleep(1)
        held.append(service.live_heap_megabytes())
    finally:
        worker.over = crowd.over = True
        worker.join(30)
        crowd.join(30)
        service.end(9)
    wrong = sum(listener.wrong for listener in crowd.listeners)
    refused = sum(listener.refused for listener in crowd.listeners)
    harness.check("all back and complete", seconds and all(one is not None and one < MOST_SECONDS for one in seconds),
             f"{' '.join('%.1f' % one if one is not None else 'never' for one in seconds)} s, {refused} refused on the way")
    harness.check("nothing left out, nothing twice", wrong == 0, f"{wrong} of {worker.newest} events to {given.listeners} listeners")
    harness.check("commands meanwhile", worker.odd == 0 and quiet and during, f"{harness.latencies(during)}; while nothing was lost {harness.latencies(quiet)}")
    harness.check("memory reached", held[1] - held[0] < MOST_GAINED_MEGABYTES,
             f"{held[0]:.1f} MB before, {held[1]:.1f} MB after all rounds, with {given.listeners} listeners each time")
    harness.check("memory taken", max(memory) < MOST_RESIDENT_MEGABYTES,
             f"{memory[0]:.0f} MB before, at most {max(memory):.0f} MB, garbage included")
    if not harness.failed:
        shutil.rmtree(place)
    harness.finish()


main()
