# SPDX-License-Identifier: MIT
# Somebody with a device: a folder of its own, and the app over it, used by taps and keys.
import json
import os
import signal
import subprocess
import time


class Person:
    def __init__(self, name, program, folder, pictures=None):
        self.name = name
        self.program = program
        self.home = os.path.join(folder, name)
        self.pictures = pictures
        self.process = None
        self.taps = 0
        self.screen = []
        self.longest_close = 0.0
        os.makedirs(self.home)

    # Where the app keeps its programme when nobody says otherwise, on a device of its own.
    def environment(self):
        return {**os.environ, "HOME": self.home, "XDG_DATA_HOME": self.path("data"), "XDG_CONFIG_HOME": self.path("config"),
                "LC_ALL": "C.UTF-8", "TZ": "UTC", "QT_QPA_PLATFORM": "offscreen", "QT_FORCE_STDERR_LOGGING": "1"}

    def path(self, name):
        return os.path.join(self.home, name)

    @property
    def keys(self):
        return self.path("data/duskrow/duskrow/keys")

    @property
    def store(self):
        """The programme that stands open: the newest, once another was joined."""
        folder = self.path("data/duskrow/duskrow")
        files = [os.path.join(folder, name) for name in os.listdir(folder) if name.endswith(".duskrow")]
        return max(files, key=os.path.getctime)

    def opens(self, day, *opened):
        assert self.process is None, f"{self.name} has the app open"
        with open(self.path("log"), "ab") as log:
            self.process = subprocess.Popen(
                [self.program, "--today", day, *opened], stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=log,
                text=True, env=self.environment())

    def act(self, verb, what=""):
        try:
            self.process.stdin.write(f"{verb} {what}\n")
            self.process.stdin.flush()
            line = self.process.stdout.readline()
        except BrokenPipeError:
            line = ""
        if not line:
            self.process.wait(20)
            raise SystemExit(f"{self.name}’s app ended with {self.process.returncode} at: {verb} {what}\n{self.logged()}")
        answer = json.loads(line)
        self.screen = answer["screen"]
        if not answer["ok"]:
            if self.pictures:
                self.process.stdin.write(f"picture {os.path.join(self.pictures, 'stopped-here.png')}\n")
                self.process.stdin.flush()
                self.process.stdout.readline()
            raise SystemExit(f"{self.name}: {verb} {what}: {answer['why']}. The screen says:\n    "
                             + "\n    ".join(self.screen) + "\n" + self.logged())
        return answer

    def logged(self):
        with open(self.path("log"), encoding="utf-8", errors="replace") as log:
            return log.read()[-4000:]

    def tap(self, *names):
        for name in names:
            self.act("tap", name)
            self.taps += 1

    def tap_one_of(self, *names):
        """The first of them that is on the screen."""
        self.act("screen")
        self.tap(next((name for name in names if f"[{name}]" in self.screen), names[0]))

    def tap_what_begins(self, beginning):
        self.tap(self.says(beginning).strip("[*]"))

    def goes_to(self, place):
        """One of the places along the bottom, out of whatever page stands open."""
        self.act("screen")
        while "Places" not in self.screen:
            self.tap("Go back")
            self.act("screen")
        self.tap_what_begins(f"[{place}" if f"[{place}]" in self.screen else f"[{place},")

    def type_in(self, label, text):
        """Into the field of that name, in the stead of what stands there."""
        self.tap(label)
        self.act("replace", text)

    def see(self, *texts):
        for text in texts:
            self.act("see", text)

    def gone(self, text):
        self.act("gone", text)

    def says(self, text):
        """The line of the screen that begins so, else one that holds it."""
        self.see(text)
        lines = [line for line in self.screen if text in line]
        return next((line for line in lines if line.lstrip("[(*").startswith(text.lstrip("["))), lines[0])

    def picture(self, name):
        if self.pictures:
            self.act("picture", os.path.join(self.pictures, f"{name}.png"))

    def closes(self):
        began = time.monotonic()
        self.process.stdin.write("quit\n")
        self.process.stdin.close()
        code = self.process.wait(60)
        self.longest_close = max(self.longest_close, time.monotonic() - began)
        self.process.stdout.close()
        self.process = None
        if code != 0:
            raise SystemExit(f"{self.name}'s app ended with {code}\n{self.logged()}")

    def is_killed(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait(20)
        self.process.stdin.close()
        self.process.stdout.close()
        self.process = None

    def leaves(self):
        """In every case: the end of a test."""
        if self.process is not None:
            self.process.kill()
            self.process.wait()
