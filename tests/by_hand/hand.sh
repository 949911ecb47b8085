# SPDX-License-Identifier: GPL-3.0-or-later
# A hand at the window: read by the tasks beside it with ".". Needs DISPLAY, a window manager, xdotool.
# The window fills a screen of 1280 x 720; places are pixels of that screen.

# settle: until what was just done is shown.
settle() { sleep "${KERFWALL_HAND_PAUSE:-0.25}"; }

# start: the program on an empty sheet, from settings of its own, its window in front.
start() {
    XDG_CONFIG_HOME=$(mktemp -d)
    XDG_RUNTIME_DIR=$XDG_CONFIG_HOME
    export XDG_CONFIG_HOME XDG_RUNTIME_DIR
    "$program" &
    program_pid=$!
    window=$(xdotool search --sync --onlyvisible --name 'Kerfwall$')
    xdotool windowactivate --sync "$window"
    settle
}

# key KEY...: pressed one after another; say TEXT: typed.
key() { for each in "$@"; do xdotool key --clearmodifiers "$each"; settle; done; }
say() { xdotool type --delay 20 -- "$1"; settle; }

# click X Y; join X Y: the same with Shift; drag X Y X Y: by the left button.
click() { xdotool mousemove "$1" "$2" && settle && xdotool click 1 && settle; }
join() { xdotool mousemove "$1" "$2" && settle && xdotool keydown shift click 1 keyup shift && settle; }
drag() {
    xdotool mousemove "$1" "$2" mousedown 1
    settle
    xdotool mousemove $((($1 + $3) / 2)) $((($2 + $4) / 2))
    settle
    xdotool mousemove "$3" "$4"
    settle
    xdotool mouseup 1
    settle
}

# picture NAME: of the whole screen, for the eye.
picture() { import -window root "$out/$1.png"; }

# save NAME and print_to NAME: through the dialogs, as a person would; then they wait for the file.
save() {
    key ctrl+s
    xdotool search --sync --onlyvisible --name 'Save the template' >/dev/null
    settle
    key ctrl+a
    say "$out/$1.kerfwall"
    key Return
    wait_for "$out/$1.kerfwall"
}
print_to() {
    key ctrl+p
    settle
    key alt+w # Write the PDF
    xdotool search --sync --onlyvisible --name 'Write the pattern' >/dev/null
    settle
    key ctrl+a
    say "$out/$1.pdf"
    key Return
    wait_for "$out/$1.pdf"
}

# wait_for FILE: until it is there and no longer grows.
wait_for() {
    tries=0
    until [ -s "$1" ]; do
        tries=$((tries + 1))
        if [ "$tries" -gt 100 ]; then
            picture "missing_$(basename "$1")"
            echo "$1 was not written; the screen is in $out" >&2
            return 1
        fi
        sleep 0.1
    done
    settle
}

# leave: closes the window; the program must end by itself.
leave() {
    key ctrl+q
    wait "$program_pid"
    rm -rf "$XDG_CONFIG_HOME"
}
