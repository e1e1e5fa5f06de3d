#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
# Real hub processes, driven by the client that knows only FORMAT.md. Over SQLite, or over PostgreSQL when
# DUSKROW_POSTGRES names a server; then also by two processes at once.
#   hub_process_test.py DUSKROW-HUB
import json
import os
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time
import unittest

import nacl.signing

import hub_client
from hub_process import HubProcess, make_store, run

PROGRAM = sys.argv.pop(1)
PHONES = 50


class HubProcessTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name
        self.store = make_store(self.folder)
        self.code = run(PROGRAM, "programme", "new", "--store", self.store, "--name", "District").strip()

    def hub(self, *options):
        return HubProcess(PROGRAM, self.store, *options, log=os.path.join(self.folder, "log"))

    def founder(self, hub):
        return hub_client.found(hub_client.Line(hub.url), self.code)

    def sound(self):
        self.assertIn("Sound.", run(PROGRAM, "check", "--store", self.store))

    def test_a_stranger_s_client_does_the_whole_round(self):
        with self.hub() as hub:
            told = subprocess.run([sys.executable, hub_client.__file__, hub.url, self.code],
                                  capture_output=True, text=True, check=True).stdout
            self.assertEqual(told.splitlines(), [
                "Ida reads 8 of 8 changes: member, device, site, member, invitation, device, site, visit",
                "Tom reads 7 of 8 changes: member, device, member, invitation, device, site, visit"])
            self.assertEqual(hub.end(), 0)
        with open(os.path.join(self.folder, "log"), encoding="utf-8") as log:
            lines = [json.loads(line) for line in log]
        self.assertIn("push", {line["call"] for line in lines})
        self.sound()

    def test_an_answer_that_was_lost(self):
        with self.hub() as hub:
            ida = self.founder(hub)
            ida.write("visit", hub_client.time_id(), {"moths": 1}, hub_client.time_id())
            name, body = ida.seal()
            head = (f"PUT /v1/programmes/{ida.programme}/segments/{name} HTTP/1.1\r\nHost: x\r\nContent-Type: "
                    f"application/octet-stream\r\nAuthorization: Bearer {ida.token}\r\nContent-Length: {len(body)}\r\n\r\n")
            before = ida.state()["head"]
            with socket.create_connection((ida.line.url.hostname, ida.line.url.port)) as line:
                line.sendall(head.encode() + body)
                while ida.state()["head"] == before:
                    time.sleep(0.005)
            first = ida.put(name, body)
            again = ida.put(name, body)
            self.assertEqual((first[0], again[0]), (200, 200))
            self.assertEqual(first[2], again[2])
            self.assertEqual(json.loads(first[2])["at"], before + 1)

    def test_killed_while_phones_push(self):
        receipts, sent = [], {}
        with self.hub() as hub:
            ida = self.founder(hub)
            url = hub.url
            alive = threading.Event()

            def push_for_ever():
                try:
                    while True:
                        ida.write("visit", hub_client.time_id(), {"moths": 1}, ida.member)
                        name, body = ida.seal()
                        sent[name] = body
                        status, _, answer = ida.put(name, body)
                        if status == 201:
                            receipts.append((name, answer))
                        if len(receipts) > 40:
                            alive.set()
                except OSError:
                    pass

            pusher = threading.Thread(target=push_for_ever)
            pusher.start()
            self.assertTrue(alive.wait(30))
            hub.end(signal.SIGKILL)
            pusher.join()
        with HubProcess(PROGRAM, self.store) as hub:
            self.assertNotEqual(url, hub.url)
            ida.line = hub_client.Line(hub.url)
            self.assertIn(ida.state()["next"] - 3, (len(receipts), len(receipts) + 1))
            for name, answer in receipts:
                status, _, again = ida.put(name, sent[name])
                self.assertEqual((status, again), (200, answer))
        self.sound()

    def test_fifty_phones_at_once(self):
        hubs = 2 if self.store.startswith("postgresql") else 1
        with self.hub() as one, self.hub() if hubs == 2 else one as two:
            urls = [one.url, two.url]
            ida = self.founder(one)
            keys = [nacl.signing.SigningKey.generate() for _ in range(PHONES)]
            for key in keys:
                ida.invite_key("grower", key.verify_key.encode())
            ida.push()
            receipts, times, failures = [], [], []
            lock = threading.Lock()

            def season(number):
                try:
                    phone = hub_client.join(hub_client.Line(urls[number % 2]), keys[number])
                    site = hub_client.time_id()
                    phone.write("site", site, {"name": "Field"}, site)
                    for week in range(6):
                        for _ in range(8):
                            phone.write("visit", hub_client.time_id(), {"moths": week}, site)
                        began = time.monotonic()
                        got = phone.push()
                        pushed = time.monotonic()
                        phone.pull()
                        with lock:
                            receipts.extend(got)
                            times.append(pushed - began)
                    own = [change for (stream, _), change in phone.read.items() if stream == phone.stream]
                    assert len(own) == 50 and all(own), "its own changes are not all there"
                except Exception as failure:  # told below, whatever it is
                    failures.append(f"{number}: {failure!r}")

            began = time.monotonic()
            phones = [threading.Thread(target=season, args=(number,)) for number in range(PHONES)]
            for phone in phones:
                phone.start()
            for phone in phones:
                phone.join()
            took = time.monotonic() - began
            self.assertEqual(failures, [])
            ida.pull()
            by_at = {receipt["at"]: receipt for receipt in receipts}
            self.assertEqual(len(by_at), len(receipts), "two segments under one number")
            self.assertEqual(len(receipts), PHONES * 6)
            head = ida.state()["head"]
            self.assertEqual(head, 2 + PHONES * 7)
            for receipt in receipts:
                self.assertIsNotNone(ida.read.get((receipt["stream"], receipt["last"])))
            self.assertEqual(len(ida.read), 2 + PHONES * 2 + PHONES * 50)
            times.sort()
            print(f"{hubs} hub(s), {PHONES} phones, {took:.1f} s; a push as a phone sees it: "
                  f"median {times[len(times) // 2] * 1000:.0f} ms, 99 % {times[len(times) * 99 // 100] * 1000:.0f} ms")
            self.tell_times(took)
        self.sound()

    def tell_times(self, took):
        """What the hubs' own logs say."""
        calls = {}
        with open(os.path.join(self.folder, "log"), encoding="utf-8") as log:
            for line in map(json.loads, log):
                calls.setdefault(line["call"], []).append(line["us"])
        print(f"  {sum(map(len, calls.values())) / took:.0f} requests a second")
        for call in ("push", "pull", "join"):
            own = sorted(calls[call])
            print(f"  {call}: {len(own)}, median {own[len(own) // 2] / 1000:.1f} ms, "
                  f"99 % {own[len(own) * 99 // 100] / 1000:.1f} ms in the hub")

    def test_backup_and_restore(self):
        backup, other = (os.path.join(self.folder, name) for name in ("backup", "other.db"))
        with self.hub() as hub:
            ida = self.founder(hub)
            run(PROGRAM, "backup", "--store", self.store, backup)
            run(PROGRAM, "backup", "--store", self.store, backup, wanted=2)
            ida.write("visit", hub_client.time_id(), {"moths": 1}, hub_client.time_id())
            lost = ida.seal()
            self.assertEqual(ida.put(*lost)[0], 201)
            ida.pull()
        run(PROGRAM, "restore", backup, "--store", other)
        run(PROGRAM, "restore", backup, "--store", other, wanted=2)
        run(PROGRAM, "check", "--store", other + "x", wanted=2)
        epoch = ida.epoch
        with HubProcess(PROGRAM, other) as hub:
            ida.line = hub_client.Line(hub.url)
            self.assertEqual(ida.line.ask("GET", f"/programmes/{ida.programme}/state", token=ida.token)[0], 401)
            ida.get_token()
            self.assertNotEqual(str(ida.state()["epoch"]), epoch)
            self.assertEqual(ida.state()["next"], 3)
            self.assertEqual(ida.put(*lost)[0], 201)
        self.assertIn("2 segments, 3 changes", run(PROGRAM, "check", "--store", other))

    def test_stops_when_told(self):
        with self.hub() as hub:
            ida = self.founder(hub)
            ida.state()  # its connection stays open
            self.assertEqual(hub.end(signal.SIGINT, timeout=5), 0)

    def test_a_second_hub_on_one_file_is_refused(self):
        if self.store.startswith("postgresql"):
            self.skipTest("PostgreSQL serves several")
        with self.hub():
            run(PROGRAM, "serve", "--store", self.store, "--listen", "127.0.0.1:0", wanted=2)
            run(PROGRAM, "programme", "new", "--store", self.store, "--name", "Another")


if __name__ == "__main__":
    unittest.main(warnings="ignore")
