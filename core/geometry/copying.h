// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/carrying.h"
#include "core/geometry/mirror_image.h"

namespace kerfwall {

/// Things and the project they are copied from.
struct Copied {
    const Project& from;
    const Solved& solved;
    const Picked& picked;
};

/// A project with copies on it, and what they are called there.
struct Copies {
    Project project;
    Picked picked;
};

/// `onto` with copies of what is picked, each carried along one of the motions. They get fresh ids, lines after
/// `highestLine`; what is laid from another thing that is copied is laid from its copy. A copy of a line that would lie
/// on a line already there is that line. Cutouts bring their walls; a copy whose face is waste already is left out, as is
/// a clamp hole where one is.
/// Requires  every line a copied thing names is copied too, or `onto` holds it under the same id.
/// Refuses   see NoCarrying; OffThePanel where any line's copy would lie off the panel.
[[nodiscard]] std::expected<Copies, NoCarrying> copiedOnto(const Project& onto, const Copied& things, const std::vector<Motion>& motions,
                                                           int highestLine);

/// The same by a mirroring whose copies stay mirror images: they follow what they mirror.
[[nodiscard]] std::expected<Copies, NoCarrying> mirroredCopies(const Copied& things, const std::variant<Centre, LineId>& about,
                                                               int highestLine);

}  // namespace kerfwall
