#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Pictures of every state of the sheet, in light and dark, millimetres and inches, at three sizes:
#   sh tests/pictures.sh FOLDER
set -eu
cd "$(dirname "$0")/.."
folder=${1:?"usage: sh tests/pictures.sh FOLDER"}
. app/packages.sh
install_packages $program_packages $test_packages
cmake -G Ninja -S . -B build >/dev/null
ninja -C build ui_tests >/dev/null

# take NAME SIZE SCALE: all states at SIZE, in device-independent pixels.
take() {
    mkdir -p "$folder/$1"
    KERFWALL_PICTURES="$folder/$1" KERFWALL_PICTURE_SIZE="$2" QT_SCALE_FACTOR="$3" QT_QPA_PLATFORM=offscreen \
        build/bin/ui_tests --gtest_brief=1 --gtest_filter='Each/StatesOf*' 2>&1 | grep -v 'propagateSizeHints' || true
}
take 1024x680 1024x680 1
take 1280x720 1280x720 1
take 2560x1440_at_200 1280x720 2
echo "$(find "$folder" -name '*.png' | wc -l) pictures lie in $folder"
