#!/usr/bin/env bash
# One, two and four copies behind the real nginx, and one without it, all in one run: requests a second, processor time
# for a request in the copies and in nginx, and how evenly the copies are asked.
# Run from the project's root after: mvn -q -P benchmark -pl service package -DskipTests
#   usage: scale.sh [ROUNDS] [SECONDS]   3 and 6 unless given; bounded: rounds x 4 x seconds, four minutes before them and the start
# Copies, nginx and the load share this machine's processors, so that more copies cannot answer more here. What can be
# shown is what they cost: while the processor time of a request stays what it is with one copy, machines of their own
# add up, until nginx has none left.
set -euo pipefail
rounds=${1:-3} seconds=${2:-6}
. docker/checks.sh
jar=service/target/footwell.jar
work=$(mktemp -d)
pids=()
trap finish EXIT
cat >"$work/post.lua" <<LUA
wrk.method = "POST"
wrk.headers["Content-Type"] = "application/json"
wrk.body = '$question'
done = function(summary, latency)
  io.write(string.format("%d %d %d %d\n", summary.requests, summary.duration, latency:percentile(99),
    summary.errors.status + summary.errors.connect + summary.errors.read + summary.errors.timeout))
end
LUA

start_copies 4
declare -A address=([alone]=http://127.0.0.1:${port[1]})
declare -A front=([alone]=)
for copies in 1 2 4; do start_balancer $copies; address[$copies]=$base; front[$copies]=$balancer; done

# Ticks of the processor that these processes and what they have started took until now.
ticks() { local all=("$@"); for pid in "$@"; do all+=($(pgrep -P "$pid" || true)); done
  for pid in "${all[@]}"; do cat "/proc/$pid/stat"; done | awk '{ sum += $14 + $15 } END { print sum + 0 }'; }
load() { wrk -t1 -c32 --timeout 10s -d"$1s" -s "$work/post.lua" "$2/v1/sound-level" | tail -n 1; }
# A copy that compiles still would look dear: each answers as many requests as it takes, for a minute at most.
warm() { # port
  local answered=0 requests until=$((SECONDS + 60))
  while [ $answered -lt 150000 ] && [ $SECONDS -lt $until ]; do
    read -r requests _ < <(load "$seconds" "http://127.0.0.1:$1")
    answered=$((answered + requests))
  done
  echo "warm after $answered requests"
}
for copy in 1 2 3 4; do warm "${port[copy]}"; done

tick_us=$((1000000 / $(getconf CLK_TCK)))
for ((round = 1; round <= rounds; round++)); do
  for kind in alone 1 2 4; do
    of_copies=$(ticks "${service[@]}")
    of_nginx=$(ticks ${front[$kind]})
    read -r requests duration p99 errors < <(load "$seconds" "${address[$kind]}")
    [ "$errors" = 0 ] || fail "$errors of the requests to $kind had no answer"
    echo "$kind $requests $duration $p99 $((($(ticks "${service[@]}") - of_copies) * tick_us)) $((($(ticks ${front[$kind]}) - of_nginx) * tick_us))" >>"$work/rounds"
  done
done
awk '
  function row(what, ours, reference, most) {
    printf "| %s | %.1f | %.1f | %.2f | at most %s | %s |\n", what, ours, reference, ours / reference, most, ours / reference <= most ? "yes" : "no"
  }
  { n[$1]++; rate[$1] += $2 / $3 * 1e6; p99[$1] += $4; copies[$1] += $5 / $2; nginx[$1] += $6 / $2 }
  END {
    print "copies  requests/s  p99 ms  processor µs a request: copies, nginx"
    split("alone 1 2 4", kinds)
    for (i = 1; i <= 4; i++) { k = kinds[i]; printf "%-6s  %10.0f  %6.1f  %24.1f, %.1f\n", k, rate[k] / n[k], p99[k] / n[k] / 1000, copies[k] / n[k], nginx[k] / n[k] }
    row("processor time of a request in two copies, µs, against one", copies[2] / n[2], copies[1] / n[1], 1.10)
    row("processor time of a request in four copies, µs, against one", copies[4] / n[4], copies[1] / n[1], 1.25)
    printf "nginx takes %.2f of what a copy takes for a request: a core of it serves %.1f cores of copies\n", nginx[4] / copies[4], copies[4] / nginx[4]
  }' "$work/rounds"
for copies in 2 4; do
  sed -n 's/.*\(127.0.0.1:[0-9]*\) [^ ]*$/\1/p' "$work/nginx-$copies/access.log" | sort | uniq -c |
    awk -v copies=$copies '{ if (!least || $1 < least) least = $1; if ($1 > most) most = $1 } END { printf "busiest of %d copies against the idlest: %.3f (goal at most 1.05)\n", copies, most / least }'
done
