"""Checks torque conversions with exact rationals.

Reads lines "from to value answer" (unit codes, hexadecimal doubles) and compares each answer with
value * from / to, computed from the defining constants of the units alone.
"""
import math
import sys
from fractions import Fraction

NEWTON, METRE = Fraction(1), Fraction(1)
POUND_FORCE = Fraction("0.45359237") * Fraction("9.80665")  # kg in a pound, standard gravity in m/s2
KILOGRAM_FORCE = Fraction("9.80665")
INCH = Fraction("0.0254")

NEWTON_METRES = {
    "N.m": NEWTON * METRE,
    "N.cm": NEWTON * METRE / 100,
    "lbf.in": POUND_FORCE * INCH,
    "lbf.ft": POUND_FORCE * INCH * 12,
    "kgf.m": KILOGRAM_FORCE * METRE,
    "kgf.cm": KILOGRAM_FORCE * METRE / 100,
    "ozf.in": POUND_FORCE / 16 * INCH,
}

count = 0
for line in sys.stdin:
    source, target, value, answer = line.split()
    exact = Fraction(float.fromhex(value)) * NEWTON_METRES[source] / NEWTON_METRES[target]
    error = abs(Fraction(float.fromhex(answer)) - exact)
    if error > Fraction(math.ulp(float(exact))):
        sys.exit(f"{float.fromhex(value)!r} {source} is {float(exact)!r} {target}, not {float.fromhex(answer)!r}")
    count += 1
print(f"{count} conversions within 1 unit in the last place")
