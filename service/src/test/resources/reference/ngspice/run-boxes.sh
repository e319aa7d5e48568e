#!/usr/bin/env bash
# Runs every circuit in boxes/ and prints the reference table.
# To regenerate: ./run-boxes.sh > ../boxes-ngspice.csv
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"

cat <<HEADER
# title: Level, phase, displacement and port velocity of a woofer in six boxes and doors, for 1 V RMS
# source: ngspice, circuits ngspice/boxes/: the mechanics and acoustics of driver and box as they are
# edition: ngspice 39, AC analysis, twelve frequencies a decade from 10 Hz to 1 kHz; written by ngspice/run-boxes.sh
# typed: not typed
# confirmed: run again by the build with the same circuits, within 0.1 %
circuit,frequency_hz,level_db_spl,phase_deg,displacement_mm,port_m_per_s
HEADER

for circuit in "$here"/boxes/*.cir; do
  rm -f result.txt
  ngspice -b "$circuit" > log 2>&1 || { cat log >&2; exit 1; }
  # Pairs of frequency and value, one pair for each quantity.
  awk -v name="$(basename "$circuit" .cir)" \
    '{ printf "%s,%.10g,%.9g,%.9g,%.9g,%.9g\n", name, $1, $2, $4, $6, $8 }' result.txt
done
