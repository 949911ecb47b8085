# SPDX-License-Identifier: GPL-3.0-or-later
# A swallow-tailed pennant drawn by hand: each line is dragged as the eye has it, then Enter leads to its numbers. The
# tail's lines are cut by the rail saw and stopped; three faces become one waste.

key F6 Tab
say 500
key Tab
say 300
key Tab
say 12
key Return Escape
key F7 Tab Tab Tab Tab Tab Tab
say 12.7
key Return Escape

key 2
drag 325 350 741 350
key Return
say 90
key Return
drag 325 220 741 220
key Return
say 210
key Return
drag 450 413 450 163
key Return
say 110
key Return
picture pennant_offsets

# by_rail_saw: in the line's form, from the field before "It is".
by_rail_saw() {
    key Tab Tab Tab
    say stopped
    key Tab
    say rail
}

# The tail's lines: one through two points, the other its mirror image about the level centre line.
drag 675 413 520 163
key ctrl+l Tab
say through # two points
key Tab
say 370
key Tab
say 90
key Tab
say 330
key Tab
say 150
by_rail_saw
picture pennant_tail
key ctrl+2
drag 516 413 683 163
key ctrl+l Tab
say as # a mirror image
key Tab End Tab Home Down # of D, the line laid before; about the level centre line
by_rail_saw
picture pennant_mirror

key ctrl+3
click 491 288
join 600 255
join 600 321
