// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/size_text.h"

#include "core/says/length_text.h"

namespace kerfwall {

std::string sizeText(double mm, Units units) {
    std::string text = lengthText(mm, units, 1);
    if (units == Units::Millimetres && text.ends_with(".0")) text.resize(text.size() - 2);
    return text;
}

}  // namespace kerfwall
