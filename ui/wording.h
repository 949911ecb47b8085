// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/geometry/point.h"
#include "core/says/project.h"

namespace kerfwall {

/// "bottom edge", or "line A".
[[nodiscard]] QString edgeText(Edge edge);
/// "left edge from the top": where marks on that edge are counted from.
[[nodiscard]] QString edgeCountText(Edge edge);
[[nodiscard]] QString baseText(const Base& base);
/// "cutout window"; an id that says it is one stands alone.
[[nodiscard]] QString cutoutText(const std::string& id);

/// A length in the project's units, with as few decimals as it needs; with and without its unit.
[[nodiscard]] QString lengthFor(double mm, Units units);
[[nodiscard]] QString lengthUnitFor(double mm, Units units);

/// A worked-out size: to a hundredth of a millimetre, without the zeros a rule does not show: "400", "101.85".
[[nodiscard]] QString sizeFor(double mm, Units units);

/// An area: "100.8 cm²", "15.62 in²".
[[nodiscard]] QString areaFor(double squareMm, Units units);

/// Across and up: "180 × 56".
[[nodiscard]] QString extentFor(const Box& box, Units units);

/// "3°", "0.5°".
[[nodiscard]] QString angleFor(double degrees);

/// The decimal sign the maker's system writes.
[[nodiscard]] char decimalSign();

}  // namespace kerfwall
