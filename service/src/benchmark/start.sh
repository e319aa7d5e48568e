#!/usr/bin/env bash
# Milliseconds from starting the process to the first answer of sound-level, of Footwell as it is and with the classes Java
# kept, beside the frozen handlers of org.footwell.reference; then the ratios of the medians, each with its goal. By the
# clock, and in processor time, which a busy machine disturbs less. JAVA25 names a Java 25, to show its cache besides.
# Run like load.sh.  usage: start.sh [runs]
set -euo pipefail
source "$(dirname "$0")/ratio.sh"
runs=${1:-5}
body='{"driver":{"sensitivity":{"level_db_spl":90,"basis":"one_watt"},"rated_ohm":4},"power_w":50}'
jar=service/target/footwell.jar
reference=(-cp "$jar:service/target/test-classes")
flags=(-XX:+UseSerialGC -Xmx128m)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

declare -A clock processor
first_answer() { # name, command... with PORT for its port
  local name=$1 start end ticks port; shift
  port=$((18100 + RANDOM % 800))
  start=$(date +%s%N)
  FOOTWELL_STOP_DELAY_MS=0 FOOTWELL_PORT=$port "${@//PORT/$port}" >/dev/null 2>&1 & local pid=$!
  until curl -sf -o /dev/null "localhost:$port/v1/sound-level" -H 'Content-Type: application/json' -d "$body"; do
    kill -0 $pid || { echo "$name did not start" >&2; exit 1; }
    sleep 0.005
  done
  end=$(date +%s%N)
  ticks=$(awk '{print $14 + $15}' "/proc/$pid/stat")
  kill "$pid"; wait "$pid" 2>/dev/null || true
  clock[$name]+="$(((end - start) / 1000000)) "
  processor[$name]+="$((ticks * 1000 / $(getconf CLK_TCK))) "
}

# The start script itself, beside a copy of the jar for each Java; it rehearses at the first start.
copied() { # folder
  mkdir "$work/$1"
  cp "$jar" service/start "$work/$1"
}
on17=(env JDK_JAVA_OPTIONS="${flags[*]}" "$work/kept-17/start")
copied kept-17
"${on17[@]}" --check >/dev/null 2>&1
if [ -n "${JAVA25:-}" ]; then
  on25=(env JDK_JAVA_OPTIONS="${flags[*]}" JAVA_HOME="$(dirname "$(dirname "$(readlink -f "$JAVA25")")")" "$work/kept-25/start")
  copied kept-25
  "${on25[@]}" --check >/dev/null 2>&1
fi
for _ in $(seq "$runs"); do
  first_answer plain java "${flags[@]}" "${reference[@]}" org.footwell.reference.PlainHandler PORT
  first_answer bare java "${flags[@]}" "${reference[@]}" org.footwell.reference.BareHandler PORT
  first_answer footwell java "${flags[@]}" -jar "$jar"
  first_answer kept "${on17[@]}"
  [ -z "${JAVA25:-}" ] || first_answer kept-25 "${on25[@]}"
done

of() { tr ' ' '\n' <<<"$1" | grep . | median; }
held() { # what, numerator, denominator, goal
  [ -n "${clock[$2]:-}" ] || return 0
  ratio "first answer $1, ms by the clock" "$(of "${clock[$2]}")" "$(of "${clock[$3]}")" "$4"
  ratio "first answer $1, ms of processor time" "$(of "${processor[$2]}")" "$(of "${processor[$3]}")" "$4"
}
held 'against the tutorial handler' footwell bare most:1.10
held 'against a handler without any class of the service' footwell plain most:1.5
held 'with kept classes, against the same' kept plain most:0.65
held 'on JDK 25 with its cache, against the same on 17' kept-25 plain most:0.5
