"""One client of the soak: commands of its role and wrong ones by chance, and what each must be answered.

What is expected is worked out here, from docs/access.md and the rules of the day, with nothing of the service's code.
Every client owns services of its own, so that what the others do cannot change what it must be answered; where time or
another client may be faster, both answers that are right are named.
"""
import json, random
from house import CLIENTS, LIFE_MINUTES, ZONES, booking, command, minutes

ROLES = {"mary": "manager", "cole": "colorist", "ann": "assistant", "abe": "assistant", "prog": "service"}
SERVICES = 12
TAKE_BACK_MINUTES = 10


class Ask:
    """A request and what it must be answered: pairs of status and code, code None for an accepted command."""

    def __init__(self, body, *right, path="commands", method="POST", events=1, data=None, **headers):
        self.body, self.right, self.path, self.method = body, right, path, method
        self.events, self.data, self.headers = events, data, headers


TAKEN = (200, None)


class Worker:
    def __init__(self, salon, name, day, clock, seed, rival):
        self.salon, self.name, self.role, self.day, self.clock = salon, name, ROLES[name], day, clock
        self.chance = random.Random(seed)
        self.rival, self.seed = rival, seed
        self.number = 0
        self.acknowledged = {}
        self.tally = {}
        mine = {"ann": 1, "abe": 2, "cole": 0}.get(name)
        self.services = [n for n in range(1, SERVICES + 1) if mine is not None and n % 3 == mine]
        self.started, self.zones_done = set(), {n: 0 for n in self.services}
        self.newest = 1

    def command(self, type, **fields):
        self.number += 1
        return command(f"{self.salon}-{self.name}-{self.day}-{self.number:05}", self.name, type, **fields)

    def scenes(self):
        """Scenes by weight; each yields requests and is sent their answers."""
        common = [(6, self.nobody), (6, self.not_you), (5, self.elsewhere), (4, self.not_understood), (3, self.stale),
                  (8, self.not_allowed), (4, self.out_of_date)]
        if self.role == "service":
            return common + [(24, self.guest), (6, self.no_such_service)]
        shared = common + [(6, self.shelf), (3, self.no_alarm), (5, self.no_such_service)]
        if self.role == "manager":
            return shared + [(14, self.guest), (4, self.pin), (2, self.hours)]
        return shared + [(34, self.levels), (8, self.tests), (10, self.chair), (12, self.bowl), (2, self.regret)]

    def scene(self):
        kinds = self.scenes()
        return self.chance.choices([kind for _, kind in kinds], [weight for weight, _ in kinds])[0]()

    # What is refused before the day hears of it.

    def nobody(self):
        wrong, code = self.chance.choice((("", "TOKEN_NEEDED"), ("Bearer stir_000000000000_" + "A" * 43, "TOKEN_UNKNOWN")))
        yield Ask(self.command("StartService", service=1), (401, code), authorization=wrong)

    def not_you(self):
        allowed = self.command("BookService", booking=booking("x", self.day, 1, 12, 0, ""))
        yield Ask({**allowed, "actor": "somebody"}, (403, "NOT_YOU"))

    def elsewhere(self):
        day = self.chance.choice((f"{self.rival}/{self.day}", f"{self.salon}/2019-01-01"))
        ask = self.command("BookService", booking=booking("x", self.day, 1, 12, 0, ""))
        yield Ask(ask, (404, "DAY_UNKNOWN"), path=f"/days/{day}/commands")

    def not_understood(self):
        body = self.chance.choice((self.command("Bogus"), self.command("StartService"), {"commandId": "short"}, "{", "[]",
                                   self.command("StartService", service="one")))
        yield Ask(body, (400, "NOT_UNDERSTOOD"))

    def stale(self):
        ask = self.command("BookService", booking=booking(f"s-{self.seed}-{self.number}", self.day, 1, 12, 0, ""))
        yield Ask(ask, (412, "REVISION_STALE"), If_Match='"1"')

    def not_allowed(self):
        never = {"assistant": [("CloseDay", {}), ("PinAllowance", dict(menuId="full", zone=ZONES[0], milligrams=9000)),
                               ("CancelService", dict(service=1, reason=""))],
                 "colorist": [("SetAllowanceFraction", dict(permille=900))],
                 "service": [("StartService", dict(service=1)), ("CloseDay", {}),
                             ("RecordLevels", dict(service=1, zone=ZONES[0], levelBeforeTenths=50))],
                 "manager": []}[self.role]
        if never:
            type, fields = self.chance.choice(never)
            yield Ask(self.command(type, **fields), (403, "NOT_ALLOWED"))
        else:
            yield Ask({"personId": "ann", "code": "123456"}, (403, "NOT_ALLOWED"), path="/sign-on")

    # What the day refuses.

    def out_of_date(self):
        wrong = booking(f"w-{self.number}", self.day, 1, 12, 0, "")
        other, code = self.chance.choice((({"start": minutes("2019-01-01", 9)}, "START_OUTSIDE_DAY"),
                                          ({"chair": 77}, "CHAIR_UNKNOWN"), ({"menuId": "none"}, "MENU_ENTRY_UNKNOWN"),
                                          ({"length": "endless"}, "LENGTH_UNKNOWN"), ({"bookingUid": "b-1"}, "BOOKING_KNOWN")))
        yield Ask(self.command("BookService", booking={**wrong, **other}), (409, code))

    def no_such_service(self):
        if self.role in ("manager", "colorist", "service") and self.chance.random() < 0.5:
            yield Ask(self.command("CancelService", service=999, reason=""), (409, "SERVICE_UNKNOWN"))
        elif self.role != "service":
            yield Ask(self.command("StartService", service=999), (409, "SERVICE_UNKNOWN"))

    def no_alarm(self):
        yield Ask(self.command("AcknowledgeAlarm", alarmId="none"), (409, "ALARM_UNKNOWN"))

    def shelf(self):
        grams = self.chance.randrange(900, 5000)
        yield Ask(self.command("CountStock", productId="none", milligrams=grams), (409, "PRODUCT_UNKNOWN"))
        if self.chance.random() < 0.2:
            yield Ask(self.command("CountStock", productId="six", milligrams=grams * 1000), TAKEN,
                      data={"productId": "six", "milligrams": grams * 1000})

    # What is work.

    def again(self, ask, answer):
        """An accepted command sent once more, and its id with another body."""
        if answer is None or self.chance.random() < 0.6:
            return
        if self.chance.random() < 0.7:
            yield Ask(ask.body, ("repeat", answer))
        else:
            other = {**ask.body, "command": {"type": "BookService", "booking": booking("again", self.day, 1, 12, 0, "")}}
            yield Ask(other, (422, "COMMAND_ID_REUSED"))

    def levels(self):
        service, zone = self.chance.choice(self.services), self.chance.choice(ZONES)
        before = self.chance.randrange(10, 101)
        ask = Ask(self.command("RecordLevels", service=service, zone=zone, levelBeforeTenths=before), TAKEN,
                  data={"service": service, "zone": zone, "levelBeforeTenths": before})
        answer = yield ask
        yield from self.again(ask, answer)
        if self.chance.random() < 0.2:
            wrong, code = self.chance.choice((({"zone": "fringe"}, "ZONE_UNKNOWN"), ({"levelBeforeTenths": None}, "LEVEL_MISSING")))
            yield Ask(self.command("RecordLevels", **{**dict(service=service, zone=zone, levelBeforeTenths=before), **wrong}),
                      (409, code))

    def tests(self):
        service = self.chance.choice(self.services)
        at = minutes("2027-01-01", self.chance.randrange(24))
        ask = Ask(self.command("RecordTest", service=service, kind="PATCH", doneAt=at), TAKEN,
                  data={"service": service, "kind": "PATCH"})
        answer = yield ask
        yield from self.again(ask, answer)
        yield Ask(self.command("RecordTest", service=service, kind="STRAND", doneAt=minutes(self.day, 60)),
                  (409, "TEST_NOT_DONE"))

    def chair(self):
        service = self.chance.choice(self.services)
        if service not in self.started:
            yield Ask(self.command("FinishZone", service=service, zone=ZONES[0]), (409, "SERVICE_NOT_STARTED"))
            if self.chance.random() < 0.3:
                answer = yield Ask(self.command("StartService", service=service), TAKEN, data={"service": service})
                if answer:
                    self.started.add(service)
            return
        yield Ask(self.command("StartService", service=service), (409, "SERVICE_STARTED"))
        count = self.zones_done[service]
        if count == len(ZONES):
            yield Ask(self.command("FinishZone", service=service, zone=ZONES[1]), (409, "SERVICE_APPLIED"))
            return
        yield Ask(self.command("FinishZone", service=service, zone="fringe"), (409, "ZONE_NOT_NEXT"))
        if self.chance.random() < 0.4:
            answer = yield Ask(self.command("FinishZone", service=service, zone=ZONES[count]), TAKEN,
                               data={"service": service, "zone": ZONES[count]})
            if answer:
                self.zones_done[service] += 1

    def guest(self):
        """Somebody walks in, is moved, and leaves."""
        uid = f"guest-{self.name}-{self.number}"
        made = booking(uid, self.day, 1 + self.number % 6, 12, self.number % 300, self.chance.choice(CLIENTS))
        ask = Ask(self.command("BookService", booking=made), TAKEN)
        answer = yield ask
        if not answer:
            return
        page = yield Ask(None, (200, None), path=f"events?after={answer['firstRevision'] - 1}&limit=1", method="GET")
        booked = page["events"][0]["data"]
        ask.data = {"service": booked["service"]}
        self.acknowledged[ask.body["commandId"]][2] = {"service": booked["service"]}
        yield from self.again(ask, answer)
        yield Ask(self.command("BookService", booking=made), (409, "BOOKING_KNOWN"))
        service, later = booked["service"], minutes(self.day, 18, self.number % 60)
        move = dict(service=service, start=later, chair=2, reason="late")
        yield Ask(self.command("MoveService", **move), TAKEN, data=move)
        yield Ask(self.command("MoveService", **move), (409, "NOTHING_MOVES"))
        gone = dict(service=service, reason="gone")
        ask = Ask(self.command("CancelService", **gone), TAKEN, data=gone)
        answer = yield ask
        yield from self.again(ask, answer)
        yield Ask(self.command("CancelService", **gone), (409, "SERVICE_CANCELLED"))

    def pin(self):
        fields = dict(menuId="full", zone=self.chance.choice(ZONES), milligrams=self.chance.randrange(40, 120) * 1000)
        yield Ask(self.command("PinAllowance", **fields), TAKEN, data=fields)
        yield Ask(self.command("PinAllowance", **{**fields, "zone": "fringe"}), (409, "ZONE_UNKNOWN"))

    def hours(self):
        duty = [{"from": minutes(self.day, 5, self.chance.randrange(50)), "to": minutes(self.day, 22)}]
        yield Ask(self.command("ChangeShift", personId="abe", onDuty=duty), TAKEN, data={"personId": "abe"})
        yield Ask(self.command("ChangeShift", personId="nobody", onDuty=duty), (409, "PERSON_UNKNOWN"))

    def regret(self):
        """Writes levels down and takes that back at once."""
        early = self.clock.done
        fields = dict(service=self.chance.choice(self.services), zone=ZONES[0], levelBeforeTenths=50)
        answer = yield Ask(self.command("RecordLevels", **fields), TAKEN, data=fields)
        if not answer:
            return
        take = Ask(self.command("TakeBack", revision=answer["firstRevision"]), TAKEN,
                   data={"takenBackRevision": answer["firstRevision"]})
        take.late = lambda: self.clock.asked - early > TAKE_BACK_MINUTES
        take.also = (409, "TOO_LONG_AGO")
        answer = yield take
        if answer:
            yield Ask(self.command("TakeBack", revision=take.body["command"]["revision"]), (409, "TAKEN_BACK_ALREADY"))
        yield Ask(self.command("TakeBack", revision=9_999_999), (409, "ACTION_UNKNOWN"))
        yield Ask(self.command("TakeBack", revision=1), (409, "PART_OF_OPENING"))

    def bowl(self):
        """Begins the next bowl of an own service as the day shows it, weighs it, hands it over, ends it."""
        view = yield Ask(None, (200, None), path="", method="GET")
        own = [one["bowl"] for one in view["queue"] if one["bowl"]["service"] in self.services]
        if not own:
            return
        bowl = own[0] if self.chance.random() < 0.8 else self.chance.choice(own)
        begin = dict(bowl=bowl["bowl"], personId=self.name)
        right = self.beginning(view, bowl, own)
        if not right:
            return
        early = self.clock.done
        answer = yield Ask(self.command("BeginBowl", **begin), right, (412, "REVISION_STALE"), data={"bowl": bowl["bowl"]},
                           If_Match=f'"{view["revision"]}"')
        if answer:
            yield from self.weighing(bowl, early)

    def beginning(self, view, bowl, own):
        """What beginning a bowl must be answered on the very day that is shown; none where the clock may decide."""
        if any(one["service"] == bowl["service"] and one["bowl"] < bowl["bowl"] for one in own):
            return 409, "BOWL_OUT_OF_ORDER"
        mixing = [one for one in view["live"] if one["stage"] == "MIXING"]
        if any(person["personId"] == self.name and person["mixing"] for person in view["people"]):
            return 409, "PERSON_MIXING"
        if mixing:
            return 409, "SCALE_BUSY"
        if len(view["live"]) >= 12:
            return 409, "NO_BOWL_FREE"
        ahead = self.clock.between(view["time"], bowl["neededFrom"])
        if ahead < LIFE_MINUTES:
            return TAKEN
        return (409, "BOWL_TOO_EARLY") if ahead > LIFE_MINUTES + 60 else None

    def weighing(self, bowl, early):
        name, formula = bowl["bowl"], bowl["formula"]
        parts = [{"developerId": part["developerId"], "milligrams": part["milligrams"]} for part in formula["developerParts"]]
        weights = dict(bowl=name, lightenerMilligrams=formula["lightenerMilligrams"], developerParts=parts)
        yield Ask(self.command("BeginBowl", bowl=name, personId=self.name), (409, "BOWL_ALREADY_BEGUN"))
        yield Ask(self.command("WeighBowl", **{**weights, "developerParts": [{"developerId": "tea", "milligrams": 9}]}),
                  (409, "DEVELOPER_UNKNOWN"))
        ask = Ask(self.command("WeighBowl", **weights), TAKEN, data={"bowl": name, "insideDirections": True})
        answer = yield ask
        yield from self.again(ask, answer)
        over = Ask(self.command("HandOverBowl", bowl=name), TAKEN, data={"bowl": name})
        over.late = lambda: self.clock.asked - early >= LIFE_MINUTES
        over.also = (409, "PAST_LIFE")
        answer = yield over
        if not answer:
            yield Ask(self.command("BinBowl", bowl=name, leftMilligrams=0, cause="SPILLED"), TAKEN, data={"bowl": name})
            return
        yield Ask(self.command("HandOverBowl", bowl=name), (409, "BOWL_AT_CHAIR"))
        yield Ask(self.command("FinishBowl", bowl=name), TAKEN, data={"bowl": name})
        yield Ask(self.command("FinishBowl", bowl=name), (409, "BOWL_CLOSED"))

    def judge(self, ask, status, body, anew=False):
        """Empty text when an answer is one of those that are right, else what is wrong; keeps what was accepted.

        A request sent anew, because its line was closed before the answer came, may have been accepted the first time.
        """
        answer = json.loads(body)
        if anew and answer.get("repeated") and ask.right[0][0] != "repeat":
            answer["repeated"] = False
        if ask.method == "GET":
            return "" if status == 200 else f"{status} {body[:200]}"
        kind, first = ask.right[0]
        if kind == "repeat":
            return "" if status == 200 and answer == {**first, "repeated": True} else f"not repeated: {status} {answer}"
        right = list(ask.right) + ([ask.also] if hasattr(ask, "late") and ask.late() else [])
        if (status, answer.get("code")) not in right:
            return f"{status} {answer}, expected {right}"
        if status != 200:
            return "" if set(answer) >= {"type", "title", "status", "detail"} else f"no problem document: {answer}"
        if answer["repeated"] or answer["commandId"] != ask.body["commandId"] \
                or answer["lastRevision"] - answer["firstRevision"] + 1 != ask.events or answer["firstRevision"] <= self.newest:
            return f"wrong result {answer}, newest known {self.newest}"
        self.newest = answer["lastRevision"]
        self.acknowledged[ask.body["commandId"]] = [answer["firstRevision"], answer["lastRevision"], ask.data]
        return ""
