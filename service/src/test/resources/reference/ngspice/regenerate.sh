#!/bin/sh
# Runs every circuit here through ngspice and writes ../ngspice-circuits.csv.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
{
  cat "$here/origin.txt"
  echo circuit,frequency_hz,modulus_ohm,phase_deg,level_db,level_phase_deg
  for circuit in "$here"/*.cir; do
    rm -f result.txt
    ngspice -b "$circuit" > log 2>&1 || { cat log >&2; exit 1; }
    # Pairs of frequency and value, one pair for each quantity.
    awk -v name="$(basename "$circuit" .cir)" -v OFS=, \
      '{ print name, sprintf("%.10g", $1), sprintf("%.9g", $2), sprintf("%.9g", $4), sprintf("%.9g", $6), sprintf("%.9g", $8) }' \
      result.txt
  done
} > "$here/../ngspice-circuits.csv"
