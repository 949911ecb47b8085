// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/says/bench.h"
#include "core/says/layout_line.h"

namespace kerfwall {

/// One of the cutters used in turn.
struct TurnCutter {
    double diameter = 0;
    std::string name;
    std::optional<double> depth;
    std::string unknown;
    bool operator==(const TurnCutter&) const = default;
};

/// How the finished template steers the cutter, as the maker said it. Lengths in mm.
/// What is left out is worked out by `useOf` in core/geometry/use_of.h.
struct Use {
    bool byBush = false;            ///< false: by a bearing
    std::optional<double> bit;      ///< cutter diameter; absent: the trimming bit
    std::optional<double> bearing;  ///< by a bearing: its diameter; absent: the bit's
    std::optional<double> bush;     ///< by a bush: its outside diameter (required then)
    double bushLength = 5;          ///< how far the bush stands out
    Router router = Router::Hand;
    std::optional<BearingAt> bearingAt;
    std::optional<double> cuttingLength;
    std::optional<double> depth;  ///< of the final cut
    std::vector<TurnCutter> cutters;
    std::optional<Face> againstWork;  ///< Layout or Back; absent: worked out
    std::optional<bool> inKerfs;
    std::string unknown;
    bool operator==(const Use&) const = default;
};

}  // namespace kerfwall
