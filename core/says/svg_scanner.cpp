// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/svg_scanner.h"

#include <charconv>
#include <cmath>

#include "core/says/svg_path.h"

namespace kerfwall {
namespace {

bool isSpace(char sign) { return sign == ' ' || sign == '\t' || sign == '\n' || sign == '\r' || sign == '\f'; }
bool isLetter(char sign) { return (sign >= 'a' && sign <= 'z') || (sign >= 'A' && sign <= 'Z'); }

}  // namespace

void SvgScanner::skipSpaces() {
    while (m_at < m_text.size() && isSpace(m_text[m_at])) ++m_at;
}

void SvgScanner::skipComma() {
    skipSpaces();
    if (m_at < m_text.size() && m_text[m_at] == ',') ++m_at;
    skipSpaces();
}

bool SvgScanner::isAtEnd() {
    skipSpaces();
    return m_at == m_text.size();
}

std::optional<char> SvgScanner::letter() {
    skipSpaces();
    if (m_at == m_text.size() || !isLetter(m_text[m_at])) return std::nullopt;
    return m_text[m_at++];
}

bool SvgScanner::take(char sign) {
    skipSpaces();
    if (m_at == m_text.size() || m_text[m_at] != sign) return false;
    ++m_at;
    return true;
}

std::optional<double> SvgScanner::number() {
    const std::size_t before = m_at;
    skipComma();
    std::size_t from = m_at;
    if (from < m_text.size() && m_text[from] == '+') ++from;
    const bool isNumber = from < m_text.size() && (m_text[from] == '-' || m_text[from] == '.' || (m_text[from] >= '0' && m_text[from] <= '9'));
    double value = 0;
    const auto [end, error] = std::from_chars(m_text.data() + from, m_text.data() + m_text.size(), value);
    if (!isNumber || error != std::errc() || !std::isfinite(value) || std::abs(value) > kLargestSvgNumber) {
        m_at = before;
        return std::nullopt;
    }
    m_at = static_cast<std::size_t>(end - m_text.data());
    return value;
}

std::optional<bool> SvgScanner::flag() {
    skipComma();
    if (m_at == m_text.size() || (m_text[m_at] != '0' && m_text[m_at] != '1')) return std::nullopt;
    return m_text[m_at++] == '1';
}

std::string_view SvgScanner::word() {
    skipSpaces();
    const std::size_t from = m_at;
    while (m_at < m_text.size() && isLetter(m_text[m_at])) ++m_at;
    return m_text.substr(from, m_at - from);
}

}  // namespace kerfwall
