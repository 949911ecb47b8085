// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/finding_words.h"

#include <array>
#include <charconv>
#include <cmath>

#include "core/says/length_text.h"
#include "core/shop/wall_lines.h"

namespace kerfwall {
namespace {

constexpr double kSlack = 1e-9;  // a length that is a whole step stays on it

std::string decimal(double number, int places) {
    std::array<char, 64> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed, places);
    return {text.data(), end.ptr};
}

double stepOf(const Project& project) { return project.units == Units::Inches ? kMillimetresPerInch / 64 : 0.1; }

}  // namespace

double setAtMost(const Project& project, double mm) {
    const double step = stepOf(project);
    return onGrid(std::floor(mm / step + kSlack) * step);
}

double setAtLeast(const Project& project, double mm) {
    const double step = stepOf(project);
    return onGrid(std::ceil(mm / step - kSlack) * step);
}

std::string lengthWords(const Project& project, double mm) {
    if (project.units == Units::Inches && std::abs(mm) < kMillimetresPerInch / 8) {
        return decimal(mm / kMillimetresPerInch, 3) + " in";
    }
    return lengthWithUnit(mm, project.units, std::abs(mm) >= 1 ? decimalsAtSaw(mm) : 2);
}

std::string atLeastWords(const Project& project, double mm) {
    return lengthWithUnit(setAtLeast(project, mm), project.units, 1);
}

std::string atMostWords(const Project& project, double mm) {
    return lengthWithUnit(setAtMost(project, mm), project.units, 1);
}

std::string angleWords(double degrees) { return decimal(std::floor(degrees * 10 + kSlack) / 10, 1) + "°"; }

std::string placeWords(const Project& project, Point place) {
    return lengthWords(project, place.x) + " from the left and " + lengthWords(project, place.y) +
           " from the bottom";
}

}  // namespace kerfwall
