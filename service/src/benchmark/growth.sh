#!/usr/bin/env bash
# What every calculation costs as its request grows from the example of its card to the largest that is answered, in
# processor time, and how soon after its deadline the dearest of each is stopped.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
#   usage: growth.sh [PLOT [ID...]]   PLOT is where the plot is written as SVG; IDs measure only these; van and tolerance are some too
# Takes seven minutes, on a busy machine a quarter of an hour.
set -euo pipefail
source "$(dirname "$0")/ratio.sh"
shown=$(mktemp)
trap 'rm -f "$shown"' EXIT
java -XX:+UseSerialGC -Xmx512m -cp service/target/footwell.jar:service/target/test-classes \
  org.footwell.growth.CostGrowth "${1:-}" "${@:2}" | tee "$shown"
of() { awk -v what="$1" '$1 == what { print $3 }' "$shown"; }
whose() { awk -v what="$1" '$1 == what { print $2 }' "$shown"; }
ratio "dearest request ($(whose dearest)), ms of a processor, against the deadline" "$(of dearest)" 10000 most:1.0
ratio "stopped latest ($(whose latest)), ms beyond its deadline, against those allowed" "$(of latest)" 100 most:1.0
