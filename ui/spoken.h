// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/session.h"

namespace kerfwall {

/// The plan in words: the panel, each line with its ends and kerfs, each cutout, each finding.
[[nodiscard]] QString planInWords(const Session& session);

/// The side view in words: from left to right what the cutting line meets.
[[nodiscard]] QString sideViewInWords(const Session& session);

}  // namespace kerfwall
