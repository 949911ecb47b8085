// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/typed_length.h"

#include <array>
#include <cmath>
#include <optional>

namespace kerfwall {

namespace {

using Refused = std::unexpected<std::string>;

constexpr int kDeepest = 32;  // brackets within brackets: more than anyone types

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

// What a part of the sum amounts to: a bare number, or a length in mm.
struct Amount {
    Ratio value;
    bool isLength = false;
};
using Read = std::expected<Amount, std::string>;

std::optional<Unit> takeUnit(Typed& typed) {
    typed.skipSpaces();
    for (const Unit& unit : kUnits) {
        if (typed.take(unit.sign)) {
            return unit;
        }
    }
    return std::nullopt;
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

Ratio inMillimetres(const Ratio& number, const Unit& unit) {
    return {number.numerator * unit.numerator, number.denominator * unit.denominator};
}

Ratio negated(const Ratio& ratio) { return {-ratio.numerator, ratio.denominator}; }

class Sum {
  public:
    Sum(Typed& typed, Units units) : m_typed(typed), m_bare(units == Units::Inches ? kInch : kUnits.front()) {}

    // A sum: products with + and - between them. A sign may stand before the first.
    Read takeSum() {
        const bool negative = takeMinus(m_typed) || (m_typed.take("+"), false);
        m_typed.skipSpaces();
        Read sum = takeProduct();
        if (sum && negative) {
            sum->value = negated(sum->value);
        }
        while (sum) {
            m_typed.skipSpaces();
            const bool minus = takeMinus(m_typed);
            if (!minus && !m_typed.take("+")) {
                return sum;
            }
            m_typed.skipSpaces();
            sum = added(*sum, takeProduct(), minus);
        }
        return sum;
    }

    Ratio asLength(const Amount& amount) const {
        return amount.isLength ? amount.value : inMillimetres(amount.value, m_bare);
    }

  private:
    Read takeProduct() {
        Read product = takePart();
        while (product) {
            m_typed.skipSpaces();
            const Typed before = m_typed;
            const bool times = m_typed.take("*") || m_typed.take("×");
            const bool over = !times && (m_typed.take("/") || m_typed.take("÷"));
            if (!times && !over) {
                return product;
            }
            m_typed.skipSpaces();
            if (over && m_typed.isDone()) {
                return Refused("A number must follow the stroke, as in 3/4.");
            }
            const Read next = takePart();
            if (!next) {
                return next;
            }
            const auto result = times ? multiplied(*product, *next) : divided(*product, *next);
            if (!result) {
                m_typed = before;
            }
            product = result;
        }
        return product;
    }

    Read takePart() {  // a measure, or a sum in brackets
        return m_typed.take("(") ? takeBracket() : takeMeasure();
    }

    Read takeBracket() {
        if (++m_depth > kDeepest) {
            return Refused("There are too many brackets within brackets.");
        }
        m_typed.skipSpaces();
        Read sum = takeSum();
        --m_depth;
        if (!sum) {
            return sum;
        }
        m_typed.skipSpaces();
        if (!m_typed.take(")")) {
            return Refused("A bracket is not closed here.");
        }
        const Typed before = m_typed;
        if (const auto unit = takeUnit(m_typed)) {
            if (sum->isLength) {
                m_typed = before;
                return Refused("What stands in the brackets has a unit already.");
            }
            return Amount{reduced(inMillimetres(sum->value, *unit)), true};
        }
        return sum;
    }

    // A number with or without its unit; feet with their inches.
    Read takeMeasure() {
        const auto number = takeNumber(m_typed);
        if (!number) {
            return Refused(number.error());
        }
        const std::optional<Unit> unit = takeUnit(m_typed);
        if (!unit) {
            return Amount{*number, false};
        }
        const Typed before = m_typed;
        if (unit->isFoot) {
            // A hyphen that touches the feet joins their inches; behind a space it takes away.
            if (!m_typed.skipSpaces()) {
                takeHyphen(m_typed);
            }
            m_typed.skipSpaces();
            if (m_typed.startsWithDigit()) {
                const auto inches = takeInches(m_typed, *number);
                return inches ? Read(Amount{inMillimetres(*inches, kInch), true}) : Refused(inches.error());
            }
            m_typed = before;
        }
        return Amount{inMillimetres(*number, *unit), true};
    }

    Read added(const Amount& sum, const Read& next, bool minus) const {
        if (!next) {
            return next;
        }
        const bool isLength = sum.isLength || next->isLength;
        const Ratio one = isLength ? asLength(sum) : sum.value;
        const Ratio amount = isLength ? asLength(*next) : next->value;
        const Ratio other = minus ? negated(amount) : amount;
        return Amount{reduced({one.numerator * other.denominator + other.numerator * one.denominator,
                               one.denominator * other.denominator}),
                      isLength};
    }

    static Read multiplied(const Amount& one, const Amount& other) {
        if (one.isLength && other.isLength) {
            return Refused("A length times a length is an area; one of the two must be a bare number.");
        }
        return Amount{reduced({one.value.numerator * other.value.numerator,
                               one.value.denominator * other.value.denominator}),
                      one.isLength || other.isLength};
    }

    static Read divided(const Amount& one, const Amount& other) {
        if (other.isLength) {
            return Refused("A length can be divided by a bare number only.");
        }
        if (other.value.numerator == 0) {
            return Refused("Nothing can be divided by nought.");
        }
        return Amount{reduced({one.value.numerator * other.value.denominator,
                               one.value.denominator * other.value.numerator}),
                      one.isLength};
    }

    Typed& m_typed;
    Unit m_bare;
    int m_depth = 0;
};

}  // namespace

std::expected<double, std::string> takeLengthSum(Typed& typed, Units units) {
    Sum sum(typed, units);
    const Read amount = sum.takeSum();
    if (!amount) {
        return Refused(amount.error());
    }
    typed.skipSpaces();
    if (!typed.isDone()) {
        return Refused(quoted(typed.rest()) +
                       " cannot follow a length here; its unit is mm, cm, m, in, \", ft or '.");
    }
    const Ratio length = sum.asLength(*amount);
    const double mm = length.numerator / length.denominator;
    if (!std::isfinite(mm)) {
        return Refused("This length is too large.");
    }
    return mm;
}

}  // namespace kerfwall
