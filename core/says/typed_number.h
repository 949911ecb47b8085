// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <string_view>

namespace kerfwall {

/// A number as typed, exactly: numerator / denominator. Whole numbers as long as they stay below 2^53.
struct Ratio {
    double numerator = 0;
    double denominator = 1;
};

/// Both in lowest terms where both are whole numbers that doubles hold; else their quotient over 1.
[[nodiscard]] Ratio reduced(Ratio ratio);

/// What a maker typed, read from the left.
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
    bool skipSpaces() {
        bool any = false;
        while (take(" ") || take("\t") || take("\u00a0") || take("\u2009") || take("\u202f")) {
            any = true;
        }
        return any;
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

/// A hyphen or a minus as typed on a keyboard; `takeMinus` knows the typographic minus too.
bool takeHyphen(Typed& typed);
bool takeMinus(Typed& typed);

/// The text between quotation marks, for a sentence.
[[nodiscard]] std::string quoted(std::string_view text);

/// The value of a run of digits; infinity where it is too large.
[[nodiscard]] double numberOf(std::string_view digits);

/// The decimals of `whole`, after the decimal sign. Dot and comma both mark decimals, neither groups.
[[nodiscard]] std::expected<Ratio, std::string> takeDecimals(Typed& typed, std::string_view whole);

/// A decimal, a fraction of whole numbers, or a whole number and a fraction joined by a space or by a hyphen that
/// touches it. A stroke or a hyphen that makes no fraction is left to be read as a sign of arithmetic.
[[nodiscard]] std::expected<Ratio, std::string> takeNumber(Typed& typed);

}  // namespace kerfwall
