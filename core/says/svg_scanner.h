// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace kerfwall {

/// Reads the numbers and letters of SVG's path data, transforms and lists, one after the other.
class SvgScanner {
  public:
    explicit SvgScanner(std::string_view text) : m_text(text) {}

    /// Nothing but spaces is left.
    [[nodiscard]] bool isAtEnd();
    /// The place of what comes next, counted from 1.
    [[nodiscard]] std::size_t place() const { return m_at + 1; }
    /// The next sign, where it is a letter.
    [[nodiscard]] std::optional<char> letter();
    /// Takes this sign, after spaces; false where it is another.
    bool take(char sign);
    /// A number, after spaces and one comma at most; none where none stands there or it is too large.
    [[nodiscard]] std::optional<double> number();
    /// A flag, 0 or 1; nothing need follow it.
    [[nodiscard]] std::optional<bool> flag();
    /// The word of letters that comes next; "" for none.
    [[nodiscard]] std::string_view word();

  private:
    void skipSpaces();
    void skipComma();

    std::string_view m_text;
    std::size_t m_at = 0;
};

}  // namespace kerfwall
