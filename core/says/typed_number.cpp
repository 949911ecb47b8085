// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/typed_number.h"

#include <charconv>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>
#include <system_error>

namespace kerfwall {

namespace {

constexpr double kExactInteger = 9007199254740992;  // 2^53: doubles hold every integer below

using Refused = std::unexpected<std::string>;

bool isWhole(double value) { return std::abs(value) < kExactInteger && std::trunc(value) == value; }

// The denominator of a fraction, after the numerator. None where what follows is no fraction of whole numbers:
// then nothing is taken.
std::optional<std::string_view> takeDenominator(Typed& typed) {
    const Typed before = typed;
    typed.skipSpaces();
    if (typed.take("/")) {
        typed.skipSpaces();
        const std::string_view digits = typed.takeDigits();
        if (!digits.empty() && !typed.rest().starts_with(".") && !typed.rest().starts_with(",")) {
            return digits;
        }
    }
    typed = before;
    return std::nullopt;
}

std::expected<Ratio, std::string> fraction(double whole, std::string_view numerator, std::string_view denominator) {
    const double parts = numberOf(denominator);
    if (parts == 0) {
        return Refused("A fraction cannot be divided by nought; type it as in 3/4.");
    }
    return Ratio{whole * parts + numberOf(numerator), parts};
}

// What may follow a whole number: the rest of a mixed number, "-3/4" or " 3/4".
std::expected<Ratio, std::string> takeMixed(Typed& typed, double whole) {
    const Typed before = typed;
    const bool spaced = typed.skipSpaces();
    const bool hyphen = !spaced && takeHyphen(typed);
    typed.skipSpaces();
    if (hyphen && takeMinus(typed)) {
        return Refused("One hyphen joins a whole number and its fraction, as in 1-3/4; here stand two.");
    }
    const std::string_view numerator = typed.takeDigits();
    const auto denominator = numerator.empty() ? std::nullopt : takeDenominator(typed);
    // Behind a hyphen only a proper fraction belongs to the whole number: 120-3/2 takes 3/2 away.
    const bool joins = denominator && (!hyphen || numberOf(*denominator) == 0 ||
                                       numberOf(numerator) < numberOf(*denominator));
    if (joins) {
        return fraction(whole, numerator, *denominator);
    }
    typed = before;
    return Ratio{whole, 1};
}

}  // namespace

Ratio reduced(Ratio ratio) {
    if (!isWhole(ratio.numerator) || !isWhole(ratio.denominator)) {
        return {ratio.numerator / ratio.denominator, 1};
    }
    const auto divisor = static_cast<double>(
        std::gcd(static_cast<long long>(ratio.numerator), static_cast<long long>(ratio.denominator)));
    return {ratio.numerator / divisor, ratio.denominator / divisor};
}

std::string quoted(std::string_view text) { return "\u201c" + std::string(text) + "\u201d"; }

double numberOf(std::string_view digits) {
    double value = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return read.ec == std::errc::result_out_of_range ? std::numeric_limits<double>::infinity() : value;
}

bool takeHyphen(Typed& typed) { return typed.take("-") || typed.take("\u2010") || typed.take("\u2011"); }
bool takeMinus(Typed& typed) { return takeHyphen(typed) || typed.take("\u2212"); }

// The decimals of `whole`, after the decimal sign. Dot and comma both mark decimals, neither groups.
std::expected<Ratio, std::string> takeDecimals(Typed& typed, std::string_view whole) {
    const std::string_view decimals = typed.takeDigits();
    if (whole.empty() && decimals.empty()) {
        return Refused("A number needs at least one digit.");
    }
    if (typed.rest().starts_with(".") || typed.rest().starts_with(",")) {
        return Refused("A number has one decimal sign, dot or comma; thousands are not grouped.");
    }
    const std::string digits = std::string(whole) + std::string(decimals);
    const double scale = std::pow(10.0, static_cast<double>(decimals.size()));
    const double all = numberOf(digits);
    if (all < kExactInteger && decimals.size() <= 22) {
        return Ratio{all, scale};
    }
    return Ratio{numberOf(std::string(whole) + "." + std::string(decimals)), 1};
}

std::expected<Ratio, std::string> takeNumber(Typed& typed) {
    const std::string_view whole = typed.takeDigits();
    if (typed.take(".") || typed.take(",")) {
        return takeDecimals(typed, whole);
    }
    if (whole.empty()) {
        return Refused(typed.isDone() ? std::string("A length must follow here, as in 12.7, 1-3/4 or 7/8\".")
                                      : "Type a length as a number, as in 12.7, 1-3/4 or 7/8\"; " +
                                            quoted(typed.rest()) + " is none.");
    }
    if (const auto denominator = takeDenominator(typed)) {
        return fraction(0, whole, *denominator);
    }
    return takeMixed(typed, numberOf(whole));
}

}  // namespace kerfwall
