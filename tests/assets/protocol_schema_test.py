#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Every protocol follows the schema, and the schema refuses a number that loses its source."""
import copy
import json
import pathlib
import sys

import jsonschema

RESERVED = {"common-practice", "not-published"}


def groups(value):
    """Every object below a value, itself included."""
    if isinstance(value, dict):
        yield value
        for inner in value.values():
            yield from groups(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from groups(inner)


def is_number(value):
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def holds_a_value(group):
    return any(is_number(inner) for inner in group.values()) or group.keys() & {"value", "from", "to"}


def mutilated(protocol):
    """Copies with one fault each, and the name of the fault."""
    indices = [i for i, group in enumerate(groups(protocol)) if holds_a_value(group)]
    assert len(indices) > 10, "the protocol hardly holds a number"
    for index in indices:
        broken = copy.deepcopy(protocol)
        group = list(groups(broken))[index]
        del group["source"]
        yield f"no source in {group}", broken
    for index in indices:
        broken = copy.deepcopy(protocol)
        group = list(groups(broken))[index]
        if group.get("value", 0) is None:
            del group["note"]
            yield f"unknown without a note: {group}", broken
    for key in ("season", "lure", "scouting", "marks"):
        if key in protocol:
            broken = copy.deepcopy(protocol)
            broken[key]["a_bare_number"] = 7
            yield f"a bare number in {key}", broken
    broken = copy.deepcopy(protocol)
    broken["of_a_newer_program"] = {"deep": [{"hours": 3}]}
    yield "a bare number deep in an unknown part", broken
    broken = copy.deepcopy(protocol)
    broken["of_a_newer_program"] = [1, 2, 3]
    yield "bare numbers in a list", broken
    broken = copy.deepcopy(protocol)
    broken["sources"]["common-practice"] = "A citation that must not stand here"
    yield "a reserved source", broken
    broken = copy.deepcopy(protocol)
    del broken["name"]["fr"]
    yield "no French name", broken


def main():
    folder = pathlib.Path(sys.argv[1])
    schema = json.loads((folder / "protocol.schema.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    files = sorted(path for path in folder.glob("*.json") if not path.name.endswith(".schema.json"))
    if not files:
        sys.exit("there is no protocol")
    faults = 0
    for path in files:
        protocol = json.loads(path.read_text(encoding="utf-8"))
        for error in validator.iter_errors(protocol):
            sys.exit(f"{path.name}: {list(error.absolute_path)}: {error.message}")
        if protocol["id"] != path.stem:
            sys.exit(f"{path.name}: its id is {protocol['id']}")
        used = {group["source"] for group in groups(protocol) if "source" in group} - RESERVED
        if used != protocol["sources"].keys():
            sys.exit(f"{path.name}: sources used and listed differ: {used ^ protocol['sources'].keys()}")
        for fault, broken in mutilated(protocol):
            if validator.is_valid(broken):
                sys.exit(f"{path.name}: the schema lets pass: {fault}")
            faults += 1
    print(f"{len(files)} protocols follow the schema, {faults} faults refused")


main()
