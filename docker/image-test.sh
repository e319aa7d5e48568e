#!/bin/bash
# Builds the image for Java 17 and for Java 25, without a Docker engine, and runs both as kubernetes.yaml would:
# as nobody in particular, without privileges, on a file system that cannot be written to, within its memory.
# The bases are made here from Debian's packages, so that no image registry is needed.
#   usage: docker/image-test.sh [JAVA:RELEASE...]   17:bookworm 25:trixie unless given
# As root, or as a user who may have namespaces of its own. Ends by itself, and takes all it started with it.
set -euo pipefail
cd "$(dirname "$0")/.."
. docker/checks.sh

if [ ! "${INSIDE:-}" ]; then
  as_root=()
  [ "$(id -u)" = 0 ] || as_root=(--user --map-root-user --map-auto)
  own=(unshare "${as_root[@]}" --mount --pid --fork --kill-child --mount-proc)
  "${own[@]}" true || fail "the image can be tried by root, or by a user who may have namespaces of its own" \
    "(package uidmap, user.max_user_namespaces above 0, numbers in /etc/subuid)"
  work=$(mktemp -d)
  trap '"${own[@]}" rm -rf "$work"' EXIT
  work=$work INSIDE=yes timeout --foreground 600 "${own[@]}" docker/image-test.sh "$@"
  exit
fi

export STORAGE_DRIVER=overlay BUILDAH_ISOLATION=chroot
build() { buildah --root "$work/store" --runroot "$work/run" "$@"; }
trap '[ $? = 0 ] || tail -n 20 "$work"/*.log >&2' EXIT

# What a base of docker/Dockerfile has to have: Java and bash on its path.
make_base() { # Java, Debian's release that has it
  local container root mirror
  { container=$(build from scratch) && root=$(build mount "$container"); } || fail "buildah cannot lay down an image here"
  mirror=$(apt-get indextargets 2>/dev/null --format '$(REPO_URI)' "Release: $(. /etc/os-release && echo "$VERSION_CODENAME")" | sed -n 1p)
  mmdebstrap --variant=extract --mode=root --include="base-files,bash,dash,coreutils,util-linux,openjdk-$1-jre-headless" \
    "$2" "$root" "$mirror" >"$work/base-$1.log" 2>&1 || fail "no base with Java $1 from $mirror"
  (cd "$root" && ln -s "/$(echo usr/lib/jvm/java-"$1"-openjdk-*/bin/java)" usr/bin/java)
  build commit --quiet --rm "$container" "localhost/java:$1" >/dev/null
}

build_image() { # Java
  build bud --quiet --pull-never --format docker --build-arg "BASE=localhost/java:$1" \
    --tag "localhost/footwell:$1" --file docker/Dockerfile . >/dev/null 2>"$work/build-$1.log" || fail "no image with Java $1"
  config=$(build inspect --type image "localhost/footwell:$1" | jq .Docker.config)
  jq -e '.Healthcheck.Test | join(" ") | contains("/health/live")' <<<"$config" >/dev/null || fail "the health check is lost"
  ok "the image builds with Java $1"
}
configured() { jq -r "$1" <<<"$config"; }

# Becomes a command run as the image's user in its root, with nothing that the manifests take away.
within() {
  local settings
  mapfile -t settings < <(configured '.Env[]')
  exec env -i "${settings[@]}" FOOTWELL_HOST=127.0.0.1 "FOOTWELL_PORT=$port" "FOOTWELL_METRICS_PORT=$metrics_port" \
    JDK_JAVA_OPTIONS="$(configured '.Env[] | select(startswith("JDK_JAVA_OPTIONS=")) | ltrimstr("JDK_JAVA_OPTIONS=")') ${more_options:-}" \
    chroot "$root" env --chdir="$(configured .WorkingDir)" setpriv --reuid "${user%:*}" --regid "${user#*:}" --clear-groups --no-new-privs \
    --bounding-set=-all --inh-caps=-all "$@"
}

manifest() { sed -n "s/.*$1.*/\1/p" docker/kubernetes.yaml | sed -n 1p; }
memory_mib=$(manifest 'limits: {memory: \([0-9]*\)Mi}')
tmp_mib=$(manifest 'sizeLimit: \([0-9]*\)Mi')
grace_s=$(manifest 'terminationGracePeriodSeconds: \([0-9]*\)')
write_recording "$work/one.wav"

try_image() { # Java
  local container service
  container=$(build from --pull-never "localhost/footwell:$1")
  root=$(build mount "$container")
  mkdir -p "$root"/{proc,dev,tmp}
  mount --bind "$root" "$root"
  mount -o remount,bind,ro "$root"
  mount -t proc proc "$root/proc"
  mount --rbind /dev "$root/dev"
  mount -t tmpfs -o "size=${tmp_mib}m,mode=1777" tmp "$root/tmp"
  touch "$root/opt/footwell/written" 2>/dev/null && fail "the file system can be written to"

  port=$(free_port)
  metrics_port=$(free_port)
  user=$(configured .User)
  mapfile -t entrypoint < <(configured '.Entrypoint[]')
  more_options=-Xlog:class+load:file=/tmp/classes.log within prlimit --data=$((memory_mib << 20)) \
    "${entrypoint[@]}" >"$work/service-$1.log" 2>&1 &
  service=$!
  base=http://127.0.0.1:$port
  await "$base/health/ready"
  (within bash -c "$(configured '.Healthcheck.Test[1]')") >/dev/null || fail "its own health check fails"
  grep -q 'org\.footwell\..* source: shared objects file' "$root/tmp/classes.log" || fail "it does not use its class archive"
  state() { awk -v name="$1:" '$1 == name { print $2 }' "/proc/$service/status"; }
  rights() { grep -E '^(Uid|Gid|NoNewPrivs|Cap)' "/proc/$service/status"; }
  [ "$(state Uid) $(state Gid) $(state NoNewPrivs)" = "${user/:/ } 1" ] || fail "it has other rights: $(rights)"
  [ "$(state CapEff) $(state CapBnd)" = '0000000000000000 0000000000000000' ] || fail "it has privileges: $(rights)"
  ok "Java $1: it runs as $user, without privileges, on a root it cannot write to, from its class archive"

  try_uploads
  [ "$(get -o /dev/null -w '%{http_code}' "$base/metrics")" = 404 ] || fail "its metrics are open to callers"
  get --fail "http://127.0.0.1:$metrics_port/metrics" | has '^footwell_build_info{version="' || fail "no metrics at their port"
  local peak_mib=$(($(state VmHWM) >> 10))
  [ "$peak_mib" -le "$memory_mib" ] || fail "$peak_mib MiB resident are above the limit of $memory_mib"
  ok "Java $1: uploads of $upload_mib MiB pass; at most $peak_mib of $memory_mib MiB were resident"

  try_stop "$service"
  ok "Java $1: told to stop under load it loses nothing, $rows rows of a batch and $answers answers"
  umount --lazy "$root"
  build rm "$container" >/dev/null
}

# The largest upload of a kind, six recordings of 2,000,000 samples, twice one after the other and twice at once.
try_uploads() {
  local microphones='[]' forms=() answer
  microphones=$(jq -nc '[range(6) | {id: "m\(.)"}]')
  forms=(-F "request=$(jq -nc --argjson microphones "$microphones" '{kind: "impulse_response", time_reference: "common_start",
    channels: [{id: "a"}], microphones: $microphones,
    recordings: [$microphones[] | {channel: "a", microphone: .id, recording: {wav: .id}}]}');type=application/json")
  for microphone in m{0..5}; do forms+=(-F "$microphone=@$work/one.wav;type=audio/wav"); done
  upload_mib=$((6 * $(stat -c %s "$work/one.wav") >> 20))
  upload() { get --silent --show-error --max-time 60 --retry 10 "${forms[@]}" -o "$work/answer-$1" -w '%{http_code}' "$base/v1/arrival-times"; }
  for turn in 1 2; do
    answer=$(upload $turn)
    [ "$answer" = 200 ] || fail "recordings gave $answer: $(head -c 500 "$work/answer-$turn")"
  done
  upload 3 >"$work/third" &
  answer=$(upload 4)
  wait $!
  [ "$answer $(cat "$work/third")" = '200 200' ] || fail "two uploads at once gave $answer and $(cat "$work/third")"
}

# A batch under way and callers that go on until the port is closed.
try_stop() { # process
  local status started=$SECONDS
  for _ in {1..20000}; do echo "$question"; done >"$work/rows"
  get --max-time 60 --limit-rate 600k -T "$work/rows" -X POST -H 'Content-Type: application/x-ndjson' \
    "$base/v1/sound-level/batch" >"$work/answered" &
  local batch=$!
  sleep 0.5
  kill "$1"
  answers=0
  while status=$(get -o /dev/null -w '%{http_code}' -d "$question" -H 'Content-Type: application/json' "$base/v1/sound-level" 2>/dev/null); do
    [ "$status" = 200 ] || fail "while it stopped a caller got $status"
    answers=$((answers + 1))
  done
  [ "$answers" -gt 0 ] || fail "it took no requests while callers could not yet know that it stops"
  wait "$batch" || fail "a batch under way was broken off"
  rows=$(wc -l <"$work/answered")
  [ "$rows" = 20000 ] || fail "$rows of 20000 rows were answered"
  status=0
  wait "$1" || status=$?
  [ "$status" = 143 ] || fail "it ended with $status"
  [ $((SECONDS - started)) -le "$grace_s" ] || fail "it took longer to stop than terminationGracePeriodSeconds"
}

for pair in ${*:-17:bookworm 25:trixie}; do
  make_base "${pair%:*}" "${pair#*:}"
  build_image "${pair%:*}"
  try_image "${pair%:*}"
done
