#!/bin/bash
# Builds the image as root on Debian, without a Docker engine, and runs it once: a minute or two.
# The base is made here from Debian's packages, so that no image registry is needed.
set -euo pipefail
cd "$(dirname "$0")/.."
[ "${BOUNDED:-}" ] || BOUNDED=yes exec timeout 300 docker/image-test.sh
export STORAGE_DRIVER=overlay BUILDAH_ISOLATION=chroot
work=$(mktemp -d)
build() { buildah --root "$work/store" --runroot "$work/run" "$@"; }
finish() {
  status=$?
  trap - EXIT
  build rm --all >/dev/null 2>&1 || true
  build rmi --all --force >/dev/null 2>&1 || true
  rm -rf "$work"
  exit $status
}
trap finish EXIT

debootstrap --variant=minbase --include=openjdk-17-jre-headless bookworm "$work/base" >"$work/base.log" 2>&1 ||
  { tail "$work/base.log" >&2; exit 1; }
container=$(build from scratch)
build add --quiet "$container" "$work/base" / >/dev/null
rm -rf "$work/base"
build commit --quiet "$container" localhost/java:17 >/dev/null
echo "ok: a base with Java"

build bud --quiet --pull-never --format docker --build-arg BASE=localhost/java:17 \
  --tag localhost/footwell:test --file docker/Dockerfile . >/dev/null
build inspect --type image localhost/footwell:test | jq -e '.Docker.config.Healthcheck.Test' >/dev/null
echo "ok: the image builds, with its health check"

# The port is another than the usual one, since the network is that of the machine.
container=$(build from --pull-never localhost/footwell:test)
build run --env FOOTWELL_HOST=127.0.0.1 --env FOOTWELL_PORT=18080 "$container" -- bash -euc '
  [ "$(id -u)" = 10001 ]
  JDK_JAVA_OPTIONS="$JDK_JAVA_OPTIONS -Xlog:class+load:file=/tmp/classes.log" /opt/footwell/start &
  trap "kill $! 2>/dev/null || true" EXIT
  for _ in {1..100}; do /opt/footwell/get /health/ready >/dev/null 2>&1 && break; sleep 0.1; done
  /opt/footwell/get /health/live | grep -q up
  grep -q "shared objects file (top)" /tmp/classes.log
  kill $!
  wait $! || [ $? = 143 ]
'
echo "ok: it runs as nobody in particular, answers, uses its class archive and stops when told"
