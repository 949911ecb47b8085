// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// One cutter of those used in turn with the finished template. Lengths in mm.
struct CutterInTurn {
    double diameter = 0;
    std::string name;             ///< "" for none
    std::optional<double> depth;  ///< in the work; none: not said
    bool operator==(const CutterInTurn&) const = default;
};

/// The cutters in the order they are used; where none are said the one in use. A cutter without a depth of its own goes
/// to the final cut's.
[[nodiscard]] std::vector<CutterInTurn> cuttersInTurn(const Project& project, const Solved& solved);

/// Whether a hand-held router stands on the template: with a bush, or a bearing at the shank. A bearing at the tip runs
/// on a template that lies under the work.
[[nodiscard]] bool isBaseOnTemplate(const Use& use, BearingAt bearingAt);

/// How far a bit stands below the base of a router that stands on the template, mm.
/// Source    the template's thickness + the depth in the work.
[[nodiscard]] double belowBase(const Panel& panel, double depth);

/// The band in which the round of a bored corner is unbroken: below the layout face, mm, from the kerfs' floor to the
/// back. None where no corner is bored.
struct UnbrokenBand {
    double from = 0;
    double to = 0;
    bool operator==(const UnbrokenBand&) const = default;
};
[[nodiscard]] std::optional<UnbrokenBand> unbrokenBand(const Project& project, const Solved& solved);

}  // namespace kerfwall
