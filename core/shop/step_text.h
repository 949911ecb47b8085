// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

// The words steps are made of. Lengths in the project's units, places told from the edges that are true.

/// "bottom", "right", "top", "left".
[[nodiscard]] std::string edgeWord(Edge edge);
/// "left", "right".
[[nodiscard]] std::string sideWord(Side side);
/// The corner where two neighbouring edges meet: "bottom-left corner". Requires  they are neighbours.
[[nodiscard]] std::string cornerWord(Edge one, Edge other);
/// A length with its unit as it is set at a saw, see lengthAtSaw.
[[nodiscard]] std::string sizeText(const Project& project, double mm);
/// "3°", "33.69°": to a hundredth, without trailing zeros.
[[nodiscard]] std::string degreesText(double degrees);
/// The end of the reference edge marks are measured from: the one with a true corner, else its start.
[[nodiscard]] Edge measuredEnd(const Panel& panel);
/// The neighbour of `edge` from whose corner a mark on it is measured: the reference edge, or the measured end.
[[nodiscard]] Edge measuredFrom(const Panel& panel, Edge edge);
/// "80.0 mm from the bottom-left corner on the left edge": from the reference edge or the measured end.
[[nodiscard]] std::string markText(const Project& project, const EdgeMark& mark);
/// "60.0 mm from the left edge and 80.0 mm from the bottom edge": from measured end and reference edge.
[[nodiscard]] std::string placeText(const Project& project, Point place);

}  // namespace kerfwall
