"""Start time of the service on a log with years of closed days.

    planner-service/trials/run time-open FOLDER [DAYS] [--nice N]        1095 days, some 3.5 MiB each; made in FOLDER the first time

First without the summaries of closed days beside the log. Then seven times with them and, alternating, seven times on an
empty folder: seconds until the service is ready, and until the newest day, which is read from the log, is shown. Then opens
the next day, which learns from all days before, starts seven times with that day open, and closes it. --nice gives the
service that priority (below 0 needs root), for a busy machine. Ends with 1 when the median of the seven is a second or
more, or a day is missing.
"""
import datetime, json, os, shutil, subprocess, sys, time
import harness, sample_salon

DAY = "2027-03-09"


def serving(data, nice):
    return harness.Service(data, "--clock", "driven", "--clock-start", sample_salon.minutes(DAY, 8), "--rate-permille", "0",
                       "--plan-rounds", "3", command=["nice", "-n", nice] if nice else [])


def timed(service, path):
    """Starts it, sends a request, kills it; seconds to ready, to the answer, and of processor time."""
    began = time.monotonic()
    ready = service.start()
    status = harness.Connection(service.port).ask("GET", path)[0]
    shown = time.monotonic() - began
    spent = service.cpu_seconds()
    service.end(9)
    assert status == 200, f"{path} {status}"
    return ready, shown, spent


def close(service, day):
    closing = sample_salon.command(f"close-{day.replace('/', '-')}", "ann", "CloseDay")
    status, _, answer = harness.Connection(service.port).ask("POST", f"/days/{day}/commands", closing)
    assert status == 200, f"{day} {status} {answer}"


def middle(figures, place):
    return sorted(one[place] for one in figures)[len(figures) // 2]


def told(figures):
    return f"{' '.join(f'{one[0]:.2f}' for one in figures)} s, first answer {' '.join(f'{one[1]:.2f}' for one in figures)} s, " \
        f"processor time {middle(figures, 2):.2f} s"


def main():
    words = harness.arguments(__doc__)
    words.add_argument("folder")
    words.add_argument("days", type=harness.positive, nargs="?", default=1095)
    words.add_argument("--nice", default="")
    given = words.parse_args()
    data, days = os.path.abspath(given.folder), given.days
    if not os.path.exists(os.path.join(data, "log.db")):
        maker = [os.path.join(harness.MODULE, "trials", "run"), "make-days", data, str(days)]
        events = subprocess.run(maker, check=True, capture_output=True, text=True).stdout
        print(f"     {events.strip()} events in {days} days, {os.path.getsize(os.path.join(data, 'log.db')) / 2**20:.0f} MiB")
    place = harness.folder()
    service, empty = serving(data, given.nice), serving(os.path.join(place, "empty"), given.nice)
    kept = os.path.join(data, "closed-days.db")
    if os.path.exists(kept):
        os.remove(kept)
    first = service.start()
    line = harness.Connection(service.port)
    names = sorted(day["day"] for day in json.loads(line.ask("GET", "/days")[2])["days"])
    if not json.loads(line.ask("GET", f"/days/{names[-1]}")[2])["closed"]:
        close(service, names[-1])
    service.end()
    full, bare = [], []
    for _ in range(7):
        full.append(timed(service, f"/days/{names[-1]}"))
        bare.append(timed(empty, "/days"))
    service.start()
    next_day = str(datetime.date.fromisoformat(names[-1].split("/")[1]) + datetime.timedelta(days=1))
    began = time.monotonic()
    status, _, answer = harness.Connection(service.port).ask(
        "POST", "/days", sample_salon.opening("quay-house", next_day, [("ann", "ASSISTANT")], "ann", "open-next"))
    opened = time.monotonic() - began
    service.end()
    beside = [timed(service, f"/days/quay-house/{next_day}") for _ in range(7)]
    service.start()
    close(service, f"quay-house/{next_day}")
    harness.check("all days known", len(names) >= days, f"{len(names)} of {days}")
    harness.check("next day opened, learning from all", status == 201, f"{status} in {opened:.2f} s")
    print(f"     start that reads every day: {first:.1f} s; closed-days.db {os.path.getsize(kept) / 2**20:.1f} MiB")
    print(f"     start on an empty folder: {told(bare)}")
    print(f"     start with the next day open: {told(beside)}")
    harness.check("start", middle(full, 0) < 1, f"{told(full)}, {harness.load()}{', nice ' + given.nice if given.nice else ''}, "
             f"memory {service.memory_kilobytes() / 1024:.0f} MB")
    service.end()
    shutil.rmtree(place)
    harness.finish()


main()
