// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

/// A length that a maker can set: the next tenth of a millimetre or 1/64 in that is at most, or at least, `mm`.
[[nodiscard]] double setAtMost(const Project& project, double mm);
[[nodiscard]] double setAtLeast(const Project& project, double mm);

/// A length in a finding's text, with its unit: tenths of a millimetre, hundredths where a tenth would
/// lie by more than half of one; inches to 1/64, thousandths of an inch under 1/8.
[[nodiscard]] std::string lengthWords(const Project& project, double mm);

/// The same, never less than `mm`: up to the next tenth of a millimetre or 1/64 in.
[[nodiscard]] std::string atLeastWords(const Project& project, double mm);

/// The same, never more than `mm`.
[[nodiscard]] std::string atMostWords(const Project& project, double mm);

/// An angle in degrees to a tenth, rounded down: "119.7°".
[[nodiscard]] std::string angleWords(double degrees);

/// A place on the panel: "12.0 mm from the left and 80.0 mm from the bottom".
[[nodiscard]] std::string placeWords(const Project& project, Point place);

}  // namespace kerfwall
