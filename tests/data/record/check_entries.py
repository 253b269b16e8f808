"""Holds the entries of the demo's records against their JSON Schema: python3 check_entries.py SCHEMA PROGRAM

Every entry must pass; entries must fail after each of the faults below, or the schema says nothing.
"""
import copy
import json
import pathlib
import subprocess
import sys
import tempfile

import jsonschema

# Kind of the entry that is spoilt, and how.
FAULTS = {
    "trial version": ("started", lambda entry: entry.update(v=1)),
    "no vouchers": ("done", lambda entry: entry.pop("vouched")),
    "unknown way of vouching": ("done", lambda entry: entry["vouched"][0].update(how="hearsay")),
    "unknown kind": ("done", lambda entry: entry.update(kind="painted")),
    "body of another kind": ("done", lambda entry: entry.update(kind="tightened")),
    "stranger in an entry": ("done", lambda entry: entry.update(mood="good")),
    "stranger in a body": ("tightened", lambda entry: entry["body"].update(mood="good")),
    "pull without its pass": ("tightened", lambda entry: entry["body"].pop("pass")),
    "torque as a number": ("tightened", lambda entry: entry["body"]["target"].update(value=65)),
    "unknown unit": ("tightened", lambda entry: entry["body"]["target"].update(unit="lb")),
    "a flag that is false": ("tightened", lambda entry: entry["body"].update(within=False)),
    "an empty text": ("checked", lambda entry: entry["body"].update(remark="")),
    "unknown answer": ("checked", lambda entry: entry["body"].update(answer="perhaps")),
    "nobody did it": ("done", lambda entry: entry.update(by=[])),
    "time of day only": ("done", lambda entry: entry.update(time="08:00")),
}


def entries_of_the_demo(program):
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([program, "demo", "--out", folder + "/demo"], check=True, stdout=subprocess.DEVNULL)
        out = []
        for path in sorted(pathlib.Path(folder, "demo").glob("*record.json")):
            rows = json.loads(path.read_text(encoding="utf-8"))["entries"]
            out += [(f"{path.name}, entry {row['entry'].get('seq')}", row["entry"]) for row in rows]
        return out


def main():
    schema_path, program = sys.argv[1:]
    with open(schema_path, encoding="utf-8") as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    entries = entries_of_the_demo(program)
    slips = [f"{place}: {error.json_path}: {error.message}"
             for place, entry in entries for error in validator.iter_errors(entry)]
    for name, (kind, spoil) in FAULTS.items():
        entry = copy.deepcopy(next(entry for _, entry in entries if entry["kind"] == kind))
        spoil(entry)
        if validator.is_valid(entry):
            slips.append(f"the schema takes an entry with this fault: {name}")
    print("\n".join(slips) or f"{len(entries)} entries pass, {len(FAULTS)} faults are refused")
    return 0 if entries and not slips else 1


sys.exit(main())
