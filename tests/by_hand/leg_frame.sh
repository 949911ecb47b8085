# SPDX-License-Identifier: GPL-3.0-or-later
# The inner edge of a bench's leg frame, drawn by hand: each line is dragged as the eye has it, then Enter
# leads to its numbers.

click 393 306 # the first sheet's panel of 500 x 400 x 18
key F7
key Tab Tab Tab Tab Tab Tab
say 12.7
key Return
picture leg_frame_use
key Escape

# The rail's line, 300 above the bottom edge.
key 2
drag 345 250 690 250
key Return
say 300
key Return
# The left leg's: it leans by 3 degrees and crosses the rail's 170 from the left.
drag 486 410 500 130
picture leg_frame_leaning
key Return
say -3
key Tab
say 170
key Tab
say 300
key Return
picture leg_frame_left
# The right leg's: dragged about where the image lies; its form says of what and about what.
drag 592 413 579 163
key ctrl+l Tab
say as # a mirror image
key Tab End Tab Home # of B, the line laid before; about the upright centre line
picture leg_frame_right
key ctrl+3
click 532 319
