"""What is printed and what is colored."""
import json, re, subprocess
from rig import Pty, java, tell


def once(calm, storm):
    picture = subprocess.run(java(calm.url(), "--once"), capture_output=True, stdin=subprocess.DEVNULL)
    tell("--once", picture.returncode == 0 and b"\x1b" not in picture.stdout, f"exit {picture.returncode}, {picture.stdout.count(0x1b)} escape bytes")
    day = subprocess.run(java(calm.url(), "--once", "--json"), capture_output=True, stdin=subprocess.DEVNULL)
    tell("--once --json", day.returncode == 0 and b"\x1b" not in day.stdout and "live" in json.loads(day.stdout),
         f"exit {day.returncode}, valid JSON of {len(day.stdout)} bytes")
    piped = subprocess.run(java(calm.url()), capture_output=True, stdin=subprocess.DEVNULL, start_new_session=True, env=None)
    tell("no terminal", piped.returncode == 0 and piped.stdout == picture.stdout, f"exit {piped.returncode}, same picture")
    down = subprocess.run(java("http://127.0.0.1:1", "--once"), capture_output=True, stdin=subprocess.DEVNULL)
    tell("--once without a service", down.returncode == 69, f"exit {down.returncode}, {down.stderr.decode().strip()}")


def colors(calm, storm):
    for name, words, environment in (("NO_COLOR=1", [], {"NO_COLOR": "1"}), ("--theme mono", ["--theme", "mono"], {}),
                                     ("TERM=dumb", [], {"TERM": "dumb"})):
        run = Pty(java(calm.url(), *words), **environment)
        run.expect(b"PAST")
        run.type(b"w")
        run.read(1.5)
        codes = [int(code) for group in re.findall(rb"\x1b\[([\d;]+)m", run.out) for code in group.split(b";") if code]
        colored = [code for code in codes if 30 <= code <= 49 or 90 <= code <= 107]
        tell(name, codes and not colored, f"{len(colored)} color codes in {len(codes)} codes")
        tell(f"no NUL byte, {name}", b"\0" not in run.out, f"{run.out.count(0)} in {len(run.out)} bytes")
        run.end()
        run.close()
