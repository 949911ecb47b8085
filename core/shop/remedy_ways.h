// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/shop/finding.h"

// The kinds of change that `remedies` tries. None of them promises to help: that is what the trying is for.

namespace kerfwall {

/// A finding and what it is about.
struct Minded {
    const Project& project;
    const Solved& solved;
    const Finding& finding;
};

struct Change {
    std::string words;
    Project project;
    bool movesLines = false;   ///< seeds are to be carried over
    bool keepsAnswer = false;  ///< holes alone are changed: geometry's answer stays as it is
    bool losesFaces = false;   ///< cutouts may go with what is taken away
};

/// One kind of change, the least first: the first that helps is offered.
using Way = std::vector<Change>;

/// Kerfs of the lines that cross are stopped; a stopped kerf runs through instead.
[[nodiscard]] std::vector<Way> stopWays(const Minded& minded);
/// The kerfs' depth; a fence's groove.
[[nodiscard]] std::vector<Way> depthWays(const Minded& minded);
/// A fence's face; the face that goes to the work.
[[nodiscard]] std::vector<Way> faceWays(const Minded& minded);
/// A clamp hole along its edge, shallower, higher or lower, thinner.
[[nodiscard]] std::vector<Way> holeWays(const Minded& minded);
/// An edge said to be true once it is; a line laid from another edge.
[[nodiscard]] std::vector<Way> edgeWays(const Minded& minded);
/// Lines sawn with another saw: a narrower or a wider kerf, one that reaches, one that holds the panel.
[[nodiscard]] std::vector<Way> sawWays(const Minded& minded);
/// Another trimming bit from the bench.
[[nodiscard]] std::vector<Way> bitWays(const Minded& minded);
/// Another bush and bit for the finished template from the bench.
[[nodiscard]] std::vector<Way> useWays(const Minded& minded);
/// Corners bored, or bored to another radius; relief holes with another drill.
[[nodiscard]] std::vector<Way> boreWays(const Minded& minded);
/// The corners of the finding's cutout that cut a smaller radius than wanted bored so that they cut it.
/// Source    a bore of R, at least the guide's radius, leaves R - (guide - cutter) / 2.
[[nodiscard]] Way boresForWish(const Minded& minded);
/// Lines moved.
[[nodiscard]] std::vector<Way> moveWays(const Minded& minded);
/// What was asked for in the work.
[[nodiscard]] std::vector<Way> wishWays(const Minded& minded);
/// A line, seed or bore that cannot be solved is taken away.
[[nodiscard]] std::vector<Way> dropWays(const Minded& minded);

}  // namespace kerfwall
