// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <vector>

#include "core/geometry/solved.h"
#include "core/shop/finding.h"

namespace kerfwall {

/// Plan and side view as a picture, `width` pixels wide and as high as they need.
[[nodiscard]] QImage pictureOf(const Project& project, const Solved& solved,
                               const std::vector<Finding>& findings, int width);

}  // namespace kerfwall
