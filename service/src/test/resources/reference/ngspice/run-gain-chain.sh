#!/usr/bin/env bash
# Runs gain-chain.cir for every line of gain-chain-cases.csv and prints the reference table.
# To regenerate: ./run-gain-chain.sh > ../gain-chain-ngspice.csv
set -euo pipefail
cd "$(dirname "$0")"

cat <<HEADER
# title: Voltage and noise at the end of a chain of a source and three stages
# source: ngspice, circuit ngspice/gain-chain.cir: controlled sources with the thermal noise of resistors as noise voltages
# edition: ngspice 39, small-signal and noise analysis, 20 kHz wide; written by ngspice/run-gain-chain.sh
# typed: not typed; each noise voltage is that of a resistor at 27 C over the 20 kHz
# confirmed: run again by the build with the same circuit
HEADER
echo "$(head -n 1 gain-chain-cases.csv),output_v,noise_uv"

deck=$(mktemp)
trap 'rm -f "$deck"' EXIT
tail -n +2 gain-chain-cases.csv | while read -r line; do
  awk -F, -v line="$line" '
    function ohm(uv) { return (uv * 1e-6) ^ 2 / (4 * 1.380649e-23 * 300.15 * 20000) }
    function ratio(db) { return 10 ^ (db / 20) }
    BEGIN {
      split(line, x, ",")
      value["source_v"] = x[1]; value["r_source"] = ohm(x[2])
      for (i = 1; i <= 3; i++) {
        value["gain_" i] = ratio(x[3 * i])
        value["r_" i "_in"] = ohm(x[3 * i + 1])
        value["r_" i "_out"] = ohm(x[3 * i + 2])
      }
    }
    { for (key in value) gsub("@" key "@", sprintf("%.9g", value[key])); print }
  ' gain-chain.cir > "$deck"
  ngspice -b "$deck" 2> /dev/null < /dev/null | awk -v given="$line" '
    $2 == "=" { value[$1] = $3 }
    END {
      if (!("onoise_total" in value)) { print "ngspice gave no result for " given > "/dev/stderr"; exit 1 }
      printf "%s,%.6g,%.6g\n", given, value["output_v"], 1e6 * value["onoise_total"]
    }'
done
