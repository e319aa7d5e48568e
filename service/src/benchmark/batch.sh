#!/usr/bin/env bash
# Batches over HTTP with a heap of 128 MB against copying the same CSV, and against the same job in pandas.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
# Argument: how many rows, 1000000 unless given. Needs Debian's python3-pandas.
set -euo pipefail
rows=${1:-1000000}
folder=$(mktemp -d)
cp service/target/footwell.jar "$folder/footwell.jar"
classes=service/target/test-classes:$folder/footwell.jar
FOOTWELL_PORT=18088 java -Xmx128m -XX:+UseSerialGC -jar "$folder/footwell.jar" >/dev/null & pid=$!
trap 'kill $pid; rm -rf "$folder"' EXIT
for _ in $(seq 200); do curl -sf localhost:18088/health/ready >/dev/null && break; sleep 0.1; done

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
