// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/geometry/solved.h"

namespace kerfwall {

/// "A C": a corner by its two lines.
[[nodiscard]] QString cornerText(const Corner& corner);

/// How a trimmed corner looks, in plain words.
[[nodiscard]] QString regimeText(Regime regime);

/// What bores a radius: "the 20 bore at hand".
[[nodiscard]] QString boreText(const Project& project, double radius);

/// What stands beside the pointer over a corner: its angle and radius, how it looks, what bores it, how far it bites past
/// the lines.
[[nodiscard]] QString cornerNote(const Project& project, const Corner& corner);

}  // namespace kerfwall
