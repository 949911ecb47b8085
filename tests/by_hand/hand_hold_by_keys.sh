# SPDX-License-Identifier: GPL-3.0-or-later
# The hand-hold again without the mouse.
key Escape F6 Tab
say 400
key Tab
say 250
key Tab
say 12
key Return Escape

key F7 Tab Tab Tab Tab Tab Down Tab
say 24
key Tab Tab
say 12.7
key Return Escape

key F8
picture by_keys_wanted
say 110
key Tab
say 35
key Tab
say 6.35
key Return
