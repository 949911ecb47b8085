// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/geometry/laying.h"

namespace kerfwall {

/// "the bottom edge", "line A".
[[nodiscard]] QString theBaseText(const Base& base);
/// "the upright centre line", "line B": what is mirrored about.
[[nodiscard]] QString aboutText(const std::variant<Centre, LineId>& about);

/// What a line in hand holds on to: "square to the bottom edge", "mirror of A about the upright centre line".
[[nodiscard]] QString holdText(const Hold& hold, double margin, Units units);

/// How a line in hand lies: what it holds on to, else its angle, and its places on the edges; some lines of text.
[[nodiscard]] QString laidText(const LaidLine& laid, double margin, Units units);

}  // namespace kerfwall
