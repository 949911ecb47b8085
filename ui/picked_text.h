// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/geometry/picked.h"

namespace kerfwall {

/// What is picked, in the middle of a sentence: "line A", "clamp hole 2", "3 lines and 1 cutout".
[[nodiscard]] QString pickedText(const Picked& picked);

}  // namespace kerfwall
