// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/says/panel.h"

namespace kerfwall {

/// The edge's name in the project file and the report.
[[nodiscard]] constexpr std::string_view edgeName(Edge edge) {
    switch (edge) {
        case Edge::Bottom: return "bottom";
        case Edge::Right: return "right";
        case Edge::Top: return "top";
        case Edge::Left: return "left";
    }
    return "";
}

}  // namespace kerfwall
