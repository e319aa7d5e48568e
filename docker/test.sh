#!/bin/bash
# Tries nginx.conf with the real nginx and two copies of the built jar, all on this machine.
# Ends by itself within four minutes, and stops whatever it started.
set -euo pipefail
cd "$(dirname "$0")/.."
. docker/checks.sh
[ "${BOUNDED:-}" ] || BOUNDED=yes exec timeout 240 docker/test.sh
jar=${FOOTWELL_JAR:-service/target/footwell.jar}
work=$(mktemp -d)
pids=()

trap finish EXIT
[ -f "$jar" ] || fail "$jar is not built"

start_copies 2
for copy in 1 2; do get -o /dev/null "http://127.0.0.1:${port[copy]}/metrics"; done
start_balancer 2
ok "ready through the balancer"

post() { get -H 'Content-Type: application/json' -d "$question" "$base/v1/sound-level" "$@"; }

post | has '"verdict"' || fail "no verdict"
ok "a calculation answers"

for _ in {1..10}; do post -o /dev/null; done
for copy in 1 2; do grep -q "127.0.0.1:${port[copy]}" "$work/nginx-2/access.log" || fail "copy $copy was not asked"; done
ok "both copies are asked"

trace=0af7651916cd43dd8448eb211c80319c
get -H "traceparent: 00-$trace-b7ad6b7169203331-01" -H 'X-Request-Id: order-17' "$base/v1/nothing" | has "$trace" ||
  fail "traceparent was lost"
sleep 0.2
grep -q 'order-17$' "$work/nginx-2/access.log" || fail "X-Request-Id was lost"
ok "trace and request ids pass"

# The second row of a batch is sent only when the answer to the first has come.
exec 4<>"/dev/tcp/127.0.0.1/${base##*:}"
send_row() { printf '%x\r\n%s\n\r\n' $((${#question} + 1)) "$question" >&4; }
await_row() {
  local line
  while IFS= read -r -t 5 line <&4; do [[ $line != *'"verdict"'* ]] || return 0; done
  fail "a batch is held back"
}
printf '%s\r\n' 'POST /v1/sound-level/batch HTTP/1.1' 'Host: footwell' 'Connection: close' \
  'Content-Type: application/x-ndjson' 'Transfer-Encoding: chunked' '' >&4
send_row
await_row
send_row
await_row
printf '0\r\n\r\n' >&4
cat <&4 >"$work/rest"
exec 4>&-
ok "a batch flows row by row"

for _ in {1..30000}; do echo "$question"; done >"$work/large"
size=$(stat -c %s "$work/large")
rows=$(get --max-time 60 -T "$work/large" -X POST -H 'Content-Type: application/x-ndjson' "$base/v1/sound-level/batch" | wc -l)
[ "$rows" = 30000 ] || fail "$rows answers to 30000 rows"
ok "a batch of $size bytes passes"

answer=$(get -T "$work/large" -X POST -H 'Content-Type: application/json' -w '%{http_code} %{content_type}' -o /dev/null "$base/v1/sound-level")
[ "$answer" = '413 application/problem+json' ] || fail "too large gave $answer"
ok "a body that is too large is a problem"

[ "$(get -o /dev/null -w '%{http_code}' "$base/metrics")" = 404 ] || fail "the balancer shows metrics"
ok "the balancer hides metrics"

# Whatever rules and dashboard name is told by a copy that has worked for a while. Each copy's figures were asked for before,
# since collections of garbage count from the first time on.
for copy in 1 2; do get "http://127.0.0.1:${port[copy]}/metrics"; done | sed -n 's/^\([a-z_]*\).*/\1/p' | sort -u >"$work/told"
grep -ohE '\b(footwell|jvm|process)_[a-z0-9_]+' docker/alerts.yaml docker/dashboard.json | sort -u >"$work/named"
comm -13 "$work/told" "$work/named" >"$work/missing"
[ ! -s "$work/missing" ] || fail "no copy tells $(paste -sd' ' "$work/missing")"
ok "alerts and dashboard name $(wc -l <"$work/named") figures, and all of them are told"

# Limits stand in Settings.java; what is shipped beside the service must agree with them.
default() { sed -n "s/.*\"$1\", \([0-9]*\) *<< *\([0-9]*\).*/\1 \2/p" service/src/main/java/org/footwell/web/Settings.java; }
read -r factor shift < <(default UPLOAD_BYTES)
upload_bytes=$((factor << shift))
passed=$(sed -n 's/.*client_max_body_size \([1-9][0-9]*\)m;/\1/p' docker/nginx.conf)
[ $((passed << 20)) -gt "$upload_bytes" ] || fail "the balancer passes $passed MiB, the service takes $upload_bytes bytes"
grep -q "FOOTWELL_UPLOAD_BYTES.*| $upload_bytes |" docs/operating.md || fail "docs/operating.md states another limit"
heap=$(sed -n 's/.*-Xmx\([0-9]*\)m.*/\1/p' docker/Dockerfile)
for limit in "$(sed -n 's/.*mem_limit: \([0-9]*\)m/\1/p' docker/compose.yaml)" \
  "$(sed -n 's/.*limits: {memory: \([0-9]*\)Mi}/\1/p' docker/kubernetes.yaml)"; do
  [ "$limit" -ge $((heap + 192)) ] || fail "$limit MiB are too little for a heap of $heap MiB"
done
ok "limits and memory agree"

# Whoever runs a copy must leave it the time to stop, and ask often enough whether it is ready.
figure() { sed -n "s/.*$1[^0-9]*\([0-9_]*\).*/\1/p" "$2" | tr -d _; }
settings=service/src/main/java/org/footwell/web/Settings.java
delay_ms=$(figure 'STOP_DELAY_MS, value' docker/kubernetes.yaml)
finish_ms=$(($(figure '"STOP_MS"' $settings) + 2000))
[ "$(figure stop_grace_period docker/compose.yaml)000" -ge $(($(figure '"STOP_DELAY_MS"' $settings) + finish_ms)) ] ||
  fail "compose.yaml kills a copy before it has stopped"
[ "$(figure terminationGracePeriodSeconds docker/kubernetes.yaml)000" -ge $((delay_ms + finish_ms)) ] ||
  fail "kubernetes.yaml kills a copy before it has stopped"
sed -n '/readinessProbe:/,/resources:/p' docker/kubernetes.yaml >"$work/probe"
[ "$delay_ms" -gt $((1000 * $(figure periodSeconds "$work/probe") * $(figure failureThreshold "$work/probe"))) ] ||
  fail "the port closes before a readinessProbe can tell"
ok "times to stop agree"

write_recording "$work/one.wav"
recordings='{"kind":"impulse_response","time_reference":"common_start","channels":[{"id":"a"}],"microphones":[{"id":"m"}],
  "recordings":[{"channel":"a","microphone":"m","recording":{"wav":"one"}}]}'
answer=$(get --max-time 30 -F "request=$recordings;type=application/json" -F "one=@$work/one.wav;type=audio/wav" \
  -o "$work/answer" -w '%{http_code}' "$base/v1/arrival-times")
[ "$answer" = 200 ] || fail "a recording gave $answer: $(head -c 500 "$work/answer")"
ok "a recording of $(stat -c %s "$work/one.wav") bytes passes"

kill "${service[1]}"
while kill -0 "${service[1]}" 2>/dev/null; do
  [ "$(post -o /dev/null -w '%{http_code}')" = 200 ] || fail "an answer was lost while the copy stopped"
done
for _ in {1..20}; do
  [ "$(post -o /dev/null -w '%{http_code}')" = 200 ] || fail "an answer was lost with the copy"
done
ok "one copy stopped, every answer still comes"

kill "${service[2]}"
wait "${service[2]}" || true
answer=$(post -o /dev/null -w '%{http_code} %{content_type} %header{retry-after}')
[ "$answer" = '503 application/problem+json 5' ] || fail "no copies gave $answer"
ok "both stopped, the caller is told to come back"
