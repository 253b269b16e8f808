#!/usr/bin/env python3
"""Verifies a torque record, written from the description in DEVELOPERS.md alone.

usage: verify_record.py RECORD KEY     (exit 0: good, 1: not good)
Needs python3-cryptography for Ed25519. It checks form, signature, chain, head and count; the rules of
tightening themselves are judged by the program only.
"""
import hashlib
import json
import sys

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey


def canonical(value):
    """RFC 8785 for what a record holds: texts, whole numbers, booleans, lists, objects with ASCII keys."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"), sort_keys=True).encode()


def sha256(data):
    return hashlib.sha256(data).digest()


def members(record):
    """What version 1, the trial, and version 2 hold beside the common members."""
    problems = []
    own, other = (("people", "tools"), ("sealed_by",)) if record["version"] == 1 else (("sealed_by",), ("people", "tools"))
    problems += [f"no {name}" for name in own if name not in record]
    problems += [f"{name} is of another version" for name in other if name in record]
    for row in record["entries"]:
        entry = row["entry"]
        if record["version"] == 1:
            if entry["v"] != 1 or "vouched" in entry:
                problems.append(f"entry {entry['seq']} is of another version")
            continue
        named = {entry["entered_by"]} | {doer["person"] for doer in entry["by"]} | {entry.get("supervisor", "")} - {""}
        vouched = [voucher["person"] for voucher in entry["vouched"]]
        if vouched != sorted(set(vouched)) or not named <= set(vouched):
            problems.append(f"entry {entry['seq']} does not say how everybody vouches")
    return problems


def verify(data, public):
    record = json.loads(data)
    problems = []
    if canonical(record) != data:
        problems.append("not canonical")
    signature = bytes.fromhex(record["signature"])
    rest = {key: value for key, value in record.items() if key != "signature"}
    try:
        Ed25519PublicKey.from_public_bytes(public).verify(signature, b"clampwright.record.v1\n" + canonical(rest))
    except InvalidSignature:
        problems.append("bad signature")
    if record["key"] != sha256(b"clampwright.key.v1\n" + public).hex()[:16]:
        problems.append("other key")
    about = {"job": record["job"], "sheet": sha256(record["sheet"].encode()).hex(), "shop": record["shop"]["id"]}
    head = sha256(b"clampwright.job.v1\n" + canonical(about))
    for number, row in enumerate(record["entries"], 1):
        head = sha256(b"clampwright.entry.v1\n" + head + canonical(row["entry"]))
        if head.hex() != row["hash"] or row["entry"]["seq"] != number:
            problems.append(f"entry {number} breaks the chain")
            break
    else:
        if head.hex() != record["head"]:
            problems.append("wrong head")
    if record["count"] != len(record["entries"]):
        problems.append("wrong count")
    return problems + members(record)


def main():
    with open(sys.argv[1], "rb") as file:
        data = file.read()
    with open(sys.argv[2], "rb") as file:
        public = bytes.fromhex(json.load(file)["public"])
    try:
        problems = verify(data, public)
    except (ValueError, KeyError, TypeError) as error:
        problems = [f"unreadable: {error}"]
    print("\n".join(problems) or "verified")
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
