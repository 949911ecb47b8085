# SPDX-License-Identifier: GPL-3.0-or-later
# Debian packages the program and its tests are built from, and their installation. Read by app/run.sh
# and tests/run.sh with "." from the repository's top folder.

program_packages="g++ cmake ninja-build ccache pkg-config qt6-base-dev qt6-svg-dev qt6-qpa-plugins
    libcgal-dev libeigen3-dev nlohmann-json3-dev libqpdf-dev fonts-dejavu-core"
test_packages="libgtest-dev libpolyclipping-dev librapidcheck-dev mupdf-tools poppler-utils qpdf librsvg2-bin"

# missing_packages NAME...: those that are not installed.
missing_packages() {
    for name in "$@"; do
        state=$(dpkg-query -W -f '${db:Status-Status}' "$name" 2>/dev/null) || state=
        [ "$state" = installed ] || printf '%s ' "$name"
    done
}

# install_packages NAME...: installs what is missing, as root or through sudo.
install_packages() {
    if ! command -v dpkg-query >/dev/null 2>&1; then
        echo "This script installs Debian packages, and dpkg-query is not here. Install these yourself: $*" >&2
        return 1
    fi
    missing=$(missing_packages "$@")
    [ -n "$missing" ] || return 0
    if [ "$(id -u)" -eq 0 ]; then
        as_root=
    elif sudo -n true 2>/dev/null; then
        as_root="sudo -n"
    else
        echo "These packages are missing and installing them needs root: $missing" >&2
        echo "Run as root: apt-get install $missing" >&2
        return 1
    fi
    echo "Installing: $missing"
    # Word splitting is wanted: both are lists.
    # shellcheck disable=SC2086
    $as_root apt-get update -q &&
        $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -qy --no-install-recommends $missing
}
