#!/usr/bin/env bash
# Batches of 1,000 to 5,000,000 rows through one copy with a heap of 64 MB: rows/s and, of the second half of each batch,
# the fullest that the heap was after a collection. What a batch holds must not grow with its rows.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
# Argument: the most rows, 5000000 unless given. Loopback only; needs 400 bytes of disk a row.
set -euo pipefail
source "$(dirname "$0")/ratio.sh"
most=${1:-5000000}
jar=service/target/footwell.jar
work=$(mktemp -d)
trap 'kill $pid 2>/dev/null || true; rm -rf "$work"' EXIT
FOOTWELL_PORT=18089 java -XX:+UseSerialGC -Xmx64m -Xlog:gc:file="$work/gc.log" -jar $jar >/dev/null & pid=$!
wait_ready 18089
java -cp "service/target/test-classes:$jar" org.footwell.web.batch.LevelTable "$work/levels.csv" 20000
# So many rows, the same ones over and over.
table() { # ROWS
  awk -v rows="$1" 'NR == 1 { print; next } { row[n++] = $0 } END { for (i = 0; i < rows; i++) print row[i % n] }' "$work/levels.csv"
}
# The fullest after a collection, MB, of the lines after a line of the log; such as: Pause Young (...) 41M->23M(61M) 3.2ms
fullest() { tail -n +"$1" "$work/gc.log" | sed -n 's/.*->\([0-9]*\)M(.*/\1/p' | sort -n | tail -n 1; }
batch() { # ROWS
  table "$1" >"$work/asked.csv"
  local before begin end
  before=$(wc -l <"$work/gc.log") begin=$(date +%s.%N)
  answered=$(curl -sf -T "$work/asked.csv" -X POST -H 'Content-Type: text/csv' http://127.0.0.1:18089/v1/sound-level/batch | wc -l)
  end=$(date +%s.%N)
  [[ $answered -eq $(($1 + 1)) ]] || { echo "$answered lines came for $1 rows" >&2; exit 1; }
  full=$(fullest $((before + ($(wc -l <"$work/gc.log") - before) / 2 + 1)))
  printf '%9d rows: %8.0f rows/s, heap at most %s MB after a collection\n' "$1" "$(awk "BEGIN { print $1 / ($end - $begin) }")" "${full:-?}"
}
batch 200000 >/dev/null
for ((rows = 1000; rows < most; rows *= 10)); do batch $rows; [[ $rows -ne 100000 ]] || few=$full; done
batch "$most"
ratio "heap in MB at $most rows, against that at 100,000" "$full" "$few" most:1.1
awk '/VmHWM/ { printf "resident memory at most %.0f MB\n", $2 / 1024 }' "/proc/$pid/status"
