// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/plus_minus.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace kerfwall {

PlusMinus together(const std::vector<Share>& shares) {
    std::vector<Share> sources;
    for (const Share& share : shares) {
        const auto known = std::ranges::find(sources, share.source, &Share::source);
        if (known == sources.end()) {
            sources.push_back(share);
        } else {
            known->sensitivity += share.sensitivity;
        }
    }
    PlusMinus sum;
    double squares = 0;
    for (const Share& share : sources) {
        const double part = std::abs(share.sensitivity) * share.plusMinus;
        sum.worst += part;
        squares += part * part;
    }
    sum.likely = std::sqrt(squares);
    return sum;
}

PlusMinus largerOf(const PlusMinus& one, const PlusMinus& other) {
    return {std::max(one.worst, other.worst), std::max(one.likely, other.likely)};
}

double standardUncertainty(const PlusMinus& size) { return size.likely / std::numbers::sqrt3; }

double expandedUncertainty(const PlusMinus& size) { return 2 * standardUncertainty(size); }

}  // namespace kerfwall
