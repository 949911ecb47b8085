// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/shop/placed_wish.h"
#include "core/shop/stock_panels.h"

namespace kerfwall {

/// What would be laid: opening, corners, the smallest good blank.
[[nodiscard]] QString laidText(const LaidWish& laid, const Project& project);

/// "Take the bush of 24.0 mm and the bit of 20.0 mm".
[[nodiscard]] QString steeringText(const Steering& steering, Units units);

/// "400 × 250 × 12 mm".
[[nodiscard]] QString panelText(const StockPanel& panel, Units units);
[[nodiscard]] QString blankText(const Blank& blank, Units units);

/// What undo calls it, laid with the tools in use and with others.
[[nodiscard]] QString layingStep(const Wish& wish, bool withOtherTools);

}  // namespace kerfwall
