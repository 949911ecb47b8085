// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/session.h"

namespace kerfwall {

/// The plan in words: the panel, each line with its ends and kerfs, each cutout, each finding.
[[nodiscard]] QString planInWords(const Session& session);

/// A side view in words: where it is cut, what the cutting line meets from its left or bottom end on, the heights,
/// the clamp holes and where they come through.
[[nodiscard]] QString sideViewInWords(const Session& session, CutDirection direction);

/// A step of the order of work in words: its settings, how the panel lies, what is done, and its cautions.
/// Requires  the order of work has that step.
[[nodiscard]] QString stepInWords(const Session& session, std::size_t step);

}  // namespace kerfwall
