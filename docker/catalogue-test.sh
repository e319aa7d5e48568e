#!/bin/bash
# A large catalogue through four copies behind the real nginx, checked by the catalogue check, while one copy is killed
# on the way: every row is judged once and in its order. What must come out is made of a small catalogue that one copy
# judges alone: its rows and its findings, again and again under other part numbers.
#   usage: docker/catalogue-test.sh [ROWS]   50,000 unless given, in steps of 5,000; 10,000,000 need 4 GB of disk
set -euo pipefail
cd "$(dirname "$0")/.."
. docker/checks.sh
turns=$((${1:-50000} / 5000))
rows=$((turns * 5000))
[ "${BOUNDED:-}" ] || BOUNDED=yes exec timeout $((180 + rows / 2000)) docker/catalogue-test.sh "$@"
jar=${FOOTWELL_JAR:-service/target/footwell.jar}
classes=${FOOTWELL_TESTS:-service/target/test-classes}
check=${FOOTWELL_CATALOGUE:-clients/catalogue/target/footwell-catalogue.jar}
work=$(mktemp -d)
pids=()
trap finish EXIT
for file in "$jar" "$classes" "$check"; do [ -e "$file" ] || fail "$file is not built"; done

start_copies 4
# Rows with findings are no failure of this test, so that status 1 is as good as 0.
judge() { # service, catalogue, findings
  java -Xmx$((64 + rows / 50000))m -XX:+UseSerialGC -jar "$check" --service "$1" --no-progress --parallel 8 --write-baseline "$3" "$2" || [ $? = 1 ]
}
again() { # file, whose part numbers get the number of their turn; what stands above the first one stays once
  awk -v turns="$turns" '
    /part-/ { lines[++count] = $0; next }
    { print }
    END { for (turn = 1; turn <= turns; turn++) for (i = 1; i <= count; i++) { line = lines[i]; sub(/part-/, "part-" turn "-", line); print line } }' "$1"
}
java -cp "$classes:$jar" org.footwell.acoustic.driver.CatalogueSample "$work/small.csv"
judge "http://127.0.0.1:${port[1]}" "$work/small.csv" "$work/small" >"$work/small.txt"
again "$work/small.csv" >"$work/large.csv"
[ "$(wc -l <"$work/large.csv")" = $((rows + 1)) ] || fail "the catalogue is not $rows rows long"

start_balancer 4
chunks() { grep -c 'driver-check/batch' "$work/nginx-4/access.log" || true; }
started=$(date +%s%N)
judge "$base" "$work/large.csv" "$work/large" >"$work/large.txt" &
judging=$!
while kill -0 $judging 2>/dev/null && [ "$(chunks)" -lt $((rows / 1000 / 3)) ]; do sleep 0.05; done
killed_after=$(chunks)
{ kill -9 "${service[4]}" && wait "${service[4]}"; } 2>/dev/null || true
wait $judging || fail "the check could not run: $(tail -n 5 "$work/large.txt")"
took_ms=$((($(date +%s%N) - started) / 1000000))
[ "$killed_after" -lt $((rows / 1000)) ] || fail "the copy was killed only when all was done"

again "$work/small" | cmp - "$work/large" || fail "other findings, or in another order, than one copy has"
for verdict in stop warning note ok; do
  count() { sed -n "1s/.* \([0-9][0-9,]*\) $verdict.*/\1/p" "$1" | tr -d ,; }
  [ "$(count "$work/large.txt")" = $(($(count "$work/small.txt") * turns)) ] || fail "$(head -n 1 "$work/large.txt") against $(head -n 1 "$work/small.txt")"
done
sed -n 's/.*\(127.0.0.1:[0-9]*\) [^ ]*$/\1/p' "$work/nginx-4/access.log" | sort | uniq -c | sort -rn >"$work/share"
ok "$rows rows in $((took_ms / 1000)).$((took_ms / 100 % 10)) s, a copy killed after $killed_after of $((rows / 1000)) chunks:" \
  "each row judged once, in its order; chunks of the copies: $(awk '{ printf "%s%s", sep, $1; sep = ", " }' "$work/share")"
