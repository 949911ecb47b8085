// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace kerfwall {

/// An attribute of an element by its name; none where it has none.
using SvgAttribute = std::function<std::optional<std::string>(std::string_view name)>;

/// Whether an element of that name draws an outline: path, polygon, polyline, rect, circle, ellipse.
[[nodiscard]] bool isSvgShape(std::string_view element);

/// The path data that draws the same as the element, in user units.
/// Requires  isSvgShape.
/// Refuses   a missing or unreadable attribute, or a size not above zero, in one sentence that names it.
/// Source    W3C SVG 2, chapter 10.
[[nodiscard]] std::expected<std::string, std::string> svgShapeData(std::string_view element, const SvgAttribute& attribute);

}  // namespace kerfwall
