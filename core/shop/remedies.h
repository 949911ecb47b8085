// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/shop/finding.h"

namespace kerfwall {

/// Something that can be done about a finding, as the whole project after it.
struct Remedy {
    std::string words;   ///< what is done, with its number, in the project's units: "Saw the kerfs 6.0 mm deep"
    Project project;     ///< its seeds lie where the faces went
    Solved solved;       ///< its answer
    bool clears = true;  ///< the finding is gone; false: it is of a lower severity
    bool operator==(const Remedy&) const = default;
};

inline constexpr std::size_t kMostRemedies = 4;

/// What can be done about one finding, the least change first: a kerf that stops or is not as deep, a hole elsewhere,
/// an edge made true, another saw's kerf, another bit or bush from the bench, a bore, a line elsewhere, another wish, a line taken away.
/// At most kMostRemedies, each of another kind, and none that was not tried: the changed project is solved, and the
/// remedy is offered only where
///   - the finding is gone or of a lower severity,
///   - no stop is there that was not there before,
///   - there are fewer stops, or as many and fewer cares; for a note: no more of either,
///   - every cutout keeps its faces (but where a line that cannot be solved is taken away).
/// Tools come from the project's own bench. A template keeps the bit and bush it steers where only its trimming bit changes.
/// Requires  `solved` and `finding` are this project's.
/// Bounded   at most kMostTries projects are solved, fewer where there are many lines.
[[nodiscard]] std::vector<Remedy> remedies(const Project& project, const Solved& solved, const Finding& finding);

}  // namespace kerfwall
