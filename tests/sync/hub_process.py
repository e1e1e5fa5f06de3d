# SPDX-License-Identifier: MIT
# A hub process for tests: started on a free port, stopped in every case.
import os
import re
import signal
import subprocess


class HubProcess:
    def __init__(self, program, store, *options, listen="127.0.0.1:0", log=None):
        self.log = open(log or os.devnull, "ab")
        self.process = subprocess.Popen(
            [program, "serve", "--store", store, "--listen", listen, *options],
            stdout=subprocess.PIPE, stderr=self.log, text=True, env=with_small_quarantine())
        line = self.process.stdout.readline()
        found = re.match(r"Serving at (https?://\S+)", line)
        if not found:
            raise SystemExit(f"the hub did not begin: {line!r}")
        self.url = found.group(1)
        self.pid = self.process.pid

    def __enter__(self):
        return self

    def __exit__(self, *_):
        if self.process.poll() is None:
            self.process.kill()
        self.process.wait()
        self.process.stdout.close()
        self.log.close()

    def end(self, number=signal.SIGTERM, timeout=20):
        self.process.send_signal(number)
        return self.process.wait(timeout)

    def memory_mib(self):
        with open(f"/proc/{self.pid}/status", encoding="ascii") as status:
            for line in status:
                if line.startswith("VmRSS"):
                    return int(line.split()[1]) / 1024
        return 0


def with_small_quarantine():
    """AddressSanitizer holds back up to 256 MiB of what was freed; that is not the hub's own memory."""
    small = "quarantine_size_mb=1:thread_local_quarantine_size_kb=64"
    return {**os.environ, "ASAN_OPTIONS": f"{os.environ.get('ASAN_OPTIONS', '')}:{small}".lstrip(":")}


def run(program, *arguments, wanted=0):
    done = subprocess.run([program, *arguments], capture_output=True, text=True, check=False)
    if done.returncode != wanted:
        raise SystemExit(f"{arguments}: {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def make_store(folder):
    """A file, or a database of its own when DUSKROW_POSTGRES names a server."""
    server = os.environ.get("DUSKROW_POSTGRES")
    if not server:
        return os.path.join(folder, "hub.db")
    name = "p" + os.urandom(6).hex()
    subprocess.run(["psql", "-q", server, "-c", f"CREATE DATABASE {name}"], check=True)
    return server.replace("/postgres?", f"/{name}?")
