// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QScreen;

namespace kerfwall {

/// How many pixels, as the program counts them, make 1 mm on that screen: as measured by a ruler held to it, else as
/// the screen says of itself, else 96 to the inch.
[[nodiscard]] double pixelsPerMm(const QScreen& screen);

/// True where a ruler was held to that screen once.
[[nodiscard]] bool isMeasured(const QScreen& screen);

/// Keeps what a ruler said, for this screen alone, whatever scale the desktop is shown at later.
/// Requires  measured > 0.
void keepPixelsPerMm(const QScreen& screen, double measured);

}  // namespace kerfwall
