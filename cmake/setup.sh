# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=bash
# What app/run, tests/run and tests/deep share: packages, build folders, steps with their time. Sourced, never run.
# Everything it says goes to standard error; standard output belongs to the program that is run.

packagesToBuild="g++ cmake ninja-build ccache mold file dpkg-dev
  libeigen3-dev nlohmann-json3-dev libcsv-dev libxlsxwriter-dev libcli11-dev libfmt-dev
  qt6-base-dev qt6-svg-dev qt6-charts-dev qt6-pdf-dev libqt6opengl6-dev libgl-dev libxkbcommon-dev fonts-dejavu-core"
packagesToTest="libgtest-dev libgmock-dev librapidcheck-dev pkgconf
  libboost-dev ngspice libngspice0-dev libvalijson-dev python3 python3-jsonschema
  xvfb xauth openbox xdotool x11-utils imagemagick"
packagesToTime="libbenchmark-dev libsuitesparse-dev libboost-dev ngspice python3"
packagesForKeys="xvfb openbox xdotool imagemagick python3"
packagesForOffice="libreoffice-calc-nogui python3"
packagesToGoDeep="clang clang-tidy clang-format cppcheck libclang-rt-14-dev libbenchmark-dev"

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
startedAt=$EPOCHREALTIME

# Comma or point, as the locale writes EPOCHREALTIME; only digits are kept, so the unit is microseconds.
secondsSince() {
  local tenths=$(((${EPOCHREALTIME//[!0-9]/} - ${1//[!0-9]/}) / 100000))
  printf '%d.%d' $((tenths / 10)) $((tenths % 10))
}

say() { printf '%s\n' "$*" >&2; }

# step NAME COMMAND...: runs quietly into the log, says how long it took, shows the end of the log on failure.
step() {
  local name=$1 from=$EPOCHREALTIME code=0 logged
  shift
  printf '\n== %s: %s\n' "$name" "$*" >>"$log"
  logged=$(wc -l <"$log")
  "$@" >>"$log" 2>&1 || code=$?
  if [ "$code" -eq 0 ]; then
    say "$(printf '%-28s %7s s' "$name" "$(secondsSince "$from")")"
  else
    say "$(printf '%-28s failed after %s s; the end of %s:' "$name" "$(secondsSince "$from")" "$log")"
    tail -n +$((logged + 1)) "$log" | tail -n 40 >&2
  fi
  return "$code"
}

canWriteAll() {
  mkdir -p "$1" 2>/dev/null && [ -w "$1" ] && [ -z "$(find "$1" ! -type l ! -writable -print -quit 2>/dev/null)" ]
}

# Sets buildRoot and log: build/ in the tree, or a folder of the user's own where the tree can't be written.
chooseBuildRoot() {
  buildRoot=${CORDREACH_BUILD_ROOT:-$root/build}
  local preset usable=yes
  for preset in "$@"; do
    canWriteAll "$buildRoot/$preset" || usable=no
  done
  if [ "$usable" = no ]; then
    buildRoot=${XDG_CACHE_HOME:-$HOME/.cache}/cordreach/$(printf '%s' "$root" | cksum | cut -d' ' -f1)
    mkdir -p "$buildRoot" || exit 1
    say "The source tree can't be written by $(id -un): building in $buildRoot"
  fi
  log=$buildRoot/$1/run.log
  mkdir -p "$buildRoot/$1" && : >"$log"
}

missingPackages() {
  # dpkg-query fails when it does not know one of them, and answers for the others all the same.
  { dpkg-query -W -f '${db:Status-Status} ${Package}\n' "$@" 2>/dev/null || true; } |
    awk -v wanted="$*" '$1 == "installed" { have[$2] = 1 }
      END { n = split(wanted, names, " "); for (i = 1; i <= n; i++) if (!(names[i] in have)) print names[i] }'
}

asRoot() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# Root, or sudo that works without asking, or sudo with somebody there to answer it.
mayInstall() {
  [ "$(id -u)" -eq 0 ] && return 0
  command -v sudo >/dev/null 2>&1 || return 1
  sudo -n true 2>/dev/null && return 0
  [ -t 0 ] && sudo -v
}

installPackages() {
  local apt="apt-get -o DPkg::Lock::Timeout=300 -q -y --no-install-recommends"
  step "apt-get update" asRoot apt-get -o DPkg::Lock::Timeout=300 -q update || return 1
  # shellcheck disable=SC2086  # the options are words on purpose
  step "apt-get install" asRoot env DEBIAN_FRONTEND=noninteractive $apt install "$@"
}

# needPackages NAME...: installs what dpkg does not know as installed; ends the script where it may not.
needPackages() {
  if ! command -v dpkg-query >/dev/null 2>&1; then
    say "This is no Debian: the tools and libraries of cmake/setup.sh must already be installed."
    return 0
  fi
  local missing
  missing=$(missingPackages "$@" | tr '\n' ' ')
  missing=${missing% }
  [ -n "$missing" ] || return 0
  if ! mayInstall; then
    say "Packages are missing and $(id -un) may not install them. Run this as root, then call again:"
    say "apt-get update && apt-get install -y --no-install-recommends $missing"
    exit 3
  fi
  say "Installing: $missing"
  # shellcheck disable=SC2086  # package names are words
  installPackages $missing || exit 1
}

# A compiler cache shared by all build folders and checkouts of this user.
useCompilerCache() {
  export CCACHE_BASEDIR=$root CCACHE_NOHASHDIR=1 CCACHE_DEPEND=1
}

cached() { grep -qxF "$2" "$buildRoot/$1/CMakeCache.txt" 2>/dev/null; }

# configure PRESET [tests]: once; afterwards ninja itself notices what changed. A tree that was moved starts afresh, and
# a folder configured without tests gains them when asked.
configure() {
  local folder=$buildRoot/$1
  # Who only wants to run it is not stopped by a warning of a compiler that we have not met.
  local options=(-DBUILD_TESTING=OFF -DCORDREACH_WARNINGS_FATAL=OFF)
  [ "${2:-}" = tests ] && options=(-DBUILD_TESTING=ON)
  if [ -f "$folder/CMakeCache.txt" ] && ! cached "$1" "CMAKE_HOME_DIRECTORY:INTERNAL=$root"; then
    options+=(--fresh)
  elif [ -f "$folder/build.ninja" ] && { [ "${2:-}" != tests ] || cached "$1" BUILD_TESTING:BOOL=ON; }; then
    return 0
  fi
  step "$1: configure" cmake -S "$root" --preset "$1" -B "$folder" "${options[@]}"
}

# build PRESET TARGET
build() {
  step "$1: build $2" cmake --build "$buildRoot/$1" --target "$2"
}
