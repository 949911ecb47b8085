// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/five_cuts.h"

#include <cmath>

#include "core/says/tool_ranges.h"
#include "core/says/typed_list.h"

namespace kerfwall {

namespace {

constexpr double kTimesOver = 4;
constexpr double kPerMetre = 1000;

}  // namespace

std::expected<double, std::string> strayByFiveCuts(const FiveCuts& cuts) {
    if (!(cuts.length > 0) || !(cuts.farWidth > 0) || !(cuts.nearWidth > 0)) {
        return std::unexpected("The strip's two widths and its length are each more than 0.");
    }
    return kPerMetre * (cuts.farWidth - cuts.nearWidth) / (kTimesOver * cuts.length);
}

std::expected<double, std::string> strayFromText(std::string_view text, Units units) {
    const auto lengths = readLengths(text, units, kLength);
    if (!lengths) {
        return std::unexpected(lengths.error());
    }
    if (lengths->size() != 3) {
        return std::unexpected("Three lengths are asked for, set apart by semicolons: both widths of the strip, then its length.");
    }
    const auto stray = strayByFiveCuts({lengths->at(0), lengths->at(1), lengths->at(2)});
    if (stray && !kSquareness.holds(std::abs(*stray))) {
        return std::unexpected("By these a metre of cut would stray by more than 100 mm: measure the strip again.");
    }
    return stray;
}

}  // namespace kerfwall
