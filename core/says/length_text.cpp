// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/length_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>
#include <system_error>

namespace kerfwall {

namespace {

constexpr double kExactInteger = 9007199254740992;  // 2^53: doubles hold every integer below
constexpr int kParts = 64;                          // of an inch: the finest division of a steel rule

using Refused = std::unexpected<std::string>;

// A number as typed, exactly: numerator / denominator, both whole.
struct Ratio {
    double numerator = 0;
    double denominator = 1;
};

// mm in one unit, as a ratio of whole numbers so that 12.7 typed as 1/2" is 12.7 to the last bit.
struct Unit {
    std::string_view sign;
    double numerator;
    double denominator;
    bool isFoot;
};

constexpr std::array kUnits{
    Unit{"mm", 1, 1, false},      Unit{"cm", 10, 1, false},   Unit{"m", 1000, 1, false},
    Unit{"inch", 254, 10, false}, Unit{"in", 254, 10, false}, Unit{"\"", 254, 10, false},
    Unit{"″", 254, 10, false},    Unit{"''", 254, 10, false}, Unit{"ft", 3048, 10, true},
    Unit{"'", 3048, 10, true},    Unit{"′", 3048, 10, true},
};
constexpr Unit kInch = kUnits[3];

class Typed {
  public:
    explicit Typed(std::string_view text) : m_rest(text) { skipSpaces(); }

    [[nodiscard]] bool isDone() const { return m_rest.empty(); }
    [[nodiscard]] std::string_view rest() const { return m_rest; }
    [[nodiscard]] bool startsWithDigit() const {
        return !m_rest.empty() && m_rest.front() >= '0' && m_rest.front() <= '9';
    }

    bool take(std::string_view word) {
        if (!m_rest.starts_with(word)) {
            return false;
        }
        m_rest.remove_prefix(word.size());
        return true;
    }
    bool takeThenSpaces(std::string_view word) {
        const bool taken = take(word);
        skipSpaces();
        return taken;
    }
    void skipSpaces() {
        while (take(" ") || take("\t") || take("\u00a0") || take("\u2009") || take("\u202f")) {
        }
    }
    std::string_view takeDigits() {
        std::size_t count = 0;
        while (count < m_rest.size() && m_rest[count] >= '0' && m_rest[count] <= '9') {
            ++count;
        }
        const std::string_view digits = m_rest.substr(0, count);
        m_rest.remove_prefix(count);
        return digits;
    }

  private:
    std::string_view m_rest;
};

std::string quoted(std::string_view text) { return "\u201c" + std::string(text) + "\u201d"; }

double numberOf(std::string_view digits) {
    double value = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return read.ec == std::errc::result_out_of_range ? std::numeric_limits<double>::infinity() : value;
}

bool takeHyphen(Typed& typed) { return typed.take("-") || typed.take("\u2010") || typed.take("\u2011"); }
bool takeMinus(Typed& typed) { return takeHyphen(typed) || typed.take("\u2212"); }

// A fraction's denominator, after its stroke.
std::expected<double, std::string> takeDenominator(Typed& typed) {
    typed.skipSpaces();
    const std::string_view digits = typed.takeDigits();
    if (digits.empty()) {
        return Refused("A whole number must follow the stroke of a fraction, as in 3/4.");
    }
    const double denominator = numberOf(digits);
    if (denominator == 0) {
        return Refused("A fraction cannot be divided by nought; type it as in 3/4.");
    }
    return denominator;
}

std::expected<Ratio, std::string> takeFractionAfter(Typed& typed, std::string_view numerator, double whole) {
    const auto denominator = takeDenominator(typed);
    if (!denominator) {
        return Refused(denominator.error());
    }
    return Ratio{whole * *denominator + numberOf(numerator), *denominator};
}

// What may follow a whole number: the rest of a mixed number, "-3/4" or " 3/4".
std::expected<Ratio, std::string> takeMixed(Typed& typed, double whole) {
    const Typed before = typed;
    typed.skipSpaces();
    const bool hyphen = takeHyphen(typed);
    typed.skipSpaces();
    if (hyphen && takeMinus(typed)) {
        return Refused("One hyphen joins a whole number and its fraction, as in 1-3/4; here stand two.");
    }
    const std::string_view numerator = typed.takeDigits();
    typed.skipSpaces();
    if (!numerator.empty() && typed.take("/")) {
        return takeFractionAfter(typed, numerator, whole);
    }
    if (hyphen) {
        return Refused("A fraction must follow the hyphen, as in 1-3/4.");
    }
    typed = before;
    return Ratio{whole, 1};
}

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
        return Refused("Type a length as a number, as in 12.7, 1-3/4 or 7/8\"; " + quoted(typed.rest()) +
                       " is none.");
    }
    const Typed before = typed;
    typed.skipSpaces();
    if (typed.take("/")) {
        return takeFractionAfter(typed, whole, 0);
    }
    typed = before;
    return takeMixed(typed, numberOf(whole));
}

std::optional<Unit> takeUnit(Typed& typed) {
    typed.skipSpaces();
    for (const Unit& unit : kUnits) {
        if (typed.takeThenSpaces(unit.sign)) {
            return unit;
        }
    }
    return std::nullopt;
}

double millimetres(const Ratio& number, const Unit& unit) {
    return number.numerator * unit.numerator / (number.denominator * unit.denominator);
}

// The inches after feet: 2' 3-1/2".
std::expected<Ratio, std::string> takeInches(Typed& typed, const Ratio& feet) {
    const auto inches = takeNumber(typed);
    if (!inches) {
        return inches;
    }
    const std::optional<Unit> unit = takeUnit(typed);
    if (unit && (unit->isFoot || unit->denominator != kInch.denominator)) {
        return Refused("Only inches can follow feet, as in 2' 3-1/2\".");
    }
    return Ratio{12 * feet.numerator * inches->denominator + inches->numerator * feet.denominator,
                 feet.denominator * inches->denominator};
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
    const bool negative = takeMinus(typed) || (typed.take("+"), false);
    typed.skipSpaces();
    const auto number = takeNumber(typed);
    if (!number) {
        return Refused(number.error());
    }
    const Unit bare = units == Units::Inches ? kInch : kUnits.front();
    const std::optional<Unit> unit = takeUnit(typed);
    double mm = millimetres(*number, unit.value_or(bare));
    if (unit && unit->isFoot && !typed.isDone()) {
        typed.takeThenSpaces("-");
        const auto inches = takeInches(typed, *number);
        if (!inches) {
            return Refused(inches.error());
        }
        mm = millimetres(*inches, kInch);
    }
    if (!typed.isDone()) {
        return Refused(quoted(typed.rest()) +
                       " cannot follow a length here; its unit is mm, cm, m, in, \", ft or '.");
    }
    if (!std::isfinite(mm)) {
        return Refused("This length is too large.");
    }
    return negative ? -mm : mm;
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

int decimalsAtSaw(double mm) {
    constexpr double kHundredthHalf = 0.005;
    return std::abs(mm - std::round(mm * 10) / 10) < kHundredthHalf ? 1 : 2;
}

}  // namespace kerfwall
