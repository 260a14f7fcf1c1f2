"""Kills the service with SIGKILL at random moments of mixed work, hundreds of times.

    planner-service/trials/run kill-nine [--kills N] [--clients N] [--seed N] [--power [--lies]]        500 kills, 8 clients, seed 1

Clients send commands to four days while plans are drawn and bowls fall due; after the restart each sends its unanswered
command again. Every start verifies the whole chain; then every answered command must be in the log once, at the revisions
of the answer, and every client must still have a key. Every twenty-five kills a new log is begun, so that the whole log
is verified at the start, and the old one is verified once more. SIGTERM ends the trial with the figures so far. Ends with
1 when a check fails.

With --power every kill is a power cut: random sectors of what was written and not forced to the disk are taken back. With
--lies the disk reports "forced" and keeps nothing of the log, a loss that no program can prevent: every cut has a log of
its own, and the trial checks that it finds each loss. Both need a C compiler, and take names of files as on the disk at
once.
"""
import collections, json, os, random, shutil, signal, sys, threading, time
import harness, power_cut, sample_salon

DAY = "2027-03-09"
SALONS = ["kill-0", "kill-1", "kill-2", "kill-3"]
PEOPLE = [("mary", "MANAGER"), ("ann", "ASSISTANT")]
KILLS_OF_A_LOG = 25
MOST_SECONDS_TO_FIRST_ANSWER = 60
ended = []
LARGEST_PAGE = 500
SERVICES = 12


class Client(threading.Thread):
    """Sends commands one after the other, each until it is answered."""

    def __init__(self, trial, number, seed):
        super().__init__(daemon=True)
        self.trial, self.number = trial, number
        self.chance = random.Random(f"{seed}-{number}")
        self.salon = SALONS[number % len(SALONS)]
        self.line = harness.Connection(trial.service.port, patience=30)
        self.sent = self.again = 0

    def run(self):
        while not self.trial.over:
            self.sent += 1
            body = self.command(f"{self.trial.name}-{self.number}-{self.sent:06}")
            self.until_answered(body)

    def command(self, command_id):
        kind = self.chance.random()
        service, zone = self.chance.randrange(1, SERVICES + 1), self.chance.choice(sample_salon.ZONES)
        if kind < 0.55:
            return sample_salon.command(command_id, "ann", "RecordLevels", service=service, zone=zone,
                                 levelBeforeTenths=self.chance.randrange(10, 101))
        if kind < 0.7:
            return sample_salon.command(command_id, "ann", "CountStock", productId="six",
                                 milligrams=self.chance.randrange(9_000_000))
        if kind < 0.85:
            duty = [{"from": sample_salon.minutes(DAY, 5, self.chance.randrange(50)), "to": sample_salon.minutes(DAY, 22)}]
            return sample_salon.command(command_id, "mary", "ChangeShift", personId="ann", onDuty=duty)
        return sample_salon.command(command_id, "ann", "RecordTest", service=service, kind="PATCH",
                             doneAt=sample_salon.minutes("2027-01-01", self.chance.randrange(24)))

    def until_answered(self, body):
        tries = 0
        while not self.trial.over:
            try:
                tries += 1
                status, _, answer = self.line.ask("POST", f"/days/{self.salon}/{DAY}/commands", body)
            except (OSError, harness.http.client.HTTPException):
                self.trial.up.wait(30)
                continue
            told = json.loads(answer)
            if status == 503 and told["code"] == "NOT_NOW":
                continue
            if status == 404:
                # The opening of the day was cut short and never confirmed.
                continue
            if status != 200 or told["commandId"] != body["commandId"] or tries == 1 and told["repeated"]:
                self.trial.wrong.append(f"{body['commandId']}: {status} {answer[:200]} at try {tries}")
                return
            self.again += tries > 1
            with self.trial.lock:
                self.trial.answered[self.salon][body["commandId"]] = (told["firstRevision"], told["lastRevision"])
                self.trial.repeated += told["repeated"]
            return


class Trial:
    """One log and its kills."""

    def __init__(self, name, place, clients, seed, disk=None):
        self.name, self.lock, self.up, self.over = name, threading.Lock(), threading.Event(), False
        self.chance = random.Random(f"{seed}-{name}")
        self.data = os.path.join(place, name)
        self.disk = disk and power_cut.Disk(place, self.data, disk == "lies")
        self.service = harness.Service(self.data, "--clock", "driven", "--clock-start", sample_salon.minutes(DAY, 8),
                                   "--rate-permille", "60000", "--plan-rounds", "3", heap="256m",
                                   jvm=["-XX:TieredStopAtLevel=1"], command=self.disk.command() if self.disk else ())
        self.answered = {salon: {} for salon in SALONS}
        self.seen = {salon: [] for salon in SALONS}
        self.wrong, self.seconds, self.repeated, self.events = [], [], 0, 0
        self.clients = [Client(self, number, f"{seed}-{name}") for number in range(clients)]

    def begin(self):
        self.service.start()
        line = harness.Connection(self.service.port)
        for salon in SALONS:
            harness.open_day(line, sample_salon.opening(salon, DAY, PEOPLE, "mary", "open-" + salon, SERVICES))
        self.up.set()
        for client in self.clients:
            client.start()

    def kill(self):
        """Kills it at a random moment; returns what was answered before."""
        time.sleep(0.1 + 1.4 * self.chance.random())
        self.up.clear()
        with self.lock:
            known = {salon: dict(commands) for salon, commands in self.answered.items()}
        self.service.end(9)
        if self.disk:
            self.disk.cut(self.chance)
        return known

    def loss_found(self):
        """Whether a cut that loses everything is found, of a log to which commands had been written."""
        self.begin()
        until = time.monotonic() + MOST_SECONDS_TO_FIRST_ANSWER
        while not any(self.answered.values()) and time.monotonic() < until:
            time.sleep(0.01)
        known = self.kill()
        self.over = True
        written = any(known.values())
        if self.service.try_start() is None:
            self.wrong.append("it does not start")
        else:
            self.look(known)
        self.service.end(9)
        return written and bool(self.wrong)

    def run(self, kills):
        self.begin()
        for _ in range(kills):
            if ended:
                break
            known = self.kill()
            self.seconds.append(self.service.start())
            # The start has verified the whole chain; a damaged log would be read only.
            state = self.service.readiness()
            if state != "ready":
                self.wrong.append(f"{state} after a start")
            self.up.set()
            self.look(known)
        self.over = True
        for client in self.clients:
            client.join(60)
        with self.lock:
            known = {salon: dict(commands) for salon, commands in self.answered.items()}
        self.look(known, whole=True)
        self.service.end()
        code, _, problem = harness.care(self.service.path, "verify", self.data)
        if code:
            self.wrong.append(f"verify: {problem.strip()}")

    def look(self, known, whole=False):
        """Answered commands must be in the log once, at the revisions of the answer; events read before must still be there."""
        line = harness.Connection(self.service.port)
        for salon in SALONS:
            status, _, body = line.ask("GET", f"/days/{salon}/{DAY}")
            named = status == 200 and sum(str(one["clientRef"]).startswith("K") for one in json.loads(body)["services"])
            if named != SERVICES:
                self.wrong.append(f"{salon}: {named} of {SERVICES} clients have their key")
            before = self.seen[salon]
            events = [] if whole else before
            while True:
                status, _, body = line.ask("GET", f"/days/{salon}/{DAY}/events?after={len(events)}&limit={LARGEST_PAGE}")
                if status != 200:
                    self.wrong.append(f"{salon}: {status} where its events were to come")
                    return
                page = json.loads(body)["events"]
                events.extend((event.get("commandid"), event["sequence"], event["id"]) for event in page)
                if len(page) < LARGEST_PAGE:
                    # The clients are working again; what was answered before the kill has been read.
                    break
            if whole and events[:len(before)] != before:
                self.wrong.append(f"{salon}: events are not those read before")
            self.seen[salon] = events
            places = collections.defaultdict(list)
            for revision, (command, sequence, _) in enumerate(events, 1):
                if int(sequence) != revision:
                    self.wrong.append(f"{salon}: {sequence} where {revision} was to come")
                if command:
                    places[command].append(revision)
            for command, (first, last) in known[salon].items():
                if places[command] != list(range(first, last + 1)):
                    self.wrong.append(f"{salon}: {command} answered with {first} to {last}, stands at {places[command]}")
            for command, revisions in places.items():
                if len(revisions) > 1 and not command.startswith("open-"):
                    self.wrong.append(f"{salon}: {command} stands at {revisions}")
        self.events = sum(len(events) for events in self.seen.values())


def lying(given, place):
    found = sum(Trial(f"log-{number}", place, given.clients, given.seed, "lies").loss_found() for number in range(given.kills))
    harness.check("losses found", found == given.kills, f"{found} of {given.kills}, each on a disk that does not keep what it reports as forced")
    shutil.rmtree(place)
    harness.finish()


def main():
    words = harness.arguments(__doc__)
    words.add_argument("--kills", type=harness.positive, default=500)
    words.add_argument("--clients", type=harness.positive, default=8)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--power", action="store_true")
    words.add_argument("--lies", action="store_true")
    given = words.parse_args()
    place = harness.folder()
    if given.lies:
        lying(given, place)
    print(f"     {given.kills} kills, seed {given.seed}, {harness.load()}, {place}", flush=True)
    signal.signal(signal.SIGTERM, lambda *_: ended.append(True))
    trials, left = [], given.kills
    try:
        while left > 0 and not ended:
            trials.append(Trial(f"log-{len(trials)}", place, given.clients, given.seed, "power" if given.power else None))
            trials[-1].run(min(left, KILLS_OF_A_LOG))
            left -= KILLS_OF_A_LOG
            if not trials[-1].wrong:
                shutil.rmtree(trials[-1].data)
            print(f"     {given.kills - max(left, 0)} kills, {len(trials[-1].wrong)} wrong, {harness.load()}", flush=True)
    finally:
        if trials and trials[-1].service.process.poll() is None:
            trials[-1].service.end(9)
    wrong = [what for trial in trials for what in trial.wrong]
    for what in wrong[:20]:
        print("WRONG", what)
    answered = sum(len(commands) for trial in trials for commands in trial.answered.values())
    again = sum(client.again for trial in trials for client in trial.clients)
    seconds = [one for trial in trials for one in trial.seconds]
    harness.check("commands lost, applied twice, or chains broken", not wrong and answered > 0,
             f"{len(wrong)}; {answered} answered, {again} of them sent again after a kill, {sum(t.repeated for t in trials)} "
             f"of these were stored before the kill, {sum(t.events for t in trials)} events")
    if given.power:
        cuts, lost = sum(trial.disk.cuts for trial in trials), sum(trial.disk.lost for trial in trials)
        harness.check("power cuts that took something", lost > 0,
                 f"{lost} of {cuts}, {sum(trial.disk.bytes_lost for trial in trials) / 2**20:.1f} MiB in all")
    harness.check("start to ready", len(seconds) == given.kills or bool(ended),
             f"{len(seconds)} starts, p50 {harness.percentile(seconds, 0.5):.2f} s, p95 {harness.percentile(seconds, 0.95):.2f} s, "
             f"longest {max(seconds):.2f} s, {harness.load()}")
    if not wrong:
        shutil.rmtree(place)
    harness.finish()


main()
