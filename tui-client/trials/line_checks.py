"""Signals, odd keys, odd lines: what the terminal survives."""
import os, re, shutil, signal, subprocess, time
from rig import HERE, LEAVE, Pty, StandIn, bar, java, skip, tell


def signals(calm, storm):
    for name, sig, times in (("SIGTERM", signal.SIGTERM, 20), ("SIGHUP", signal.SIGHUP, 20)):
        dirty = []
        for turn in range(times):
            run = Pty(java(storm.url()), 120, 36)
            run.hold_line()
            run.expect(b"Larch")
            run.read(0.3 + 0.07 * turn)
            run.end(sig)
            if run.clean():
                dirty.append(run.clean())
            run.close()
        tell(f"{name} under ten redraws a second", not dirty, f"{len(dirty)} of {times} dirty {dirty[:1] or ''}")


def fault(calm, storm):
    """A view that cannot be drawn stands for a fault of the program."""
    service = StandIn("steps")
    run = Pty(java(service.url()), 120, 36)
    run.hold_line()
    run.expect(b"Larch")
    run.read(1)
    service.process.stdin.write(b"fault\n")
    service.process.stdin.flush()
    run.read(20, b"Nothing entered is lost")
    run.read(20)
    while run.alive():
        time.sleep(0.05)
    code = os.waitstatus_to_exitcode(run.end())
    words = run.out.split(LEAVE)[-1].decode(errors="replace")
    run.out = run.out[:run.out.rfind(LEAVE) + len(LEAVE)]
    told = "a fault of the program ended it" in words and "at stirtide" not in words
    tell("an exception under redraw", code == 70 and told and not run.clean(),
         f"exit {code}, one sentence, {run.clean() or 'terminal cooked, picture gone, cursor on'}")
    run.close()
    service.end()


def control_keys(calm, storm):
    run = Pty(java(storm.url()))
    run.expect(b"Larch")
    for key, name in ((b"\x1a", "Ctrl-Z"), (b"\x1c", "Ctrl-\\"), (b"\x13", "Ctrl-S"), (b"\x03", "Ctrl-C")):
        run.forget()
        run.type(key)
        run.read(1.5)
        tell(name, run.alive() and len(run.out) > 0, f"goes on, {len(run.out)} bytes in 1.5 s")
    run.end()
    run.close()


def resizes(calm, storm):
    run = Pty(java(calm.url()))
    run.expect(b"Larch")
    for turn in range(30):
        run.size(*((1, 1), (40, 10), (200, 50), (2, 2), (100, 30))[turn % 5])
        run.read(0.02)
    run.forget()
    started = time.monotonic()
    run.size(121, 37)
    right = run.read(5, b"AFTER THAT.*LIVE BOWLS|LIVE BOWLS.*AFTER THAT")
    tell("storm of 30 resizes, 1x1 among them", right and run.alive(), f"right after {time.monotonic() - started:.2f} s")
    run.end()
    run.close()


def killed(calm, storm):
    run = Pty(bar(calm.url()))
    run.hold_line()
    run.expect(b"Larch")
    os.kill(run.program(), signal.SIGKILL)
    run.read(5, rb"\x1b\[\?1049l")
    run.read(0.5)
    run.end()
    tell("kill -9 under the bar script", not run.clean(), run.clean() or "terminal cooked, picture gone, cursor on")
    run.close()


def lines(calm, storm):
    run = Pty(java(calm.url()))
    run.expect(b"Larch")
    run.read(1)
    tell("the size is never asked of the screen", b"\x1b[6n" not in run.out, f"{run.out.count(b'[6n')} questions; this line answers none")
    run.end()
    run.close()
    words = " ".join(java(calm.url()))
    run = Pty(["sh", "-c", f"exec {words} </dev/null"])
    run.read(20)
    code = run.end()
    tell("standard input is no terminal", code == 0 and b"\x1b" not in run.out and b"BAR" in run.out, f"prints one picture, exit {code}")
    run.close()


def field(calm):
    run = Pty(java(calm.url()))
    run.expect(b"Larch")
    run.read(0.5)
    run.type(b"w")
    run.expect(b"WEIGH-IN", 3)
    run.read(0.4)
    return run


def fields_of(run):
    """Both fields of the weigh-in after a whole redraw."""
    run.read(0.6)
    run.forget()
    run.type(b"\x0c")
    run.read(1)
    plain = re.sub(rb"\x1b\[[?\d;]*[A-Za-z]", b"", run.out)
    return [text.strip() for text in re.findall(rb"\[([\d. _]{7})\] g", plain)]


def odd_keys(calm, storm):
    run = field(calm)
    run.type(b"4")
    run.read(0.4)
    run.type(b"\x1b[200~" + b"9.5\r" * 2500 + b"\x1b[201~" + b"\x1b[<0;10;5M\x1b[I\x1b[O\x1b[24;80R")
    found = fields_of(run)
    tell("paste of 10 kB, mouse, focus and position reports in the grams field", found[:1] == [b"4"], f"value unchanged: {found}")
    run.end()
    run.close()
    run = field(calm)
    run.type(b"40.2 g\r\n")
    found = fields_of(run)
    run.type(b"7")
    after = fields_of(run)
    tell("a scale that types 40.2 g and two line ends", found[:2] == [b"40.2", b""] and after[:2] == [b"40.2", b"7"],
         f"one entry, next field: {found}, then {after}")
    run.end()
    run.close()


def lost(calm, storm):
    run = Pty(java(storm.url()), 120, 36)
    run.expect(b"Larch")
    os.kill(storm.process.pid, signal.SIGSTOP)
    started = time.monotonic()
    run.forget()
    stale = run.read(20, b"STALE") and time.monotonic() - started
    gone = run.read(40, b"NO LINK") and time.monotonic() - started
    os.kill(storm.process.pid, signal.SIGCONT)
    run.forget()
    started = time.monotonic()
    back = run.read(40, b"live") and time.monotonic() - started
    tell("a service that falls silent", 9 < stale < 12 and 29 < gone < 32 and back, f"STALE after {stale:.1f} s, NO LINK after {gone:.1f} s, live again after {back:.1f} s")
    run.end()
    run.close()


def image(calm, storm):
    """A Java with nothing but what the terminal needs."""
    if not shutil.which("jlink"):
        return skip("jlink image", "jlink")
    target = f"{HERE}/target/image"
    shutil.rmtree(target, ignore_errors=True)
    made = subprocess.run(["jlink", "--add-modules", "java.base,java.net.http,java.sql,java.xml,java.logging,jdk.unsupported", "--strip-debug",
                           "--no-header-files", "--no-man-pages", "--output", target], capture_output=True, text=True)
    if made.returncode:
        return tell("jlink image", False, made.stdout[-200:])
    modules = subprocess.run([f"{target}/bin/java", "--list-modules"], capture_output=True, text=True).stdout
    command = java(calm.url())
    run = Pty([f"{target}/bin/java", *[word for word in command[1:] if "SharedArchive" not in word]], DISPLAY=":99")
    run.expect(b"Larch")
    run.forget()
    run.size(130, 40)
    right = run.read(5, b"AFTER THAT.*LIVE BOWLS|LIVE BOWLS.*AFTER THAT")
    size = sum(os.path.getsize(os.path.join(at, name)) for at, _, names in os.walk(target) for name in names) / 1e6
    ok = "jdk.unsupported" in modules and "java.desktop" not in modules and right
    tell("jlink image, DISPLAY set", ok, f"{size:.0f} MB, {len(modules.split())} modules, no java.desktop, follows a resize: {bool(right)}")
    run.end()
    run.close()
    shutil.rmtree(target, ignore_errors=True)
