// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/shop/wish.h"

namespace kerfwall {

/// A panel as it lies in the rack, mm.
struct StockPanel {
    double width = 0;
    double height = 0;
    double thickness = 0;
    bool operator==(const StockPanel&) const = default;
};

/// True for sizes a project's panel may have.
[[nodiscard]] bool isPanelSize(const StockPanel& panel);

/// The smallest panel of the rack, by area, then by thickness, that holds a blank of that size either way round; turned
/// so that it does.
[[nodiscard]] std::optional<StockPanel> smallestHolding(const std::vector<StockPanel>& rack, const Blank& blank);

/// That blank, each side up to the next kBlankStep mm, or to the next half inch.
[[nodiscard]] Blank roundedUp(const Blank& blank, Units units);

/// The project on a panel of that size; its kerf depth is worked out anew where it would go through.
[[nodiscard]] Project onPanel(const Project& project, const StockPanel& panel);

/// True where nothing is laid, marked or drilled yet: the panel can be exchanged.
[[nodiscard]] bool isPanelFree(const Project& project);

inline constexpr double kBlankStep = 10;  ///< mm

}  // namespace kerfwall
