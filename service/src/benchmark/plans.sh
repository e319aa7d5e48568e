#!/usr/bin/env bash
# A batch of plans, as an array and as a plan a line, against the same plans one after the other, in the same run: how many
# times as many are answered in a time, of as many as there are processors.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
#   usage: plans.sh [PLANS]   400 unless given
set -euo pipefail
source "$(dirname "$0")/ratio.sh"
plans=${1:-400}
work=$(mktemp -d)
FOOTWELL_PORT=18089 FOOTWELL_BODY_BYTES=4000000 java -Xmx256m -XX:+UseSerialGC -jar service/target/footwell.jar >/dev/null & pid=$!
trap 'kill $pid; rm -rf "$work"' EXIT
wait_ready 18089
url=http://127.0.0.1:18089/v1/plan-review

plan=$(tr -d '\n' <docs/examples/camper-van.json)
for _ in $(seq "$plans"); do printf '%s\n' "$plan"; done >"$work/lines"
{ printf '['; paste -sd, "$work/lines"; printf ']'; } >"$work/array"
printf '%s' "$plan" >"$work/one"
for n in $(seq "$plans"); do printf 'url = "%s"\nrequest = "POST"\nheader = "Content-Type: application/json"\ndata-binary = "@%s"\noutput = "%s"\nnext\n' \
  "$url" "$work/one" "$work/answer"; done | sed '$d' >"$work/calls"

timed() { # name, command...: plans a second, and processors taken
  local name=$1 start before; shift
  start=$(date +%s%N) before=$(processor_us "$pid")
  "$@"
  awk -v name="$name" -v ns=$(($(date +%s%N) - start)) -v us=$(($(processor_us "$pid") - before)) -v plans="$plans" \
    'BEGIN { printf "%s %.1f plans/s, %.2f processors\n", name, plans / ns * 1e9, us / ns * 1e3 }' | tee -a "$work/said"
}
alone() { curl -sS --fail -K "$work/calls"; }
batch() { curl -sS --fail -H "Content-Type: $1" --data-binary "@$2" -o "$work/batch" "$url/batch"; }
answered() { [ "$(grep -o '"safety"' "$work/batch" | wc -l)" -eq "$plans" ]; }

alone; batch application/x-ndjson "$work/lines"; batch application/json "$work/array"
for _ in 1 2 3; do
  timed alone alone
  timed lines batch application/x-ndjson "$work/lines"; answered
  timed array batch application/json "$work/array"; answered
done
rate() { awk -v name="$1" '$1 == name { print $2 }' "$work/said" | median; }
for form in lines array; do
  ratio "plans/s of a batch as $form, against one after the other, on $(nproc) processors" "$(rate $form)" "$(rate alone)" least:1.6
done
