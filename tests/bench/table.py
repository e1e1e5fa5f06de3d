# SPDX-License-Identifier: MIT
"""One table of runs: medians of each program.

    table.py OURS.jsonl [PEERS.jsonl]    fails when push, pull and second exchange together are not five times
                                         faster than those of the fastest program beside ours
"""
import collections
import json
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
        "tool": tool, "push": push, "pull": pull, "second": second,
        "sum": median(runs, "push1_ms", "pull1_ms", "sync2_ms"),
        "first": median(runs, "push1_up", "push1_down", "pull1_up", "pull1_down"),
        "again": median(runs, "sync2_up", "sync2_down"), "disk": statistics.median(map(disk_of, runs)),
        "memory": max(median(runs, "rss_client_mb"), median(runs, "rss_mb")),
        "kept": median(runs, "same_field_conflict_detectable"), "merged": median(runs, "diff_field_merged"),
    }


def main():
    ours = [row_of(tool, runs) for tool, runs in runs_in(sys.argv[1]).items()]
    peers = [row_of(tool, runs) for tool, runs in runs_in(sys.argv[2]).items()] if len(sys.argv) > 2 else []
    print(f"\n{'program':<34}{'push':>7}{'pull':>7}{'second':>7}{'sum ms':>8}{'first kB':>10}{'second kB':>10}"
          f"{'disk MB':>9}{'memory MB':>10}{'kept':>6}{'merged':>7}")
    for row in ours + sorted(peers, key=lambda row: row["sum"]):
        print(f"{row['tool'][:33]:<34}{row['push']:>7.0f}{row['pull']:>7.0f}{row['second']:>7.0f}{row['sum']:>8.0f}"
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
