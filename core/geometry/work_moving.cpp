// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/work_moving.h"

#include <algorithm>

namespace kerfwall {
namespace {

/// Mirrored corners run the other way round; turned about they run as before.
void carry(std::vector<Point>& outline, const Motion& motion) {
    for (Point& corner : outline) corner = tidied(moved(motion, corner));
    if (motion.mirrors) std::ranges::reverse(outline);
}

void carry(std::optional<double>& grain, const Motion& motion) {
    if (grain && !isShift(motion)) grain = tidiedAngle(motion.mirrors ? motion.turn - *grain : *grain + motion.turn);
}

}  // namespace

Wanted moved(Wanted wanted, const Motion& motion) {
    carry(wanted.outline, motion);
    return wanted;
}

Workpiece moved(Workpiece workpiece, const Motion& motion) {
    carry(workpiece.outline, motion);
    carry(workpiece.grain, motion);
    for (WorkPart& part : workpiece.parts) {
        carry(part.outline, motion);
        carry(part.grain, motion);
    }
    return workpiece;
}

}  // namespace kerfwall
