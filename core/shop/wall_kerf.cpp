// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/wall_kerf.h"

#include <algorithm>

namespace kerfwall {

namespace {

std::vector<Kerf> kerfsAlong(const Solved& solved, const SolvedCutout& cutout) {
    std::vector<Kerf> kerfs;
    for (const Wall& wall : cutout.walls) {
        if (const auto kerf = kerfOf(solved, wall)) {
            kerfs.push_back(*kerf);
        }
    }
    return kerfs;
}

}  // namespace

std::optional<Kerf> kerfOf(const Solved& solved, const Wall& wall) {
    const SolvedLine* line = findLine(solved, wall.line);
    if (line == nullptr) {
        return std::nullopt;
    }
    const auto kerf = std::ranges::find(line->kerfs, wall.waste, &Kerf::side);
    return kerf == line->kerfs.end() ? std::nullopt : std::optional(*kerf);
}

std::vector<Kerf> kerfsAt(const Solved& solved, const SolvedCutout& cutout, std::size_t corner) {
    std::vector<Kerf> kerfs;
    for (const Wall& wall : cutout.walls) {
        if (wall.startCorner == corner || wall.endCorner == corner) {
            if (const auto kerf = kerfOf(solved, wall)) {
                kerfs.push_back(*kerf);
            }
        }
    }
    return kerfs;
}

std::optional<double> narrowestKerf(const Solved& solved, const SolvedCutout& cutout) {
    const std::vector<Kerf> kerfs = kerfsAlong(solved, cutout);
    return kerfs.empty() ? std::nullopt : std::optional(std::ranges::min(kerfs, {}, &Kerf::width).width);
}

std::optional<double> shallowestFloor(const Solved& solved, const SolvedCutout& cutout) {
    const std::vector<Kerf> kerfs = kerfsAlong(solved, cutout);
    return kerfs.empty() ? std::nullopt : std::optional(std::ranges::min(kerfs, {}, &Kerf::depth).depth);
}

bool isWorkable(const Solved& solved, const SolvedCutout& cutout) {
    return cutout.parts > 0 && narrowestKerf(solved, cutout).has_value();
}

std::vector<LineId> linesAlong(const SolvedCutout& cutout) {
    std::vector<LineId> lines;
    for (const Wall& wall : cutout.walls) {
        if (std::ranges::find(lines, wall.line) == lines.end()) {
            lines.push_back(wall.line);
        }
    }
    return lines;
}

}  // namespace kerfwall
