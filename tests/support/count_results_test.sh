#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Counts a made-up report in which every outcome occurs once.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/count_results.sh"

folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

entry() { printf '\t<testcase name="%s" classname="%s" time="0.1" status="%s">\n' "$1" "$1" "$2" >>"$folder/junit.xml"; }
report() {
  printf '<testsuites tests="%d" failures="%d" disabled="%d" errors="0" time="0." name="AllTests">\n' "$2" "$3" "$4" \
    >"$folder/$1.xml"
}

entry Case.Passes run
entry Case.Fails fail
entry Case.WasNotBuilt notrun
entry sound_program run && report sound_program 10 0 0
entry program_that_leaks_at_its_end fail && report program_that_leaks_at_its_end 10 0 0
entry program_that_crashes fail
entry program_with_failures fail && report program_with_failures 10 2 1
entry program_with_a_broken_report run && : >"$folder/program_with_a_broken_report.xml"

counted=$(countResults "$folder/junit.xml" "$folder")
wanted="28 8"
if [ "$counted" != "$wanted" ]; then
  echo "counted $counted, wanted $wanted"
  exit 1
fi
