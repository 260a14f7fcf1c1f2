"""One client of the soak trial: random commands of its role, wrong ones among them, and the answer each must get.

The expected answers follow from docs/access.md and the rules of the day; no code of the service is used. Every client has
services of its own, so that other clients cannot change its answers. Where time or another client may be faster, both
correct answers are listed.
"""
import json, random
from sample_salon import CLIENTS, LIFE_MINUTES, ZONES, booking, command, minutes

ROLES = {"mary": "manager", "cole": "colorist", "ann": "assistant", "abe": "assistant", "prog": "service"}
SERVICES = 12
TAKE_BACK_MINUTES = 10


class Request:
    """A request and its correct answers: pairs of status and code; the code is None for an accepted command."""

    def __init__(self, body, *right, path="commands", method="POST", events=1, data=None, **headers):
        self.body, self.right, self.path, self.method = body, right, path, method
        self.events, self.data, self.headers = events, data, headers


ACCEPTED = (200, None)


class ClientModel:
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
        common = [(6, self.without_token), (6, self.other_actor), (5, self.other_salon), (4, self.malformed), (3, self.stale_revision),
                  (8, self.not_permitted), (4, self.invalid_booking)]
        if self.role == "service":
            return common + [(24, self.walk_in), (6, self.unknown_service)]
        shared = common + [(6, self.stock), (3, self.unknown_alarm), (5, self.unknown_service)]
        if self.role == "manager":
            return shared + [(14, self.walk_in), (4, self.pin), (2, self.hours)]
        return shared + [(34, self.levels), (8, self.tests), (10, self.chair), (12, self.bowl), (2, self.take_back)]

    def scene(self):
        kinds = self.scenes()
        return self.chance.choices([kind for _, kind in kinds], [weight for weight, _ in kinds])[0]()

    # Rejected before the day is reached.

    def without_token(self):
        wrong, code = self.chance.choice((("", "TOKEN_NEEDED"), ("Bearer stir_000000000000_" + "A" * 43, "TOKEN_UNKNOWN")))
        yield Request(self.command("StartService", service=1), (401, code), authorization=wrong)

    def other_actor(self):
        allowed = self.command("BookService", booking=booking("x", self.day, 1, 12, 0, ""))
        yield Request({**allowed, "actor": "somebody"}, (403, "NOT_YOU"))

    def other_salon(self):
        day = self.chance.choice((f"{self.rival}/{self.day}", f"{self.salon}/2019-01-01"))
        ask = self.command("BookService", booking=booking("x", self.day, 1, 12, 0, ""))
        yield Request(ask, (404, "DAY_UNKNOWN"), path=f"/days/{day}/commands")

    def malformed(self):
        body = self.chance.choice((self.command("Bogus"), self.command("StartService"), {"commandId": "short"}, "{", "[]",
                                   self.command("StartService", service="one")))
        yield Request(body, (400, "NOT_UNDERSTOOD"))

    def stale_revision(self):
        ask = self.command("BookService", booking=booking(f"s-{self.seed}-{self.number}", self.day, 1, 12, 0, ""))
        yield Request(ask, (412, "REVISION_STALE"), If_Match='"1"')

    def not_permitted(self):
        never = {"assistant": [("CloseDay", {}), ("PinAllowance", dict(menuId="full", zone=ZONES[0], milligrams=9000)),
                               ("CancelService", dict(service=1, reason=""))],
                 "colorist": [("SetAllowanceFraction", dict(permille=900))],
                 "service": [("StartService", dict(service=1)), ("CloseDay", {}),
                             ("RecordLevels", dict(service=1, zone=ZONES[0], levelBeforeTenths=50))],
                 "manager": []}[self.role]
        if never:
            type, fields = self.chance.choice(never)
            yield Request(self.command(type, **fields), (403, "NOT_ALLOWED"))
        else:
            yield Request({"personId": "ann", "code": "123456"}, (403, "NOT_ALLOWED"), path="/sign-on")

    # Rejected by the rules of the day.

    def invalid_booking(self):
        wrong = booking(f"w-{self.number}", self.day, 1, 12, 0, "")
        other, code = self.chance.choice((({"start": minutes("2019-01-01", 9)}, "START_OUTSIDE_DAY"),
                                          ({"chair": 77}, "CHAIR_UNKNOWN"), ({"menuId": "none"}, "MENU_ENTRY_UNKNOWN"),
                                          ({"length": "endless"}, "LENGTH_UNKNOWN"), ({"bookingUid": "b-1"}, "BOOKING_KNOWN")))
        yield Request(self.command("BookService", booking={**wrong, **other}), (409, code))

    def unknown_service(self):
        if self.role in ("manager", "colorist", "service") and self.chance.random() < 0.5:
            yield Request(self.command("CancelService", service=999, reason=""), (409, "SERVICE_UNKNOWN"))
        elif self.role != "service":
            yield Request(self.command("StartService", service=999), (409, "SERVICE_UNKNOWN"))

    def unknown_alarm(self):
        yield Request(self.command("AcknowledgeAlarm", alarmId="none"), (409, "ALARM_UNKNOWN"))

    def stock(self):
        grams = self.chance.randrange(900, 5000)
        yield Request(self.command("CountStock", productId="none", milligrams=grams), (409, "PRODUCT_UNKNOWN"))
        if self.chance.random() < 0.2:
            yield Request(self.command("CountStock", productId="six", milligrams=grams * 1000), ACCEPTED,
                      data={"productId": "six", "milligrams": grams * 1000})

    # Accepted work.

    def repeat(self, ask, answer):
        """Sends an accepted command again, or its id with another body."""
        if answer is None or self.chance.random() < 0.6:
            return
        if self.chance.random() < 0.7:
            yield Request(ask.body, ("repeat", answer))
        else:
            other = {**ask.body, "command": {"type": "BookService", "booking": booking("again", self.day, 1, 12, 0, "")}}
            yield Request(other, (422, "COMMAND_ID_REUSED"))

    def levels(self):
        service, zone = self.chance.choice(self.services), self.chance.choice(ZONES)
        before = self.chance.randrange(10, 101)
        ask = Request(self.command("RecordLevels", service=service, zone=zone, levelBeforeTenths=before), ACCEPTED,
                  data={"service": service, "zone": zone, "levelBeforeTenths": before})
        answer = yield ask
        yield from self.repeat(ask, answer)
        if self.chance.random() < 0.2:
            wrong, code = self.chance.choice((({"zone": "fringe"}, "ZONE_UNKNOWN"), ({"levelBeforeTenths": None}, "LEVEL_MISSING")))
            yield Request(self.command("RecordLevels", **{**dict(service=service, zone=zone, levelBeforeTenths=before), **wrong}),
                      (409, code))

    def tests(self):
        service = self.chance.choice(self.services)
        at = minutes("2027-01-01", self.chance.randrange(24))
        ask = Request(self.command("RecordTest", service=service, kind="PATCH", doneAt=at), ACCEPTED,
                  data={"service": service, "kind": "PATCH"})
        answer = yield ask
        yield from self.repeat(ask, answer)
        yield Request(self.command("RecordTest", service=service, kind="STRAND", doneAt=minutes(self.day, 60)),
                  (409, "TEST_NOT_DONE"))

    def chair(self):
        service = self.chance.choice(self.services)
        if service not in self.started:
            yield Request(self.command("FinishZone", service=service, zone=ZONES[0]), (409, "SERVICE_NOT_STARTED"))
            if self.chance.random() < 0.3:
                answer = yield Request(self.command("StartService", service=service), ACCEPTED, data={"service": service})
                if answer:
                    self.started.add(service)
            return
        yield Request(self.command("StartService", service=service), (409, "SERVICE_STARTED"))
        count = self.zones_done[service]
        if count == len(ZONES):
            yield Request(self.command("FinishZone", service=service, zone=ZONES[1]), (409, "SERVICE_APPLIED"))
            return
        yield Request(self.command("FinishZone", service=service, zone="fringe"), (409, "ZONE_NOT_NEXT"))
        if self.chance.random() < 0.4:
            answer = yield Request(self.command("FinishZone", service=service, zone=ZONES[count]), ACCEPTED,
                               data={"service": service, "zone": ZONES[count]})
            if answer:
                self.zones_done[service] += 1

    def walk_in(self):
        """Books a walk-in, moves it and cancels it."""
        uid = f"guest-{self.name}-{self.number}"
        made = booking(uid, self.day, 1 + self.number % 6, 12, self.number % 300, self.chance.choice(CLIENTS))
        ask = Request(self.command("BookService", booking=made), ACCEPTED)
        answer = yield ask
        if not answer:
            return
        page = yield Request(None, (200, None), path=f"events?after={answer['firstRevision'] - 1}&limit=1", method="GET")
        booked = page["events"][0]["data"]
        ask.data = {"service": booked["service"]}
        self.acknowledged[ask.body["commandId"]][2] = {"service": booked["service"]}
        yield from self.repeat(ask, answer)
        yield Request(self.command("BookService", booking=made), (409, "BOOKING_KNOWN"))
        service, later = booked["service"], minutes(self.day, 18, self.number % 60)
        move = dict(service=service, start=later, chair=2, reason="late")
        yield Request(self.command("MoveService", **move), ACCEPTED, data=move)
        yield Request(self.command("MoveService", **move), (409, "NOTHING_MOVES"))
        gone = dict(service=service, reason="gone")
        ask = Request(self.command("CancelService", **gone), ACCEPTED, data=gone)
        answer = yield ask
        yield from self.repeat(ask, answer)
        yield Request(self.command("CancelService", **gone), (409, "SERVICE_CANCELLED"))

    def pin(self):
        fields = dict(menuId="full", zone=self.chance.choice(ZONES), milligrams=self.chance.randrange(40, 120) * 1000)
        yield Request(self.command("PinAllowance", **fields), ACCEPTED, data=fields)
        yield Request(self.command("PinAllowance", **{**fields, "zone": "fringe"}), (409, "ZONE_UNKNOWN"))

    def hours(self):
        duty = [{"from": minutes(self.day, 5, self.chance.randrange(50)), "to": minutes(self.day, 22)}]
        yield Request(self.command("ChangeShift", personId="abe", onDuty=duty), ACCEPTED, data={"personId": "abe"})
        yield Request(self.command("ChangeShift", personId="nobody", onDuty=duty), (409, "PERSON_UNKNOWN"))

    def take_back(self):
        """Records levels and takes that back at once."""
        early = self.clock.done
        fields = dict(service=self.chance.choice(self.services), zone=ZONES[0], levelBeforeTenths=50)
        answer = yield Request(self.command("RecordLevels", **fields), ACCEPTED, data=fields)
        if not answer:
            return
        take = Request(self.command("TakeBack", revision=answer["firstRevision"]), ACCEPTED,
                   data={"takenBackRevision": answer["firstRevision"]})
        take.late = lambda: self.clock.asked - early > TAKE_BACK_MINUTES
        take.also = (409, "TOO_LONG_AGO")
        answer = yield take
        if answer:
            yield Request(self.command("TakeBack", revision=take.body["command"]["revision"]), (409, "TAKEN_BACK_ALREADY"))
        yield Request(self.command("TakeBack", revision=9_999_999), (409, "ACTION_UNKNOWN"))
        yield Request(self.command("TakeBack", revision=1), (409, "PART_OF_OPENING"))

    def bowl(self):
        """Begins the next bowl of an own service, weighs it, hands it over and finishes it."""
        view = yield Request(None, (200, None), path="", method="GET")
        own = [one["bowl"] for one in view["queue"] if one["bowl"]["service"] in self.services]
        if not own:
            return
        bowl = own[0] if self.chance.random() < 0.8 else self.chance.choice(own)
        begin = dict(bowl=bowl["bowl"], personId=self.name)
        right = self.beginning(view, bowl, own)
        if not right:
            return
        early = self.clock.done
        answer = yield Request(self.command("BeginBowl", **begin), right, (412, "REVISION_STALE"), data={"bowl": bowl["bowl"]},
                           If_Match=f'"{view["revision"]}"')
        if answer:
            yield from self.weighing(bowl, early)

    def beginning(self, view, bowl, own):
        """Correct answer to beginning a bowl on the day as shown; None where the clock may decide."""
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
            return ACCEPTED
        return (409, "BOWL_TOO_EARLY") if ahead > LIFE_MINUTES + 60 else None

    def weighing(self, bowl, early):
        name, formula = bowl["bowl"], bowl["formula"]
        parts = [{"developerId": part["developerId"], "milligrams": part["milligrams"]} for part in formula["developerParts"]]
        weights = dict(bowl=name, lightenerMilligrams=formula["lightenerMilligrams"], developerParts=parts)
        yield Request(self.command("BeginBowl", bowl=name, personId=self.name), (409, "BOWL_ALREADY_BEGUN"))
        yield Request(self.command("WeighBowl", **{**weights, "developerParts": [{"developerId": "tea", "milligrams": 9}]}),
                  (409, "DEVELOPER_UNKNOWN"))
        ask = Request(self.command("WeighBowl", **weights), ACCEPTED, data={"bowl": name, "insideDirections": True})
        answer = yield ask
        yield from self.repeat(ask, answer)
        over = Request(self.command("HandOverBowl", bowl=name), ACCEPTED, data={"bowl": name})
        over.late = lambda: self.clock.asked - early >= LIFE_MINUTES
        over.also = (409, "PAST_LIFE")
        answer = yield over
        if not answer:
            yield Request(self.command("BinBowl", bowl=name, leftMilligrams=0, cause="SPILLED"), ACCEPTED, data={"bowl": name})
            return
        yield Request(self.command("HandOverBowl", bowl=name), (409, "BOWL_AT_CHAIR"))
        yield Request(self.command("FinishBowl", bowl=name), ACCEPTED, data={"bowl": name})
        yield Request(self.command("FinishBowl", bowl=name), (409, "BOWL_CLOSED"))

    def judge(self, ask, status, body, anew=False):
        """Empty text when the answer is correct, else what is wrong; records accepted commands.

        A request that was resent, because its connection was closed before the answer came, may have been accepted before.
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
