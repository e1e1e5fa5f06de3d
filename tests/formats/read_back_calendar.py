# SPDX-License-Identifier: MIT
"""Writes a calendar with our writer, reads it with python3-icalendar, and compares."""
import datetime
import json
import subprocess
import sys

import icalendar

# No backslash before an n: this library unescapes in the wrong order and reads a line break there.
LONG = "Zähl die Falter; dann, wenn's dämmert, \\ leeren. 蛾の数を数える 🦋🦋 " * 20
STAMP = datetime.datetime(2026, 7, 7, 5, 3, 9, tzinfo=datetime.timezone.utc)
EVENTS = [
    {"uid": "count-019a@duskrow.invalid", "first": "2026-07-31", "last": "2026-07-31",
     "summary": "Count: Slough corner, trap 1; stake", "description": LONG + "\nsecond line\n\nfourth",
     "location": "North quarter, gate \\ west", "latE7": 495000001, "lonE7": -980000007,
     "alarm": -1110, "alarmText": "Count is due: 🦋"},
    {"uid": "evening", "start": {"day": "2026-07-14", "minutes": 1170}, "end": {"day": "2026-07-15", "minutes": 15},
     "summary": "🦋" * 40, "description": "", "location": "", "alarm": 90, "alarmText": "soon"},
    {"uid": "days", "first": "2026-12-30", "last": "2027-01-02", "summary": "a" * 300, "description": "x",
     "location": "y"},
]


def day(text):
    return datetime.date.fromisoformat(text)


def moment(value):
    start = datetime.datetime.combine(day(value["day"]), datetime.time())
    return start + datetime.timedelta(minutes=value["minutes"])


def compare(what, found, wanted):
    if found != wanted:
        sys.exit(f"{what}: read {found!r}, wrote {wanted!r}")


def main():
    wanted = {"name": "Traps, 2026", "stampMs": int(STAMP.timestamp() * 1000), "events": EVENTS}
    run = subprocess.run([sys.argv[1], "calendar"], input=json.dumps(wanted).encode(), stdout=subprocess.PIPE, check=True)
    bare = run.stdout.replace(b"\r\n", b"")
    compare("line ends", b"\r" in bare or b"\n" in bare, False)
    compare("longest line", max(len(line) for line in run.stdout.split(b"\r\n")) <= 75, True)
    calendar = icalendar.Calendar.from_ical(run.stdout)
    compare("version", str(calendar["VERSION"]), "2.0")
    compare("product", bool(calendar["PRODID"]), True)
    compare("name", str(calendar["NAME"]), wanted["name"])
    found = calendar.walk("VEVENT")
    compare("events", len(found), len(EVENTS))
    for read, wrote in zip(found, EVENTS):
        compare("errors", read.errors, [])
        compare("uid", str(read["UID"]), wrote["uid"])
        compare("stamp", read["DTSTAMP"].dt, STAMP)
        compare("summary", str(read["SUMMARY"]), wrote["summary"])
        compare("description", str(read.get("DESCRIPTION", "")), wrote["description"])
        compare("location", str(read.get("LOCATION", "")), wrote["location"])
        if "first" in wrote:
            compare("first day", read["DTSTART"].dt, day(wrote["first"]))
            compare("day after", read["DTEND"].dt, day(wrote["last"]) + datetime.timedelta(days=1))
        else:
            compare("start, floating", read["DTSTART"].dt, moment(wrote["start"]))
            compare("end, floating", read["DTEND"].dt, moment(wrote["end"]))
        if "latE7" in wrote:
            compare("place", (read["GEO"].latitude, read["GEO"].longitude), (49.5000001, -98.0000007))
        alarms = read.walk("VALARM")
        compare("alarms", len(alarms), 1 if "alarm" in wrote else 0)
        for alarm in alarms:
            compare("action", str(alarm["ACTION"]), "DISPLAY")
            compare("trigger", alarm["TRIGGER"].dt, datetime.timedelta(minutes=-wrote["alarm"]))
            compare("alarm text", str(alarm["DESCRIPTION"]), wrote["alarmText"])


main()
