#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Every sentence of the app is there in French, with the same places for values.

french.py LUPDATE ROOT   what lupdate finds in the sources is compared with assets/translations/duskrow_fr.ts
"""
import collections
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

lupdate, root = sys.argv[1], pathlib.Path(sys.argv[2])
table = root / "assets/translations/duskrow_fr.ts"


def places(sentence):
    return collections.Counter(re.findall(r"%(?:L?\d+|n|%)", sentence))


with tempfile.TemporaryDirectory() as folder:
    fresh = pathlib.Path(folder) / "duskrow_fr.ts"
    shutil.copy(table, fresh)
    subprocess.run(
        [lupdate, "cpp", "qml", "-silent", "-no-obsolete", "-locations", "none", "-ts", fresh],
        cwd=root, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    contexts = ElementTree.parse(fresh).getroot().findall("context")

wrong = []
sentences = 0
for context in contexts:
    for message in context.findall("message"):
        sentences += 1
        source = message.findtext("source")
        name = f"{context.findtext('name')}: {source!r}"
        translation = message.find("translation")
        forms = [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]
        if translation.get("type") == "unfinished" or not all(forms):
            wrong.append(f"not in French yet: {name}")
            continue
        wrong += [f"other places for values: {name}: {form!r}" for form in forms if places(form) != places(source)]

# lupdate forgets at times that a struct names another context than its own, and puts its sentences where no
# program looks for them.
named = {context.findtext("name").split("::")[-1] for context in contexts}
for path in [*root.glob("cpp/**/*.cpp"), *root.glob("cpp/**/*.h")]:
    for struct, other in re.findall(r"struct (\w+) \{\s*Q_DECLARE_TR_FUNCTIONS\((\w+)\)", path.read_text()):
        if struct != other and struct in named:
            wrong.append(f"sentences of {path.relative_to(root)} stand under {struct}, not {other}: call them alike")

print("\n".join(wrong))
print(f"{sentences} sentences, {len(wrong)} to mend in {table.relative_to(root)}")
sys.exit(1 if wrong or sentences == 0 else 0)
