"""Compares what screens said, what was sent and what stands in the log."""
import collections, glob, json, os, re

# Changes with the clock: digits, bars, block digits, words of a countdown.
MOVING = re.compile(r"[\d:.,+×x%▀▄█▓░·■▲R¦│|─m┌┐└┘ ]+")


def bones(row):
    """A row without what a running clock changes between two pictures."""
    return MOVING.sub(" ", re.sub(r"(live|STALE|NO LINK).*", "", row)).strip()


def who_waits(state):
    """The people whose entries wait on this disk."""
    files = [path for path in glob.glob(os.path.join(state, "outbox-*.jsonl")) if os.path.getsize(path)]
    return sorted({re.sub(r".*-([a-z]+)-\d+\.jsonl$", r"\1", path) for path in files})


def weighed(command):
    """The grams of a weigh-in as they are told, the lightener first."""
    grams = [command["lightenerMilligrams"]] + [part["milligrams"] for part in command["developerParts"]]
    return "weighed " + " + ".join(f"{part / 1000:.1f}" for part in grams) + " g"


def words(command):
    """How the screen must begin to say a command, None when it says it in words of its own."""
    kind, bowl = command["type"], command.get("bowl")
    if kind == "WeighBowl":
        return f"bowl {bowl} {weighed(command)}"
    if kind == "WeighBatch":
        return f"mix in bowl {command['batch']} {weighed(command)}"
    if kind == "BeginBatch":
        return f"bowls {' and '.join(command['bowls'])} begun as one mix"
    if kind == "BinBatch":
        return f"mix in bowl {command['batch']} binned, "
    if kind == "BinBowl":
        return f"bowl {bowl} binned, {command['leftMilligrams'] / 1000:.1f} g"
    ends = {"BeginBowl": "begun", "HandOverBowl": "handed over", "FinishBowl": "finished"}
    if kind in ends:
        return f"bowl {bowl} {ends[kind]}"
    if kind == "RecordTest":
        return f"{command['kind'].lower()} test of service {command['service']} recorded"
    if kind == "RecordLevels":
        return f"level of {command['zone']} of service {command['service']} recorded"
    if kind == "ReceiveGoods":
        return f"{command['packs']} packs of "
    if kind == "PinAllowance":
        return f"{command['zone']} pinned at "
    if kind == "ResetAllowance":
        return f"{command['zone']} is learned again"
    if kind in ("StartService", "FinishZone", "MoveService", "CancelService", "RinseSection", "RepeatFormula"):
        return f"service {command['service']} "
    return {"BookService": "walk-in booked", "TakeBack": "taken back", "DivideBatch": "mix divided: "}.get(kind)


def heard(wanted, said):
    """Whether a line on the screen, maybe cut at its right, says what is wanted."""
    return any(line.startswith(wanted) or line.endswith("…") and wanted.startswith(line[:-1]) for line in said)


def compare(people, events, expected, within_a_key):
    sent = {key: entry for one in people for key, entry in one.gate.commands.items()}
    kinds = collections.Counter(entry["request"]["command"]["type"] for entry in sent.values())
    yield "entries of many kinds were made", len(kinds) >= 12, f"{len(kinds)} kinds: {dict(kinds.most_common())}"
    in_log = collections.Counter(event["commandid"] for event in events if event.get("commandid"))
    # One command may cause several events; they stand together then.
    places = collections.defaultdict(list)
    for event in events:
        if event.get("commandid") in sent:
            places[event["commandid"]].append(int(event["sequence"]))
    torn = [key for key, found in places.items() if found != list(range(found[0], found[0] + len(found)))]
    yield "no command twice in the log", not torn, f"{len(sent)} commands, {sum(e['times'] for e in sent.values())} sendings, {len(torn)} twice"
    changed = [body for one in people for body in one.gate.changed_bodies]
    yield "no command sent with another body", not changed, f"{len(changed)} changed"
    taken = {key for key, entry in sent.items() if any(status < 400 for status, _ in entry["answers"])}
    # A refusal that was lost on its way is asked for again, and by then the answer may be another one.
    refused = {key for key, entry in sent.items() if entry["answers"] and final(entry["answers"][-1][0])}
    lost = [sent[key]["request"]["command"] for key in taken if key not in in_log]
    yield "what was taken stands in the log", not lost, f"{len(taken)} taken, {len(lost)} missing {lost[:2] or ''}"
    ghosts = [(sent[key]["request"]["command"], sent[key]["answers"]) for key in refused if key in in_log]
    yield "what was refused does not", not ghosts, f"{len(refused)} refused, {len(ghosts)} in the log {ghosts[:2] or ''}"
    unanswered = [key for key in sent if key not in taken and key not in refused]
    yield "every entry got its answer", not unanswered, f"{len(unanswered)} without {[sent[key]['request']['command'] for key in unanswered[:2]] or ''}"
    strangers = [key for key in in_log if key not in sent and key != "opened-at-start"]
    yield "nothing in the log that nobody sent", not strangers, f"{len(strangers)} {strangers[:3] or ''}"
    actors = {event["commandid"]: event["actor"] for event in events if event.get("commandid") in sent}
    other = [(key, actors[key]) for key in actors if actors[key] != sent[key]["request"]["actor"]]
    yield "the log names who sent it", not other, f"{len(actors)} commands of {len(set(actors.values()))} people, {len(other)} under another {other[:2] or ''}"
    wrong = [(one.name, who, line) for one in people for who, line in one.sent_by if who and under_another(who, line, one.gate)]
    yield "nobody's entry goes under another name", not wrong, f"{sum(len(one.sent_by) for one in people)} lines with a name, {len(wrong)} wrong {wrong[:2] or ''}"
    unsaid, unsent = [], []
    for one in people:
        mine = [entry["request"]["command"] for entry in one.gate.commands.values()]
        unsaid += [(one.name, command) for command in mine if words(command) and not heard(words(command), one.said)]
        starts = [words(command) for command in mine if words(command)]
        unknown = {line for line in one.said if not known(line, starts)}
        # Some commands are told in words made of names the command does not hold: one line each at most.
        if len(unknown) > sum(1 for command in mine if not words(command) and command["type"] != "AcknowledgeAlarm"):
            unsent += [(one.name, line) for line in sorted(unknown)]
    yield ("what was sent was on the screen", len(unsaid) <= within_a_key,
           f"{len(unsaid)} not seen, {within_a_key} terminals were ended within a key {unsaid[:2] if len(unsaid) > within_a_key else ''}")
    yield "what the screen said was sent", not unsent, f"{sum(len(one.said) for one in people)} lines, {len(unsent)} without a command {unsent[:3] or ''}"
    arrived = collections.Counter(weigh_in(entry["request"]) for entry in sent.values()
                                  if entry["request"]["command"]["type"] in ("WeighBowl", "WeighBatch"))
    wanted = collections.Counter((name, bowl, tuple(grams)) for name, bowl, grams in expected)
    wrong = [what for what in wanted if arrived[what] != wanted[what]]
    yield "weights arrived as typed", not wrong, f"{sum(wanted.values())} weigh-ins typed on purpose, {len(wrong)} wrong {wrong[:2] or ''}"
    order = [json.dumps(event["data"], sort_keys=True) for event in events if event["type"].startswith("stirtide.BowlBegun")]
    double = [what for what, times in collections.Counter(order).items() if times > 1]
    yield "no bowl begun twice alike", not double, f"{len(order)} begun, {len(double)} twice"


def under_another(who, line, gate):
    """Whether what the screen said to send while this person was signed on went out under other names only."""
    actors = {entry["request"]["actor"] for entry in gate.commands.values()
              if words(entry["request"]["command"]) and heard(words(entry["request"]["command"]), [line])}
    return bool(actors) and who not in actors


def weigh_in(request):
    """Who weighed what into which bowl."""
    command = request["command"]
    grams = [command["lightenerMilligrams"]] + [part["milligrams"] for part in command["developerParts"]]
    return request["actor"], command.get("bowl") or command["batch"], tuple(grams)


def final(status):
    """Whether an answer is a refusal after which nothing is sent again."""
    return 400 <= status < 500 and status not in (408, 429)


def known(line, starts):
    # The screen also tells of alarms and of entries that are not commands of the day.
    if line.startswith(("alarm seen", "copied", "written")):
        return True
    text = line[:-1] if line.endswith("…") else line
    return any(text.startswith(start) or start.startswith(text) for start in starts)
