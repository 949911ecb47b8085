// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/drawn_size.h"

#include "core/says/length_text.h"

namespace kerfwall {

std::string drawnSize(double mm, Units units) {
    std::string text = lengthText(mm, units, 1);
    if (units == Units::Millimetres && text.ends_with(".0")) text.resize(text.size() - 2);
    return text;
}

}  // namespace kerfwall
