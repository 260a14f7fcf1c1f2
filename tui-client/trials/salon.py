"""The planner service on the demo salon, in a process that can be killed and started again on the same log."""
import json, os, shutil, signal, subprocess, time, urllib.error, urllib.request
from rig import ROOT, folder, free_port

DAY = "quillon-row/2027-06-11"
OPENS = "2027-06-11T13:57:00Z"
RATE = 10000
# Who signs on here, with the roles of the demo salon.
PEOPLE = {"tamsin": "assistant", "jorin": "assistant", "isolde": "colorist", "bertram": "manager"}


class Salon:
    def __init__(self):
        self.data = folder()
        self.port, self.management = free_port(), free_port()
        self.log = open(os.path.join(self.data, "service.out"), "ab")
        self.process = None
        self.now = OPENS
        self.starts = 0
        # The script builds what is missing; then this one starts many times and wants to be the process itself.
        subprocess.run([f"{ROOT}/planner-service/serve", "--help"], check=True, stdout=subprocess.DEVNULL)
        self.classes = f"{ROOT}/planner-service/target/lib/*"
        self.codes = {person: self.care("person", "code", person, "--role", role) for person, role in PEOPLE.items()}
        self.own = self.care("token", "add", "--role", "manager", "--name", "trial")
        self.folder = self.with_shared_mixes()

    def care(self, kind, task, *words):
        """Gives rights; the service asks from then on who sends a request."""
        return subprocess.run(["java", "-XX:TieredStopAtLevel=1", "-cp", self.classes, "stirtide.planner.admin.CareMain", kind,
                               os.path.join(self.data, "log"), task, *words],
                              check=True, capture_output=True, text=True).stdout.split()[-1]

    def terminal_token(self, name):
        """A file with the token of a terminal."""
        path = os.path.join(self.data, name + ".token")
        with open(path, "w") as file:
            file.write(self.care("token", "add", "--role", "terminal", "--name", name) + "\n")
        os.chmod(path, 0o600)
        return path

    def with_shared_mixes(self):
        """The demo salon, with one mix for two bowls where the plan finds pairs."""
        copy = shutil.copytree(f"{ROOT}/demo-day/salon", os.path.join(self.data, "salon"))
        path = os.path.join(copy, "salon.json")
        with open(path) as file:
            salon = json.load(file)
        salon["oneMixTwoBowls"] = True
        with open(path, "w") as file:
            json.dump(salon, file)
        return copy

    def start(self):
        self.process = subprocess.Popen(
            ["java", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx256m", "-cp", self.classes,
             "stirtide.planner.service.ServiceMain", "--data", os.path.join(self.data, "log"), "--port", str(self.port),
             "--management-port", str(self.management), "--salon", self.folder, "--clock", "driven",
             "--clock-start", self.now, "--rate-permille", str(RATE)],
            stdout=self.log, stderr=self.log)
        self.starts += 1

    def get(self, path, patience=5):
        with urllib.request.urlopen(self.request(path), timeout=patience) as answer:
            return json.load(answer)

    def request(self, path, **more):
        request = urllib.request.Request(f"http://127.0.0.1:{self.port}{path}", **more)
        request.add_header("Authorization", "Bearer " + self.own)
        return request

    def ready(self, seconds=90):
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            if self.tick():
                return True
            time.sleep(0.2)
        return False

    def tick(self):
        """Remembers the clock, and sets it to the usual speed when a key has changed that; false when nobody answers."""
        try:
            clock = self.get("/clock")
            self.now = max(self.now, clock["now"])
            if clock["ratePermille"] != RATE:
                request = self.request("/clock", method="PUT", data=json.dumps({"ratePermille": RATE}).encode(),
                                       headers={"Content-Type": "application/json"})
                urllib.request.urlopen(request, timeout=5).close()
            return True
        except (OSError, ValueError, urllib.error.URLError):
            return False

    def end(self, sig=signal.SIGTERM):
        if self.process and self.process.poll() is None:
            self.process.send_signal(signal.SIGCONT)
            self.process.send_signal(sig)
            try:
                self.process.wait(20)
            except subprocess.TimeoutExpired:
                self.process.kill()
                self.process.wait()

    def events(self):
        events, after = [], 0
        while True:
            page = self.get(f"/days/{DAY}/events?after={after}", 30)
            events += page["events"]
            if not page["events"]:
                return events
            after = int(page["events"][-1]["sequence"])
