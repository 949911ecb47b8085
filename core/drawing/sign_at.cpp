// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/sign_at.h"

namespace kerfwall {

std::optional<std::size_t> signAt(const std::vector<Finding>& findings, Point place, double reach) {
    std::optional<std::size_t> best;
    double nearest = reach;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        if (!findings[i].at) continue;
        const double off = distance(*findings[i].at, place);
        if (off > nearest || (best && off == nearest)) continue;
        best = i;
        nearest = off;
    }
    return best;
}

}  // namespace kerfwall
