#!/usr/bin/env bash
# Time from the first request to 90 % of the final rate under load, of the service, plain and as its start script
# starts it, and of the frozen handler, each from a cold start, in turn. A machine that others use disturbs the clock, so beside it
# stands the processor time taken until a request costs no more than 1/0.9 of what it costs in the end.
# With JDK 25 in JAVA25 the service is also measured with an AOT cache that holds profiles.
# Run like load.sh. Arguments: runs of each, seconds of a run.
set -euo pipefail
source "$(dirname "$0")/ratio.sh"
runs=${1:-3} seconds=${2:-90} connections=32
flags=(-XX:+UseSerialGC -Xmx128m)
work=$(mktemp -d) server=
trap 'kill $server 2>/dev/null || true; rm -rf "$work"' EXIT
request_lua >"$work/post.lua"
jar=service/target/footwell.jar
load() { wrk -t1 -c$connections -d"$1s" -s "$work/post.lua" "http://127.0.0.1:18087/v1/sound-level" | awk '/^answered/ { print $2 }'; }

run() { # NAME SECONDS COMMAND: loads it second by second
  local name=$1 last=$2; shift 2
  FOOTWELL_PORT=18087 "$@" >/dev/null 2>&1 & server=$!
  wait_ready 18087
  local before=$(processor_us $server) answered
  for _ in $(seq "$last"); do
    answered=$(load 1)
    echo "$answered $(($(processor_us $server) - before))"
    before=$(processor_us $server)
  done >"$work/seconds"
  kill $server; wait $server 2>/dev/null || true
  # Seconds, processor seconds and the final rate: the first three seconds in a row that reach it.
  awk -v name="$name" '
    { requests[NR] = $1; us[NR] = $2 }
    END {
      for (i = NR - int(NR / 5) + 1; i <= NR; i++) { final += requests[i]; cost += us[i]; n++ }
      cost = cost / final; final = final / n
      for (i = 1; i <= NR - 2; i++) {
        three = requests[i] + requests[i + 1] + requests[i + 2]; spent = us[i] + us[i + 1] + us[i + 2]
        if (!clock && three >= 3 * 0.9 * final) clock = i
        if (!processor && spent * 0.9 <= cost * three) processor = before / 1e6 + 0.01
        before += us[i]
      }
      print name, clock ? clock : NR, processor ? processor : before / 1e6, int(final)
    }' "$work/seconds" | tee -a "$work/runs"
}

mkdir "$work/started"
cp "$jar" service/start "$work/started"
started=(env JDK_JAVA_OPTIONS="${flags[*]}" "$work/started/start")
"${started[@]}" --check >/dev/null 2>&1 # rehearses

trained=()
if [[ -n ${JAVA25:-} ]]; then
  run training 40 "$JAVA25" "${flags[@]}" -XX:AOTCacheOutput="$work/footwell.aot" -jar $jar
  trained=("$JAVA25" "${flags[@]}" -XX:AOTCache="$work/footwell.aot" -jar $jar)
fi
echo "which, seconds, processor seconds, final requests/s"
for _ in $(seq "$runs"); do
  run bare "$seconds" java "${flags[@]}" -cp "$jar:service/target/test-classes" org.footwell.reference.BareHandler 18087
  run footwell "$seconds" java "${flags[@]}" -jar $jar
  run started "$seconds" "${started[@]}"
  [[ -z ${trained[*]} ]] || run trained "$seconds" "${trained[@]}"
done
middle() { awk -v name="$1" -v column="$2" '$1 == name { print $column }' "$work/runs" | median; }
ratio 'seconds to 90 % of the final rate, against the tutorial handler' "$(middle footwell 2)" "$(middle bare 2)" most:1.2
ratio 'processor seconds until then, against the same' "$(middle footwell 3)" "$(middle bare 3)" most:1.2
ratio 'seconds as service/start starts it, against the same' "$(middle started 2)" "$(middle bare 2)" most:1.2
ratio 'processor seconds until then, against the same' "$(middle started 3)" "$(middle bare 3)" most:1.2
[[ -z ${trained[*]} ]] || ratio 'processor seconds until then on JDK 25 with profiles, against the same' "$(middle trained 3)" "$(middle bare 3)" most:1.2
