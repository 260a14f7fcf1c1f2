"""Time from a command to the view and the plans that follow it, as a listener on the demo day sees them.

    planner-service/trials/run latency [--count N]        300 commands

Every command moves a client by some minutes, so a new plan follows each. The first fifty commands are not counted. The aim
is a p95 below 250 ms for the view. Ends with 1 when a command is rejected or a view or plan does not come within ten seconds.
"""
import datetime, http.client, json, os, shutil, sys, threading, time
import harness

CLOCK_START = "2027-06-11T13:30:00Z"
WARM_UP = 50
PATIENCE_SECONDS = 10


class Listener(threading.Thread):
    """Reads the live views of a day and keeps when each arrived and what it shows."""

    def __init__(self, port, day):
        super().__init__(daemon=True)
        self.http = http.client.HTTPConnection("127.0.0.1", port, timeout=600)
        self.path, self.arrivals, self.arrived = f"/days/{day}/live", [], threading.Condition()

    def run(self):
        self.http.request("GET", self.path, headers={"accept": "text/event-stream"})
        answer = self.http.getresponse()
        for line in iter(answer.readline, b""):
            if line.startswith(b"data:"):
                at = time.monotonic()
                view = json.loads(line[5:])
                with self.arrived:
                    self.arrivals.append((at, view["revision"], view["planRevision"], not view["betterPlanSought"]))
                    self.arrived.notify_all()

    def first(self, wanted):
        """When the first view that fits arrived. Ends the trial when none comes."""
        with self.arrived:
            def found():
                return next((one for one in self.arrivals if wanted(*one[1:])), None)
            if not self.arrived.wait_for(found, PATIENCE_SECONDS):
                sys.exit(f"FAIL no such view came within {PATIENCE_SECONDS} s")
            return found()[0]


def row(name, seconds):
    milliseconds = sorted(1000 * one for one in seconds)
    p50, p95 = harness.percentile(milliseconds, 0.5), harness.percentile(milliseconds, 0.95)
    return f"     {name:<52} n {len(milliseconds)}  p50 {p50:.1f} ms  p95 {p95:.1f} ms  max {milliseconds[-1]:.1f} ms"


def main():
    words = harness.arguments(__doc__)
    words.add_argument("--count", type=harness.positive, default=300)
    given = words.parse_args()
    place = harness.folder()
    service = harness.Service(os.path.join(place, "log"), "--salon", os.path.join(harness.ROOT, "demo-day", "salon"),
                              "--clock", "driven", "--clock-start", CLOCK_START, "--rate-permille", "0")
    service.start()
    try:
        view, answered, planned, last = measure(service.port, given.count)
    finally:
        service.end()
    print(row("from sending a command to its view at a listener", view))
    print(row("from its answer to its view at a listener", answered))
    print(row("from sending a command to the first plan for it", planned))
    print(row("from sending a command to the last plan for it", last))
    shutil.rmtree(place)


def measure(port, count):
    connection = harness.Connection(port)
    day = json.loads(connection.ask("GET", "/days")[2])["days"][0]["day"]
    shown = json.loads(connection.ask("GET", f"/days/{day}")[2])
    manager = next(one["personId"] for one in shown["people"] if one["role"] == "MANAGER")
    card = shown["services"][-1]
    booked = datetime.datetime.fromisoformat(card["bookedStart"].replace("Z", "+00:00"))
    listener = Listener(port, day)
    listener.start()
    figures = [], [], [], []
    for number in range(WARM_UP + count):
        start = booked + datetime.timedelta(minutes=number % 2 + 1)
        command = {"type": "MoveService", "service": card["service"], "start": start.strftime("%Y-%m-%dT%H:%M:%SZ"), "reason": "measuring"}
        sent = time.monotonic()
        status, _, body = connection.ask("POST", f"/days/{day}/commands", 
                                         {"commandId": f"latency-{number:06}", "actor": manager, "command": command})
        answered = time.monotonic()
        if status != 200:
            sys.exit(f"FAIL a command was rejected: {status} {body[:300]}")
        revision = json.loads(body)["lastRevision"]
        arrived = listener.first(lambda known, plan, done: known >= revision)
        planned = listener.first(lambda known, plan, done: plan >= revision)
        done = listener.first(lambda known, plan, done: plan >= revision and done)
        if number >= WARM_UP:
            for figure, one in zip(figures, (arrived - sent, max(0, arrived - answered), planned - sent, done - sent)):
                figure.append(one)
    return figures


main()
