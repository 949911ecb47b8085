// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>

#include "core/geometry/mirror_image.h"
#include "core/geometry/motion.h"
#include "core/geometry/picked.h"
#include "core/geometry/solved.h"

namespace kerfwall {

enum class NoCarrying {
    OffThePanel,   ///< a line would no longer run over the panel
    HoleOffEdges,  ///< a clamp hole would be bored from no edge
    FenceAlone,    ///< a fence would run parallel to no edge and no line
    NothingNew,    ///< copies would lie where the same things lie already
};

/// What is picked with the lines that belong to it: a cutout brings the lines of its walls and bores, a fence nothing,
/// and lines that are all the walls of a cutout bring the cutout.
[[nodiscard]] Picked withWalls(const Project& project, const Solved& solved, const Picked& picked);

/// The project with what is picked carried along a motion, all together: lines keep their ways of laying, from what is
/// carried along with the same numbers, from what stays with new ones; where that cannot follow they are laid anew from
/// the panel's edges. Cutouts take their walls, seeds, bores and wanted outlines along; what else was laid from carried
/// lines follows them. Clamp holes stay on the panel's edges.
/// Refuses   all but NothingNew. A shift is not refused for lines: what leaves the panel is told as unfinished drawing.
[[nodiscard]] std::expected<Project, NoCarrying> carried(const Project& project, const Solved& solved, const Picked& picked,
                                                         const Motion& motion);

/// The project with what is picked moved by `shift`. A mirror image picked alone moves what it mirrors, so that it goes
/// that way itself. Unchanged where carrying is refused.
[[nodiscard]] Project nudged(const Project& project, const Solved& solved, const Picked& picked, Point shift);

}  // namespace kerfwall
