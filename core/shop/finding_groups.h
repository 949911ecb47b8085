// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/shop/finding.h"

// The groups that `findings` puts together. Each answers in the order of lines, cutouts, corners and holes.
// A cutout the trimming bit does not fit gets `narrow` and nothing about its corners and walls: they are
// never cut.

namespace kerfwall {

/// A finding about a length, mm: the rest of it is to be filled in.
[[nodiscard]] Finding measuredFinding(const char* code, Severity severity, double value, double limit);

/// drawing: what was left out of the answer. unsure: where the engine will not guess.
[[nodiscard]] std::vector<Finding> drawingFindings(const Project& project, const Solved& solved);

/// narrow: the bit does not enter (value: widest disc; limit: bit), cannot pass (value: the neck), cannot
/// leave by the mouth (care; value: the mouth). The finished template's bush that does not enter: narrow too.
[[nodiscard]] std::vector<Finding> narrowFindings(const Project& project, const Solved& solved);

/// corner-groove: one a corner, value the deepest hollow on that corner's own kerfs; where the bearing
/// falls in or a bore's mouths overrun, without a hollow, the kerf against the widest that is sound.
/// corner-overlap: one a wall, value the length both arcs need, limit the wall's.
/// corner-short: one a corner beyond the limit; below it one note a cutout that is wanted sharp.
[[nodiscard]] std::vector<Finding> cornerFindings(const Project& project, const Solved& solved);

/// bush-fit: what the bush leaves round the largest cutter (care), and how far it stands out against the template (stop, limit its
/// thickness). first-pass: in a pocket of known depth, with a bearing at the shank; limits half and twice the cutter.
[[nodiscard]] std::vector<Finding> useFindings(const Project& project, const Solved& solved);

/// arm-flex: one a wall whose give is known and beyond the limit, value what it gives.
[[nodiscard]] std::vector<Finding> flexFindings(const Project& project, const Solved& solved);

/// wall-nick: one a hollow that is no corner's. wall-lost: one a stretch, value its length.
[[nodiscard]] std::vector<Finding> wallFindings(const Project& project, const Solved& solved);

/// web-thin: under the kerfs, and under each fence's groove (less the kerf above it where they cross).
/// wall-low: kerf depth against the bearing. bit-short: cutting length against web + 1, the bearing
/// running 1 above the kerf's floor; or no trimming bit on the bench.
[[nodiscard]] std::vector<Finding> panelFindings(const Project& project, const Solved& solved);

/// bench-limit: a kerf that no saw on the bench can cut, or that its named saw cannot (value and limit: what the
/// cut asks for and the most the saw has; unit "°" where that is an angle). edge-untrue: a line whose named saw
/// would need an edge not said to be true on its fence. small-stock: one a rip fence and edge on it, value that
/// edge's length; care also where it is shorter than the panel is across, unless the project has a care of its own.
[[nodiscard]] std::vector<Finding> sawFindings(const Project& project, const Solved& solved);

/// rough-room: one a cutout, value its narrowest kerf. drill-wide: one a cutout, at the corner where the relief
/// drill cuts farthest past both lines, wandering half a millimetre: (drill - bit) / 2 (1 - sin(angle / 2)).
[[nodiscard]] std::vector<Finding> roughFindings(const Project& project, const Solved& solved);

/// edge-untrue: a line laid from an edge that may not be measured from. Edge marks and mirror images are measured
/// anew from the true corner, so they are not told.
[[nodiscard]] std::vector<Finding> edgeFindings(const Project& project, const Solved& solved);

/// border-thin: from an opening to each edge, not counting pieces that run out at that edge; between the
/// openings of two cutouts.
[[nodiscard]] std::vector<Finding> borderFindings(const Project& project, const Solved& solved);

/// hole-through: from the drill's point to the nearest opening, 0 where the hole runs into one.
/// hole-wall: the least of the wood above, below (less a kerf that crosses over the hole without reaching
/// it) and beside it: another edge, hole or opening. hole-kerf: value the kerf's depth, limit where the
/// hole begins.
[[nodiscard]] std::vector<Finding> holeFindings(const Project& project, const Solved& solved);

/// runout: the shallow ends of stopped kerfs. Over a clamp hole they reach, or another cutout: care.
/// Across a wall of their own cutout, or across another's at the bearing's height: stop. Walls of the
/// kerf's own corners do not count. Value: the run-out's length; limit: what there is room for.
[[nodiscard]] std::vector<Finding> runoutFindings(const Project& project, const Solved& solved);

/// work-size: the greatest distance between what the template cuts and what was wanted, both ways, on the
/// panel. Where the cutter leaves a rounder corner than wanted, that is bush-corner's (or corner-short's)
/// to say and is not counted here. bush-corner: one note a cutout, value the radius left, limit the wanted.
[[nodiscard]] std::vector<Finding> workFindings(const Project& project, const Solved& solved);

/// bore-missing: one note a cutout and radius, value the drill's diameter. web-ride: one a cutout with bored corners,
/// value the unbroken band under the kerfs, against the length of the bearing or bush that rides there.
[[nodiscard]] std::vector<Finding> boreFindings(const Project& project, const Solved& solved);

/// fence-side: one a fence or stop that stands on the face that does not go to the work.
[[nodiscard]] std::vector<Finding> fenceFindings(const Project& project, const Solved& solved);

/// Adds a finding where there is one.
inline void addFinding(std::vector<Finding>& all, std::optional<Finding> finding) {
    if (finding) all.push_back(std::move(*finding));
}

}  // namespace kerfwall
