#!/usr/bin/env bash
# Measures what is promised of speed, each against something else in the same run, and prints a table of
# all ratios with their goals. Names of parts measure only these: all.sh requests
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
#
# A part is a script beside this one. What it compares, it prints by `ratio` of ratio.sh.
set -euo pipefail
cd "$(dirname "$0")/../../.."
declare -A script=([start]=start.sh [warmup]=warmup.sh [requests]=load.sh [connections]=connections.sh
  [batch]=batch.sh [plans]=plans.sh [rows]=rows.sh [copies]=scale.sh [growth]=growth.sh)
order=(start warmup requests connections batch plans rows copies growth)

parts=("$@"); [[ $# -gt 0 ]] || parts=("${order[@]}")
for part in "${parts[@]}"; do
  [[ -n ${script[$part]:-} ]] || { echo "no part $part; there are: ${order[*]}" >&2; exit 2; }
done
rows=$(mktemp)
trap 'rm -f "$rows"' EXIT
for part in "${parts[@]}"; do
  echo "== $part"
  service/src/benchmark/"${script[$part]}" | tee >(grep '^| ' >>"$rows" || true)
done
echo
echo '| what | ours | reference | ratio | goal | reached |'
echo '|---|---|---|---|---|---|'
cat "$rows"
