#!/usr/bin/env bash
# Runs every circuit in impedance/ and prints the reference table.
# To regenerate: ./run-impedance.sh > ../impedance-ngspice.csv
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"

cat <<HEADER
# title: Impedance and level of eight circuits: a woofer in free air, with an added mass, in boxes and behind passive networks
# source: ngspice, circuits ngspice/impedance/: the mechanics and acoustics of the driver as they are, not their equivalent at the terminals
# edition: ngspice 39, AC analysis, twelve frequencies a decade from 10 Hz to 20 kHz; written by ngspice/run-impedance.sh
# typed: not typed
# confirmed: run again by the build with the same circuits, within 0.1 %
circuit,frequency_hz,modulus_ohm,phase_deg,level_db,level_phase_deg
HEADER

for circuit in "$here"/impedance/*.cir; do
  rm -f result.txt
  ngspice -b "$circuit" > log 2>&1 || { cat log >&2; exit 1; }
  # Pairs of frequency and value, one pair for each quantity.
  awk -v name="$(basename "$circuit" .cir)" \
    '{ printf "%s,%.10g,%.9g,%.9g,%.9g,%.9g\n", name, $1, $2, $4, $6, $8 }' result.txt
done
