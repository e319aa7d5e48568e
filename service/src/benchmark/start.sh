#!/usr/bin/env bash
# Milliseconds from starting the process to the first answer of sound-level, of Footwell as it is and with the classes Java
# kept, beside the frozen handlers of org.footwell.reference; then the ratios of the medians, each with its goal. By the
# clock, and in processor time, which a busy machine disturbs less. JAVA25 names a Java 25, to show its cache besides.
# Run like load.sh.  usage: start.sh [runs]
set -euo pipefail
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
median() { tr ' ' '\n' <<<"$1" | grep . | sort -n | awk '{v[NR] = $1} END {print v[int((NR + 1) / 2)]}'; }

# As service/start does: what takes the flags at the rehearsal takes them at the start.
java "${flags[@]}" -Xlog:disable -XX:ArchiveClassesAtExit="$work/kept17" -jar "$jar" --rehearse >/dev/null 2>&1
[ -z "${JAVA25:-}" ] ||
  "$JAVA25" "${flags[@]}" -Xlog:disable -XX:AOTCacheOutput="$work/kept25" -jar "$jar" --rehearse >/dev/null 2>&1
for _ in $(seq "$runs"); do
  first_answer plain java "${flags[@]}" "${reference[@]}" org.footwell.reference.PlainHandler PORT
  first_answer bare java "${flags[@]}" "${reference[@]}" org.footwell.reference.BareHandler PORT
  first_answer footwell java "${flags[@]}" -jar "$jar"
  first_answer kept java "${flags[@]}" -XX:SharedArchiveFile="$work/kept17" -jar "$jar"
  [ -z "${JAVA25:-}" ] || first_answer kept-25 "$JAVA25" "${flags[@]}" -XX:AOTCache="$work/kept25" -jar "$jar"
done

for name in plain bare footwell kept kept-25; do
  [ -z "${clock[$name]:-}" ] ||
    echo "$name: $(median "${clock[$name]}") ms by the clock, $(median "${processor[$name]}") ms of processor time"
done
ratio() { # numerator, denominator, goal
  [ -z "${clock[$1]:-}" ] || awk -v what="$1 / $2" -v goal="$3" \
    -v c="$(median "${clock[$1]}")" -v cs="$(median "${clock[$2]}")" \
    -v p="$(median "${processor[$1]}")" -v ps="$(median "${processor[$2]}")" \
    'BEGIN {printf "%-18s %.2f by the clock, %.2f in processor time, goal %s\n", what, c / cs, p / ps, goal}'
}
ratio footwell bare '<= 1.10'
ratio footwell plain '<= 1.5'
ratio kept plain '<= 0.65'
ratio kept-25 plain '<= 0.5'
