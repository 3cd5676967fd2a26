# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=bash
# Counts test cases from what the runners themselves wrote. Sourced by tests/run and tests/deep.

# countResults JUNIT FOLDER: prints "PASSED FAILED". JUNIT is ctest's report; FOLDER holds GoogleTest's own report of
# each program that ctest ran as a single entry. Such an entry counts with its cases; one that failed without saying in
# which case (it crashed, leaked, ran out of time) counts as one failure, and anything not run counts as failed.
countResults() {
  local junit=$1 folder=$2 line name status report tests failures passed=0 failed=0
  while IFS= read -r line; do
    name=${line#*name=\"}
    name=${name%%\"*}
    status=${line#*status=\"}
    status=${status%%\"*}
    report=$folder/$name.xml
    if [ -f "$report" ]; then
      read -r tests failures < <(casesOf "$report")
      passed=$((passed + tests - failures))
      failed=$((failed + failures))
      [ "$status" = run ] || [ "$failures" -gt 0 ] || failed=$((failed + 1))
    elif [ "$status" = run ]; then
      passed=$((passed + 1))
    else
      failed=$((failed + 1))
    fi
  done < <(grep -E '^[[:space:]]*<testcase ' "$junit")
  printf '%d %d\n' "$passed" "$failed"
}

# Cases run and, of these, failed, from the head line of a GoogleTest report; a case disabled in the source is not run
# and counts as failed. A report that can't be read is one failed case.
casesOf() {
  sed -n 's/.*<testsuites tests="\([0-9]*\)" failures="\([0-9]*\)" disabled="\([0-9]*\)" errors="\([0-9]*\)".*/\1 \2 \3 \4/p' \
    "$1" | awk '{ print $1, $2 + $3 + $4 } END { if (NR == 0) print 1, 1 }'
}
