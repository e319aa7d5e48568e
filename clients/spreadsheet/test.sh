#!/bin/bash
# Starts the built jar and tries the workbooks and the functions with it. Ends by itself within ten
# minutes, and stops what it started.
set -euo pipefail
cd "$(dirname "$0")"
[ "${BOUNDED:-}" ] || BOUNDED=yes exec timeout 600 ./test.sh
jar=${FOOTWELL_JAR:-../../service/target/footwell.jar}
log=$(mktemp)

finish() {
  status=$?
  trap - EXIT
  [ $status = 0 ] || tail -n 20 "$log" >&2
  kill "$service" 2>/dev/null || true
  rm -f "$log"
  exit $status
}

FOOTWELL_PORT=0 java -XX:+UseSerialGC -Xmx128m -jar "$jar" >"$log" 2>&1 &
service=$!
trap finish EXIT
for _ in {1..150}; do
  port=$(sed -nE 's/.*listening on port ([0-9]+).*/\1/p' "$log")
  [ -z "$port" ] || break
  kill -0 "$service" || exit 1
  sleep 0.2
done
export FOOTWELL_URL=http://127.0.0.1:$port

node --test --test-reporter=spec test/
PYTHONPATH=. /usr/bin/python3 -m unittest discover --verbose --start-directory test --pattern '*_test.py'
