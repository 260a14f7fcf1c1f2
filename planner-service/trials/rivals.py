"""Sixteen clients write to one day at once, each with the newest revision it knows: one write succeeds, the others get 412.

    planner-service/trials/run rivals [--clients N] [--writes N]        16 clients, 2,000 writes

Every write carries If-Match. The accepted writes must be in the log once and without a gap; all others must get 412. Ends
with 1 when a check fails.
"""
import json, os, shutil, sys, threading, time
import harness, sample_salon

DAY = "2027-03-09"
SALON = "far-away"
PATH = f"/days/{SALON}/{DAY}"
PEOPLE = [("mary", "MANAGER"), ("ann", "ASSISTANT")]


class Rival(threading.Thread):
    def __init__(self, port, name, writes, revision):
        super().__init__(daemon=True)
        self.line, self.name_, self.writes, self.revision = harness.Connection(port), name, writes, revision
        self.taken, self.outrun, self.odd = [], 0, []

    def run(self):
        for number in range(self.writes):
            body = sample_salon.command(f"{self.name_}-{number:06}", "ann", "RecordLevels", service=1 + number % 12,
                                 zone=sample_salon.ZONES[0], levelBeforeTenths=10 + number % 90)
            status, _, answer = self.line.ask("POST", PATH + "/commands", body, If_Match=f'"{self.revision}"')
            told = json.loads(answer)
            if status == 200:
                self.taken.append((told["firstRevision"], told["lastRevision"]))
                self.revision = told["lastRevision"]
            elif status == 412:
                self.outrun += 1
                self.revision = json.loads(self.line.ask("GET", "/days")[2])["days"][0]["revision"]
            else:
                self.odd.append((status, told))


def main():
    words = harness.arguments(__doc__)
    words.add_argument("--clients", type=harness.positive, default=16)
    words.add_argument("--writes", type=harness.positive, default=2000)
    given = words.parse_args()
    place = harness.folder()
    service = harness.Service(os.path.join(place, "log"), "--clock", "driven", "--clock-start", sample_salon.minutes(DAY, 8),
                          "--rate-permille", "0", "--plan-rounds", "3")
    service.start()
    line = harness.Connection(service.port)
    harness.open_day(line, sample_salon.opening(SALON, DAY, PEOPLE, "mary", "open-the-day"))
    before = json.loads(line.ask("GET", "/days")[2])["days"][0]["revision"]
    writes = max(1, given.writes // given.clients)
    rivals = [Rival(service.port, f"rival-{one:02}", writes, before) for one in range(given.clients)]
    began = time.monotonic()
    for rival in rivals:
        rival.start()
    for rival in rivals:
        rival.join(600)
    took = time.monotonic() - began
    taken = sorted(one for rival in rivals for one in rival.taken)
    outrun, odd = sum(rival.outrun for rival in rivals), [one for rival in rivals for one in rival.odd]
    events, after = [], before
    while True:
        page = json.loads(line.ask("GET", f"{PATH}/events?after={after}&limit=500")[2])["events"]
        if not page:
            break
        events += page
        after += len(page)
    of_rivals = [event for event in events if event.get("commandid", "").startswith("rival-")]
    apart = all(first > last for (_, last), (first, _) in zip(taken, taken[1:]))
    harness.check("every write answered", len(taken) + outrun == writes * given.clients and taken and not odd,
             f"{len(taken)} taken, {outrun} outrun (412), other answers {odd[:3]}, {took:.0f} s")
    harness.check("those taken stand in the log once, in order", apart and len({event['commandid'] for event in of_rivals}) == len(taken)
             and sum(last - first + 1 for first, last in taken) == len(of_rivals)
             and [int(event["sequence"]) for event in events] == list(range(before + 1, before + 1 + len(events))),
             f"{len(of_rivals)} of {len(events)} events, no gap and none twice")
    service.end()
    harness.check("verify", harness.care(service.path, "verify", service.data)[0] == 0, harness.load())
    shutil.rmtree(place)
    harness.finish()


main()
