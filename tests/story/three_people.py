#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
# Three people, each with a real app, and a real hub: they come together, work two weeks without a signal on the same
# traps, exchange by a folder, a carried file or the hub, and end with the same records. Everything they do is a tap or
# a key; see act_reader.h.
#   three_people.py STORY-APP DUSKROW-HUB DUSKROW-TOOL [--legs folder,file,hub] [--pictures FOLDER]
import argparse
import contextlib
import csv
import datetime
import os
import shutil
import socket
import sys
import tempfile
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "../sync"))

from field_work import corrects, counts, opens_season, opens_visit, set_up_trap  # noqa: E402
from hub_process import HubProcess, run  # noqa: E402
from person import Person  # noqa: E402
import with_others as others  # noqa: E402

TOMS, IDAS = "Slough corner · 1", "Elm corner · 2"


def spoken(day):
    return f"{day:%A} {day.day} {day:%B}"


class NoSignal:
    """Something that takes the call and never answers, as the networks of hotels and trains do."""

    def __init__(self, url):
        host, port = url.rsplit("/", 1)[1].split(":")
        self.socket = socket.create_server((host, int(port)), backlog=50)

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.socket.close()


def same(one, other, whose, others_name):
    for table, rows in one.items():
        if rows == other[table]:
            continue
        differing = [f"{whose}: {row}" for row in rows if row not in other[table]]
        differing += [f"{others_name}: {row}" for row in other[table] if row not in rows]
        raise SystemExit("\n".join([f"{whose} and {others_name} have different {table}:", *differing]))


class Story:
    def __init__(self, arguments, folder):
        self.hub_program, self.tool, self.folder = arguments.hub, arguments.tool, folder
        self.ida, self.tom, self.ana = self.people = [
            Person(name, arguments.app, folder, arguments.pictures) for name in ("Ida", "Tom", "Ana")]
        self.hub_store = os.path.join(folder, "hub.db")
        self.url = None
        self.day = datetime.date(2026, 6, 8)
        self.known = None  # the day of a visit to Tom's trap that all three have
        self.ways = []  # by which they exchanged, leg by leg
        self.told = []

    def tell(self, what, since):
        self.told.append(f"{time.monotonic() - since:6.2f} s  {what}")

    @contextlib.contextmanager
    def hub(self):
        listen = self.url.rsplit("/", 1)[1] if self.url else "127.0.0.1:0"
        with HubProcess(self.hub_program, self.hub_store, listen=listen, log=os.path.join(self.folder, "hub.log")) as hub:
            self.url = hub.url
            yield
            assert hub.end() == 0

    def open_all(self, day):
        for person in self.people:
            person.opens(day.isoformat())

    def close_all(self):
        for person in self.people:
            person.closes()

    # The coordinator makes the programme; a grower types the code, an agronomist opens the link.
    def come_together(self):
        began = time.monotonic()
        code = run(self.hub_program, "programme", "new", "--store", self.hub_store, "--name", "Elm flats").strip()
        ida, tom, ana = self.people
        with self.hub():
            ida.opens(self.day.isoformat())
            others.begins_for_a_group(ida, "Elm flats")
            others.founds_at_hub(ida, self.url, code)
            typed, _ = others.invites(ida, "Tom", "grower")
            _, link = others.invites(ida, "Ana", "agronomist")
            self.tell("Ida made the programme and two invitations", began)
            self.join(tom, "the typed code", lambda: (tom.opens(self.day.isoformat()),
                                                      others.joins_by_typing(tom, typed, self.url)))
            self.join(ana, "the link", lambda: (ana.opens(self.day.isoformat(), link), ana.tap("Join"),
                                                ana.see("as Ana:")))
            ana.picture("joined")
            others.exchanges(ida)  # lets them in
            began = time.monotonic()
            tom.goes_to("Today")
            set_up_trap(tom, "Slough corner")
            others.exchanges(tom, "0 on this phone")
            others.exchanges(ida, "0 on this phone")
            ida.goes_to("Traps")
            set_up_trap(ida, "Elm corner")
            others.assigns(ida, "Ana", "Slough corner", "Elm corner")
            others.exchanges(ida, "0 on this phone")
            self.close_all()
            self.tell("two traps set up, both given to Ana too", began)
            self.first_count()

    def join(self, person, how, act):
        began, taps = time.monotonic(), person.taps
        act()
        took = time.monotonic() - began
        self.tell(f"{person.name} joined by {how}: {person.taps - taps} taps", began)
        assert took < 30, f"{person.name} needed {took:.0f} s to join"

    def first_count(self):
        self.day += datetime.timedelta(7)
        self.known = self.day
        ida, tom, ana = self.people
        self.open_all(self.day)
        counts(tom, TOMS, 12)
        for person in (tom, ida, ana):
            others.exchanges(person, "0 on this phone")
        opens_season(ana, TOMS)
        ana.see("12")
        self.close_all()

    # Each on their own: a grower counts his trap each week, an agronomist goes round, and both set the same visit right.
    def two_weeks_apart(self, leg):
        began = time.monotonic()
        ida, tom, ana = self.people
        first, second = self.day + datetime.timedelta(7), self.day + datetime.timedelta(14)
        tom.opens(first.isoformat())
        counts(tom, TOMS, 20 + leg)
        tom.closes()
        between = first + datetime.timedelta(3)
        ana.opens(between.isoformat())
        counts(ana, TOMS, 30 + leg)
        ana.is_killed()
        ana.opens(between.isoformat())
        counts(ana, IDAS, 40 + leg)
        ana.closes()
        ida.opens(second.isoformat())
        counts(ida, IDAS, 50 + leg)
        tom.opens(second.isoformat())
        counts(tom, TOMS, 60 + leg)
        corrects(tom, TOMS, spoken(self.known), 14)
        ana.opens(second.isoformat())
        corrects(ana, TOMS, spoken(self.known), 11)
        tom.goes_to("Today")
        tom.see("Only on this phone: ")
        tom.picture("today-apart")
        self.day = second
        self.tell("two weeks apart", began)

    # Settled by the coordinator, seen by everybody.
    def settle(self, exchange):
        ida, tom, ana = self.people
        ida.goes_to("Year")
        ida.picture("year-question")
        others.opens_page(ida, "Differences")
        ida.see("14 moths", "11 moths")
        ida.picture("differences")
        ida.tap_what_begins("[11 moths")
        ida.picture("difference-chosen")
        ida.tap("Settle it")
        ida.see("Nothing to decide")
        exchange(2)
        for person in (tom, ana, ida):
            opens_season(person, TOMS)
            person.tap("Visits")
            person.see(f"[{spoken(self.known)}, 11 moths")
            person.picture(f"visits-{person.name}")
            person.gone("14 moths")

    def leg(self, number, way):
        began = time.monotonic()
        getattr(self, f"by_{way}")(number)
        self.compare(way)
        self.known = self.day  # Tom's last visit, which all have now
        self.tell(f"by the {way}", began)

    def by_folder(self, number):
        folder = os.path.join(self.folder, "shared")
        if os.path.isdir(folder + ".away"):
            os.rename(folder + ".away", folder)

        def exchange(turn):
            for person in (self.tom, self.ana, self.ida, self.tom) if turn == 1 else (self.ida, self.ana, self.tom):
                others.exchanges(person, "0 on this phone")

        with NoSignal(self.url):
            self.two_weeks_apart(number)
        os.makedirs(folder, exist_ok=True)
        for person in self.people:
            others.adds_folder(person, folder)
            person.see("The folder “shared”")
        exchange(1)
        self.settle(exchange)
        self.close_all()
        os.rename(folder, folder + ".away")

    def by_file(self, number):
        stick = os.path.join(self.folder, "stick")

        def goes_round(*people):
            for giver, taker in zip(people, people[1:]):
                shutil.rmtree(stick, ignore_errors=True)
                os.makedirs(stick)
                others.takes_in_file(taker, others.writes_file(giver, stick))

        self.two_weeks_apart(number)
        goes_round(self.ana, self.tom, self.ida, self.ana)
        self.settle(lambda _: goes_round(self.ida, self.tom, self.ana))
        self.close_all()

    def by_hub(self, number):
        self.two_weeks_apart(number)

        def exchange(turn):
            for person in (self.ana, self.tom, self.ida) if turn == 1 else (self.ida, self.tom, self.ana):
                others.exchanges(person, "0 on this phone")

        with self.hub():
            exchange(1)
            self.settle(exchange)
            self.close_all()

    # What the tool writes of the three stores: the same records, but for what a grower may not see.
    def compare(self, way):
        self.ways.append(way)
        ida, tom, ana = (self.exported(person, way) for person in self.people)
        assert len(ida["visits"]) == 1 + 5 * len(self.ways), f"{len(ida['visits'])} visits after {self.ways}"
        same(ida, ana, "Ida", "Ana")
        if way != "hub":
            return same(ida, tom, "Ida", "Tom")
        traps = {row["tag"]: row["id"] for row in ida["traps"]}
        at = lambda tables, tag: [row for row in tables["visits"] if row["trap"] == traps[tag]]  # noqa: E731
        for table in set(ida) - {"season-totals"}:
            only = [row for row in tom[table] if row not in ida[table]]
            assert not only, f"only Tom has, in {table}: {only}"
        assert at(tom, "1") == at(ida, "1"), "Tom lacks visits to his own trap"
        assert len(at(tom, "2")) < len(at(ida, "2")), "Tom reads what is not his at the hub"
        if set(self.ways) == {"hub"}:
            assert not at(tom, "2"), "Tom reads what is not his at the hub"

    def exported(self, person, way):
        folder = os.path.join(self.folder, f"{person.name}-{way}")
        run(self.tool, "check", person.store)
        run(self.tool, "export", person.store, folder, "--as", "csv", "--on", self.day.isoformat(), "--keys", person.keys)
        tables = {}
        for name in os.listdir(folder):
            with open(os.path.join(folder, name), newline="", encoding="utf-8-sig") as file:
                tables[name.removesuffix(".csv")] = sorted(csv.DictReader(file), key=lambda row: list(row.values()))
        return tables


def main():
    parser = argparse.ArgumentParser()
    for program in ("app", "hub", "tool"):
        parser.add_argument(program)
    parser.add_argument("--legs", default="folder,file,hub")
    parser.add_argument("--pictures")
    arguments = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        os.environ["XDG_CACHE_HOME"] = os.path.join(folder, "cache")
        story = Story(arguments, folder)
        try:
            story.come_together()
            for number, way in enumerate(arguments.legs.split(","), 1):
                story.leg(number, way)
            slowest = max(person.longest_close for person in story.people)
            story.told.append(f"{slowest:6.2f} s  the longest that closing an app took")
            assert slowest < 10, "an app waited for a hub that does not answer"
        finally:
            for person in story.people:
                person.leaves()
            print("\n".join(story.told))


main()
