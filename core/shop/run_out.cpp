// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/run_out.h"

#include <algorithm>
#include <cmath>

namespace kerfwall {

double runOut(double blade, double depth) { return std::sqrt(depth * (blade - depth)); }

double depthInRunOut(double blade, double depth, double past) {
    const double radius = blade / 2;
    if (past >= runOut(blade, depth)) {
        return 0;
    }
    return std::sqrt(radius * radius - past * past) - (radius - depth);
}

double runOutAt(double blade, double depth, double wall) {
    const double radius = blade / 2;
    const double height = radius - depth + wall;
    return std::sqrt(std::max(0.0, radius * radius - height * height));
}

}  // namespace kerfwall
