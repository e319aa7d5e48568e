#!/usr/bin/env python3
"""Measures the loudness effect of SoX with sines and prints rows of iso-226-loudness-control.csv.

To regenerate the rows: python3 run-loudness.py
"""
import math
import subprocess

NOMINAL_HZ = [20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800,
              1000, 1250, 1600, 2000, 2500, 3150]


def rms(frequency, effect):
    command = ["sox", "-D", "-r", "8000", "-b", "32", "-n", "-n", "synth", "12", "sine",
               str(frequency), "vol", "0.05", *effect, "trim", "6", "4", "stat"]
    report = subprocess.run(command, capture_output=True, text=True, check=True).stderr
    line = next(l for l in report.splitlines() if l.startswith("RMS") and "amplitude" in l)
    return float(line.split()[-1])


for reference in (60, 70):
    for gain in (-30, -20, -10, 10):
        for frequency in NOMINAL_HZ:
            effect = ["loudness", str(gain), str(reference)]
            change = 20 * math.log10(rms(frequency, effect) / rms(frequency, []))
            print(f"{reference},{reference + gain},{frequency},{change - gain:.2f}")
