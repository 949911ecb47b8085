// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace kerfwall {

/// What a number may be, and how to say so: "a panel's width" "10 to 3000 mm".
struct Range {
    std::string_view what;
    double low = 0;
    double high = 0;
    std::string_view unit = " mm";
    bool lowOpen = false;   ///< more than `low`
    bool highOpen = false;  ///< less than `high`
    [[nodiscard]] bool holds(double value) const;
    [[nodiscard]] std::string sentence() const;
};

}  // namespace kerfwall
