// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/material.h"

namespace kerfwall {
namespace {

constexpr double kPoisson = 0.3;

double mdfModulus(double thickness) {
    if (thickness <= 9) return 2700;
    if (thickness <= 12) return 2500;
    if (thickness <= 19) return 2200;
    if (thickness <= 30) return 2100;
    return 1900;
}

/// N/mm²; across the face grain at 12 mm, along less than that at 18: the lower of both.
double plywoodModulus(double thickness) { return thickness < 15 ? 6781 : 7452; }

}  // namespace

Elastic elasticOf(const std::string& material, double thickness) {
    const bool isPlywood = material.starts_with("birch") || material.starts_with("ply");
    return {isPlywood ? plywoodModulus(thickness) : mdfModulus(thickness), kPoisson};
}

}  // namespace kerfwall
