#!/usr/bin/env bash
# The service and the tutorial handler under 1 to 4,000 connections that all ask, one after the other in one run: requests/s,
# p99, answers that were none, and resident memory after it.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
# Arguments: seconds of each, seconds of warming up. Loopback only.
set -euo pipefail
source "$(dirname "$0")/ratio.sh"
seconds=${1:-8} warming=${2:-40}
flags=(-XX:+UseSerialGC -Xmx128m)
jar=service/target/footwell.jar
work=$(mktemp -d)
declare -A pid port=([footwell]=18081 [bare]=18082) rate memory
trap 'kill "${pid[@]}" 2>/dev/null || true; rm -rf "$work"' EXIT
ulimit -n 10000
request_lua >"$work/post.lua"
FOOTWELL_PORT=${port[footwell]} java "${flags[@]}" -jar $jar >/dev/null & pid[footwell]=$!
java "${flags[@]}" -cp "$jar:service/target/test-classes" org.footwell.reference.BareHandler ${port[bare]} >/dev/null 2>&1 & pid[bare]=$!
wait_ready ${port[footwell]}; wait_ready ${port[bare]}

run() { # NAME CONNECTIONS SECONDS: requests/s, p99 in ms, errors
  wrk -t1 -c"$2" -d"$3s" --timeout 10s --latency -s "$work/post.lua" "http://127.0.0.1:${port[$1]}/v1/sound-level" |
    awk '/^answered/ { print $3, $4, $5 }'
}
megabytes() { awk '/VmRSS/ { printf "%.0f", $2 / 1024 }' "/proc/$1/status"; }
echo "warming up"; for name in footwell bare; do run $name 32 "$warming" >/dev/null; done
printf '%-10s %11s %11s %9s %7s %10s\n' '' connections requests/s 'p99, ms' errors memory,MB
for connections in 1 8 64 512 4000; do
  for name in footwell bare; do
    read -r rate[$name$connections] p99 errors < <(run $name $connections "$seconds")
    memory[$name$connections]=$(megabytes "${pid[$name]}")
    printf '%-10s %11s %11s %9s %7s %10s\n' $name $connections "${rate[$name$connections]}" "$p99" "$errors" "${memory[$name$connections]}"
  done
done
ratio 'requests/s at 4,000 connections, against those of the tutorial handler' "${rate[footwell4000]}" "${rate[bare4000]}" least:1.0
ratio 'requests/s at 4,000 connections, against those at 64' "${rate[footwell4000]}" "${rate[footwell64]}" least:0.8
ratio 'resident memory in MB at 4,000 connections, against that at 64' "${memory[footwell4000]}" "${memory[footwell64]}" most:1.5
