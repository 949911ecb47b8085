// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <optional>
#include <string>
#include <string_view>

#include "core/geometry/point.h"

namespace kerfwall {

/// How an SVG's user units lie in millimetres.
struct SvgFrame {
    double mmPerUnit = 0;  ///< > 0
    Point corner;          ///< user units, of the picture's top-left corner
    double height = 0;     ///< mm, of the picture
};

/// A length such as "100mm", "4in" or "378" (px), in mm.
/// Refuses   percentages and units that depend on letters, in one sentence with what would be right.
/// Source    1 in = 25.4 mm = 96 px = 72 pt = 6 pc (W3C CSS Values 3).
[[nodiscard]] std::expected<double, std::string> readSvgLength(std::string_view text);

/// The frame that a root element's `width`, `height` and `viewBox` give, each absent where it has none. Without sizes a
/// user unit is a px.
/// Refuses   what readSvgLength does, sizes that are not above zero, and a width and height that don't have the
///           viewBox's shape: which of both is meant is not said.
[[nodiscard]] std::expected<SvgFrame, std::string> readSvgFrame(std::optional<std::string> width, std::optional<std::string> height,
                                                                std::optional<std::string> viewBox);

/// The place in mm, y up, from the picture's bottom-left corner.
[[nodiscard]] Point inMillimetres(const SvgFrame& frame, Point place);

/// x' = a x + c y + e, y' = b x + d y + f.
struct SvgTransform {
    double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;
    [[nodiscard]] Point of(Point p) const { return {a * p.x + c * p.y + e, b * p.x + d * p.y + f}; }
    /// The most by which it makes a length longer.
    [[nodiscard]] double largestScale() const;
    bool operator==(const SvgTransform&) const = default;
};

/// First `inner`, then `outer`.
[[nodiscard]] SvgTransform combined(const SvgTransform& outer, const SvgTransform& inner);

/// A transform attribute: any row of translate, scale, rotate and matrix.
/// Refuses   others, and one that leaves no area, in one sentence with the remedy.
[[nodiscard]] std::expected<SvgTransform, std::string> readSvgTransform(std::string_view text);

}  // namespace kerfwall
