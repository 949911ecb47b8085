// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/print_scale.h"

#include <array>
#include <cassert>
#include <cmath>
#include <cstdio>

namespace kerfwall {
namespace {

constexpr double kLeastReading = 0.9, kMostReading = 1.1;        // of the bar's length
constexpr double kLeastCorrection = 0.9, kMostCorrection = 1.1;  // what a project keeps
constexpr std::array kMixedUnits{90.0 / 96, 96.0 / 90};          // dots to the inch, taken for one another
constexpr double kNearMixed = 0.0025;                            // what a ruler may misread on a bar of 200 mm: half a millimetre

std::string numberText(double value, int decimals) {
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
    std::string whole(text.data());
    while (whole.find('.') != std::string::npos && (whole.back() == '0' || whole.back() == '.')) {
        const bool point = whole.back() == '.';
        whole.pop_back();
        if (point) break;
    }
    return whole;
}

bool isMixed(double share) {
    for (const double mixed : kMixedUnits) {
        if (std::abs(share - mixed) <= kNearMixed) return true;
    }
    return false;
}

const std::string kHint =
    "A bar at 93.75 % (or 106.67 %) comes from 90 and 96 dots to the inch mixed up on the way to the paper, not from the printer";

}  // namespace

std::expected<Correction, std::string> correctionFrom(const BarReading& reading, double before) {
    assert(reading.nominal > 0 && reading.measured > 0 && before > 0);
    const double share = reading.measured / reading.nominal;
    const std::string said = "The bar measures " + numberText(100 * share, 1) + " % of what it is told to be";
    if (share < kLeastReading || share > kMostReading) {
        return std::unexpected(said + ", and no printer is that far off: 90 to 110 % is taken. Print without fitting to the page, "
                                      "and read both in the same units. " +
                               kHint + ".");
    }
    const double factor = before * (reading.nominal / reading.measured);
    if (factor < kLeastCorrection || factor > kMostCorrection) {
        return std::unexpected(said + ", which takes a correction of " + numberText(factor, 4) +
                               ": 0.9 to 1.1 can be kept. Print without fitting to the page. " + kHint + ".");
    }
    if (!isMixed(share)) return Correction{factor, {}};
    return Correction{factor, kHint + ": print once more without scaling before this is trusted."};
}

PrintScale scaleOnPaper(const PrintScale& scale, const Paper& paper) {
    return paper.width > paper.height ? PrintScale{scale.y, scale.x} : scale;
}

}  // namespace kerfwall
