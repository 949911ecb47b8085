// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <vector>

#include "core/geometry/solved.h"
#include "core/shop/finding.h"

namespace kerfwall {

/// Title, plan and side view as a picture, `width` pixels wide and as high as they need. It says that it is 260 mm wide,
/// so that it prints with letters of the papers' size.
[[nodiscard]] QImage pictureOf(const Project& project, const Solved& solved,
                               const std::vector<Finding>& findings, int width);

}  // namespace kerfwall
