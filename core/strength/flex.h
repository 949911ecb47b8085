// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/solved.h"

namespace kerfwall {

/// What a side push by hand is taken to be, N. Common practice, no measurement found; a project's limits may say another.
inline constexpr double kSidePush = 50;
/// The stretch of wall it is spread over, mm; the whole wall if shorter.
inline constexpr double kPushedLength = 20;

/// The answer with how far each wall gives (Wall::give) in the panel's own plane: the panel less its openings, kerfs as bands of web
/// thickness, held where the project says (nothing said: by its clamps where it has holes for them, else by the reference edge).
/// The push stands square to the wall, away from the opening, between the corners' arcs. Walls of what nothing holds, and of a
/// panel that nothing holds, are left empty; so are all where the template is held by the work: then nothing gives.
/// Clamp holes and fences' grooves do not weaken it. Clamps hold the panel under their jaw, as deep in as the hole.
/// Takes tens of milliseconds for a few walls, so nothing that follows a hand waits for it.
[[nodiscard]] Solved withFlex(const Project& project, Solved solved);

/// The side push that a project goes by, N.
[[nodiscard]] double sidePushOf(const Project& project);

}  // namespace kerfwall
