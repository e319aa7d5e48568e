#!/usr/bin/env bash
# Milliseconds from starting the process to the first answer of sound-level: the bare handler, the
# service, and the service with a class-data archive. Run like load.sh.
set -euo pipefail
runs=${1:-5}
body='{"driver":{"sensitivity":{"level_db_spl":90,"basis":"one_watt"},"rated_ohm":4},"power_w":50}'
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

first_answer() { # port, command...
  local port=$1 start end; shift
  start=$(date +%s%N)
  FOOTWELL_PORT=$port "$@" >/dev/null 2>&1 & local pid=$!
  for _ in $(seq 2000); do
    curl -sf -o /dev/null "localhost:$port/v1/sound-level" -H 'Content-Type: application/json' -d "$body" && break
    sleep 0.005
  done
  end=$(date +%s%N)
  kill "$pid"; wait "$pid" 2>/dev/null || true
  echo $(((end - start) / 1000000))
}
jar=service/target/footwell.jar
flags=(-XX:+UseSerialGC -Xmx128m)
first_answer 18083 java "${flags[@]}" -XX:ArchiveClassesAtExit="$work/footwell.jsa" -jar $jar >/dev/null
for _ in $(seq "$runs"); do
  echo "bare $(first_answer 18084 java "${flags[@]}" -cp $jar:service/target/test-classes org.footwell.web.BareService 18084)" \
    "footwell $(first_answer 18085 java "${flags[@]}" -jar $jar)" \
    "archived $(first_answer 18086 java "${flags[@]}" -XX:SharedArchiveFile="$work/footwell.jsa" -jar $jar)"
done
