// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/shop/finding.h"

namespace kerfwall {

/// One shallow end of a stopped kerf, where its blade's round leaves the face.
struct RunOut {
    const SolvedLine& line;
    const Kerf& kerf;
    double full = 0;     ///< mm along the line, where the full depth ends
    double way = 1;      ///< +1 towards the line's end, -1 towards its start
    double surface = 0;  ///< its length on the layout face, mm
};

/// What a run-out runs into, and how far it could run before it does.
struct RunOutMet {
    Severity severity = Severity::Care;  ///< stop: a wall; care: another cutout or a clamp hole
    double room = 0;                     ///< mm
    std::string what;
    std::string cutout;
    std::optional<std::size_t> hole;
    LineId wall;
};

/// The two ends of a stopped kerf that do not run out of the panel; none for a through kerf.
[[nodiscard]] std::vector<RunOut> runOutsOf(const SolvedLine& line, const Kerf& kerf);

/// The gravest thing a run-out meets, none where it is clear. Walls of the kerf's own corners do not count;
/// those of its own cutouts count over its whole length, others' at the bearing's height.
[[nodiscard]] std::optional<RunOutMet> metBy(const Project& project, const Solved& solved, const RunOut& end);

/// Whether a shallow end of the kerf crosses a wall.
[[nodiscard]] bool runsIntoWall(const Project& project, const Solved& solved, const SolvedLine& line, const Kerf& kerf);

}  // namespace kerfwall
