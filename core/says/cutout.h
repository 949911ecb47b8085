// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/says/layout_line.h"

namespace kerfwall {

/// A corner that is bored or routed round before the kerfs are laid tangent to it.
struct BoredCorner {
    LineId first;
    LineId second;
    double radius = 0;  ///< mm
    std::string unknown;
    bool operator==(const BoredCorner&) const = default;
};

/// What the template is to cut in the work, in panel coordinates.
struct Wanted {
    std::vector<Point> outline;
    double cornerRadius = 0;  ///< mm; 0: sharp
    std::string unknown;
    bool operator==(const Wanted&) const = default;
};

/// The region to remove: the faces in which the seeds lie, joined.
struct Cutout {
    std::string id;
    std::vector<Point> seeds;
    std::vector<BoredCorner> corners;
    std::optional<Wanted> wanted;
    std::string unknown;
    bool operator==(const Cutout&) const = default;
};

}  // namespace kerfwall
