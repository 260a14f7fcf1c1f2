"""Invented salons for the trials: setup, bookings and commands, as a terminal sends them."""
import datetime

ZONES = ["front foils", "back foils"]
LIFE_MINUTES = 45
CLIENTS = [f"K{number}" for number in range(200)]


def minutes(day, hour, more=0):
    """An instant of a day as the contract writes it."""
    at = datetime.datetime.fromisoformat(day) + datetime.timedelta(hours=hour, minutes=more)
    return at.strftime("%Y-%m-%dT%H:%M:%SZ")


def day_after(first, count):
    return (datetime.date.fromisoformat(first) + datetime.timedelta(days=count)).isoformat()


def zone(name, grams, apply):
    return {"zone": name, "technique": "foil", "lightenerId": "powder", "strengthHundredths": 600,
            "ratioThousandths": 2000, "baseMilligrams": grams * 1000, "applyMinutes": apply, "gapMinutes": 0,
            "processMinutes": 30, "section": 1}


def setup(salon, day, people):
    """people: (id, role of the files)."""
    hours = [{"from": minutes(day, 5), "to": minutes(day, 22)}]
    return {
        "date": day,
        "salon": {
            "salonId": salon, "name": "House " + salon, "zone": "Europe/Lisbon", "currency": "EUR", "chairs": 6,
            "handOverMinutes": 1, "washMinutes": 5,
            "people": [{"personId": one, "name": one.title(), "role": role, "onDuty": hours} for one, role in people],
            "scales": [{"scaleId": "bar-1", "accuracyClass": "III", "inServiceLimits": False,
                        "weighing": "TARE_BETWEEN", "minimumMilligrams": 0,
                        "ranges": [{"maximumMilligrams": 2000000, "divisionMilligrams": 500,
                                    "verificationMilligrams": 500}]}],
            "bowls": [{"bowlSizeId": "middle", "usableMilligrams": 120000, "residueMilligrams": 6000, "count": 12}]},
        "developers": [{"developerId": "six", "name": "Developer 6 %", "strengthHundredths": 600,
                        "packMilligrams": 1000000, "packPrice": 8.00}],
        "directions": [{
            "lightenerId": "powder", "name": "House powder", "form": "powder", "workingLifeMinutes": LIFE_MINUTES,
            "mixMinutes": 5, "waterPermitted": False,
            "techniques": [{"technique": "foil", "onScalp": False, "lowestRatioThousandths": 1500,
                            "highestRatioThousandths": 3000, "highestStrengthHundredths": 1200,
                            "longestProcessingMinutes": 50}],
            "packMilligrams": 500000, "packPrice": 20.00, "cautions": ["Wear gloves."]}],
        "menu": {"entries": [{"menuId": "full", "name": "Full head of foils",
                              "zones": [zone(ZONES[0], 60, 25), zone(ZONES[1], 90, 30)]}],
                 "lengthPermille": {"medium": 1000, "long": 1300}, "densityPermille": {"medium": 1000, "thick": 1200}}}


def booking(uid, day, chair, hour, more, client):
    return {"bookingUid": uid, "menuId": "full", "chair": chair, "start": minutes(day, hour, more), "clientRef": client,
            "length": "medium", "density": "medium", "earlierMinutes": 0, "laterMinutes": 0}


def opening(salon, day, people, actor, command_id, services=12):
    """A day whose services have the numbers 1 and so on, one every forty minutes from nine."""
    booked = [booking(f"b-{n}", day, 1 + n % 6, 9, 40 * n, CLIENTS[n * 7 % len(CLIENTS)]) for n in range(services)]
    return command(command_id, actor, "OpenDay", setup=setup(salon, day, people), bookings=booked)


def command(command_id, actor, type, **fields):
    return {"commandId": command_id, "actor": actor, "command": {"type": type, **fields}}
