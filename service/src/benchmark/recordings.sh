#!/usr/bin/env bash
# Arrivals and correction of six microphones by eight channels, 1 s at 48 kHz, with a heap of 256 MB: in
# one process, then as WAV files over HTTP. Run from the project's root after:
# mvn -q -P benchmark -pl service package -DskipTests
set -euo pipefail
flags=(-Xmx256m -XX:+UseSerialGC -XX:ActiveProcessorCount=2)
classes=service/target/footwell.jar:service/target/test-classes
timing=org.footwell.measured.response.SessionTiming
echo "in process"
java "${flags[@]}" -cp "$classes" $timing
FOOTWELL_PORT=18087 java "${flags[@]}" -jar service/target/footwell.jar >/dev/null & pid=$!
trap 'kill $pid' EXIT
for _ in $(seq 200); do curl -sf localhost:18087/health/ready >/dev/null && break; sleep 0.1; done
echo "over HTTP"
java -cp "$classes" $timing http://localhost:18087
awk '/VmHWM/ {printf "resident memory at most %.0f MB\n", $2 / 1000}' "/proc/$pid/status"
