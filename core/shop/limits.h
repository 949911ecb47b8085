// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/shop/finding.h"

namespace kerfwall {

/// Beyond `care` a finding says care, beyond `stop` it says stop. None: that severity does not arise.
/// Whether beyond means above or below is the finding's to say.
struct LimitPair {
    std::optional<double> care;
    std::optional<double> stop;
    bool operator==(const LimitPair&) const = default;
};

/// The limits the program starts from. Where a code's limits hang on the project (web-thin on the
/// thickness, wall-low on the bearing, web-ride on bearing or bush, first-pass on the cutter) they are worked out for it.
/// Between two openings `border-thin` starts from 15 and 8 instead of 25 and 10.
/// Source    common practice, no source.
[[nodiscard]] LimitPair startingLimits(std::string_view code, const Project& project,
                                       bool betweenOpenings = false);

/// The same with what the project's `limits` say in their place; a limit for `border-thin` replaces the
/// one to the edges and the one between openings.
[[nodiscard]] LimitPair limitsOf(std::string_view code, const Project& project, bool betweenOpenings = false);

/// A limit that a value went past.
struct Crossed {
    Severity severity = Severity::Care;
    double limit = 0;
    bool operator==(const Crossed&) const = default;
};

/// The graver limit that `value` is above; none where it is above neither. Equal is not above.
[[nodiscard]] std::optional<Crossed> crossedAbove(double value, const LimitPair& limits);

/// The graver limit that `value` is below; none where it is below neither. Equal is not below.
[[nodiscard]] std::optional<Crossed> crossedBelow(double value, const LimitPair& limits);

/// Values this near a limit count as on it, mm: decimals like 12 - 7.0 carry rounding of this order.
inline constexpr double kOnLimit = 1e-9;

}  // namespace kerfwall
