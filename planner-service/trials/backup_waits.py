"""How long commands wait while a backup of a running service is written.

    planner-service/trials/run backup-waits FOLDER [--rate N] [--clients N]        50 commands a second from 5 clients

FOLDER is a log of many days, as the trial time-open makes it. First ten seconds without a backup, then until the backup
is written; then the copy is verified. Commands are timed from sending to answer, appends by the metrics of the service.
Needs room for the copy. Ends with 1 when an append took half a second or more, or the copy is not complete.
"""
import os, shutil, subprocess, sys, threading, time
import harness, sample_salon

DAY = "2027-03-10"
SALON = "far-away"
PEOPLE = [("mary", "MANAGER"), ("ann", "ASSISTANT")]
MOST_MILLISECONDS = 500


class Sender(threading.Thread):
    def __init__(self, port, name, pause):
        super().__init__(daemon=True)
        self.line, self.name_, self.pause, self.over, self.milliseconds, self.odd = harness.Connection(port), name, pause, False, [], []

    def run(self):
        number = 0
        while not self.over:
            number += 1
            body = sample_salon.command(f"{self.name_}-{number:07}", "ann", "RecordLevels", service=1 + number % 12,
                                 zone=sample_salon.ZONES[0], levelBeforeTenths=10 + number % 90)
            began = time.monotonic()
            status, _, _ = self.line.ask_again("POST", f"/days/{SALON}/{DAY}/commands", body)
            took = time.monotonic() - began
            self.milliseconds.append(1000 * took)
            if status != 200:
                self.odd.append(status)
            time.sleep(max(0, self.pause - took))


def open_once(port):
    """Opens the day the commands go to; an earlier run may have opened it."""
    connection = harness.Connection(port)
    if connection.ask("GET", f"/days/{SALON}/{DAY}")[0] != 200:
        harness.open_day(connection, sample_salon.opening(SALON, DAY, PEOPLE, "mary", "open-the-day"))


def taken(senders):
    figures = [one for sender in senders for one in sender.milliseconds]
    for sender in senders:
        sender.milliseconds.clear()
    return figures


def main():
    words = harness.arguments(__doc__)
    words.add_argument("folder")
    words.add_argument("--rate", type=float, default=50)
    words.add_argument("--clients", type=harness.positive, default=5)
    given = words.parse_args()
    if not os.path.exists(os.path.join(given.folder, "log.db")):
        words.error(f"there is no log in {given.folder}; the trial time-open makes one")
    place = harness.folder(os.path.dirname(os.path.abspath(given.folder)))
    service = harness.Service(os.path.abspath(given.folder), "--clock", "driven", "--clock-start", sample_salon.minutes(DAY, 8),
                          "--rate-permille", "0", "--plan-rounds", "3")
    service.start()
    run = str(time.time_ns())
    open_once(service.port)
    senders = [Sender(service.port, f"{run}-{one}", given.clients / given.rate) for one in range(given.clients)]
    for sender in senders:
        sender.start()
    time.sleep(10)
    alone = taken(senders)
    copy, began = os.path.join(place, "copy"), time.monotonic()
    code, _, said = harness.care(service.path, "backup", service.data, copy)
    lasted = time.monotonic() - began
    beside = taken(senders)
    longest = 1000 * service.metrics("stirtide_append_seconds_max")
    for sender in senders:
        sender.over = True
        sender.join(30)
    odd = [one for sender in senders for one in sender.odd]
    service.end()
    size = os.path.getsize(copy) / 2**20 if code == 0 else 0
    harness.check("copy made and verified", code == 0 and not odd and alone and beside, f"code {code} {said.strip()} {size:.0f} MiB in {lasted:.0f} s, odd answers {odd}")
    print(f"     commands without a backup: {harness.latencies(alone)}")
    print(f"     commands while it was made: {harness.latencies(beside)}, {harness.load()}")
    harness.check("appends", 0 < longest < MOST_MILLISECONDS, f"{longest:.0f} ms at most in the last minutes of it")
    shutil.rmtree(place)
    harness.finish()


main()
