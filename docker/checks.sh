# What the scripts beside this one share: how they fail, ask and wait. To be sourced after `set -euo pipefail`.
fail() { echo "FAILED: $*" >&2; exit 1; }
ok() { echo "ok: $*"; }
get() { curl --no-progress-meter --max-time 10 "$@"; }
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
