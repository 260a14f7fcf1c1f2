"""Two hours of commands from fifty clients. Every answer is compared with the expected one.

    planner-service/trials/run soak [--minutes N] [--rate N] [--clients N] [--seed N] [--folder F]     120 minutes, 200, 50, seed 1

A real service in a process of its own; ten salons, five clients each (manager, colorist, two assistants, a program) with
tokens of their roles; bookings, weigh-ins, levels, repeats, and wrong commands of every kind. Each day is closed and read
back: the log has every accepted command once, as accepted, and no other. At the end the whole log is verified. SIGTERM
ends the trial after the current day, with the figures so far. Ends with 1 when a check fails.
"""
import os, shutil, sys
import harness, sample_salon, soak_clients
from soak_commands import ROLES


def token(path, data, role, name, *more):
    code, out, problem = harness.care(path, "token", data, "add", "--role", role, "--name", name, *more)
    if code:
        sys.exit(problem)
    return out.strip()


def main():
    words = harness.arguments(__doc__)
    words.add_argument("--minutes", type=float, default=120)
    words.add_argument("--rate", type=float, default=200, help="commands a second, all together")
    words.add_argument("--clients", type=harness.positive, default=50, help="rounded down to a multiple of five, at least five")
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--folder", help="folder for the log, some gigabytes; else a temporary folder that is removed")
    given = words.parse_args()
    place = harness.folder(given.folder)
    data = os.path.join(place, "log")
    service = harness.Service(data, "--clock", "driven", "--clock-start", sample_salon.minutes(soak_clients.FIRST_DAY, soak_clients.OPENS),
                          "--rate-permille", "0", "--plan-rounds", "0")
    tokens = {}
    operator = token(service.path, data, "manager", "clock")
    for number in range(max(1, given.clients // 5)):
        for name, role in ROLES.items():
            salon = f"soak-{number:02}"
            tokens[salon, name] = token(service.path, data, role, name, "--salon", salon)
    print(f"     {given.minutes:g} minutes, seed {given.seed}, {harness.load()}, {place}", flush=True)
    service.start()
    soak = soak_clients.Soak(service, tokens, operator, given.minutes, given.rate, given.seed, day_seconds=min(120, 60 * given.minutes))
    try:
        seconds = soak.run()
        code = service.end()
        harness.check("exit after SIGTERM", code == 143, f"exit code {code}")
        code, _, problem = harness.care(service.path, "verify", data)
        harness.check("chain", code == 0, problem.strip().splitlines()[-1] if problem.strip() else "every event as written")
        soak_clients.report(soak, seconds, sum(entry.stat().st_size for entry in os.scandir(data) if entry.is_file()))
    finally:
        if service.process.poll() is None:
            service.end(9)
        if not given.folder and not harness.failed:
            shutil.rmtree(place)
    harness.finish()


main()
