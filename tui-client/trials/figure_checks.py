"""How fast, how much, how often."""
import os, re, shutil, signal, statistics, tempfile, time
from rig import (NotInPlace, Pty, StandIn, bar, cpu_seconds, empty_program, folder, java, load, memory_kilobytes, open_files, percentile,
                 skip, tell)
from tmux import Tmux

FRAME = re.compile(rb"\x1b\[\?2026h.*?\x1b\[\?2026l", re.S)


def writes(calm, storm):
    if not shutil.which("strace"):
        return skip("one write a frame", "strace")
    log = tempfile.mktemp()
    run = Pty(["strace", "-f", "-qq", "-e", "trace=write", "-e", "signal=none", "-s", "12", "-o", log, *java(storm.url())], 200, 50)
    run.expect(b"Larch")
    run.read(6)
    run.type(b"?")
    run.read(2)
    for key in (b"\x0c", b"\x1b", b"q", b"y"):
        run.type(key)
        run.read(2)
    run.read(20)
    frames = run.out.count(b"\x1b[?2026h")
    run.close()
    with open(log) as lines:
        # stty, asked for the size, answers on its own standard output: that is no write to the terminal.
        written = sum(1 for line in lines if re.search(r'write\(1, "\\33', line))
    tell("one write a frame", written == frames > 30,
         f"{written} writes to the terminal, {frames} frames; ten views a second at 200x50, whole redraws among them")


def tick(calm, storm):
    crowded = StandIn("crowded")
    run = Pty(java(crowded.url()), 120, 36)
    run.expect(b"Larch")
    run.read(3)
    run.forget()
    run.read(20)
    sizes = [len(frame) for frame in FRAME.findall(run.out)]
    tell("a second goes by, nine live bowls, 120x36", bool(sizes) and max(sizes) <= 2500,
         f"{statistics.median(sizes):.0f} bytes a frame, at most {max(sizes)}, {len(sizes)} frames in 20 s")
    run.end()
    run.close()
    crowded.end()


def redraw(calm, storm):
    run = Pty(java(calm.url()), 200, 50)
    run.expect(b"Larch")
    run.read(3)
    times, sizes = [], []
    for _ in range(60):
        run.read(0.06)
        run.forget()
        started = time.monotonic()
        run.type(b"\x0c")
        run.read(2, rb"\x1b\[\?2026l")
        times.append((time.monotonic() - started) * 1000)
        sizes.append(max((len(frame) for frame in FRAME.findall(run.out)), default=0))
    if min(sizes) < 200 * 50:
        raise NotInPlace(f"a redraw of {min(sizes)} bytes is no whole picture")
    # The first redraws run code that is not compiled yet.
    warm = times[20:]
    tell("whole redraw at 200x50, from key to last byte", statistics.median(warm) <= 20,
         f"median {statistics.median(warm):.1f} ms, 95th percentile {percentile(warm, 0.95):.1f} ms of 40, {max(sizes)} bytes", timed=True)
    run.end()
    run.close()


def _cpu(name, service, seconds, limit, fewest_frames, columns=120, rows=36):
    run = Pty(java(service.url()), columns, rows)
    run.expect(b"Larch")
    # A terminal runs all day: what is drawn a few hundred times is compiled within the first minute.
    run.read(60)
    before, started = cpu_seconds(run.pid), time.monotonic()
    frames = run.out.count(b"\x1b[?2026l")
    run.read(seconds)
    share = 100 * (cpu_seconds(run.pid) - before) / (time.monotonic() - started)
    rate = (run.out.count(b"\x1b[?2026l") - frames) / (time.monotonic() - started)
    memory = memory_kilobytes(run.pid) / 1024
    if rate < fewest_frames:
        raise NotInPlace(f"{rate:.1f} frames a second are fewer than {fewest_frames}: {name}")
    tell(name, share < limit,
         f"{share:.2f} % of a core over {seconds} s, {rate:.1f} frames a second, {memory:.0f} MB resident", timed=True)
    run.end()
    run.close()


def calm_minutes(calm, storm):
    crowded = StandIn("crowded")
    _cpu("five minutes of nine live bowls, one frame a second", crowded, 300, 1, 0.5)
    crowded.end()


def ten_hertz(calm, storm):
    _cpu("ten updates a second, 120x36", storm, 60, 3, 2)
    _cpu("ten updates a second, 200x50", storm, 30, 3, 2, 200, 50)


def first_frame(calm, storm):
    state = folder()
    run = Pty(bar(calm.url(), "--state", state), 200, 50)
    run.expect(b"AFTER THAT", 60)
    run.read(1)
    run.end(signal.SIGTERM)
    run.close()
    empty, firsts, pictures, cpu = [], [], [], []
    for _ in range(11):
        empty.append(empty_program())
        run = Pty(java("http://127.0.0.1:1", "--state", state), 200, 50)
        run.expect(b"BAR")
        firsts.append((time.monotonic() - run.start) * 1000)
        run.expect(b"AFTER THAT")
        pictures.append((time.monotonic() - run.start) * 1000)
        cpu.append(cpu_seconds(run.pid) * 1000)
        run.end()
        run.close()
    ratio = statistics.median(firsts) / statistics.median(empty)
    tell("first frame, 200x50 pty, service down", statistics.median(firsts) <= 500 and statistics.median(cpu) < 1000,
         f"median {statistics.median(firsts):.0f} ms of 11, {ratio:.1f} times an empty Java program ({statistics.median(empty):.0f} ms), "
         f"kept picture {statistics.median(pictures):.0f} ms, processor time till then {statistics.median(cpu):.0f} ms", timed=True)
    if not shutil.which("tmux"):
        skip("first frame in tmux", "tmux")
    else:
        for name, url in (("service down", "http://127.0.0.1:1"), ("live day", calm.url())):
            found = [Tmux.start_times(bar(url, "--state", state)) for _ in range(11)]
            if not all(first and whole for first, whole in found):
                raise NotInPlace(f"no picture in tmux, {name}")
            tell(f"first frame in tmux through tui-client/bar, {name}", statistics.median(first for first, _ in found) <= 500,
                 f"median {statistics.median(first for first, _ in found):.0f} ms of 11, longest {max(first for first, _ in found):.0f} ms, "
                 f"kept picture {statistics.median(whole for _, whole in found):.0f} ms", timed=True)


def event_to_screen(calm, storm):
    service = StandIn("steps")
    run = Pty(java(service.url()), 120, 36)
    run.expect(b"Larch")
    run.read(1)
    times = []
    for turn in range(60):
        word = bytes([65 + turn % 26]) * 12
        run.forget()
        started = time.monotonic()
        service.process.stdin.write(word + b"\n")
        service.process.stdin.flush()
        seen = run.read(5, word[:6])
        if not seen:
            raise NotInPlace("an event was not on the screen within 5 s")
        times.append((time.monotonic() - started) * 1000)
        run.read(0.15)
    tell("event to screen, from the service's hand to the terminal", percentile(times, 0.95) < 250,
         f"median {statistics.median(times):.0f} ms, 95th percentile {percentile(times, 0.95):.0f} ms, longest {max(times):.0f} ms of 60", timed=True)
    run.end()
    run.close()
    service.end()


def key_latency(calm, storm):
    run = Pty(java(calm.url()))
    run.expect(b"Larch")
    _keys("key to first byte on a pty", run)
    run.end()
    run.close()
    if not shutil.which("tmux"):
        skip("key to first byte in tmux", "tmux")
    else:
        with Tmux(java(calm.url()), 80, 24) as session:
            client = Pty(session.attach(), 80, 24)
            client.expect(b"Larch")
            _keys("key to first byte in tmux, from the client's key to the client's screen", client)
            client.end()
            client.close()


def _keys(name, run):
    run.read(2)
    times = []
    for turn in range(200):
        run.read(0.05 + 0.013 * (turn % 7))
        run.forget()
        started = time.monotonic()
        run.type(b"\t")
        run.expect(b".", 2)
        times.append((time.monotonic() - started) * 1000)
    warm = times[20:]
    ok = statistics.median(warm) <= 10 and percentile(warm, 0.95) <= 50
    tell(name, ok,
         f"median {statistics.median(warm):.1f} ms, 95th percentile {percentile(warm, 0.95):.1f} ms of 180", timed=True)


def soak(calm, storm):
    """A working day of 8 hours at a frame a second, told ten times as fast; not run unless it is named."""
    minutes = float(os.environ.get("SOAK_MINUTES", "48"))
    service = StandIn("storm", "hours")
    run = Pty(java(service.url()), 120, 36)
    run.expect(b"Larch")
    samples, frames, end = [], 0, time.monotonic() + 60 * minutes
    keys = [b"2", b"3", b"1", b"?", b"\x1b", b"\t", b"j", b"i", b"\x1b", b"1", b"s", b"\x1b"]
    turn = 0
    while time.monotonic() < end and run.alive():
        run.forget()
        run.read(10)
        frames += run.out.count(b"\x1b[?2026l")
        run.type(keys[turn % len(keys)])
        turn += 1
        samples.append((memory_kilobytes(run.pid) / 1024, open_files(run.pid)))
    quarter = max(1, len(samples) // 4)
    first, last = (statistics.median(memory for memory, _ in part) for part in (samples[quarter:2 * quarter], samples[-quarter:]))
    files = {count for _, count in samples[quarter:]}
    tell("soak", run.alive() and frames > 10 * minutes and last < 1.1 * first and max(files) - min(files) <= 2,
         f"{minutes:g} minutes, {frames} frames, {turn} keys: {first:.1f} MB in the second quarter, {last:.1f} MB in the last, "
         f"{min(files)} to {max(files)} open files, {cpu_seconds(run.pid) / (60 * minutes) * 100:.1f} % of a core, {load()}")
    run.end()
    run.close()
    service.end()
