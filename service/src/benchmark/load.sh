#!/usr/bin/env bash
# Drives the service, the frozen handlers and, where npm is there, Fastify in turn with wrk and the same
# body; prints requests/s, p99 and processor time per request of each round, and the ratios of the medians.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
# Arguments: rounds, seconds of each, seconds of warming up. Loopback only.
set -euo pipefail
source "$(dirname "$0")/ratio.sh"
rounds=${1:-5} seconds=${2:-8} warming=${3:-40} connections=32
flags=(-XX:+UseSerialGC -Xmx128m)
work=$(mktemp -d)
declare -A pid url
trap 'kill "${pid[@]}" 2>/dev/null || true; rm -rf "$work"' EXIT
request_lua >"$work/post.lua"
jar=service/target/footwell.jar
handler() { exec java "${flags[@]}" -cp "$jar:service/target/test-classes" "org.footwell.reference.$1" "$2" >/dev/null 2>&1; }
serves() { url[$1]="http://127.0.0.1:$2/v1/sound-level"; wait_ready "$2"; } # NAME PORT

FOOTWELL_PORT=18081 java "${flags[@]}" -jar $jar >/dev/null & pid[footwell]=$!
handler BareHandler 18082 & pid[bare]=$!
handler PlainHandler 18083 & pid[plain]=$!
serves footwell 18081; serves bare 18082; serves plain 18083
url[codes]="${url[footwell]}?findings=codes" pid[codes]=${pid[footwell]}
names=(bare footwell codes plain)
if npm install --silent --no-audit --no-fund --prefix service/target/fastify fastify@5.12.8 >/dev/null 2>&1; then
  curl -sf "${url[footwell]}" -H 'Content-Type: application/json' \
    -d "$(sed -n "s/^wrk.body = '\(.*\)'$/\1/p" "$work/post.lua")" >"$work/answer.json"
  NODE_PATH=service/target/fastify/node_modules node service/src/benchmark/fastify.js 18084 "$work/answer.json" & pid[fastify]=$!
  serves fastify 18084; names+=(fastify)
fi

run() { # NAME SECONDS: requests/s, p99 in ms, processor time per request in µs, errors
  local before=$(processor_us "${pid[$1]}") us
  read -r _ requests rate p99 errors < <(wrk -t2 -c$connections -d"$2s" --latency -s "$work/post.lua" "${url[$1]}" | grep '^answered')
  us=$(($(processor_us "${pid[$1]}") - before))
  echo "$1 $rate $p99 $(awk "BEGIN { printf \"%.1f\", $us / $requests }") $errors"
}
echo "warming up"; for name in "${names[@]}"; do run "$name" "$warming" >/dev/null; done
printf '%-10s %10s %8s %14s %7s\n' '' requests/s 'p99, ms' 'processor, µs' errors
for _ in $(seq "$rounds"); do
  for name in "${names[@]}"; do run "$name" "$seconds" | tee -a "$work/rounds" | xargs printf '%-10s %10s %8s %14s %7s\n'; done
done
middle() { awk -v name="$1" -v column="$2" '$1 == name { print $column }' "$work/rounds" | median; }
ratio 'requests/s, against the tutorial handler' "$(middle footwell 2)" "$(middle bare 2)" least:1.0
ratio 'requests/s with findings=codes, against the same' "$(middle codes 2)" "$(middle bare 2)" least:1.1
ratio 'p99 in ms, against the same' "$(middle footwell 3)" "$(middle bare 3)" most:1.0
ratio 'requests/s, against a handler without any class of the service' "$(middle footwell 2)" "$(middle plain 2)" least:1.0
[[ -z ${url[fastify]:-} ]] || ratio 'processor time per request in µs, against Fastify' "$(middle footwell 4)" "$(middle fastify 4)" most:1.0
echo "resident memory, MB: $(awk '/VmRSS/ { printf "%.0f", $2 / 1024 }' "/proc/${pid[footwell]}/status") Footwell, $(awk '/VmRSS/ { printf "%.0f", $2 / 1024 }' "/proc/${pid[bare]}/status") tutorial handler"
