#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Templates made by hand in the window, from an empty start to the saved file and the printed PDF, with mouse and
# keys on a screen of its own; the results are compared with the samples:
#   sh tests/by_hand/run.sh [FOLDER] [TASK...]
# FOLDER takes files and pictures, else a temporary one does. Needs no display; installs what is missing.
set -eu
cd "$(dirname "$0")/../.."
out=${1:-$(mktemp -d)}
[ $# -gt 0 ] && shift
[ $# -gt 0 ] || set -- hand_hold hand_hold_by_keys leg_frame pennant
mkdir -p "$out"
out=$(cd "$out" && pwd)
. app/packages.sh
install_packages $program_packages $test_packages xvfb openbox xdotool imagemagick
cmake -G Ninja -S . -B build >/dev/null
ninja -C build kerfwall ui_tests >/dev/null
program=$(pwd)/build/bin/kerfwall

number=$((90 + $$ % 900))
Xvfb ":$number" -screen 0 1280x720x24 >/dev/null 2>&1 &
screen_pid=$!
DISPLAY=:$number
export DISPLAY
manager_pid=
program_pid=
trap 'kill $program_pid $manager_pid $screen_pid 2>/dev/null || true' EXIT
sleep 1
openbox >/dev/null 2>&1 &
manager_pid=$!
sleep 1

tasks=tests/by_hand
. tests/by_hand/hand.sh
for task in "$@"; do
    rm -f "$out/$task.kerfwall" "$out/$task.pdf"
    start
    . "$tasks/$task.sh"
    picture "$task"
    save "$task"
    print_to "$task"
    leave
    echo "$task: saved and printed"
done
filter=$(printf 'Tasks/ByHand.*/%s:' "$@")
KERFWALL_BY_HAND=$out QT_QPA_PLATFORM=offscreen build/bin/ui_tests --gtest_brief=1 --gtest_filter="$filter"
