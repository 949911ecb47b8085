// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/shop/exactness.h"

namespace kerfwall {

/// "± 0.21, at worst 0.3 (ISO 2768-1 m)": to a hundredth of a millimetre or a thousandth of an inch, rounded up.
[[nodiscard]] QString exactWords(const Exactness& size, Units units);

/// The same at length, for the size of `mm`: how many come out within what (GUM, k = 2), and what the class allows.
[[nodiscard]] QString exactSentences(const Exactness& size, double mm, Units units);

/// "angles ± 0.01°, at worst 0.02° (ISO 2768-1 f)": of the cutout's angles the one that may be farthest off. "" where none is told.
[[nodiscard]] QString angleExactWords(const CutoutExactness& cutout);

}  // namespace kerfwall
