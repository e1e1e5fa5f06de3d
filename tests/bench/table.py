# SPDX-License-Identifier: MIT
"""One table of runs: medians of each program.

    table.py OURS.jsonl [PEERS.jsonl [TEXT...]]
                                         TEXT is what a program printed that writes no JSON: `run N`, then lines
                                         like `push1_ms 12 up 34 down 56`. Fails when push, pull and second exchange together are not five times
                                         faster than those of the fastest program beside ours
"""
import collections
import json
import pathlib
import statistics
import sys

WANTED = 5


def runs_in(name):
    runs = collections.defaultdict(list)
    with open(name, encoding="utf-8") as lines:
        for line in lines:
            run = json.loads(line)
            runs[run["tool"]].append(run)
    return runs


def runs_in_text(name):
    """Bytes go by the name of the time before them: push1_up, push1_down."""
    runs = []
    with open(name, encoding="utf-8") as lines:
        for words in map(str.split, lines):
            if words[:1] == ["run"]:
                runs.append({"tool": pathlib.Path(name).stem})
            elif runs and words and words[0].endswith("_ms"):
                runs[-1][words[0]] = float(words[1])
                for key, value in zip(words[2::2], words[3::2]):
                    if key in ("up", "down"):
                        runs[-1][f"{words[0].removesuffix('_ms')}_{key}"] = float(value)
            elif runs and "disk_final" in words:
                runs[-1]["disk_bytes"] = float(words[-1])
    whole = [run for run in runs if {"push1_ms", "pull1_ms", "sync2_ms"} <= run.keys()]
    return {whole[0]["tool"]: whole} if whole else {}


def median(runs, *names):
    return statistics.median(sum(run.get(name) or 0 for name in names) for run in runs)


def disk_of(run):
    """Bytes of the first device."""
    disk = run.get("disk_final") or run.get("db_bytes") or {"A": run.get("disk_bytes", 0)}
    return next(iter(disk.values()))


def row_of(tool, runs):
    push, pull = median(runs, "push1_ms"), median(runs, "pull1_ms")
    second = median(runs, "sync2_ms")
    return {
        "tool": tool, "made": median(runs, "create_ms", "edit_ms"), "push": push, "pull": pull, "second": second,
        "sum": median(runs, "push1_ms", "pull1_ms", "sync2_ms"),
        "first": median(runs, "push1_up", "push1_down", "pull1_up", "pull1_down"),
        "again": median(runs, "sync2_up", "sync2_down"), "disk": statistics.median(map(disk_of, runs)),
        "memory": max(median(runs, "rss_client_mb"), median(runs, "rss_mb")),
        "kept": median(runs, "same_field_conflict_detectable"), "merged": median(runs, "diff_field_merged"),
    }


def main():
    ours = [row_of(tool, runs) for tool, runs in runs_in(sys.argv[1]).items()]
    beside = dict(runs_in(sys.argv[2])) if len(sys.argv) > 2 else {}
    for name in sys.argv[3:]:
        beside |= runs_in_text(name)
    peers = [row_of(tool, runs) for tool, runs in beside.items()]
    print(f"\n{'program':<34}{'made':>7}{'push':>7}{'pull':>7}{'second':>7}{'sum ms':>8}{'first kB':>10}{'second kB':>10}"
          f"{'disk MB':>9}{'memory MB':>10}{'kept':>6}{'merged':>7}")
    for row in ours + sorted(peers, key=lambda row: row["sum"]):
        print(f"{row['tool'][:33]:<34}{row['made']:>7.0f}{row['push']:>7.0f}{row['pull']:>7.0f}{row['second']:>7.0f}{row['sum']:>8.0f}"
              f"{row['first'] / 1e3:>10.0f}{row['again'] / 1e3:>10.0f}{row['disk'] / 1e6:>9.1f}{row['memory']:>10.0f}"
              f"{row['kept']:>6.0f}{row['merged']:>7.0f}")
    if len(sys.argv) < 3:
        return 0
    if not peers:
        print("No program beside ours ran.")
        return 1
    fastest = min(peers, key=lambda row: row["sum"])
    ratio = fastest["sum"] / ours[0]["sum"]
    print(f"{ratio:.1f} times faster than {fastest['tool']}, limit {WANTED}{'' if ratio >= WANTED else '  NOT HELD'}")
    return 0 if ratio >= WANTED else 1


sys.exit(main())
