// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/stock_panels.h"

namespace kerfwall {

/// The panels that lie in the shop's rack, kept in the settings; a few common sizes until the maker changes them.
[[nodiscard]] std::vector<StockPanel> rackPanels();
void keepRack(const std::vector<StockPanel>& rack);
[[nodiscard]] bool liesInRack(const StockPanel& panel);

/// The panel of a project as it would lie in the rack.
[[nodiscard]] StockPanel stockPanelOf(const Project& project);

}  // namespace kerfwall
