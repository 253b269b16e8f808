#!/usr/bin/env python3
"""Verifies the line that signs a record's PDF, written from the description in DEVELOPERS.md alone.

usage: verify_pdf.py PDF KEY     (exit 0: the file that was given out, 1: not)
Needs python3-cryptography for Ed25519. The record inside is a matter for verify_record.py.
"""
import hashlib
import json
import re
import sys

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey


def problem(data, public):
    line = re.search(rb"\n% clampwright\.pdf\.v1 ([0-9a-f]{16}) ([0-9a-f]{128})\n\Z", data)
    if line is None:
        return "no line signs it"
    if line[1].decode() != hashlib.sha256(b"clampwright.key.v1\n" + public).hexdigest()[:16]:
        return "other key"
    covered = data[: line.start() + 1]
    try:
        Ed25519PublicKey.from_public_bytes(public).verify(bytes.fromhex(line[2].decode()), b"clampwright.pdf.v1\n" + covered)
    except InvalidSignature:
        return "changed after it was signed"
    return ""


def main():
    with open(sys.argv[1], "rb") as file:
        data = file.read()
    with open(sys.argv[2], "rb") as file:
        public = bytes.fromhex(json.load(file)["public"])
    found = problem(data, public)
    print(found or "verified")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
