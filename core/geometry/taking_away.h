// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/picked.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// The project without what is picked: lines as withoutLine takes them, clamp holes, fences, the workpiece; a cutout
/// is marked waste no more, its lines stay.
[[nodiscard]] Project withoutPicked(const Project& project, const Solved& solved, const Picked& picked);

}  // namespace kerfwall
