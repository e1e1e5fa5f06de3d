#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
# A client of the hub written from sync/FORMAT.md alone, to see that the page says enough.
#   hub_client.py URL CODE     founds a programme with the code, invites, joins, exchanges, prints what was read
import hashlib
import http.client
import json
import os
import ssl
import sys
import time
import urllib.parse
import uuid

import nacl.bindings
import nacl.pwhash
import nacl.signing
import zstandard

import turned_lines


def digest(data):
    return hashlib.blake2b(data, digest_size=32).digest()


def canonical(value):
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode()


def time_id():
    """A UUID of version 7."""
    number = int(time.time() * 1000) << 80 | 7 << 76 | int.from_bytes(os.urandom(2), "big") % 4096 << 64
    return str(uuid.UUID(int=number | 2 << 62 | int.from_bytes(os.urandom(8), "big") % (1 << 62)))


def key_of_code(code):
    plain = code.upper().replace("-", "").replace("I", "1").replace("L", "1").replace("O", "0")
    salt = digest(b"duskrow-invitation-v1")[:16]
    seed = nacl.pwhash.argon2id.kdf(32, plain.encode(), salt, opslimit=2, memlimit=64 << 20)
    return nacl.signing.SigningKey(seed)


def stream_of(key, programme):
    return digest(b"stream-v1" + key + uuid.UUID(programme).bytes)[:16].hex()


def join_proof(invitation, programme, stream):
    text = b"duskrow-join-v1" + uuid.UUID(programme).bytes + bytes.fromhex(stream)
    return invitation.sign(text).signature.hex()


class Refused(Exception):
    def __init__(self, status, answer):
        super().__init__(f"{status} {answer}")
        self.status = status
        self.answer = answer


class Line:
    """One connection to a hub."""

    def __init__(self, url, context=None):
        self.url = urllib.parse.urlparse(url)
        self.context = context
        self.open()

    def open(self):
        if self.url.scheme == "https":
            self.http = http.client.HTTPSConnection(self.url.hostname, self.url.port, timeout=30, context=self.context)
        else:
            self.http = http.client.HTTPConnection(self.url.hostname, self.url.port, timeout=30)

    def ask(self, method, path, body=None, token=None, kind=None, headers=None):
        sent = dict(headers or {})
        if token:
            sent["Authorization"] = "Bearer " + token
        if kind:
            sent["Content-Type"] = kind
        for last in (False, True):
            try:
                self.http.request(method, "/v1" + path, body, sent)
                answer = self.http.getresponse()
                return answer.status, dict(answer.getheaders()), answer.read()
            except (http.client.HTTPException, OSError):
                self.http.close()
                if last:
                    raise
                self.open()

    def ask_json(self, method, path, value=None, token=None, wanted=(200, 201)):
        body = canonical(value) if value is not None else None
        status, _, answer = self.ask(method, path, body, token)
        if status not in wanted:
            raise Refused(status, answer.decode())
        return json.loads(answer)


def found(line, code):
    """Founds a programme; gives the phone that did."""
    invitation = key_of_code(code)
    name = line.ask_json("GET", "/invitations/" + invitation.verify_key.encode().hex())["name"]
    phone = Phone(line, time_id())
    line.ask_json("POST", "/programmes", {
        "invitation": invitation.verify_key.encode().hex(), "key": phone.key.hex(), "name": name,
        "programme": phone.programme, "proof": join_proof(invitation, phone.programme, phone.stream),
        "stream": phone.stream})
    phone.get_token()
    phone.write("member", phone.member, {"name": "Ida", "role": "coordinator"})
    phone.write("device", time_id(), {"key": phone.key.hex(), "label": "Ida's phone", "member": phone.member,
                                      "stream": phone.stream})
    phone.push()
    return phone


def join(line, code, label="a phone"):
    """Joins with an invitation; gives the new phone."""
    invitation = key_of_code(code) if isinstance(code, str) else code
    told = line.ask_json("GET", "/invitations/" + invitation.verify_key.encode().hex())
    phone = Phone(line, told["programme"])
    phone.write("device", time_id(), {
        "invitation": told["invitation"], "key": phone.key.hex(), "label": label,
        "proof": join_proof(invitation, phone.programme, phone.stream), "stream": phone.stream})
    _, body = phone.seal()
    status, _, answer = line.ask("POST", f"/programmes/{phone.programme}/join", body, kind="application/octet-stream")
    if status not in (200, 201):
        raise Refused(status, answer.decode())
    phone.get_token()
    return phone


class Phone:
    """A device in one programme: its log, and what it has read of others."""

    def __init__(self, line, programme):
        self.line = line
        self.programme = programme
        self.secret = nacl.signing.SigningKey.generate()
        self.key = self.secret.verify_key.encode()
        self.stream = stream_of(self.key, programme)
        self.member = time_id()
        self.lines = []
        self.sealed = 0
        self.previous = ""
        self.token = None
        self.after = 0
        self.scope = self.epoch = None
        self.read = {}  # (stream, number) -> change, None when left out

    def write(self, kind, record, fields, site=None):
        change = {"at_ms": int(time.time() * 1000), "author": self.member, "f": {n: {"v": v} for n, v in fields.items()},
                  "format": 1, "id": record, "kind": kind, "offset_min": 0, "programme": self.programme,
                  "seq": len(self.lines) + 1, "stream": self.stream}
        if site:
            change["site"] = site
        self.lines.append(canonical(change))

    def seal(self):
        """The next segment: its name in the path, its bytes."""
        lines = self.lines[self.sealed:self.sealed + 5000]
        raw = b"".join(line + b"\n" for line in lines)
        times = [json.loads(line)["at_ms"] for line in lines]
        leaves = b"".join(digest(b"DSEG1-leaf" + line) for line in lines)
        first, last = self.sealed + 1, self.sealed + len(lines)
        header = canonical({
            "at_ms": [min(times), max(times)], "cites": {}, "first": first, "format": 1, "key": self.key.hex(), "last": last,
            "needs": [], "prev": self.previous, "programme": self.programme, "raw": len(raw),
            "root": digest(b"DSEG1-root" + leaves).hex(), "roster": 0, "stream": self.stream})
        body = b"DSEG1\n" + len(header).to_bytes(4, "little") + header + b"\0" + zstandard.ZstdCompressor(level=3).compress(raw)
        body += self.secret.sign(b"DSEG1-signed" + header).signature
        body += (len(body) + 40).to_bytes(8, "little")
        body += digest(body)
        self.previous = digest(b"DSEG1-id" + header).hex()
        self.sealed = last
        return f"{self.stream}/{first}-{last}-{self.previous}", body

    def put(self, name, body):
        return self.line.ask("PUT", f"/programmes/{self.programme}/segments/{name}", body, self.token,
                             "application/octet-stream")

    def push(self):
        """Pushes all that is not sealed yet; gives the receipts."""
        receipts = []
        while self.sealed < len(self.lines):
            status, _, answer = self.put(*self.seal())
            if status not in (200, 201):
                raise Refused(status, answer.decode())
            receipts.append(json.loads(answer))
        return receipts

    def get_token(self):
        path = f"/programmes/{self.programme}"
        nonce = self.line.ask_json("POST", path + "/challenge", {"stream": self.stream})["nonce"]
        text = b"duskrow-token-v1" + uuid.UUID(self.programme).bytes + bytes.fromhex(nonce)
        self.token = self.line.ask_json("POST", path + "/token", {
            "nonce": nonce, "proof": self.secret.sign(text).signature.hex(), "stream": self.stream})["token"]

    def invite(self, role):
        """A code for a new member."""
        letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
        code = "".join(letters[byte % 32] for byte in os.urandom(10))
        self.invite_key(role, key_of_code(code).verify_key.encode())
        return code[:5] + "-" + code[5:]

    def invite_key(self, role, key):
        member = time_id()
        self.write("member", member, {"name": "Tom", "role": role})
        self.write("invitation", time_id(), {"key": key.hex(), "member": member, "until_day": "2099-12-31"})

    def state(self):
        return self.line.ask_json("GET", f"/programmes/{self.programme}/state", token=self.token)

    def pull(self, most=1 << 20):
        """Reads all that is new."""
        while True:
            status, headers, page = self.line.ask(
                "GET", f"/programmes/{self.programme}/segments?after={self.after}&most={most}", token=self.token)
            if status not in (200, 204):
                raise Refused(status, page.decode())
            seen = headers["Duskrow-Scope"], headers["Duskrow-Epoch"]
            if (self.scope, self.epoch) != (None, None) and (self.scope, self.epoch) != seen:
                self.after = 0
                self.scope, self.epoch = seen
                continue
            self.scope, self.epoch = seen
            if status == 204:
                return
            at = 0
            while at < len(page):
                assert page[at:at + 1] == b"s"
                size = int.from_bytes(page[at + 1:at + 9], "little")
                self.take(page[at + 9:at + 9 + size])
                at += 9 + size
            self.after = int(headers["Duskrow-Next"])

    def take(self, body):
        """Checks a segment in the order of section 3 and reads it."""
        assert digest(body[:-32]) == body[-32:] and int.from_bytes(body[-40:-32], "little") == len(body)
        assert body[:6] == b"DSEG1\n"
        end = 10 + int.from_bytes(body[6:10], "little")
        assert end <= 10 + 16384
        header_bytes = body[10:end]
        header = json.loads(header_bytes)
        assert canonical(header) == header_bytes and header["programme"] == self.programme
        key = bytes.fromhex(header["key"])
        assert stream_of(key, self.programme) == header["stream"]
        nacl.signing.VerifyKey(key).verify(b"DSEG1-signed" + header_bytes, body[-104:-40])
        raw = turned_lines.turn_back(
            zstandard.ZstdDecompressor().decompress(body[end + 1:-104], max_output_size=16 << 20))
        lines = raw.split(b"\n")[:-1]
        assert len(lines) == header["last"] - header["first"] + 1
        leaves = b""
        for line in lines:
            leaves += bytes.fromhex(line[1:].decode()) if line[:1] == b"-" else digest(b"DSEG1-leaf" + line)
        assert digest(b"DSEG1-root" + leaves).hex() == header["root"]
        for number, line in enumerate(lines, header["first"]):
            change = None if line[:1] == b"-" else json.loads(line)
            if change is not None:
                assert (change["stream"], change["seq"]) == (header["stream"], number)
            key = header["stream"], number
            if change is not None or key not in self.read:
                self.read[key] = change


def main():
    url, code = sys.argv[1:]
    ida = found(Line(url), code)
    site, field = time_id(), time_id()
    ida.write("site", field, {"name": "Home quarter"}, field)
    invitation = ida.invite("grower")
    ida.push()
    tom = join(Line(url), invitation, "Tom's phone")
    tom.write("site", site, {"name": "North field"}, site)
    tom.write("visit", time_id(), {"moths": 12}, site)
    tom.push()
    for name, phone in (("Ida", ida), ("Tom", tom)):
        phone.pull()
        changes = [change for change in phone.read.values() if change]
        print(f"{name} reads {len(changes)} of {len(phone.read)} changes:",
              ", ".join(change["kind"] for change in changes))


if __name__ == "__main__":
    main()
