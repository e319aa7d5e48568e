# What the scripts beside this one share: how they fail, ask and wait. To be sourced after `set -euo pipefail`.
fail() { echo "FAILED: $*" >&2; exit 1; }
ok() { echo "ok: $*"; }
get() { curl --no-progress-meter --max-time 10 "$@"; }

# Whether a line of what comes in matches. Reads all of it: `grep -q` closes the pipe at the first match, and a
# writer that is not yet done then fails, now and then.
has() { [ "$(grep -c -e "$1")" -gt 0 ]; }
free_port() {
  local port
  for port in $(shuf -i 20000-29999 -n 50); do
    (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null || { echo "$port"; return; }
  done
}
await() {
  for _ in {1..150}; do
    if get --fail --output /dev/null "$1" 2>/dev/null; then return; fi
    sleep 0.2
  done
  fail "$1 does not answer"
}

# Ends the processes noted in pids, and shows the logs in the folder $work where something failed. For `trap finish EXIT`.
finish() {
  status=$?
  trap - EXIT
  [ $status = 0 ] || tail -n 20 "$work"/*.log >&2
  kill "${pids[@]}" 2>/dev/null || true
  wait 2>/dev/null || true
  rm -rf "$work"
  exit $status
}

# Copies of the built jar on free ports of this machine: their processes are service[1] and so on, their ports port[1].
start_copies() { # how many
  local copy
  for ((copy = 1; copy <= $1; copy++)); do
    port[copy]=$(free_port)
    FOOTWELL_HOST=127.0.0.1 FOOTWELL_PORT=${port[copy]} \
      java -XX:+UseSerialGC -Xmx256m -XX:+ExitOnOutOfMemoryError -jar "$jar" >"$work/copy-$copy.log" 2>&1 &
    pids+=($!)
    service[copy]=$!
    await "http://127.0.0.1:${port[copy]}/health/ready"
  done
}

# The real nginx with the first of these copies in place of those in compose.yaml, and with what does not fit into
# its memory where an ordinary user may write. Sets base and balancer, its address and its process.
start_balancer() { # how many copies
  local PATH=$PATH:/usr/sbin  # where nginx is, and which an ordinary user's PATH leaves out
  local own=$work/nginx-$1 servers= copy listen
  for ((copy = 1; copy <= $1; copy++)); do servers+="server 127.0.0.1:${port[copy]}; "; done
  mkdir "$own"
  listen=$(free_port)
  sed -e "s/server footwell-1:8080;/$servers/" -e '/server footwell-2:8080;/d' -e "s/listen 8080/listen 127.0.0.1:$listen/" \
    -e "s,^http {,&\n  client_body_temp_path $own/bodies; proxy_temp_path $own/answers;," docker/nginx.conf >"$own/nginx.conf"
  chmod 755 "$work"
  nginx -p "$own" -c "$own/nginx.conf" -g "daemon off; pid $own/nginx.pid;" >"$own/access.log" 2>"$work/nginx-$1.log" &
  balancer=$!
  pids+=($!)
  base=http://127.0.0.1:$listen
  await "$base/health/ready"
}

question='{"driver":{"sensitivity":{"level_db_spl":90,"basis":"one_watt"},"rated_ohm":4},"power_w":50}'

# A recording of 10 s at 192 kHz, 32 bits: an impulse, 8 MB.
write_recording() { # file
  local samples=2000000
  {
    printf 'RIFF'; little $((36 + 4 * samples)) 4; printf 'WAVEfmt '; little 16 4; little 3 2; little 1 2
    little 192000 4; little 768000 4; little 4 2; little 32 2; printf 'data'; little $((4 * samples)) 4
    head -c $((4 * 1000)) /dev/zero
    printf '\x00\x00\x00\x3f'
    head -c $((4 * (samples - 1001))) /dev/zero
  } >"$1"
}
little() { local i value=$1; for ((i = 0; i < $2; i++)); do printf "\\x$(printf %02x $((value >> 8 * i & 255)))"; done; }
