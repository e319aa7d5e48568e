#!/usr/bin/env bash
# Runs push-pull.cir for every line of push-pull-cases.csv and prints the reference table.
# To regenerate: ./run-push-pull.sh > ../push-pull-ngspice.csv
set -euo pipefail
cd "$(dirname "$0")"

cat <<HEADER
# title: Push-pull output stage between two ideal rails, sine into resistance and reactance
# source: ngspice, circuit ngspice/push-pull.cir: two transistors with a driver that makes the output follow the input
# edition: ngspice 39, transient analysis of twenty periods in the steady state; written by ngspice/run-push-pull.sh
# typed: not typed; rail current is the mean of both rails, heat is rail power less output power
# confirmed: run again by the build with the same circuit; class B on a resistance also in class-b.csv
HEADER
echo "quiescent_a,rail_v,peak_v,resistance_ohm,reactance_ohm,rail_current_a,output_w,heat_w"

deck=$(mktemp)
trap 'rm -f "$deck"' EXIT
tail -n +2 push-pull-cases.csv | while IFS=, read -r quiescent rail peak resistance reactance; do
  sed -e "s/@quiescent_a@/$quiescent/" -e "s/@rail_v@/$rail/" -e "s/@peak_v@/$peak/" \
    -e "s/@resistance_ohm@/$resistance/" -e "s/@reactance_ohm@/$reactance/" push-pull.cir > "$deck"
  ngspice -b "$deck" 2> /dev/null < /dev/null | awk -v OFS=, -v rail="$rail" \
    -v given="$quiescent,$rail,$peak,$resistance,$reactance" '
      $2 == "=" { value[$1] = $3 }
      END {
        if (!("output_w" in value)) { print "ngspice gave no result for " given > "/dev/stderr"; exit 1 }
        current = -(value["upper_a"] + value["lower_a"]) / 2
        printf "%s,%.6g,%.6g,%.6g\n", given, current, value["output_w"], 2 * rail * current - value["output_w"]
      }'
done
