// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/says/layout_line.h"

namespace kerfwall {

/// Things of a project that are taken together: lines and cutouts by their ids, clamp holes and fences by their
/// places in the project's lists, and its workpiece. Each once.
struct Picked {
    std::vector<LineId> lines;
    std::vector<std::string> cutouts;
    std::vector<std::size_t> holes;
    std::vector<std::size_t> fences;
    bool workpiece = false;

    [[nodiscard]] std::size_t count() const {
        return lines.size() + cutouts.size() + holes.size() + fences.size() + (workpiece ? 1 : 0);
    }
    [[nodiscard]] bool isEmpty() const { return count() == 0; }
    bool operator==(const Picked&) const = default;
};

[[nodiscard]] inline Picked onlyLine(const LineId& id) { return {{id}, {}, {}, {}, false}; }
[[nodiscard]] inline Picked onlyCutout(const std::string& id) { return {{}, {id}, {}, {}, false}; }
[[nodiscard]] inline Picked onlyHole(std::size_t index) { return {{}, {}, {index}, {}, false}; }
[[nodiscard]] inline Picked onlyFence(std::size_t index) { return {{}, {}, {}, {index}, false}; }
[[nodiscard]] inline Picked onlyWorkpiece() { return {{}, {}, {}, {}, true}; }

/// True where everything of `part` is among `picked`.
[[nodiscard]] bool holds(const Picked& picked, const Picked& part);

/// Both together.
[[nodiscard]] Picked with(Picked picked, const Picked& part);

/// What is left of `picked` without `part`.
[[nodiscard]] Picked without(Picked picked, const Picked& part);

}  // namespace kerfwall
