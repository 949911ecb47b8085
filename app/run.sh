#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds Kerfwall and opens its window, with any arguments handed on; without a display it publishes a
# sample's papers instead.
set -eu
called_from=$PWD
cd "$(dirname "$0")/.."
. app/packages.sh

# shellcheck disable=SC2086
install_packages $program_packages
[ -f build/build.ninja ] || cmake -G Ninja -S . -B build -DCMAKE_BUILD_TYPE=Release -DKERFWALL_TESTS=OFF
ninja -C build kerfwall

program=$PWD/build/bin/kerfwall
if [ $# -gt 0 ] || [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    cd "$called_from"
    exec "$program" "$@"
fi
"$program" publish samples/crate_end.kerfwall --to build/papers
echo "There is no display, so the papers of samples/crate_end.kerfwall were written to $PWD/build/papers."
