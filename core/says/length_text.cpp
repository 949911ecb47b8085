// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/length_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numeric>

#include "core/says/typed_length.h"
#include "core/says/typed_number.h"

namespace kerfwall {

namespace {

constexpr int kParts = 64;  // of an inch: the finest division of a steel rule

using Refused = std::unexpected<std::string>;

// Where in the text the trouble is, counted in characters as they are seen; "" where it is at the beginning.
std::string placeIn(std::string_view text, std::string_view rest) {
    if (rest.size() == text.size()) {
        return {};
    }
    if (rest.empty()) {
        return "At the end: ";
    }
    const std::string_view before = text.substr(0, text.size() - rest.size());
    const auto seen = std::ranges::count_if(before, [](char byte) { return (byte & 0xC0) != 0x80; });
    return "At character " + std::to_string(seen + 1) + ": ";
}

std::string withSign(std::string text, char decimalSign) {
    if (const auto dot = text.find('.'); dot != std::string::npos) {
        text[dot] = decimalSign;
    }
    return text;
}

std::string inchText(double mm) {
    const auto parts = std::llround(std::abs(mm) / kMillimetresPerInch * kParts);
    const auto whole = parts / kParts;
    const auto rest = parts % kParts;
    std::string text = mm < 0 && parts > 0 ? "-" : "";
    if (whole > 0 || rest == 0) {
        text += std::to_string(whole);
    }
    if (rest > 0) {
        const auto divisor = std::gcd(rest, static_cast<long long>(kParts));
        text +=
            (whole > 0 ? " " : "") + std::to_string(rest / divisor) + "/" + std::to_string(kParts / divisor);
    }
    return text;
}

}  // namespace

std::expected<double, std::string> readLength(std::string_view text, Units units) {
    Typed typed(text);
    if (typed.isDone()) {
        return Refused("Type a length, as in 12.7, 1-3/4 or 7/8\".");
    }
    const auto mm = takeLengthSum(typed, units);
    if (!mm) {
        return Refused(placeIn(text, typed.rest()) + mm.error());
    }
    return mm;
}

std::expected<double, std::string> readAngle(std::string_view text) {
    Typed typed(text);
    if (typed.isDone()) {
        return Refused("Type an angle in degrees, as in 12.5.");
    }
    const bool negative = takeMinus(typed) || (typed.take("+"), false);
    typed.skipSpaces();
    const std::string_view whole = typed.takeDigits();
    const bool hasSign = typed.take(".") || typed.take(",");
    if (whole.empty() && !hasSign) {
        return Refused("Type an angle in degrees, as in 12.5; " + quoted(typed.rest()) + " is none.");
    }
    const auto number = hasSign ? takeDecimals(typed, whole) : Ratio{numberOf(whole), 1};
    if (!number) {
        return Refused(number.error());
    }
    typed.skipSpaces();
    typed.takeThenSpaces("°");
    if (!typed.isDone()) {
        return Refused(quoted(typed.rest()) + " cannot follow an angle; it is a decimal number of degrees.");
    }
    const double degrees = number->numerator / number->denominator;
    return negative ? -degrees : degrees;
}

std::string lengthText(double mm, Units units, int decimals, char decimalSign) {
    if (units == Units::Inches) {
        return inchText(mm);
    }
    std::array<char, 400> digits{};
    const auto end =
        std::to_chars(digits.data(), digits.data() + digits.size(), mm, std::chars_format::fixed, decimals);
    std::string text(digits.data(), end.ptr);
    if (text.starts_with("-") && text.find_first_not_of("-0.") == std::string::npos) {
        text.erase(0, 1);
    }
    return withSign(text, decimalSign);
}

std::string lengthWithUnit(double mm, Units units, int decimals, char decimalSign) {
    return lengthText(mm, units, decimals, decimalSign) + (units == Units::Inches ? "\"" : " mm");
}

std::string lengthAtSaw(double mm, Units units, char decimalSign) {
    constexpr double kHundredthHalf = 0.005;
    constexpr double k64th = kMillimetresPerInch / 64;
    const bool isFraction = std::abs(mm - std::round(mm / k64th) * k64th) < kHundredthHalf;
    if (units == Units::Millimetres || isFraction) {
        return lengthText(mm, units, decimalsAtSaw(mm), decimalSign);
    }
    return lengthText(mm / kMillimetresPerInch, Units::Millimetres, 3, decimalSign);
}

int decimalsAtSaw(double mm) {
    constexpr double kHundredthHalf = 0.005;
    return std::abs(mm - std::round(mm * 10) / 10) < kHundredthHalf ? 1 : 2;
}

}  // namespace kerfwall
