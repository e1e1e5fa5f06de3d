# SPDX-License-Identifier: MIT
"""Reads a segment or a carried file as sync/FORMAT.md describes them, with nothing of the programs.

    read_segment.py FILE    prints every change, or '-' and a leaf hash where one was left out; says what is wrong
"""
import hashlib
import json
import sys
import uuid

import nacl.exceptions
import nacl.signing
import zstandard

import turned_lines

MIB = 1 << 20


class Refused(Exception):
    pass


def demand(holds, what):
    if not holds:
        raise Refused(what)


def hash_of(data):
    return hashlib.blake2b(data, digest_size=32).digest()


def number(data):
    return int.from_bytes(data, "little")


def canonical(data, what):
    """The value of canonical JSON; writing it again must give the same bytes."""
    def once(pairs):
        demand(len({key for key, _ in pairs}) == len(pairs), what + ": a key twice")
        return dict(pairs)

    def never(text):
        raise Refused(what + ": " + text + " is no whole number")
    try:
        value = json.loads(data.decode("utf-8"), object_pairs_hook=once, parse_float=never, parse_constant=never)
        again = json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":")).encode("utf-8")
    except (ValueError, RecursionError) as error:
        raise Refused(what + ": " + str(error)) from error
    demand(again == data, what + ": not canonical")
    return value


def unpack(payload, limit):
    try:
        frame = zstandard.get_frame_parameters(payload)
        demand(0 < frame.content_size <= limit, "content size")
        demand(frame.window_size <= max(8 * MIB, frame.content_size), "window")
        unpacker = zstandard.ZstdDecompressor().decompressobj()
        raw = unpacker.decompress(payload)
    except zstandard.ZstdError as error:
        raise Refused("payload: " + str(error)) from error
    demand(unpacker.eof and not unpacker.unused_data and len(raw) == frame.content_size, "one frame")
    try:
        lines = turned_lines.turn_back(raw)
    except turned_lines.Damaged as error:
        raise Refused("turned: " + str(error)) from error
    demand(len(lines) <= limit, "grows beyond its bounds")
    return lines


def read_segment(data):
    demand(len(data) <= 2 * MIB, "size")
    demand(len(data) > 115 and number(data[-40:-32]) == len(data) and hash_of(data[:-32]) == data[-32:],
           "not finished copying")
    demand(data[:6] == b"DSEG1\n", "magic")
    header_length = number(data[6:10])
    demand(header_length <= 16384 and 10 + header_length + 1 + 104 <= len(data), "header length")
    header_bytes = data[10:10 + header_length]
    form = data[10 + header_length]
    payload = data[11 + header_length:-104]
    signature = data[-104:-40]
    demand(form in (0, 1) and (form == 1 or len(payload) <= MIB), "form")
    header = canonical(header_bytes, "header")
    count = header["last"] - header["first"] + 1
    demand(header["format"] == 1 and 1 <= count <= 5000 and 1 <= header["raw"] <= 8 * MIB, "header")
    demand((header["prev"] == "") == (header["first"] == 1), "prev")
    key = bytes.fromhex(header["key"])
    programme = uuid.UUID(header["programme"]).bytes
    demand(hash_of(b"stream-v1" + key + programme)[:16].hex() == header["stream"], "stream")
    try:
        nacl.signing.VerifyKey(key).verify(b"DSEG1-signed" + header_bytes, signature)
    except nacl.exceptions.BadSignatureError as error:
        raise Refused("signature") from error
    demand(header["needs"] == [], "needs")
    raw = unpack(payload, header["raw"] + (66 * count if form == 1 else 0))
    demand(form == 1 or len(raw) == header["raw"], "raw")
    demand(raw.endswith(b"\n"), "lines")
    lines = raw[:-1].split(b"\n")
    demand(len(lines) == count and b"" not in lines, "lines")
    leaves = [bytes.fromhex(line[1:].decode()) if form == 1 and line[:1] == b"-" else hash_of(b"DSEG1-leaf" + line)
              for line in lines]
    demand(hash_of(b"DSEG1-root" + b"".join(leaves)).hex() == header["root"], "root")
    for due, line in enumerate(lines, header["first"]):
        if form == 1 and line[:1] == b"-":
            continue
        change = canonical(line, "change")
        demand(len(line) <= 65536 and (change["programme"], change["stream"], change["seq"])
               == (header["programme"], header["stream"], due), "change of another segment")
    return lines


def read_carried(data):
    lines = []
    at = 6
    counted = {b"s": 0, b"p": 0}
    while True:
        letter, length = data[at:at + 1], number(data[at + 1:at + 9])
        body = data[at + 9:at + 9 + length]
        demand(at + 9 + length <= len(data) and letter, "cut")
        at += 9 + length
        if letter == b"i":
            break
        counted[letter] = counted.get(letter, 0) + 1
        if letter == b"s":
            lines += read_segment(body)
    end = canonical(body, "end")
    demand(data[at:] == hash_of(data[:at]), "hash of the file")
    demand((end["segments"], end["photographs"]) == (counted[b"s"], counted[b"p"]), "counts")
    return lines


def read(data):
    return read_carried(data) if data[:6] == b"DUSK1\n" else read_segment(data)


def main():
    with open(sys.argv[1], "rb") as file:
        data = file.read()
    try:
        for line in read(data):
            sys.stdout.buffer.write(line + b"\n")
    except Refused as why:
        sys.exit("refused: " + str(why))


if __name__ == "__main__":
    main()
