#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
# What nobody well-meaning sends, to a real hub, over plain HTTP and over TLS: each attack is refused or cut off,
# the hub's memory stays within what is stated below, and another client is served all the while.
#   hostile_client.py DUSKROW-HUB [--slow]     --slow waits for every time limit to run out (a minute and a half)
import contextlib
import os
import socket
import ssl
import subprocess
import sys
import tempfile
import threading
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "sync"))
from hub_process import HubProcess, make_store  # noqa: E402

MIB = 1 << 20
FLOOD = 48 * MIB  # of each endless thing
GROWTH = 24  # MiB that the hub may grow by under all of it
PROGRAMME = "01900000-0000-7000-8000-000000000000"
SEGMENT = f"/v1/programmes/{PROGRAMME}/segments/{'0' * 32}/1-1-{'0' * 64}".encode()
PHOTOGRAPH = f"/v1/programmes/{PROGRAMME}/photographs/{'0' * 64}".encode()


class Target:
    def __init__(self, url, certificate=None):
        self.host, port = url.split("://")[1].split(":")
        self.port = int(port)
        self.context = ssl.create_default_context(cafile=certificate) if certificate else None

    def open(self, timeout=10):
        line = socket.create_connection((self.host, self.port), timeout=timeout)
        return self.context.wrap_socket(line, server_hostname="localhost") if self.context else line


def status_of(line):
    """The status of what comes back; 0 when the line is cut without a word."""
    with contextlib.suppress(OSError):
        first = line.recv(64)
        if first.startswith(b"HTTP/1.1 "):
            return int(first[9:12])
    return 0


def flood(target, start, piece):
    """Sends a beginning and then the same piece again and again; gives bytes taken and status."""
    sent = 0
    with target.open() as line:
        with contextlib.suppress(OSError):
            line.sendall(start)
            while sent < FLOOD:
                line.sendall(piece)
                sent += len(piece)
        return sent, status_of(line)


def once(target, request):
    with target.open() as line:
        with contextlib.suppress(OSError):
            line.sendall(request)
        return status_of(line)


def post(body, head=b""):
    return b"POST /v1/programmes HTTP/1.1\r\nHost: x\r\n" + head + b"Content-Length: %d\r\n\r\n" % len(body) + body


# Name, beginning, piece, statuses that are right. 0: cut off.
FLOODS = [
    ("a request line without end", b"GET /", b"a" * 65536, {431, 400, 0}),
    ("a header without end", b"GET /v1/health HTTP/1.1\r\nHost: x\r\nX: ", b"a" * 65536, {431, 0}),
    ("headers without number", b"GET /v1/health HTTP/1.1\r\nHost: x\r\n", b"X-A: bbbbbbbbbbbb\r\n" * 3000, {431, 0}),
    ("chunks without end", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\n\r\n",
     b"10000\r\n" + b"1" * 65536 + b"\r\n", {413, 0}),
    ("a chunk extension without end", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\n\r\n1;",
     b"a" * 65536, {400, 413, 431, 0}),
    ("a trailer without end", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\n\r\n0\r\nX: ",
     b"a" * 65536, {400, 413, 431, 0}),
    ("more than its length", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nContent-Length: 5\r\n\r\n", b"1" * 65536,
     {400, 401, 415, 0}),
    ("an answer nobody reads", b"", b"GET /v1/metrics HTTP/1.1\r\nHost: x\r\n\r\n" * 500, {200, 429, 0}),
]

SINGLE = [
    ("a length of 64 MiB", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nContent-Length: 67108864\r\n\r\n", {413}),
    ("a photograph of 17 MiB", b"PUT " + PHOTOGRAPH + b" HTTP/1.1\r\nHost: x\r\nContent-Length: 17825792\r\n\r\n", {413}),
    ("a length beyond 64 bits", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nContent-Length: 99999999999999999999\r\n\r\n", {400}),
    ("a negative length", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nContent-Length: -1\r\n\r\n", {400}),
    ("a negative chunk", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\n\r\n-2\r\nabc\r\n", {400}),
    ("a huge chunk", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\n\r\nffffffffffffffff\r\n", {400, 413}),
    ("length and chunks", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nContent-Length: 4\r\n"
     b"Transfer-Encoding: chunked\r\n\r\n0\r\n\r\nGET /v1/health HTTP/1.1\r\nHost: x\r\n\r\n", {400}),
    ("chunks and length", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\n"
     b"Content-Length: 4\r\n\r\n0\r\n\r\n", {400}),
    ("two lengths", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nContent-Length: 4\r\nContent-Length: 5\r\n\r\nabcd", {400}),
    ("another coding", b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: gzip\r\n\r\nabcd", {400, 401, 411, 415, 501, 0}),
    ("no HTTP", b"\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03\r\n\r\n", {400}),
    ("a bare line feed in a header", b"GET /v1/health HTTP/1.1\r\nHost: x\nX: y\r\n\r\n", {400}),
    ("JSON 15,000 deep", post(b"[" * 15000), {400}),
    ("JSON 200,000 deep", post(b"[" * 200000), {413}),
    ("JSON with a key twice", post(b'{"name":"a","name":"b"}'), {400}),
    ("a path that climbs", b"GET /v1/../../etc/passwd HTTP/1.1\r\nHost: x\r\n\r\n", {404}),
    ("a path of slashes", b"GET " + b"/" * 8000 + b" HTTP/1.1\r\nHost: x\r\n\r\n", {404}),
    ("a method of its own", b"BREW /v1/health HTTP/1.1\r\nHost: x\r\n\r\n", {405, 400}),
    ("SQL for a token", b"GET /v1/programmes/" + PROGRAMME.encode()
     + b"/state HTTP/1.1\r\nHost: x\r\nAuthorization: Bearer ' OR 1=1 --\r\n\r\n", {401}),
    ("SQL for a programme", b"GET /v1/programmes/'%20OR%201=1/state HTTP/1.1\r\nHost: x\r\n\r\n", {404}),
]


class Bystander(threading.Thread):
    """Another client: asks for the hub's health again and again, from another address of this machine."""

    def __init__(self, target):
        super().__init__(daemon=True)
        self.target = target
        self.isDone = threading.Event()
        self.asked = 0
        self.slowest = 0.0
        self.faults = []

    def run(self):
        while not self.isDone.is_set():
            began = time.monotonic()
            try:
                line = socket.create_connection((self.target.host, self.target.port), 10, ("127.0.0.2", 0))
                if self.target.context:
                    line = self.target.context.wrap_socket(line, server_hostname="localhost")
                with line:
                    line.sendall(b"GET /v1/health HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n")
                    if status_of(line) != 200:
                        self.faults.append("not served")
            except OSError as failure:
                self.faults.append(repr(failure))
            self.asked += 1
            self.slowest = max(self.slowest, time.monotonic() - began)
            time.sleep(0.2)


def idle_lines(target, number):
    """Opens many lines that say nothing; gives those that the hub keeps."""
    lines = []
    for _ in range(number):
        with contextlib.suppress(OSError):
            line = socket.create_connection((target.host, target.port), 5)
            lines.append(line)
    time.sleep(0.5)
    kept = []
    for line in lines:
        line.setblocking(False)
        try:
            if line.recv(1):
                kept.append(line)
        except BlockingIOError:
            kept.append(line)
        except OSError:
            pass
    return lines, kept


def drip(target, start, seconds):
    """One byte a second; gives after how many seconds the hub had enough."""
    began = time.monotonic()
    with target.open() as line:
        line.sendall(start)
        line.settimeout(1)
        while time.monotonic() - began < seconds:
            try:
                line.sendall(b"a")
                line.recv(64)
                return time.monotonic() - began
            except TimeoutError:
                continue
            except OSError:
                return time.monotonic() - began
    return None


class Trial:
    def __init__(self, program, certificate):
        self.program = program
        self.certificate = certificate
        self.faults = []

    def expect(self, holds, what):
        if not holds:
            self.faults.append(what)
            print("  FAULT:", what)

    def attack(self, hub, target):
        for name, start, piece, right in FLOODS:
            sent, status = flood(target, start, piece)
            print(f"  {name}: {sent / MIB:.1f} MiB taken, {status or 'cut off'}; {hub.memory_mib():.0f} MiB")
            self.expect(status in right, f"{name}: {status}")
            self.expect(sent < FLOOD, f"{name}: never refused")
        for name, request, right in SINGLE:
            status = once(target, request)
            self.expect(status in right, f"{name}: {status}")
        print(f"  {len(SINGLE)} single requests that no client sends: refused")

    def crowd(self, target):
        lines, kept = idle_lines(target, 1000)
        self.expect(len(kept) <= 64, f"{len(kept)} idle connections of one address")
        print(f"  1,000 idle connections of one address: {len(kept)} kept")
        return lines

    def run(self, isSlow):
        with tempfile.TemporaryDirectory() as folder:
            store = make_store(folder)
            tls = ["--tls-cert", self.certificate[0], "--tls-key", self.certificate[1]] if self.certificate else []
            with HubProcess(self.program, store, *tls) as hub:
                target = Target(hub.url, self.certificate and self.certificate[0])
                once(target, b"GET /v1/health HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n")
                before = hub.memory_mib()
                bystander = Bystander(target)
                bystander.start()
                self.attack(hub, target)
                lines = self.crowd(target)
                if isSlow:
                    self.slow(target, lines)
                for line in lines:
                    line.close()
                bystander.isDone.set()
                bystander.join()
                grown = hub.memory_mib() - before
                print(f"  memory {before:.0f} MiB, grown by {grown:.1f} MiB; bystander served {bystander.asked} times, "
                      f"slowest {bystander.slowest * 1000:.0f} ms")
                self.expect(grown < GROWTH, f"memory grew by {grown:.0f} MiB")
                self.expect(not bystander.faults, f"others were not served: {bystander.faults[:3]}")
                self.expect(bystander.asked > 3, "nobody else asked")
                self.expect(hub.end() == 0, "the hub did not end by itself")

    def slow(self, target, lines):
        for line in lines:
            line.close()
        time.sleep(1)
        after = drip(target, b"GET /v1/health HTTP/1.1\r\nHo", 20)
        self.expect(after is not None and after < 15, f"a header of one byte a second: {after}")
        after = drip(target, b"PUT " + SEGMENT + b" HTTP/1.1\r\nHost: x\r\nContent-Length: 100000\r\n\r\n", 90)
        self.expect(after is not None and 50 < after < 75, f"a body of one byte a second: {after}")
        print(f"  a body of one byte a second: cut off after {after or 0:.0f} s")


def make_certificate(folder):
    certificate, key = os.path.join(folder, "cert.pem"), os.path.join(folder, "key.pem")
    subprocess.run(["openssl", "req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes",
                    "-keyout", key, "-out", certificate, "-days", "2", "-subj", "/CN=localhost",
                    "-addext", "subjectAltName=DNS:localhost"], check=True, capture_output=True)
    return certificate, key


def main():
    program, isSlow = sys.argv[1], "--slow" in sys.argv
    faults = []
    with tempfile.TemporaryDirectory() as folder:
        for name, certificate in (("plain", None), ("TLS", make_certificate(folder))):
            print(name)
            trial = Trial(program, certificate)
            trial.run(isSlow)
            faults += trial.faults
    print("Sound." if not faults else f"{len(faults)} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
