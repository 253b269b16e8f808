"""Holds sheets against the JSON Schema: python3 check_schema.py SCHEMA SMALL SHEET...

Every sheet must pass; the small one must fail after each of the faults below, or the schema says nothing.
"""
import copy
import json
import sys

import jsonschema

FAULTS = {
    "no steps": lambda sheet: sheet.pop("steps"),
    "newer version": lambda sheet: sheet.update(version=2),
    "unknown step kind": lambda sheet: sheet["steps"][0].update(kind="polish"),
    "tighten without joint": lambda sheet: sheet["steps"][1].pop("joint"),
    "torque as a number": lambda sheet: sheet["specifications"][0]["low"].update(value=8),
    "unknown torque unit": lambda sheet: sheet["specifications"][0]["low"].update(unit="lb"),
    "range without high": lambda sheet: sheet["specifications"][0].pop("high"),
    "two shapes": lambda sheet: sheet["joints"][0]["layout"].update(line={"count": 4, "spacing": "1"}),
    "stranger in a circle": lambda sheet: sheet["joints"][0]["layout"]["circle"].update(tilt="1"),
    "neither rule nor order": lambda sheet: sheet["joints"][0].pop("order"),
    "serial range without ends": lambda sheet: sheet.update(serial_ranges=[{}]),
    "serial range of words": lambda sheet: sheet.update(serial_ranges=[{"from": "first"}]),
    "stranger in a serial range": lambda sheet: sheet.update(serial_ranges=[{"from": "1", "until": "2"}]),
    "no such consequence": lambda sheet: sheet["joints"][0].update(if_it_lets_go="boredom"),
    "numbers in an order": lambda sheet: sheet["joints"][0].update(order=[1, 3, 2, 4]),
}


def load(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)


def main():
    schema_path, small_path, *paths = sys.argv[1:]
    schema = load(schema_path)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    slips = []
    for path in [small_path, *paths]:
        slips += [f"{path}: {error.json_path}: {error.message}" for error in validator.iter_errors(load(path))]
    for name, spoil in FAULTS.items():
        sheet = copy.deepcopy(load(small_path))
        spoil(sheet)
        if validator.is_valid(sheet):
            slips.append(f"the schema takes a sheet with this fault: {name}")
    print("\n".join(slips) or f"{len(paths) + 1} sheets pass, {len(FAULTS)} faults are refused")
    return 1 if slips else 0


sys.exit(main())
