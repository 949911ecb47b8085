// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/iso_2768.h"

#include <array>
#include <cstddef>

namespace kerfwall {

namespace {

constexpr std::array kClasses{ToleranceClass::Fine, ToleranceClass::Medium, ToleranceClass::Coarse,
                              ToleranceClass::VeryCoarse};
constexpr double kShortest = 0.5;  // mm; the standard has no figure for less
constexpr double kNone = 0;        // a dash in the standard's table
constexpr double kSlack = 1e-9;    // sums of tenths that are a limit count as it

constexpr std::array kUpTo{3.0, 6.0, 30.0, 120.0, 400.0, 1000.0, 2000.0, 4000.0};
constexpr std::array<std::array<double, kUpTo.size()>, kClasses.size()> kLengths{
    {{0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, kNone},
     {0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2},
     {0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4},
     {kNone, 0.5, 1, 1.5, 2.5, 4, 6, 8}}};

constexpr double kMinutes = 1.0 / 60;
constexpr std::array kLegUpTo{10.0, 50.0, 120.0, 400.0};
constexpr std::array kAnglesFine{1.0, 30 * kMinutes, 20 * kMinutes, 10 * kMinutes, 5 * kMinutes};
constexpr std::array kAnglesCoarse{1.5, 1.0, 30 * kMinutes, 15 * kMinutes, 10 * kMinutes};
constexpr std::array kAnglesVeryCoarse{3.0, 2.0, 1.0, 30 * kMinutes, 20 * kMinutes};

template <std::size_t size>
std::size_t columnOf(const std::array<double, size>& upTo, double mm) {
    std::size_t column = 0;
    while (column < size && mm > upTo.at(column)) {
        ++column;
    }
    return column;
}

}  // namespace

std::string classWord(ToleranceClass kept) {
    switch (kept) {
        case ToleranceClass::Fine:
            return "f";
        case ToleranceClass::Medium:
            return "m";
        case ToleranceClass::Coarse:
            return "c";
        case ToleranceClass::VeryCoarse:
            break;
    }
    return "v";
}

std::optional<double> lengthTolerance(ToleranceClass in, double mm) {
    const std::size_t column = columnOf(kUpTo, mm);
    if (mm < kShortest || column == kUpTo.size()) {
        return std::nullopt;
    }
    const double figure = kLengths.at(static_cast<std::size_t>(in)).at(column);
    return figure == kNone ? std::nullopt : std::optional(figure);
}

double angleTolerance(ToleranceClass in, double shorterLeg) {
    const std::size_t column = columnOf(kLegUpTo, shorterLeg);
    switch (in) {
        case ToleranceClass::Fine:
        case ToleranceClass::Medium:
            return kAnglesFine.at(column);
        case ToleranceClass::Coarse:
            return kAnglesCoarse.at(column);
        case ToleranceClass::VeryCoarse:
            break;
    }
    return kAnglesVeryCoarse.at(column);
}

std::optional<ToleranceClass> lengthClassKept(double mm, double plusMinus) {
    for (const ToleranceClass each : kClasses) {
        const auto tolerance = lengthTolerance(each, mm);
        if (tolerance && plusMinus <= *tolerance + kSlack) {
            return each;
        }
    }
    return std::nullopt;
}

std::optional<ToleranceClass> angleClassKept(double shorterLeg, double plusMinus) {
    for (const ToleranceClass each : kClasses) {
        if (plusMinus <= angleTolerance(each, shorterLeg) + kSlack) {
            return each;
        }
    }
    return std::nullopt;
}

}  // namespace kerfwall
