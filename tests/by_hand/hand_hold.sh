# SPDX-License-Identifier: GPL-3.0-or-later
# A hand-hold of 110 x 35 in a crate's end, by mouse and keys: the panel, the bush and the bit, then the size wanted.

# The first sheet covers the plan; the panel's form stands beside it.
key F6
say 'Hand-hold'
key Tab
say 400
key Tab
say 250
key Tab
say 12
key Tab
picture hand_hold_panel
click 1185 84 # Done

# Bench, Trimming bit, bearing or bush in use: by a bush of 24 with a bit of 12.7.
click 1129 44
key Down Return Tab Tab Tab Tab Tab Down Tab
say 24
key Tab Tab
say 12.7
key Return
picture hand_hold_use
key Escape

# The first sheet's offer: a window.
picture hand_hold_first
click 393 109
say 110
key Tab
say 35
key Tab
say 6.35
picture hand_hold_wanted
key Return
