#!/bin/bash
# Holds the rules of alerts.yaml and the expressions of dashboard.json against Prometheus' own reader, and each
# alert against figures that must raise it.
set -euo pipefail
cd "$(dirname "$0")"
. ./checks.sh
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
command -v promtool >/dev/null || fail "promtool is missing: run .ci/setup"

promtool check rules alerts.yaml >"$work/log" 2>&1 || fail "$(cat "$work/log")"
promtool test rules alerts-test.yaml >"$work/log" 2>&1 || fail "$(cat "$work/log")"
for alert in $(sed -n 's/.*- alert: //p' alerts.yaml); do
  grep -A1 "alertname: $alert" alerts-test.yaml | has 'exp_alerts:' || fail "$alert is raised by no test"
done
ok "$(grep -c -- '- alert:' alerts.yaml) alerts are raised when they must be, and in a usual hour none"

jq '{groups: [{name: "dashboard", rules: [.panels[].targets[] | {record: "panel:\(.refId)", expr: (.expr | gsub("\\$__rate_interval"; "5m")), labels: {of: .expr}}]}]}' \
  dashboard.json >"$work/dashboard.yaml"
promtool check rules "$work/dashboard.yaml" >"$work/log" 2>&1 || fail "$(cat "$work/log")"
ok "$(jq '.panels | length' dashboard.json) panels of the dashboard can be read"
