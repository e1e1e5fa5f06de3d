# SPDX-License-Identifier: MIT
"""Has the programs write segments and a carried file, and reads them with read_segment.py.

    read_by_another.py SAMPLES
"""
import pathlib
import subprocess
import sys
import tempfile

import read_segment


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        subprocess.run([sys.argv[1], name], check=True)
        samples = sorted(folder.glob("*.seg")) + sorted(folder.glob("*.dusk"))
        assert len(samples) == 4, samples
        for sample in samples:
            wanted = sample.with_suffix(".txt").read_bytes()
            shown = subprocess.run([sys.executable, read_segment.__file__, str(sample)], stdout=subprocess.PIPE,
                                   check=True).stdout
            assert shown == wanted and shown.count(b"\n") >= 10, sample
            data = sample.read_bytes()
            refused = 0
            for at in range(0, len(data), 7):
                for damaged in (data[:at] + bytes([data[at] ^ 0x10]) + data[at + 1:], data[:at]):
                    try:
                        read_segment.read(damaged)
                    except read_segment.Refused:
                        refused += 1
                    else:
                        sys.exit(f"{sample.name}: damage at {at} was not noticed")
            print(f"{sample.name}: {len(data)} bytes, {wanted.count(10)} lines, {refused} damaged ones refused")


main()
