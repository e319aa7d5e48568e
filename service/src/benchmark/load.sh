#!/usr/bin/env bash
# Drives the service and the bare handler in turn with wrk, same JVM flags and same body, and prints
# requests per second and latency of each round. Bounded: rounds x seconds x 2. Loopback only.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
set -euo pipefail
rounds=${1:-3} seconds=${2:-8} connections=32
flags=(-XX:+UseSerialGC -Xmx128m)
work=$(mktemp -d)
pids=()
trap 'kill "${pids[@]}" 2>/dev/null || true; rm -rf "$work"' EXIT

cat >"$work/post.lua" <<'LUA'
wrk.method = "POST"
wrk.headers["Content-Type"] = "application/json"
wrk.body = '{"driver":{"sensitivity":{"level_db_spl":90,"basis":"one_watt"},"rated_ohm":4},"power_w":50,"distance_m":1.2,"driver_count":2,"drive":"each","addition":"incoherent","crest_factor_db":12,"target_level_db_spl":105,"road_noise_dba":68,"a_weighting_db":-4}'
done = function(summary, latency)
  io.write(string.format("%10.0f req/s   p50 %6.2f ms   p99 %6.2f ms   errors %d\n",
    summary.requests / summary.duration * 1e6, latency:percentile(50) / 1000,
    latency:percentile(99) / 1000, summary.errors.status + summary.errors.read + summary.errors.timeout))
end
LUA

wait_ready() { for _ in $(seq 100); do curl -sf "localhost:$1/health/ready" >/dev/null && return; sleep 0.1; done; exit 1; }
FOOTWELL_PORT=18081 java "${flags[@]}" -jar service/target/footwell.jar >/dev/null & pids+=($!)
java "${flags[@]}" -cp "service/target/footwell.jar:service/target/test-classes" org.footwell.web.BareService 18082 >/dev/null 2>&1 & pids+=($!)
wait_ready 18081; wait_ready 18082

run() { printf '%-10s' "$1"; wrk -t2 -c$connections -d"${seconds}s" --latency -s "$work/post.lua" "http://localhost:$2/v1/sound-level" | grep 'req/s '; }
echo "warm-up"; run footwell 18081; run bare 18082
for round in $(seq "$rounds"); do echo "round $round"; run bare 18082; run footwell 18081; done
echo "resident memory, MB"
for pid in "${pids[@]}"; do awk '/VmRSS/ {printf "%.0f\n", $2 / 1024}' "/proc/$pid/status"; done
