// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/opening.h"

namespace kerfwall {

/// Reads off the opening how each corner came out (`step`, `regime`, `drill`) and where it bites past the
/// drawn cutout (`hollows`, each at its deepest place).
void readBites(SolvedCutout& cutout, const Opening& opening, const Project& project, const Arranged& arranged,
               const std::vector<LaidKerf>& kerfs, double bitRadius);

}  // namespace kerfwall
