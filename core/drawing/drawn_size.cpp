// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/drawn_size.h"

#include "core/says/length_text.h"

namespace kerfwall {

std::string drawnSize(double mm, Units units) {
    return units == Units::Inches ? lengthText(mm, units) : drawnSetting(mm, units);
}

std::string drawnSetting(double mm, Units units) {
    if (units == Units::Inches) return lengthAtSaw(mm, units);
    std::string text = lengthText(mm, units, 2);
    while (text.ends_with('0')) text.pop_back();
    if (text.ends_with('.')) text.pop_back();
    return text;
}

}  // namespace kerfwall
