# SPDX-License-Identifier: MIT
"""Writes nasty tables with our writer, reads them with the csv module of Python, and compares."""
import csv
import io
import json
import random
import re
import subprocess
import sys

NASTY = ["", " ", "a", "a,b", 'say "moth"', '"', '""', "line\nbreak", "line\r\nbreak", "\r", "\n", "\t", "tab\tinside",
         "=1+1", "+cmd", "-2+3", "@SUM(A1)", "\t=1", "\r=1", "'", "''", "'=1", "''-x", "-5", "+5.25", "-1e9", "1,5",
         "Żółw", "蛾の数", "🦋", "e\u0301", "\u200f‏rtl", "\u2028", "\x0b", "a" * 70000, ",", ",,", "NULL", "0", " x "]
NUMBER = re.compile(r"[+-]?[0-9]+(\.[0-9]+)?([eE][+-]?[0-9]+)?")


def guarded(text):
    """The rule of the format, told once more: an apostrophe before what a spreadsheet would run."""
    rest = text.lstrip("'")
    runs = rest[:1] in ("=", "+", "-", "@", "\t", "\r") and rest != ""
    return "'" + text if runs and not NUMBER.fullmatch(text) else text


def check(header, rows, mark):
    wanted = json.dumps({"header": header, "rows": rows, "mark": mark}).encode()
    raw = subprocess.run([sys.argv[1], "csv"], input=wanted, stdout=subprocess.PIPE, check=True).stdout
    assert raw.startswith(b"\xef\xbb\xbf") == mark
    text = raw.decode("utf-8-sig")
    found = list(csv.reader(io.StringIO(text, newline=""), strict=True))
    expected = [[guarded(cell or "") for cell in row] for row in [header] + rows]
    if found != expected:
        for read, wrote in zip(found, expected):
            if read != wrote:
                sys.exit(f"read {read!r}, expected {wrote!r}")
        sys.exit(f"{len(found)} rows read, {len(expected)} written")
    for row in found:
        for cell in row:
            assert cell[:1] not in ("=", "+", "-", "@", "\t", "\r") or cell == "" or NUMBER.fullmatch(cell), cell


def main():
    csv.field_size_limit(1000000)
    check(["text", "missing", "again"], [[text, None, text] for text in NASTY], False)
    check(["only"], [[text] for text in NASTY] + [[None]], True)
    check(["no", "rows"], [], False)
    seed = 20260714
    print("seed", seed)
    draw = random.Random(seed)
    letters = list(",\"\r\n\t '=+-@ab1.eé🦋")
    for width in (1, 2, 5):
        rows = [[None if draw.random() < 0.1 else "".join(draw.choices(letters, k=draw.randint(0, 8)))
                 for _ in range(width)] for _ in range(2000)]
        check([f"column {i}" for i in range(width)], rows, False)


main()
