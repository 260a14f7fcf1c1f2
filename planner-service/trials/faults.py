"""Faults around a service, one after the other, and the outcome each must have.

    planner-service/trials/run faults

Two services on one log; SIGTERM in the middle of work; no file descriptor left; a disk that cannot force what was written,
a service killed before the disk had forced it, and the power cut after the next start (these need a C compiler); a disk that
is full, and one that is read only at the start (these need root: the disks are small file systems in memory, in a mount
space of the trial's own). What cannot be tried is skipped and listed. A minute or two. Ends with 1 when a check fails.
"""
import json, os, random, shutil, signal, socket, subprocess, sys, threading, time
import harness, power_cut, sample_salon

DAY = "2027-03-09"
SALON = "odd-place"
PEOPLE = [("mary", "MANAGER"), ("ann", "ASSISTANT")]
CLOCK = ["--clock", "driven", "--clock-start", sample_salon.minutes(DAY, 8), "--rate-permille", "0", "--plan-rounds", "3"]


class Sender(threading.Thread):
    """Sends commands until the service is gone; keeps those that were answered."""

    def __init__(self, port, name):
        super().__init__(daemon=True)
        self.line, self.name_, self.answered, self.odd = harness.Connection(port, patience=20), name, [], []

    def run(self):
        for number in range(1_000_000):
            body = levels(f"{self.name_}-{number:06}", 10 + number % 90)
            try:
                status, _, _ = self.line.ask("POST", f"/days/{SALON}/{DAY}/commands", body)
            except (OSError, harness.http.client.HTTPException):
                return
            if status == 200:
                self.answered.append(body["commandId"])
            elif status != 503:
                self.odd.append(status)


def levels(command_id, level):
    return sample_salon.command(command_id, "ann", "RecordLevels", service=1, zone=sample_salon.ZONES[0], levelBeforeTenths=level)


def opened(service):
    line = harness.Connection(service.port)
    harness.open_day(line, sample_salon.opening(SALON, DAY, PEOPLE, "mary", "open-the-day"))
    return line


def send(line, command_id, level=50):
    status, _, body = line.ask("POST", f"/days/{SALON}/{DAY}/commands", levels(command_id, level))
    return status, json.loads(body).get("code", "")


def commands_in(line):
    found, after = [], 0
    while True:
        page = json.loads(line.ask("GET", f"/days/{SALON}/{DAY}/events?after={after}&limit=500")[2])["events"]
        if not page:
            return found
        after += len(page)
        found += [event["commandid"] for event in page if "commandid" in event]


def two_services(place):
    first = harness.Service(os.path.join(place, "two"), *CLOCK)
    first.start()
    line = opened(first)
    second = harness.Service(first.data, *CLOCK)
    began = time.monotonic()
    started = second.try_start()
    code = second.process.wait(60)
    harness.check("a second service on one log", started is None and code == 69 and send(line, "after-the-second")[0] == 200,
             f"ended with {code} after {time.monotonic() - began:.1f} s, the first goes on")
    first.end()


def sigterm(place):
    service = harness.Service(os.path.join(place, "term"), *CLOCK)
    service.start()
    opened(service)
    senders = [Sender(service.port, f"sender-{number}") for number in range(8)]
    for sender in senders:
        sender.start()
    until = time.monotonic() + 120
    while sum(len(sender.answered) for sender in senders) < 200 and time.monotonic() < until:
        time.sleep(0.05)
    began = time.monotonic()
    code = service.end(signal.SIGTERM)
    took = time.monotonic() - began
    for sender in senders:
        sender.join(30)
    answered = [one for sender in senders for one in sender.answered]
    odd = [one for sender in senders for one in sender.odd]
    service.start()
    found = commands_in(harness.Connection(service.port))
    lost = [one for one in answered if found.count(one) != 1]
    harness.check("SIGTERM in the middle of work", code == 143 and took < 5 and len(answered) >= 200 and not lost and not odd,
             f"exit code {code} after {took:.1f} s, {len(answered)} answered, {len(lost)} lost or double, other answers {odd}")
    service.end()


def no_descriptors(place):
    service = harness.Service(os.path.join(place, "few"), *CLOCK, command=["bash", "-c", 'ulimit -n 160; exec "$@"', "few"])
    service.start()
    line = opened(service)
    connections = []
    for _ in range(400):
        connection = socket.socket()
        connection.settimeout(2)
        try:
            connection.connect(("127.0.0.1", service.port))
            connections.append(connection)
        except OSError:
            connection.close()
    during = send(line, "while-none-is-left")
    for connection in connections:
        connection.close()
    time.sleep(1)
    after = send(harness.Connection(service.port), "when-there-are-some")
    harness.check("no file descriptor left", service.process.poll() is None and len(connections) > 100 and during[0] == 200 and after[0] == 200,
             f"{len(connections)} connections asked for at 160 descriptors; an open connection is answered {during[0]}, a new one "
             f"afterwards {after[0]}, the process runs")
    service.end()


def on_a_disk(place, name):
    """A service, a line to it, and the disk it writes."""
    data = os.path.join(place, name)
    disk = power_cut.Disk(place, data)
    service = harness.Service(data, *CLOCK, command=disk.command())
    service.start()
    return service, opened(service), disk


def not_forced(place):
    service, line, disk = on_a_disk(place, "forcing-fails-log")
    before = send(line, "before-it-fails")
    disk.fail("E")
    during = [send(line, f"while-it-fails-{number}") for number in range(3)]
    shown = line.ask("GET", f"/days/{SALON}/{DAY}")[0]
    disk.heal()
    after = send(line, "when-it-could-again")
    service.end(9)
    service.start()
    again = send(harness.Connection(service.port), "after-a-restart")
    found = commands_in(harness.Connection(service.port))
    service.end()
    harness.check("a disk that cannot force", before[0] == again[0] == shown == 200 and "before-it-fails" in found
             and all(status == 503 for status, _ in [*during, after]) and "when-it-could-again" not in found,
             f"answers {before[0]}, then {[code for _, code in during]}, {after[1]} when it could force again, {again[0]} after a restart")


def killed_before_forced(place):
    service, line, disk = on_a_disk(place, "killed-log")
    wait_until_idle(line)
    disk.fail("S")
    # After this command the service stores nothing of its own, which would force the earlier write too.
    command = levels("in-the-middle", 50)
    asking = threading.Thread(target=send_unanswered, args=(line, command), daemon=True)
    asking.start()
    until = time.monotonic() + 60
    while not any("log.db-wal" in name for name in os.listdir(disk.notes)) and time.monotonic() < until:
        time.sleep(0.01)
    time.sleep(0.3)
    service.end(9)
    asking.join(20)
    disk.heal()
    service.start()
    answer = harness.Connection(service.port).ask("POST", f"/days/{SALON}/{DAY}/commands", command)
    service.end(9)
    disk.cut(random.Random(1), reached=0)
    service.start()
    found = commands_in(harness.Connection(service.port)).count("in-the-middle")
    service.end()
    harness.check("killed before the disk had forced it, then the power cut", answer[0] == 200 and found == 1,
             f"sent again: {answer[0]}, {'stored before' if json.loads(answer[2])['repeated'] else 'stored anew'}; after the cut "
             f"it is there {found} times")


def wait_until_idle(line):
    """Waits until the service has nothing more to store."""
    before = None
    while (now := line.ask("GET", "/days")[2]) != before:
        before = now
        time.sleep(4)


def send_unanswered(line, command):
    """Sends a command to a service that is killed before it answers."""
    try:
        line.ask("POST", f"/days/{SALON}/{DAY}/commands", command)
    except (OSError, harness.http.client.HTTPException):
        pass


def mount(path, *options):
    os.makedirs(path, exist_ok=True)
    subprocess.run(["mount", *options, path], check=True)


def full(place):
    disk = os.path.join(place, "full")
    mount(disk, "-t", "tmpfs", "-o", "size=24m", "tmpfs")
    service = harness.Service(os.path.join(disk, "log"), *CLOCK)
    service.start()
    line = opened(service)
    before = send(line, "while-there-is-room")
    with open(os.path.join(disk, "ballast"), "wb") as ballast:
        try:
            while True:
                ballast.write(b"x" * 65536)
                ballast.flush()
        except OSError:
            pass
    refused, stored = None, []
    for number in range(400):
        answer = send(line, f"until-it-is-full-{number:04}")
        if answer[0] != 200:
            refused = answer
            break
        stored.append(number)
    shown = line.ask("GET", f"/days/{SALON}/{DAY}")[0]
    os.remove(os.path.join(disk, "ballast"))
    after = send(line, "when-there-is-room-again")
    found = commands_in(line)
    service.end()
    code = harness.care(service.path, "verify", service.data)[0]
    whole = all(found.count(f"until-it-is-full-{number:04}") == 1 for number in stored)
    harness.check("disk full", before[0] == after[0] == shown == 200 and refused == (507, "LOG_FULL") and whole and code == 0,
             f"answered {refused}, reading {shown}, with room again {after[0]}, verify {code}")
    subprocess.run(["umount", "-l", disk])


def read_only(place):
    disk = os.path.join(place, "read-only")
    mount(disk, "-t", "tmpfs", "-o", "size=64m", "tmpfs")
    service = harness.Service(os.path.join(disk, "log"), *CLOCK)
    service.start()
    line = opened(service)
    before = send(line, "while-it-can-be-written")
    # A file system with files open for writing cannot be remounted read only; a bind mount of the folder can.
    subprocess.run(["mount", "--bind", service.data, service.data], check=True)
    subprocess.run(["mount", "-o", "remount,ro,bind", service.data], check=True)
    service.end(9)
    started = service.try_start()
    code = service.process.wait(60) if started is None else None
    subprocess.run(["umount", service.data], check=True)
    service.start()
    found = commands_in(harness.Connection(service.port))
    harness.check("disk read only at the start", before[0] == 200 and code == 73 and "while-it-can-be-written" in found,
             f"ended with {code}, nothing changed; starts again when it can be written")
    service.end()
    subprocess.run(["umount", "-l", disk])


def main():
    harness.arguments(__doc__).parse_args()
    own_mounts = os.geteuid() == 0 and "STIRTIDE_MOUNTS" not in os.environ and \
        subprocess.run(["unshare", "-m", "true"], stderr=subprocess.DEVNULL).returncode == 0
    if own_mounts:
        os.environ["STIRTIDE_MOUNTS"] = "own"
        os.execvp("unshare", ["unshare", "-m", sys.executable, *sys.argv])
    place = harness.folder()
    for trial in (two_services, sigterm, no_descriptors):
        trial(place)
    if shutil.which("cc"):
        not_forced(place)
        killed_before_forced(place)
    else:
        print("skip a disk that cannot force, killed before it was forced: these need a C compiler")
    if os.environ.get("STIRTIDE_MOUNTS") == "own":
        full(place)
        read_only(place)
    else:
        print("skip a full disk, a read-only disk: these need root")
    if not harness.failed:
        shutil.rmtree(place, ignore_errors=True)
    harness.finish()


main()
