#!/usr/bin/env bash
# Batches over HTTP with a heap of 128 MB against copying the same CSV, and against the same job in pandas.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
# Argument: how many rows, 1000000 unless given. Needs Debian's python3-pandas.
set -euo pipefail
source "$(dirname "$0")/ratio.sh"
rows=${1:-1000000}
folder=$(mktemp -d)
cp service/target/footwell.jar "$folder/footwell.jar"
classes=service/target/test-classes:$folder/footwell.jar
FOOTWELL_PORT=18088 java -Xmx128m -XX:+UseSerialGC -jar "$folder/footwell.jar" >/dev/null & pid=$!
trap 'kill $pid; rm -rf "$folder"' EXIT
wait_ready 18088

java -cp "$classes" org.footwell.acoustic.driver.CatalogueSample "$folder/catalogue.csv"
java -cp "$classes" org.footwell.web.batch.LevelTable "$folder/levels.csv" 20000
measure() {
  java -XX:+UseSerialGC -cp "$classes" org.footwell.web.BatchOverHttp http://localhost:18088 "$1" "$2" "$rows" "$folder"
}
measure 'sound-level/batch' "$folder/levels.csv"
/usr/bin/python3 service/src/benchmark/sound_level.py "$folder/asked.csv" "$folder/pandas.csv"
measure 'driver-check/batch' "$folder/catalogue.csv"
measure 'sound-level/batch?digits=6' "$folder/levels.csv"
measure 'driver-check/batch?digits=6' "$folder/catalogue.csv"
measure 'driver-check/batch?columns=verdict' "$folder/catalogue.csv"
awk '/VmHWM/ {printf "resident memory at most %.0f MB\n", $2 / 1000}' "/proc/$pid/status"

# In process: rows a second of two workers, each answered to so many digits, against those of copying the same answer.
against_copying() { # calculation, goal
  java -Xmx256m -XX:+UseSerialGC -cp "$classes" org.footwell.web.batch.BatchTiming "$1" 6 >"$folder/timing"
  cat "$folder/timing"
  rate() { awk -v name="$1" '$1 == name { printf "%.0f", 1e6 / $3 }' "$folder/timing"; }
  ratio "rows/s of $1 with digits=6, against copying the answer" "$(rate answeredOnTwoCores)" "$(rate copyAnswer)" "$2"
}
against_copying sound-level least:1.0
against_copying driver-check least:0.8
