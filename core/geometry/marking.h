// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

enum class Marked { Added, Joined, Taken };  ///< a new cutout; a face joined to one; a face marked no more

struct Marking {
    Project project;
    std::string cutout;  ///< the one that changed
    Marked what = Marked::Added;
};

/// The first of cutout-1, cutout-2, ... that the project does not hold.
[[nodiscard]] std::string freshCutoutId(const Project& project);

enum class NoMarking { NotOnPanel, OnALine };

/// The project with the waste mark of the face at `place` turned round. A face that is marked is marked no more.
/// Any other joins `joinTo` where that names a cutout, else a cutout that it borders on, else it becomes a
/// cutout of its own.
/// Refuses   a place on a line, on an edge or off the panel.
[[nodiscard]] std::expected<Marking, NoMarking> markWaste(const Project& project, Point place,
                                                          const std::string& joinTo);

/// `after` with its cutouts' seeds put back inside the faces they marked in `before`: moved with their lines,
/// one seed in each half where a new line crosses a face, one cutout where a line between two is gone. A face
/// that has vanished is marked no more, and a cutout with no face left goes.
/// Cutouts with seeds of their own, new ones or ones that `after` marks elsewhere, keep them; what runs into them joins.
/// Requires  all other cutouts of `after` are before's (lines and panel may differ).
[[nodiscard]] Project carryCutouts(const Project& before, const Solved& solvedBefore, Project after);

/// The ids of `before`'s cutouts of which `after`'s lines leave no face.
/// Requires  as carryCutouts.
[[nodiscard]] std::vector<std::string> vanishedCutouts(const Project& before, const Solved& solvedBefore,
                                                       const Project& after);

}  // namespace kerfwall
