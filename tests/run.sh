#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds Kerfwall with its tests and runs them all.
set -eu
cd "$(dirname "$0")/.."
. app/packages.sh

# shellcheck disable=SC2086
install_packages $program_packages $test_packages
cmake -G Ninja -S . -B build -DCMAKE_BUILD_TYPE=Release -DKERFWALL_TESTS=ON
ninja -C build
ctest --test-dir build -j2 --output-on-failure
