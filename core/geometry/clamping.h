// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

#include "core/says/project.h"

namespace kerfwall {

/// A clamp hole at the place on an edge nearest to `place`, on whole `step`s (mm), of the bench's first clamp,
/// else of its corner drill or what the panel's thickness bears; as deep as that clamp's insert, at most to the middle of the panel.
[[nodiscard]] ClampHole clampHoleAt(const Project& project, Point place, double step);

/// The project with that hole where `place` is nearest to an edge, on whole `step`s.
/// Requires  the hole is there.
[[nodiscard]] Project withHoleAt(const Project& project, std::size_t hole, Point place, double step);

/// The project with that hole moved along its edge by what of `shift` runs along it, within the edge.
/// Requires  the hole is there.
[[nodiscard]] Project withHoleMoved(const Project& project, std::size_t hole, Point shift);

}  // namespace kerfwall
