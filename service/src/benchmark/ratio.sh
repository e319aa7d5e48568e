# Read by the other scripts: one row of the table that all.sh prints, and what they measure with.

# ratio WHAT OURS REFERENCE GOAL, the goal as least:1.1 or most:0.65
ratio() {
  awk -v what="$1" -v ours="$2" -v reference="$3" -v goal="$4" 'BEGIN {
    split(goal, part, ":"); r = ours / reference
    reached = part[1] == "least" ? r >= part[2] : r <= part[2]
    printf "| %s | %s | %s | %.2f | at %s %s | %s |\n", what, ours, reference, r, part[1], part[2],
      reached ? "yes" : "no"
  }'
}

# The middle of the numbers on standard input.
median() { sort -g | awk '{ all[NR] = $1 } END { print NR % 2 ? all[(NR + 1) / 2] : (all[NR / 2] + all[NR / 2 + 1]) / 2 }'; }

# Processor time that a process has taken so far, µs.
processor_us() { awk -v hz="$(getconf CLK_TCK)" '{ sub(/.*\) /, ""); printf "%.0f\n", ($12 + $13) * 1e6 / hz }' "/proc/$1/stat"; }

wait_ready() { for _ in $(seq 600); do curl -sf -o /dev/null "localhost:$1/health/ready" && return; sleep 0.1; done; exit 1; }

# A file by which wrk sends a request of sound-level and reports in one line.
request_lua() {
  cat <<'LUA'
wrk.method = "POST"
wrk.headers["Content-Type"] = "application/json"
wrk.body = '{"driver":{"sensitivity":{"level_db_spl":90,"basis":"one_watt"},"rated_ohm":4},"power_w":50,"distance_m":1.2,"driver_count":2,"drive":"each","addition":"incoherent","crest_factor_db":12,"target_level_db_spl":105,"road_noise_dba":68,"a_weighting_db":-4}'
done = function(summary, latency)
  io.write(string.format("answered %d %.0f %.2f %d\n", summary.requests, summary.requests / summary.duration * 1e6,
    latency:percentile(99) / 1000, summary.errors.status + summary.errors.read + summary.errors.timeout))
end
LUA
}
