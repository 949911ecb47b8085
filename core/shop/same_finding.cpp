// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/same_finding.h"

namespace kerfwall {

std::optional<std::size_t> sameFinding(const std::vector<Finding>& all, const Finding& finding) {
    const auto away = [&](const Finding& each) {
        return each.at && finding.at ? distance(*each.at, *finding.at) : 0.0;
    };
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Finding& each = all[i];
        const bool same = each.code == finding.code && each.lines == finding.lines && each.cutout == finding.cutout &&
                          each.hole == finding.hole && each.fence == finding.fence;
        if (same && (!best || away(each) < away(all[*best]))) best = i;
    }
    return best;
}

}  // namespace kerfwall
