// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/shop/measured.h"
#include "core/shop/order_of_work.h"

namespace kerfwall {

/// How a kerf is brought up to a bore from the safe side with layers of tape between panel and fence (or stop). A layer
/// moves the kerf towards the fence:
///
///      waste beyond the line                      waste between line and fence
///      fence |  panel  |wall  kerf                fence |  kerf  wall|  panel
///      bare, wall too far out: add layers         layers in, wall too near: peel them
struct Shims {
    double start = 0;           ///< the fence's (stop's) first setting, mm, from its face to the blade's nearer face
    int layers = 0;             ///< in place at the first cut: none, or all of them
    bool adding = true;         ///< layers are added; false: peeled
    std::vector<double> walls;  ///< after each cut, from the edge on the fence: the first off the line, the last on it
    bool operator==(const Shims&) const = default;
};

/// Source    waste beyond: from y + N t, bare, layers added; between: from y - kerf with N layers in, peeled.
/// Requires  at least one layer.
[[nodiscard]] Shims shimsFor(double y, bool wasteBeyond, double kerf, const Tape& tape = {});

/// The same for one kerf of a step (an index into its lines); none where neither fence nor stop gives its place.
[[nodiscard]] std::optional<Shims> shimsFor(const Project& project, const Solved& solved, const WorkStep& step,
                                            std::size_t kerf);

/// Tells, at each kerf step with a wall that must touch bores, how to come up to them: from the waste side, to the outer of
/// two rounds, never past it.
void tellApproach(std::vector<WorkStep>& kerfs, const Project& project, const Solved& solved);

}  // namespace kerfwall
